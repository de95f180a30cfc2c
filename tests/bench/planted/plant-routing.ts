import { type Planter, planter } from "./planter.ts";
import { lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;

type RunChange = Parameters<Yard["changeRun"]>[1];
const onRun = (entry: string, name: string, rules: readonly string[], changes: RunChange) =>
  planter(
    entry,
    name,
    rules,
    cameraJob,
    (yard, { loom }) => {
      yard.changeRun(loom, changes);
      const id = yard.runId(loom);
      return Object.values(yard.harness.wires)
        .filter((wire) => wire.runs.includes(id))
        .map((wire) => wire.designation);
    },
    BOTH,
  );
const outside = (entry: string, name: string, rules: readonly string[], changes: RunChange) =>
  planter(
    entry,
    name,
    rules,
    lampJob,
    (yard, job) => {
      yard.changeRun(job.outside, changes);
      return yard.tagged("lamp-out").wires;
    },
    BOTH,
  );

/** Section L of the reference: routing. */
export const ROUTING: readonly Planter[] = [
  outside("L01", "through a crossmember bare", ["hole-without-grommet"], {
    passes: [{ what: "crossmember", protection: "none" }],
  }),
  onRun("L01", "through a pillar bare", ["hole-without-grommet"], {
    passes: [{ what: "hole in the pillar", protection: "none" }],
    hinge: "none",
  }),
  onRun("L02", "bends across the hinge", ["loom-bends-across-hinge"], { hinge: "bends-across", passes: [] }),
  outside("L03", "along the exhaust", ["loom-near-heat", "insulation-too-cool-for-engine-bay"], {
    near: ["heat"],
    covering: "none",
  }),
  outside("L03", "along ignition leads", ["loom-near-ignition"], { near: ["ignition"], covering: "none" }),
  onRun("L03", "under the pedals", ["loom-near-moving-parts"], { near: ["pedals"] }),
  onRun("L03", "on the seat rails", ["loom-near-moving-parts"], { near: ["seat-rails"] }),
  outside("L03", "beside the fan", ["loom-near-moving-parts"], { near: ["moving-parts"], covering: "none" }),
  outside("L04", "clips 0.9 m apart", ["loom-unsupported"], { support_m: 0.9 }),
  planter(
    "L05",
    "wire shorter than its run",
    ["wire-shorter-than-its-runs"],
    cameraJob,
    (yard) => {
      const wire = yard.tagged("camera-feed").wires[0]!;
      yard.build.change(wire, { length_m: 5.2 });
      return [wire];
    },
    BOTH,
  ),
  planter("L05", "wire half as long again", ["wire-much-longer-than-its-runs"], lampJob, (yard) => {
    const wire = yard.tagged("lamp-out").wires[0]!;
    yard.build.change(wire, { length_m: 8.5 });
    return [wire];
  }),
  outside("L06", "no drip loop", ["no-drip-loop"], { dripLoop: "no" }),
  onRun("L07", "under the trim's screws", ["loom-under-trim-screws"], { near: ["trim-screws"] }),
  onRun("L08", "before an airbag", ["airbag-in-the-way"], { near: ["airbag"] }),
  onRun("L09", "taped all the way", ["loom-taped-all-round"], { covering: "cloth-tape" }),
  onRun("L10", "bent sharply", ["bend-too-tight"], { bend_mm: 5 }),
  outside("L11", "drilled blind", ["drilled-blind"], { drilled: "blind" }),
  planter(
    "L12",
    "feed and ground of a box by two ways",
    ["feed-and-ground-apart"],
    (yard) => {
      const [near, far] = [yard.run({ length_m: 3 }), yard.run({ length_m: 3 })];
      const vehicle = yard.vehicle({ "1": "switched-feed 1.5 fuse:7.5", "2": "ground 1.5" });
      const box = yard.name("A");
      yard.build.module(box, {
        role: "other",
        outputs: "none",
        wakes: "by-lead",
        sleeps: "yes",
        voltage_V: yard.range(),
        rows: { B: "switched-feed 1 2A", G: "ground 1" },
      });
      const one = yard.wire(`${vehicle}.1`, `${box}.B`, {
        tag: "far",
        area_mm2: 2.5,
        length_m: 3.2,
        runs: [near],
      });
      const two = yard.wire(`${box}.G`, `${vehicle}.2`, {
        tag: "far",
        area_mm2: 2.5,
        length_m: 3.2,
        runs: [near],
        colour: "BK",
      });
      return { far, box, one, two };
    },
    (yard, { far, box, one, two }) => {
      yard.build.change(two, { runs: [yard.runId(far)] });
      return [box, one, two];
    },
    BOTH,
  ),
  planter(
    "L12",
    "feed and ground by two ways",
    ["feed-and-ground-apart"],
    (yard) => {
      const job = lampJob(yard);
      const [near, far] = [yard.run({ length_m: 3 }), yard.run({ length_m: 3 })];
      return { ...job, near, far };
    },
    (yard, { near, far }) => {
      const vehicle = yard.vehicle({ "1": "switched-feed 1.5 fuse:7.5", "2": "ground 1.5" });
      const load = yard.part("load", "E", {
        type: "other",
        function: "switched-feed",
        current_A: 2,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      const one = yard.wire(`${vehicle}.1`, `${load}.+`, {
        tag: "far",
        area_mm2: 2.5,
        length_m: 3.2,
        runs: [near],
      });
      const two = yard.wire(`${load}.−`, `${vehicle}.2`, {
        tag: "far",
        area_mm2: 2.5,
        length_m: 3.2,
        runs: [far],
        colour: "BK",
      });
      return [load, one, two];
    },
    BOTH,
  ),
];
