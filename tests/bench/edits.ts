import { apply } from "../../src/graph/edits/apply.ts";
import type { Edit } from "../../src/graph/edits/edit.ts";
import type { Connector, Harness, PartId, Splice, Wire, WireId } from "../../src/graph/harness.ts";

/** What a person does one after the other, each time somewhere else; every one of them changes something. */
export const EDITS: Readonly<Record<string, (harness: Harness, round: number) => Edit>> = {
  "move an end": (harness, round) => {
    const wire = wireAt(harness, round);
    // Far enough away to be no neighbour of it.
    const other = wireAt(harness, round + 9);
    return changeWire(wire, { ends: [other.ends[0], wire.ends[1]] });
  },
  "add a wire": (harness, round) => {
    const wire = wireAt(harness, round);
    const id = `w:new-${round}` as WireId;
    return {
      kind: "add-wire",
      wire: { ...wire, id, designation: `WN${round}`, ends: [wire.ends[0], "loose"], runs: [] },
    };
  },
  "a size": (harness, round) => changeWire(wireAt(harness, round), { area_mm2: 1 + round / 100 }),
  "a length": (harness, round) => changeWire(wireAt(harness, round), { length_m: 1 + round / 100 }),
  "a rename": (harness, round) =>
    changePart(partOf(harness, round, "connector"), { designation: `Q${round}` }),
  "a function": (harness, round) => {
    const part = partOf(harness, round, "connector");
    const was = harness.parts[part] as Connector;
    const name = was.cavities[0]!.function === "lights" ? "reverse" : "lights";
    return { kind: "change-cavity", part, contact: 1, changes: { function: name } };
  },
  "a label": (harness, round) => changeWire(wireAt(harness, round), { label: `label ${round}` }),
  "a joint's cover": (harness, round) => {
    const part = partOf(harness, round, "splice");
    const was = harness.parts[part] as Splice;
    return changePart(part, { cover: was.cover === "tape" ? "adhesive-sleeve" : "tape" });
  },
  "a setting": (harness, round) => ({
    kind: "change-settings",
    changes: { ambient_degC: harness.settings.ambient_degC + 1 + (round % 2) },
  }),
};

/** @throws when an edit is refused, or changes nothing */
export function edited(harness: Harness, name: string, round: number): Harness {
  const result = apply(harness, EDITS[name]!(harness, round));
  if (!result.ok) throw new Error(`${name}: ${result.why}`);
  if (result.harness === harness) throw new Error(`${name} changes nothing`);
  return result.harness;
}

function wireAt(harness: Harness, round: number): Wire {
  const wires = Object.values(harness.wires);
  return wires[(round * 37 + 11) % wires.length]!;
}

function changeWire(wire: Wire, changes: Partial<Omit<Wire, "id">>): Edit {
  return { kind: "change-wire", wire: wire.id, changes };
}

function changePart(part: PartId, changes: Readonly<Record<string, unknown>>): Edit {
  return { kind: "change-part", part, changes };
}

function partOf(harness: Harness, round: number, kind: string): PartId {
  const parts = Object.values(harness.parts).filter((part) => part.kind === kind);
  return parts[(round * 7 + 3) % parts.length]!.id;
}
