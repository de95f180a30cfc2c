import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const THICK = ["fuse-bigger-than-wire", "branch-thinner-than-fuse"];
const board = (yard: Yard) => boardJob(yard, 5);
const amplifier = (yard: Yard) => amplifierJob(yard);

/** A lamp of that current from a contact, with an own ground; no fuse between. */
function lampFrom(
  yard: Yard,
  contact: string,
  current_A: number,
  area_mm2: number,
  length_m = 1,
): readonly string[] {
  const load = yard.part("load", "E", {
    type: "lamp",
    function: "interior-lamp",
    current_A,
    behaviour: "filament",
    voltage_V: yard.range(),
  });
  const wire = yard.wire(contact, `${load}.+`, { tag: "extra", area_mm2, length_m });
  yard.wire(`${load}.−`, yard.ground(), {
    tag: "extra",
    area_mm2: Math.max(1, area_mm2),
    length_m: 0.4,
    colour: "BK",
  });
  return [load, wire];
}

/** Section C of the reference: protection and conductor size. */
export const PROTECTION: readonly Planter[] = [
  planter(
    "C01",
    "lamps' main fuse left out",
    ["no-fuse"],
    lampJob,
    (yard, { main, battery }) => {
      const wire = yard.tagged("lamp-main").wires[0]!;
      yard.move(wire, `${main}.2`, `${main}.1`);
      return [wire, battery, main];
    },
    { volts: [12, 24], also: ["fuse-too-far"] },
  ),
  planter(
    "C01",
    "amplifier straight to the battery",
    ["no-fuse"],
    amplifier,
    (yard, { fuse, battery, amplifier: box }) => {
      const wire = yard.tagged("amplifier-feed").wires[0]!;
      yard.move(wire, `${fuse}.2`, `${battery}.+`);
      return [wire, battery, box];
    },
  ),
  planter(
    "C01",
    "lamp by a switch from the battery",
    ["no-fuse"],
    board,
    (yard, { battery }) => {
      const hand = yard.part("switch", "S", { operatedBy: "hand", rating_A: 10 });
      const wire = yard.wire(`${battery}.+`, `${hand}.1`, { tag: "extra", area_mm2: 1.5, length_m: 1 });
      return [wire, battery, hand, ...lampFrom(yard, `${hand}.2`, 1, 1.5)];
    },
    BOTH,
  ),
  planter(
    "C01",
    "the vehicle's lead has no fuse behind it",
    ["no-fuse"],
    (yard) => receiverJob(yard),
    (yard, { vehicle, unit }) => {
      yard.cavity(`${vehicle}.A4`, { fuse_A: null });
      return [vehicle, unit, ...yard.tagged("constant").wires];
    },
  ),
  planter(
    "C02",
    "fuse two and a half metres off",
    ["fuse-too-far"],
    lampJob,
    (yard, { main, battery }) => {
      const wire = yard.tagged("battery-stub").wires[0]!;
      yard.build.change(wire, { length_m: 2.5 });
      return [wire, main, battery];
    },
    BOTH,
  ),
  planter("C02", "fuse 0.6 m off, bare", ["fuse-too-far"], amplifier, (yard, { fuse, battery }) => {
    const wire = yard.tagged("battery-stub").wires[0]!;
    yard.build.change(wire, { length_m: 0.6 });
    return [wire, fuse, battery];
  }),
  planter(
    "C02",
    "fuse 2.4 m off in a boat",
    ["fuse-too-far"],
    (yard) => {
      yard.build.rules({ profile: "boat" });
      return boardJob(yard, 4, { boat: true });
    },
    (yard, { main, battery }) => {
      const wire = yard.tagged("battery-stub").wires[0]!;
      yard.build.change(wire, { length_m: 2.4 });
      return [wire, main, battery];
    },
    BOTH,
  ),
  planter(
    "C03",
    "lamps' fuse raised",
    THICK,
    lampJob,
    (yard, { main }) => {
      yard.build.change(main, { rating_A: 150 });
      return [
        main,
        ...yard.all("lamp-main").flatMap((lead) => lead.wires),
        ...yard.all("lamp-out").flatMap((lead) => lead.wires),
      ];
    },
    BOTH,
  ),
  planter(
    "C03",
    "camera fuse raised",
    THICK,
    cameraJob,
    (yard, { fuse, board }) => {
      yard.cavity(`${board}.1`, { fuse_A: 50 });
      yard.build.change(fuse, { rating_A: 40 });
      return [fuse, ...yard.tagged("camera-feed").wires];
    },
    { volts: [12, 24], also: ["tapped-circuit-overloaded"] },
  ),
  planter(
    "C03",
    "thin wire behind the amplifier's fuse",
    THICK,
    amplifier,
    (yard, { fuse }) => {
      const wire = yard.tagged("amplifier-feed").wires[0]!;
      yard.build.change(wire, { area_mm2: 1 });
      return [fuse, wire];
    },
    { also: ["wire-overloaded", "drop-too-great"] },
  ),
  planter(
    "C03",
    "board circuit's wire too thin behind a joint",
    THICK,
    board,
    (yard, { circuits }) => {
      const { fuse, load } = yard.pick(circuits);
      yard.build.change(fuse, { rating_A: 25 });
      const lead = yard.leads.find((one) => one.to === `${load}.+`)!;
      const wire = lead.wires.at(-1)!;
      yard.build.change(wire, { area_mm2: 0.75 });
      return [fuse, wire];
    },
    { volts: [12, 24], also: ["wire-overloaded", "drop-too-great"] },
  ),
  planter(
    "C04",
    "lamps' fuse too small",
    ["fuse-too-small"],
    lampJob,
    (yard, { main }) => {
      yard.build.change(main, { rating_A: 4 });
      return [main];
    },
    BOTH,
  ),
  planter(
    "C04",
    "amplifier's fuse a little too small",
    ["fuse-too-small"],
    (yard) => amplifierJob(yard, 30),
    (yard, { fuse }) => {
      yard.build.change(fuse, { rating_A: 20 });
      return [fuse];
    },
  ),
  planter(
    "C04",
    "amplifier's fuse half too small",
    ["fuse-too-small"],
    (yard) => amplifierJob(yard, 40),
    (yard, { fuse }) => {
      yard.build.change(fuse, { rating_A: 20 });
      return [fuse];
    },
  ),
  planter(
    "C05",
    "a second fuse beside the first",
    ["fuses-in-parallel"],
    lampJob,
    (yard, { main }) => {
      const second = yard.part("fuse", "F", { rating_A: 15, form: "regular", holder: "own" });
      yard.wire(`${main}.1`, `${second}.1`, { tag: "beside", area_mm2: 4, length_m: 0.1 });
      yard.wire(`${main}.2`, `${second}.2`, { tag: "beside", area_mm2: 4, length_m: 0.1 });
      return [main, second];
    },
    BOTH,
  ),
  planter(
    "C05",
    "two fuses side by side behind joints",
    ["fuses-in-parallel"],
    board,
    (yard, { block, circuits }) => {
      const { fuse } = yard.pick(circuits);
      const second = yard.part("fuse", "F", { rating_A: 5, form: "regular", holder: "own" });
      const joint = yard.joint("crimp", 2.5);
      yard.wire(`${block}.2`, `${second}.1`, { tag: "beside", area_mm2: 35, length_m: 0.1 });
      yard.wire(`${second}.2`, `${joint}.1`, { tag: "beside", area_mm2: 2.5, length_m: 0.1 });
      yard.wire(`${joint}.2`, `${fuse}.2`, { tag: "beside", area_mm2: 2.5, length_m: 0.1 });
      return [fuse, second];
    },
    BOTH,
  ),
  planter(
    "C06",
    "thin branch from a block",
    THICK,
    board,
    (yard, { block, main }) => [block, main, ...lampFrom(yard, `${block}.2`, 0.5, 0.75)],
    BOTH,
  ),
  planter(
    "C06",
    "coil branch without its fuse",
    THICK,
    lampJob,
    (yard, { coilFuse, main }) => {
      yard.build.change(main, { rating_A: 30 });
      const wire = yard.tagged("coil-feed").wires[0]!;
      yard.build.change(wire, { area_mm2: 0.5 });
      yard.move(wire, `${coilFuse}.2`, `${coilFuse}.1`);
      return [main, wire];
    },
    BOTH,
  ),
  planter(
    "C07",
    "fuse in a unit's ground lead",
    ["fuse-in-negative"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      const fuse = yard.part("fuse", "F", { rating_A: 10, form: "regular", holder: "own" });
      const lead = yard.leads.find((one) => one.from === `${lamp}.−`)!;
      yard.move(lead.wires[0]!, `${lamp}.−`, `${fuse}.2`);
      yard.wire(`${lamp}.−`, `${fuse}.1`, { tag: "ground", area_mm2: 4, length_m: 0.1, colour: "BK" });
      return [fuse, lamp];
    },
    BOTH,
  ),
  planter(
    "C07",
    "straight to the posts with the plus fused alone, where both are asked for",
    ["negative-to-post-unfused"],
    (yard) => {
      const job = amplifierJob(yard);
      yard.build.rules({ negativeFuse: "both-at-posts" });
      return job;
    },
    (yard, { amplifier: box, stud, battery }) => {
      const wire = yard.tagged("amplifier-ground").wires[0]!;
      yard.move(wire, stud, `${battery}.−`);
      return [box, wire, battery];
    },
  ),
  planter(
    "C08",
    "heater on thin wire",
    ["wire-overloaded", ...THICK],
    board,
    (yard, { block }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 25, form: "regular", holder: "own" });
      const stub = yard.wire(`${block}.2`, `${fuse}.1`, { tag: "extra", area_mm2: 35, length_m: 0.1 });
      return [fuse, stub, ...lampFrom(yard, `${fuse}.2`, 18, 0.5, 1)];
    },
    { volts: [12, 24], also: ["drop-too-great"] },
  ),
  planter(
    "C08",
    "ground lead of an amplifier on thin wire",
    ["wire-overloaded", "ground-thinner-than-feed"],
    amplifier,
    (yard, { amplifier: box }) => {
      const wire = yard.tagged("amplifier-ground").wires[0]!;
      yard.build.change(wire, { area_mm2: 1 });
      return [box, wire];
    },
    { also: ["drop-too-great"] },
  ),
  planter(
    "C09",
    "far lamps on a thin wire",
    ["drop-too-great"],
    lampJob,
    (yard, { lamps }) => {
      const wire = yard.tagged("lamp-out").wires[0]!;
      yard.build.change(wire, { length_m: 150, area_mm2: 2.5, runs: [] });
      return [wire, ...lamps];
    },
    BOTH,
  ),
  planter(
    "C09",
    "lost on the ground side",
    ["drop-too-great", "ground-drop-too-great"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      const lead = yard.leads.find((one) => one.from === `${lamp}.−`)!;
      yard.build.change(lead.wires[0]!, { length_m: 80, area_mm2: 1 });
      return [lamp, ...lead.wires];
    },
    { volts: [12, 24], also: ["ground-thinner-than-feed"] },
  ),
  planter(
    "C10",
    "a power lead of unknown size",
    ["wire-size-unknown"],
    lampJob,
    (yard) => {
      const wire = yard.tagged(yard.pick(["lamp-main", "lamp-out", "lamp"])).wires[0]!;
      yard.build.change(wire, { area_mm2: "unknown" });
      return [wire];
    },
    BOTH,
  ),
  planter(
    "C11",
    "lead too thin to handle",
    ["wire-too-small-to-handle"],
    board,
    (yard, { block }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 3, form: "regular", holder: "own" });
      const stub = yard.wire(`${block}.2`, `${fuse}.1`, { tag: "extra", area_mm2: 35, length_m: 0.1 });
      return [fuse, stub, ...lampFrom(yard, `${fuse}.2`, 1.5, 0.35, 1)];
    },
    { also: ["drop-too-great"] },
  ),
  planter(
    "C12",
    "battery's live post without a boot",
    ["live-stud-bare"],
    lampJob,
    (yard, { battery }) => {
      yard.build.change(battery, { cover: "none" });
      return [battery];
    },
    BOTH,
  ),
  planter(
    "C13",
    "solid wire",
    ["solid-wire"],
    (yard) => receiverJob(yard),
    (yard) => {
      const wire = yard.pick(yard.pick(yard.leads).wires);
      yard.build.change(wire, { strands: "solid" });
      return [wire];
    },
  ),
];
