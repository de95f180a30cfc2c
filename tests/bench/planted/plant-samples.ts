import { readFileSync } from "node:fs";
import { SAMPLE_LIST } from "../../../samples/list.ts";
import type { Harness, Part, Wire } from "../../../src/graph/harness.ts";
import { parse } from "../../../src/graph/parse/parse.ts";
import { type Planter, planter } from "./planter.ts";
import type { Yard } from "./yard.ts";

const remembered = new Map<string, Harness>();

/** The samples that are meant to be sound. */
export const SOUND_SAMPLES = SAMPLE_LIST.map(({ id }) => id).filter((id) => !id.endsWith("faults"));

export function sample(id: string): Harness {
  let harness = remembered.get(id);
  if (!harness) {
    const url = new URL(`../../../samples/${id}.harness.json`, import.meta.url);
    const read = parse(readFileSync(url, "utf8"));
    if (!read.ok) throw new Error(`${id} cannot be read`);
    harness = read.harness;
    remembered.set(id, harness);
  }
  return harness;
}

const parts = <K extends Part["kind"]>(yard: Yard, kind: K) =>
  Object.values(yard.harness.parts).filter((part): part is Extract<Part, { kind: K }> => part.kind === kind);
const kindAt = (yard: Yard, wire: Wire, side: 0 | 1) => {
  const end = wire.ends[side];
  return end === "loose" ? null : yard.harness.parts[end.part]!.kind;
};

/** One planter for each sample that has what it takes. */
function onSamples(
  entry: string,
  name: string,
  rules: readonly string[],
  spoil: (yard: Yard) => readonly string[] | null,
  also: readonly string[] = [],
): readonly Planter[] {
  return SOUND_SAMPLES.map((id) => {
    const stand = (yard: Yard) => yard.takeOver(sample(id));
    const made = planter(entry, `${name}, in ${id}`, rules, stand, (yard) => spoil(yard) ?? [], { also });
    let fits = true;
    try {
      fits = made.plant(1).where.length > 0;
    } catch {
      fits = false;
    }
    return fits ? made : null;
  }).filter((one): one is Planter => one !== null);
}

/** Faults of every section that the samples can have. */
export const SAMPLES: readonly Planter[] = [
  ...onSamples("A01", "a lead hangs", ["loose-lead", "loose-live-lead"], (yard) => {
    const wires = Object.values(yard.harness.wires).filter(
      (wire) => kindAt(yard, wire, 0) !== "cap" && kindAt(yard, wire, 1) !== "cap",
    );
    const wire = yard.pick(wires);
    const other = wire.ends.map((end) => yard.nameOfEnd(end));
    yard.loosen(wire.designation, 1);
    return [wire.designation, ...other];
  }),
  ...onSamples("K02", "a joint only twisted", ["twisted-joint"], (yard) => {
    const joints = parts(yard, "splice");
    if (!joints.length) return null;
    const joint = yard.pick(joints);
    yard.build.change(joint.designation, { method: "twisted", cover: "tape" });
    return [joint.designation];
  }),
  ...onSamples("C03", "a fuse of 300 A", ["fuse-bigger-than-wire", "branch-thinner-than-fuse"], (yard) => {
    // The vehicle's own fuse would protect what stands behind it.
    const fed = Object.values(yard.harness.wires).filter((wire) =>
      wire.ends.some((_end, side) => kindAt(yard, wire, side as 0 | 1) === "supply"),
    );
    const fuses = parts(yard, "fuse").filter((fuse) =>
      fed.some((wire) => wire.ends.some((end) => end !== "loose" && end.part === fuse.id)),
    );
    if (!fuses.length) return null;
    const fuse = yard.pick(fuses);
    yard.build.change(fuse.designation, { rating_A: 300 });
    const wires = Object.values(yard.harness.wires).filter((wire) =>
      wire.ends.some((end) => end !== "loose" && end.part === fuse.id),
    );
    return [fuse.designation, ...wires.map((wire) => wire.designation)];
  }),
  ...onSamples("D03", "a ground on paint", ["ground-on-poor-metal"], (yard) => {
    const grounds = parts(yard, "ground");
    if (!grounds.length) return null;
    const ground = yard.pick(grounds);
    yard.build.change(ground.designation, { surface: "painted" });
    return [ground.designation];
  }),
  ...onSamples("D11", "a ground of a safety system", ["ground-of-safety-system"], (yard) => {
    // What the battery's own strap lands on is the vehicle's affair.
    const grounds = parts(yard, "ground").filter((ground) => {
      const wires = yard.wiresAt(ground.designation);
      return (
        wires.length > 0 &&
        !wires.some((wire) => kindAt(yard, wire, 0) === "supply" || kindAt(yard, wire, 1) === "supply")
      );
    });
    if (!grounds.length) return null;
    const ground = yard.pick(grounds);
    yard.build.change(ground.designation, { serves: "safety-system" });
    return [ground.designation];
  }),
  ...onSamples("C13", "a solid wire", ["solid-wire"], (yard) => {
    // The core of a coaxial cable may be one strand.
    const cores = new Set(
      Object.values(yard.harness.cables).flatMap((cable) => (cable.kind === "coax" ? cable.wires : [])),
    );
    const wire = yard.pick(Object.values(yard.harness.wires).filter((one) => !cores.has(one.id)));
    yard.build.change(wire.designation, { strands: "solid" });
    return [wire.designation];
  }),
  ...onSamples("O04", "one designation twice", ["duplicate-designation"], (yard) => {
    const [one, two] = Object.values(yard.harness.wires);
    yard.build.change(two!.designation, { designation: one!.designation });
    return [one!.designation];
  }),
  ...onSamples("D01", "a load without its ground", ["unit-without-ground"], (yard) => {
    const loads = parts(yard, "load");
    if (!loads.length) return null;
    const load = yard.pick(loads);
    const wires = yard.wiresAt(`${load.designation}.−`);
    for (const wire of wires) yard.remove(wire.designation);
    return wires.length ? [load.designation] : null;
  }),
  ...onSamples("C12", "the battery's post bare", ["live-stud-bare"], (yard) => {
    const supplies = parts(yard, "supply");
    if (!supplies.length) return null;
    yard.build.change(supplies[0]!.designation, { cover: "none" });
    return [supplies[0]!.designation];
  }),
  ...onSamples("L01", "through metal bare", ["hole-without-grommet"], (yard) => {
    const runs = Object.values(yard.harness.runs);
    if (!runs.length) return null;
    const run = yard.pick(runs);
    yard.changeRun(run.designation, { passes: [{ what: "bulkhead", protection: "none" }] });
    const wires = Object.values(yard.harness.wires).filter((wire) => wire.runs.includes(run.id));
    return wires.map((wire) => wire.designation);
  }),
];
