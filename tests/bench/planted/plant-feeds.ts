import { type Planter, planter } from "./planter.ts";
import { lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import { busVehicle, keyedBox } from "./stand-feeds.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const receiver = (yard: Yard) => receiverJob(yard);
const wiresOf = (yard: Yard, ...tags: readonly string[]) => tags.flatMap((tag) => yard.tagged(tag).wires);
/** Section B of the reference: feeds. */
export const FEEDS: readonly Planter[] = [
  planter(
    "B01",
    "exchanged at the unit",
    ["feeds-swapped"],
    receiver,
    (yard, { unit }) => {
      yard.exchange(`${unit}.1`, `${unit}.2`);
      return [unit];
    },
    BOTH,
  ),
  planter(
    "B01",
    "exchanged at the vehicle's plug",
    ["feeds-swapped"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.exchange(`${vehicle}.A4`, `${vehicle}.A7`);
      return [vehicle, unit];
    },
  ),
  planter(
    "B01",
    "the vehicle's plug filled the other way round",
    ["feeds-swapped"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.cavity(`${vehicle}.A4`, { function: "switched-feed", fuse_A: 10 });
      yard.cavity(`${vehicle}.A7`, { function: "constant-feed", fuse_A: 10 });
      return [vehicle, unit];
    },
  ),
  planter(
    "B01",
    "exchanged behind fuses and key",
    ["feeds-swapped"],
    keyedBox,
    (yard, { box }) => {
      yard.exchange(`${box}.B`, `${box}.S`);
      return [box];
    },
    BOTH,
  ),
  planter(
    "B02",
    "both feeds on the constant cavity",
    ["both-feeds-one-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("switched").wires[0]!, `${vehicle}.A7`, `${vehicle}.A4`);
      return [unit, vehicle];
    },
    BOTH,
  ),
  planter(
    "B02",
    "the key by-passed",
    ["both-feeds-one-kind"],
    keyedBox,
    (yard, { box, key }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${key}.2`, `${key}.1`);
      return [box, wire];
    },
    BOTH,
  ),
  planter(
    "B03",
    "both feeds on the switched cavity",
    ["both-feeds-one-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("constant").wires[0]!, `${vehicle}.A4`, `${vehicle}.A7`);
      return [unit, vehicle];
    },
    { also: ["same-function-unjoined", "tapped-circuit-overloaded", "fuse-too-small"] },
  ),
  planter(
    "B03",
    "both feeds behind the key",
    ["both-feeds-one-kind"],
    keyedBox,
    (yard, { box, key, constant }) => {
      yard.move(yard.tagged("constant").wires[0]!, `${constant}.2`, `${key}.2`);
      return [box];
    },
    BOTH,
  ),
  planter(
    "B04",
    "a bridge between constant and switched",
    ["feeds-tied"],
    receiver,
    (yard, { vehicle }) => [
      vehicle,
      yard.wire(`${vehicle}.A4`, `${vehicle}.A7`, { tag: "bridge", area_mm2: 1.5, length_m: 0.2 }),
    ],
    BOTH,
  ),
  planter(
    "B04",
    "both vehicle leads in one joint",
    ["feeds-tied"],
    (yard) => cameraJob(yard),
    (yard, { board }) => {
      const joint = yard.tagged("switched").to.split(".")[0]!;
      const wire = yard.wire(`${board}.3`, `${joint}.1`, { tag: "helping", area_mm2: 1.5, length_m: 0.4 });
      yard.cavity(`${board}.3`, { use: "expected" });
      return [board, joint, wire];
    },
  ),
  planter(
    "B05",
    "feed and ground exchanged at a receiver",
    ["supply-reversed"],
    receiver,
    (yard, { unit, vehicle }) => {
      yard.exchange(`${unit}.1`, `${unit}.3`);
      return [unit, vehicle];
    },
    BOTH,
  ),
  planter(
    "B05",
    "camera reversed",
    ["supply-reversed"],
    cameraJob,
    (yard, { tail, camera }) => {
      yard.exchange(`${tail}.+`, `${tail}.−`);
      return [tail, camera];
    },
    BOTH,
  ),
  planter(
    "B05",
    "amplifier reversed",
    ["supply-reversed"],
    (yard) => amplifierJob(yard),
    (yard, { amplifier }) => {
      yard.exchange(`${amplifier}.+12`, `${amplifier}.GND`);
      return [amplifier];
    },
  ),
  planter(
    "B05",
    "polarised lamp reversed",
    ["supply-reversed"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      yard.exchange(`${lamp}.+`, `${lamp}.−`);
      return [lamp];
    },
    BOTH,
  ),
  planter(
    "B06",
    "accessory unit on an ignition feed",
    ["feed-of-wrong-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.cavity(`${vehicle}.A7`, { function: "ignition-feed" });
      return [vehicle, unit];
    },
    BOTH,
  ),
  planter(
    "B06",
    "accessory unit on the lights",
    ["feed-of-wrong-kind", "switched-input-on-another-lead"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("switched").wires[0]!, `${vehicle}.A7`, `${vehicle}.A6`);
      return [vehicle, unit, ...wiresOf(yard, "switched")];
    },
    { also: ["one-lead-two-jobs", "same-function-unjoined"] },
  ),
  planter(
    "B07",
    "switched input on illumination",
    ["switched-input-on-another-lead", "feed-of-wrong-kind"],
    busVehicle,
    (yard, { vehicle, unit, far }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${far}.1`, `${vehicle}.4`);
      return [unit, vehicle, wire];
    },
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "B07",
    "switched input on antenna power of its own",
    [
      "switched-input-on-another-lead",
      "feed-of-wrong-kind",
      "one-lead-two-jobs",
      "sources-feed-one-another",
      "required-lead-missing",
    ],
    busVehicle,
    (yard, { unit, far }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${far}.1`, `${unit}.5`);
      return [unit, wire];
    },
  ),
  planter(
    "B07",
    "switched input left loose",
    ["switched-input-on-another-lead", "required-lead-missing", "loose-lead", "loose-live-lead"],
    busVehicle,
    (yard, { unit }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.loosen(wire, 0);
      return [unit, wire];
    },
  ),
];
