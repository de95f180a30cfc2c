import type { z } from "zod";
import { contactsOf } from "../contacts.ts";
import type { End, Harness, Part, PartId, Path, Place, Wire, WireId } from "../harness.ts";
import * as schema from "../schema/harness.ts";
import { part as partSchema } from "../schema/parts.ts";
import { type Edit, type Refused, refused } from "./edit.ts";

export type Applied = { readonly ok: true; readonly harness: Harness };

/**
 * Applies one edit. The harness given is not changed; what the edit did not touch is shared (`===`).
 * @returns the new harness, or why the edit cannot be made, in words for the person who asked for it
 */
export function apply(harness: Harness, edit: Edit): Applied | Refused {
  switch (edit.kind) {
    case "add-part": {
      if (harness.parts[edit.part.id]) return refused(`there is already a part ${edit.part.id}`);
      const part = checked(partSchema, edit.part);
      if (!part.ok) return part;
      const next = { ...harness, parts: { ...harness.parts, [edit.part.id]: part.value as Part } };
      return { ok: true, harness: edit.place ? withPlace(next, edit.part.id, edit.place) : next };
    }
    case "change-part":
      return changePart(harness, edit.part, edit.changes);
    case "change-cavity": {
      const part = harness.parts[edit.part];
      if (part?.kind !== "connector" && part?.kind !== "module")
        return refused("only a connector or a module has cavities");
      if (!part.cavities[edit.contact - 1])
        return refused(`${part.designation} has no cavity ${edit.contact}`);
      const cavities = part.cavities.map((cavity, index) =>
        index === edit.contact - 1 ? { ...cavity, ...edit.changes } : cavity,
      );
      return changePart(harness, edit.part, { cavities });
    }
    case "remove":
      return { ok: true, harness: remove(harness, new Set(edit.parts), new Set(edit.wires)) };
    case "add-wire": {
      if (harness.wires[edit.wire.id]) return refused(`there is already a wire ${edit.wire.id}`);
      return putWire(harness, edit.wire);
    }
    case "change-wire": {
      const wire = harness.wires[edit.wire];
      if (!wire) return refused(`there is no wire ${edit.wire}`);
      return putWire(harness, { ...wire, ...edit.changes });
    }
    case "put-entry": {
      const entry = checked(schema.sections[edit.section], edit.entry);
      if (!entry.ok) return entry;
      const section = { ...harness[edit.section], [edit.entry.id]: entry.value };
      return { ok: true, harness: { ...harness, [edit.section]: section } as Harness };
    }
    case "drop-entry": {
      const section = harness[edit.section] as Readonly<Record<string, unknown>>;
      if (!(edit.id in section)) return refused(`there is no ${edit.id} to remove`);
      const next = { ...harness, [edit.section]: without(section, new Set([edit.id])) } as Harness;
      return { ok: true, harness: edit.section === "runs" ? leaveRun(next, edit.id) : next };
    }
    case "change-settings": {
      const settings = checked(schema.settings, { ...harness.settings, ...edit.changes });
      return settings.ok ? { ok: true, harness: { ...harness, settings: settings.value } } : settings;
    }
    case "change-title-block": {
      const titleBlock = checked(schema.titleBlock, { ...harness.titleBlock, ...edit.changes });
      return titleBlock.ok ? { ok: true, harness: { ...harness, titleBlock: titleBlock.value } } : titleBlock;
    }
    case "lay-out":
      return { ok: true, harness: layOut(harness, edit.places, edit.paths) };
    case "group":
      return applyAll(harness, edit.edits);
  }
}

/** All of the edits in order, or none of them. */
export function applyAll(harness: Harness, edits: readonly Edit[]): Applied | Refused {
  let current = harness;
  for (const edit of edits) {
    const result = apply(current, edit);
    if (!result.ok) return result;
    current = result.harness;
  }
  return { ok: true, harness: current };
}

function checked<S extends z.ZodType>(
  shape: S,
  value: unknown,
): { readonly ok: true; readonly value: z.infer<S> } | Refused {
  const result = shape.safeParse(value);
  if (result.success) return { ok: true, value: result.data };
  const issue = result.error.issues[0];
  return refused(
    issue ? `${issue.path.join(" ") || "value"}: ${issue.message}` : "that value is not possible",
  );
}

function changePart(
  harness: Harness,
  id: PartId,
  changes: Readonly<Record<string, unknown>>,
): Applied | Refused {
  const part = harness.parts[id];
  if (!part) return refused(`there is no part ${id}`);
  if ("id" in changes || "kind" in changes) return refused("a part keeps its id and its kind");
  const result = checked(partSchema, { ...part, ...changes });
  if (!result.ok) return result;
  const changed = result.value as Part;
  let next: Harness = { ...harness, parts: { ...harness.parts, [id]: changed } };
  // A housing that lost cavities leaves their wires loose rather than pointing at nothing.
  const count = contactsOf(changed).length;
  if (count < contactsOf(part).length) next = loosen(next, (end) => end.part === id && end.contact > count);
  return { ok: true, harness: next };
}

