import { interfaceJob } from "./data.ts";
import { removeLead } from "./plant-spares.ts";
import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const amplifier = (yard: Yard) => amplifierJob(yard);
const NO_GROUND = ["unit-without-ground", "required-lead-missing"];

/** Section D of the reference: grounds. */
export const GROUNDS: readonly Planter[] = [
  planter(
    "D01",
    "lamp without a ground",
    NO_GROUND,
    lampJob,
    (yard) => removeLead(yard, "lamp-ground"),
    BOTH,
  ),
  planter(
    "D01",
    "camera without a ground",
    NO_GROUND,
    cameraJob,
    (yard) => removeLead(yard, "camera-ground"),
    BOTH,
  ),
  planter(
    "D01",
    "receiver's ground into a joint that goes nowhere",
    NO_GROUND,
    (yard) => receiverJob(yard),
    (yard, { vehicle, unit }) => {
      const lead = yard.tagged("ground");
      const joint = yard.joint("solder", 1.5);
      yard.move(lead.wires[0]!, `${vehicle}.A8`, `${joint}.1`);
      return [unit, vehicle, joint, ...lead.wires];
    },
    BOTH,
  ),
  planter(
    "D01",
    "board's load without a ground",
    NO_GROUND,
    (yard) => boardJob(yard, 4),
    (yard) => removeLead(yard, "board-ground"),
    BOTH,
  ),
  planter(
    "D02",
    "one lamp's ground through another's",
    ["grounds-daisy-chained", "ground-drop-too-great"],
    lampJob,
    (yard, { lamps }) => {
      const [one, two] = [lamps[0]!, lamps[1]!];
      const first = yard.leads.find((lead) => lead.from === `${one}.−`)!;
      const second = yard.leads.find((lead) => lead.from === `${two}.−`)!;
      yard.build.change(first.wires[0]!, { length_m: 6, area_mm2: 1 });
      yard.move(second.wires[0]!, second.to, `${one}.−`);
      return [one, two, ...first.wires, ...second.wires];
    },
    { volts: [12, 24], also: ["ground-thinner-than-feed", "drop-too-great"] },
  ),
  planter(
    "D02",
    "receiver's ground through the amplifier's",
    ["grounds-daisy-chained"],
    amplifier,
    (yard, { amplifier: box, receiver }) => {
      yard.build.change(yard.tagged("amplifier-ground").wires[0]!, { length_m: 1.5 });
      const lead = yard.tagged("ground");
      yard.move(lead.wires[0]!, `${receiver.vehicle}.A8`, `${box}.GND`);
      return [box, receiver.unit, receiver.module!, ...lead.wires, ...yard.tagged("amplifier-ground").wires];
    },
  ),
  ...(["painted", "trim", "seat-belt-bolt", "moving-part"] as const).map((surface) =>
    planter(
      "D03",
      `ground on ${surface}`,
      ["ground-on-poor-metal"],
      lampJob,
      (yard, { grounds }) => {
        const ground = yard.pick(grounds);
        yard.build.change(ground, { surface });
        return [ground];
      },
      { volts: [12, 24], also: ["drop-too-great", "ground-drop-too-great"] },
    ),
  ),
  planter(
    "D04",
    "many rings on one stud",
    ["too-many-rings-on-stud"],
    (yard) => boardJob(yard, 6),
    (yard, { circuits }) => {
      const [first, ...rest] = circuits;
      for (const { ground } of rest)
        for (const wire of yard.wiresAt(ground)) yard.move(wire.designation, ground, first!.ground);
      return [first!.ground];
    },
    BOTH,
  ),
  planter(
    "D05",
    "amplifier joins its grounds on a stud of its own",
    ["ground-loop"],
    amplifier,
    (yard, { amplifier: box, receiver }) => {
      yard.build.change(box, { signalGround: "joined" });
      yard.build.change(yard.tagged("amplifier-ground").wires[0]!, { length_m: 7 });
      return [box, receiver.module!, receiver.unit, ...yard.tagged("line-shield-front-left").wires];
    },
    { also: ["ground-drop-too-great"] },
  ),
  planter(
    "D06",
    "amplifier's ground thinner than its feed",
    ["ground-thinner-than-feed"],
    amplifier,
    (yard, { amplifier: box }) => {
      const wire = yard.tagged("amplifier-ground").wires[0]!;
      yard.build.change(wire, { area_mm2: 6 });
      return [box, wire];
    },
    { also: ["wire-overloaded"] },
  ),
  planter(
    "D06",
    "lamp's ground thinner than its feed",
    ["ground-thinner-than-feed"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      const lead = yard.leads.find((one) => one.from === `${lamp}.−`)!;
      yard.build.change(lead.wires[0]!, { area_mm2: 1 });
      return [lamp, ...lead.wires];
    },
    BOTH,
  ),
  planter(
    "D07",
    "amplifier on the post past the sensor",
    ["ground-past-battery-sensor"],
    (yard) => {
      const job = amplifierJob(yard);
      yard.build.change(job.battery, { sensor: "on-minus" });
      return job;
    },
    (yard, { amplifier: box, stud, battery }) => {
      const wire = yard.tagged("amplifier-ground").wires[0]!;
      yard.move(wire, stud, `${battery}.−`);
      return [box, wire, battery];
    },
  ),
  planter(
    "D07",
    "through a ground that is the post",
    ["ground-past-battery-sensor"],
    (yard) => {
      const job = amplifierJob(yard);
      yard.build.change(job.battery, { sensor: "on-minus" });
      return job;
    },
    (yard, { amplifier: box, stud, battery }) => {
      yard.build.change(stud, { serves: "battery-post", where: "battery, minus" });
      return [box, stud, battery, ...yard.tagged("amplifier-ground").wires];
    },
  ),
  planter(
    "D08",
    "amplifier comes back by its line plugs",
    ["return-through-shield"],
    (yard) => {
      const job = amplifierJob(yard);
      yard.build.change(job.amplifier, { signalGround: "joined" });
      yard.build.change(yard.tagged("amplifier-ground").wires[0]!, { area_mm2: 35, length_m: 0.15 });
      return job;
    },
    (yard, { amplifier: box }) => [
      box,
      ...removeLead(yard, "amplifier-ground"),
      ...yard.all("line-shield-front-left").flatMap((lead) => lead.wires),
    ],
    { also: [...NO_GROUND] },
  ),
  planter(
    "D08",
    "camera comes back by its video shield",
    ["return-through-shield"],
    (yard) => {
      const job = cameraJob(yard);
      yard.build.change(job.camera, { signalGround: "joined" });
      return job;
    },
    (yard, { camera, tail }) => [camera, tail, ...removeLead(yard, "camera-ground")],
    { volts: [12, 24], also: [...NO_GROUND] },
  ),
  planter(
    "D09",
    "keys' ground on a stud",
    ["sense-ground-elsewhere"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      const lead = yard.tagged("sense-ground");
      const stud = yard.ground("door sill");
      yard.move(lead.wires[0]!, `${near}.6`, stud);
      return [near, vehicle, stud, ...lead.wires];
    },
    { also: ["required-lead-missing", "same-function-unjoined"] },
  ),
  planter(
    "D10",
    "parking-brake switch on an input that waits for volts",
    ["trigger-polarity-wrong"],
    (yard) => receiverJob(yard),
    (yard, { unit, vehicle }) => {
      yard.cavity(`${unit}.7`, { actsOn: "volts" });
      return [unit, vehicle, ...yard.tagged("parking-brake").wires];
    },
  ),
  planter(
    "D10",
    "reverse feed on an input that waits for ground",
    ["trigger-polarity-wrong"],
    cameraJob,
    (yard, { plug, cluster }) => {
      yard.cavity(`${plug}.3`, { actsOn: "ground" });
      return [plug, cluster, ...yard.tagged("trigger").wires];
    },
    BOTH,
  ),
  planter(
    "D11",
    "ground of the airbags",
    ["ground-of-safety-system"],
    lampJob,
    (yard, { grounds }) => {
      const ground = yard.pick(grounds);
      yard.build.change(ground, { serves: "safety-system" });
      return [ground];
    },
    BOTH,
  ),
  planter(
    "D11",
    "receiver grounded at an airbag's stud",
    ["ground-of-safety-system"],
    (yard) => receiverJob(yard),
    (yard, { vehicle }) => {
      const lead = yard.tagged("ground");
      const stud = yard.part("ground", "XE", {
        where: "airbag stud",
        surface: "bare-metal",
        serves: "safety-system",
      });
      yard.move(lead.wires[0]!, `${vehicle}.A8`, stud);
      return [stud, ...lead.wires];
    },
  ),
];
