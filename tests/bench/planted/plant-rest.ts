import type { TestRow, TestRowId } from "../../../src/graph/harness.ts";
import { makeCavity } from "../../../src/graph/make.ts";
import { Build } from "../../build.ts";
import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const receiver = (yard: Yard) => receiverJob(yard);

/** Puts a cavity of that function behind those that a connector has, and gives its name. */
function addCavity(yard: Yard, connector: string, name: string): string {
  const part = yard.partNamed(connector);
  if (part.kind !== "connector") throw new Error(`${connector} is no connector`);
  const made = makeCavity("Z1", { function: name, direction: "gives", use: "spare" });
  yard.build.change(connector, {
    cavities: [...part.cavities, made],
    rows: [...part.rows, [part.cavities.length + 1]],
  });
  return `${connector}.Z1`;
}

/** Section N of the reference: safety of people. */
export const PEOPLE: readonly Planter[] = [
  planter(
    "N01",
    "illumination taken from an airbag's lead",
    ["airbag-circuit-touched"],
    (yard) => {
      const job = receiverJob(yard);
      return { ...job, bag: addCavity(yard, job.vehicle, "airbag") };
    },
    (yard, { vehicle, bag, unit }) => {
      const lead = yard.tagged("illumination");
      yard.cavity(bag, { use: "expected" });
      yard.move(lead.wires[0]!, `${vehicle}.A6`, bag);
      return [vehicle, unit, ...lead.wires];
    },
    {
      volts: [12, 24],
      also: ["same-function-unjoined", "forbidden-circuit-tapped", "illumination-on-steady-feed"],
    },
  ),
  planter(
    "N01",
    "ground of the lamps joined to an airbag's lead",
    ["airbag-circuit-touched"],
    (yard) => {
      const job = lampJob(yard);
      return {
        ...job,
        vehicle: yard.vehicle(
          { "1": "airbag gives spare", "2": "airbag gives spare" },
          { name: "yellow plug" },
        ),
      };
    },
    (yard, { vehicle, lamps }) => [
      vehicle,
      yard.wire(`${lamps[0]}.−`, `${vehicle}.1`, { tag: "wrong", area_mm2: 4, length_m: 0.4, colour: "BK" }),
    ],
    {
      volts: [12, 24],
      also: ["ground-of-safety-system", "forbidden-circuit-tapped"],
    },
  ),
  planter(
    "N02",
    "lead on high voltage",
    ["high-voltage-touched"],
    (yard) => {
      const job = lampJob(yard);
      yard.build.settings({ vehicle: { highVoltage: "yes", lamps: "plain" } });
      return { ...job, vehicle: yard.vehicle({ "1": "high-voltage gives spare" }, { name: "orange plug" }) };
    },
    (yard, { vehicle, lamps }) => [
      vehicle,
      yard.wire(`${lamps[0]}.−`, `${vehicle}.1`, { tag: "wrong", area_mm2: 4, length_m: 0.4 }),
    ],
    {
      volts: [12, 24],
      also: ["forbidden-circuit-tapped"],
    },
  ),
  planter(
    "N02",
    "loom beside orange cables",
    ["high-voltage-near"],
    lampJob,
    (yard, { outside }) => {
      yard.changeRun(outside, { near: ["high-voltage"] });
      return yard.tagged("lamp-out").wires;
    },
    BOTH,
  ),
  planter("N02", "box beside orange cables", ["high-voltage-near"], cameraJob, (yard, { camera }) => {
    yard.build.change(camera, { near: ["high-voltage"] });
    return [camera];
  }),
  planter(
    "N06",
    "display in the driver's sight",
    ["unit-in-drivers-sight"],
    cameraJob,
    (yard, { display }) => {
      yard.build.change(display, { near: ["drivers-sight"] });
      return [display];
    },
    BOTH,
  ),
  planter(
    "N06",
    "amplifier where knees strike",
    ["unit-near-knees-or-heads"],
    (yard) => amplifierJob(yard),
    (yard, { amplifier }) => {
      yard.build.change(amplifier, { near: ["knees-or-heads"] });
      return [amplifier];
    },
  ),
  planter(
    "L08",
    "display where an airbag unfolds",
    ["airbag-in-the-way"],
    cameraJob,
    (yard, { display }) => {
      yard.build.change(display, { near: ["airbag"] });
      return [display];
    },
    BOTH,
  ),
];

function record(yard: Yard, known: Partial<TestRow>): void {
  const id = "t:1" as TestRowId;
  const row: TestRow = {
    id,
    kind: "continuity",
    at: [],
    expected: "at most 0.5",
    reading: "0.2",
    unit: "ohm",
    passed: true,
    by: "fitter",
    date: "2026-01-05",
    revision: "A",
    ...known,
  };
  yard.build = new Build({ ...yard.harness, testRecord: { [id]: row } });
}

/** Section O of the reference: faults of the drawing itself. */
export const DRAWING: readonly Planter[] = [
  planter("O02", "a run measured from nowhere", ["length-without-datum"], cameraJob, (yard, { loom }) => {
    yard.changeRun(loom, yard.pick([{ from: "" }, { to: "" }, { from: "", to: "" }]));
    return [];
  }),
  planter(
    "O03",
    "ticked without a reading",
    ["tested-without-saying"],
    (yard) => {
      const job = receiverJob(yard);
      record(yard, { at: [yard.build.at(`${job.unit}.1`), yard.build.at(`${job.vehicle}.A4`)] });
      return job;
    },
    (yard, { unit, vehicle }) => {
      record(yard, { at: [yard.build.at(`${unit}.1`), yard.build.at(`${vehicle}.A4`)], reading: "" });
      return [];
    },
  ),
  planter(
    "O04",
    "two fuses of one name",
    ["duplicate-designation"],
    (yard) => boardJob(yard, 4),
    (yard, { circuits }) => {
      const [one, two] = [circuits[0]!.fuse, circuits[1]!.fuse];
      yard.build.change(two, { designation: one });
      return [one];
    },
  ),
  planter("O04", "two wires of one name", ["duplicate-designation"], receiver, (yard) => {
    const [one, two] = [yard.tagged("speed").wires[0]!, yard.tagged("illumination").wires[0]!];
    yard.build.change(two, { designation: one });
    return [one];
  }),
  planter("O04", "two wires of one label", ["duplicate-label"], receiver, (yard) => {
    const wires = [yard.tagged("speed").wires[0]!, yard.tagged("illumination").wires[0]!];
    for (const wire of wires) yard.build.change(wire, { label: "DASH 7" });
    return wires;
  }),
  planter("O04", "a label that is another wire's name", ["duplicate-label"], receiver, (yard) => {
    const [one, two] = [yard.tagged("speed").wires[0]!, yard.tagged("constant").wires[0]!];
    yard.build.change(one, { label: two });
    return [one, two];
  }),
  planter("O06", "chart without its source", ["chart-without-source"], receiver, (yard, { vehicle }) => {
    yard.build.change(vehicle, { chart: { title: "", edition: "", date: "", measured: false } });
    return [vehicle];
  }),
  planter(
    "O07",
    "drawn anew after the test",
    ["changed-after-test"],
    (yard) => {
      const job = receiverJob(yard);
      record(yard, { at: [yard.build.at(`${job.unit}.1`)] });
      return job;
    },
    (yard) => {
      yard.build = new Build({ ...yard.harness, titleBlock: { ...yard.harness.titleBlock, revision: "B" } });
      yard.build.change(yard.tagged("constant").wires[0]!, { area_mm2: 4 });
      return [];
    },
  ),
];