function endProblem(harness: Harness, end: End): string | null {
  if (end === "loose") return null;
  const part = harness.parts[end.part];
  if (!part) return `there is no part ${end.part}`;
  if (!contactsOf(part)[end.contact - 1]) return `${part.designation} has no contact ${end.contact}`;
  return null;
}

function putWire(harness: Harness, wire: Wire): Applied | Refused {
  const result = checked(schema.wire, wire);
  if (!result.ok) return result;
  for (const end of wire.ends) {
    const why = endProblem(harness, end);
    if (why) return refused(why);
  }
  const [a, b] = wire.ends;
  if (a !== "loose" && b !== "loose" && a.part === b.part && a.contact === b.contact) {
    return refused("both ends of the wire would be on one contact");
  }
  return { ok: true, harness: { ...harness, wires: { ...harness.wires, [wire.id]: result.value as Wire } } };
}

/** Wires whose end answers the question become loose there; a wire with nothing left to hold it goes. */
function loosen(harness: Harness, gone: (end: Exclude<End, "loose">) => boolean): Harness {
  const wires: Record<WireId, Wire> = {};
  const lost = new Set<string>();
  let touched = false;
  for (const wire of Object.values(harness.wires)) {
    const ends = wire.ends.map((end) => (end !== "loose" && gone(end) ? "loose" : end)) as [End, End];
    if (ends[0] === wire.ends[0] && ends[1] === wire.ends[1]) {
      wires[wire.id] = wire;
      continue;
    }
    touched = true;
    if (ends[0] === "loose" && ends[1] === "loose") lost.add(wire.id);
    else wires[wire.id] = { ...wire, ends };
  }
  if (!touched) return harness;
  return lost.size ? forgetWires({ ...harness, wires }, lost) : { ...harness, wires };
}

function remove(harness: Harness, parts: ReadonlySet<PartId>, wires: ReadonlySet<WireId>): Harness {
  let next = harness;
  if (wires.size) next = forgetWires({ ...next, wires: without(next.wires, wires) }, wires);
  if (!parts.size) return next;
  const left: Record<PartId, Part> = {};
  for (const part of Object.values(next.parts)) {
    if (parts.has(part.id)) continue;
    left[part.id] = part.kind === "connector" ? withoutMentions(part, parts) : part;
  }
  next = {
    ...next,
    parts: left,
    layout: { ...next.layout, places: without(next.layout.places, parts) },
  };
  return loosen(next, (end) => parts.has(end.part));
}

function withoutMentions(part: Extract<Part, { kind: "connector" }>, gone: ReadonlySet<PartId>): Part {
  const mate = part.matedWith && gone.has(part.matedWith);
  const module = part.belongsTo.module && gone.has(part.belongsTo.module);
  if (!mate && !module) return part;
  return {
    ...part,
    matedWith: mate ? null : part.matedWith,
    belongsTo: module ? { ...part.belongsTo, module: null } : part.belongsTo,
  };
}

function leaveRun(harness: Harness, run: string): Harness {
  const wires = Object.values(harness.wires).map((wire) =>
    wire.runs.some((id) => id === run) ? { ...wire, runs: wire.runs.filter((id) => id !== run) } : wire,
  );
  return { ...harness, wires: Object.fromEntries(wires.map((wire) => [wire.id, wire])) };
}

/** Cables and paths must not name a wire that is gone. */
function forgetWires(harness: Harness, gone: ReadonlySet<string>): Harness {
  const cables = Object.values(harness.cables).some(
    (cable) => cable.wires.some((id) => gone.has(id)) || (cable.shield && gone.has(cable.shield)),
  )
    ? Object.fromEntries(
        Object.values(harness.cables).map((cable) => [
          cable.id,
          {
            ...cable,
            wires: cable.wires.filter((id) => !gone.has(id)),
            shield: cable.shield && gone.has(cable.shield) ? null : cable.shield,
          },
        ]),
      )
    : harness.cables;
  return { ...harness, cables, layout: { ...harness.layout, paths: without(harness.layout.paths, gone) } };
}

function without<T extends Readonly<Record<string, unknown>>>(record: T, gone: ReadonlySet<string>): T {
  if (![...gone].some((id) => id in record)) return record;
  return Object.fromEntries(Object.entries(record).filter(([id]) => !gone.has(id))) as unknown as T;
}

function withPlace(harness: Harness, id: PartId, place: Place): Harness {
  return layOut(harness, { [id]: place } as Record<PartId, Place>, {});
}

function layOut(
  harness: Harness,
  places: Readonly<Record<PartId, Place>>,
  paths: Readonly<Record<WireId, Path | null>>,
): Harness {
  const known = Object.fromEntries(Object.entries(places).filter(([id]) => id in harness.parts));
  const gone = new Set(Object.keys(paths).filter((id) => paths[id as WireId] === null));
  const kept = Object.fromEntries(
    Object.entries(paths).filter(([id, path]) => path !== null && id in harness.wires),
  );
  return {
    ...harness,
    layout: {
      ...harness.layout,
      places: { ...harness.layout.places, ...known },
      paths: { ...without(harness.layout.paths, gone), ...(kept as Readonly<Record<WireId, Path>>) },
    },
  };
}
