import type * as z from "zod/mini";
import { contactsOf } from "../contacts.ts";
import { changed } from "../equal.ts";
import type { Harness, Part, PartId, Path, Place, Wire, WireId } from "../harness.ts";
import { asFound } from "../parse/expect.ts";
import {
  type Dangling,
  danglingEnd,
  danglingOfCable,
  danglingOfPart,
  danglingOfWire,
} from "../references.ts";
import * as schema from "../schema/harness.ts";
import { part as partSchema } from "../schema/parts.ts";
import { type Edit, type Refused, refused, sayField } from "./edit.ts";
import { forgetWires, leaveRun, loosen, removeParts, without } from "./remove.ts";

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
      const next = { ...harness, parts: { ...harness.parts, [edit.part.id]: edit.part } };
      const lost = firstOf(danglingOfPart(next, edit.part));
      if (lost) return lost;
      return edit.place ? layOut(next, { [edit.part.id]: edit.place }, {}) : { ok: true, harness: next };
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
        index === edit.contact - 1 ? changed(cavity, edit.changes) : cavity,
      );
      return changePart(harness, edit.part, { cavities });
    }
    case "remove":
      return remove(harness, edit.parts, edit.wires);
    case "add-wire": {
      if (harness.wires[edit.wire.id]) return refused(`there is already a wire ${edit.wire.id}`);
      return putWire(harness, edit.wire);
    }
    case "change-wire": {
      const wire = harness.wires[edit.wire];
      if (!wire) return refused(`there is no wire ${edit.wire}`);
      if ("id" in edit.changes) return refused("a wire keeps its id");
      return putWire(harness, changed<Wire>(wire, edit.changes));
    }
    case "put-entry": {
      const shape = Object.hasOwn(PUTTABLE, edit.section) ? PUTTABLE[edit.section] : undefined;
      if (!shape) return refused("nothing can be put there");
      const entry = checked(shape, edit.entry);
      if (!entry.ok) return entry;
      const old: Readonly<Record<string, unknown>> = harness[edit.section];
      const next = withSection(harness, edit.section, changed(old, { [edit.entry.id]: edit.entry }));
      const cable = edit.section === "cables" ? next.cables[edit.entry.id as keyof Harness["cables"]] : null;
      const lost = cable ? firstOf(danglingOfCable(next, cable)) : null;
      return lost ?? { ok: true, harness: next };
    }
    case "drop-entry": {
      const section = Object.hasOwn(PUTTABLE, edit.section) ? harness[edit.section] : {};
      if (!Object.hasOwn(section, edit.id)) return refused(`there is no ${edit.id} to remove`);
      const left = without(section as Readonly<Record<string, unknown>>, new Set([edit.id]));
      const next = { ...harness, [edit.section]: left } as Harness;
      return { ok: true, harness: edit.section === "runs" ? leaveRun(next, edit.id) : next };
    }
    case "change-settings": {
      const settings = checked(schema.settings, changed(harness.settings, edit.changes));
      return settings.ok ? { ok: true, harness: withSection(harness, "settings", settings.value) } : settings;
    }
    case "change-title-block": {
      const titleBlock = checked(schema.titleBlock, changed(harness.titleBlock, edit.changes));
      return titleBlock.ok
        ? { ok: true, harness: withSection(harness, "titleBlock", titleBlock.value) }
        : titleBlock;
    }
    case "lay-out":
      return layOut(harness, edit.places, edit.paths);
    case "group":
      return applyAll(harness, edit.edits);
    default:
      // An edit may come from a file or a message; what this version does not know it does not do.
      return refused(`there is no edit "${String((edit as { kind?: unknown }).kind)}"`);
  }
}

const { cables, runs, waivers, testRecord, photos } = schema.sections;
const PUTTABLE = { cables, runs, waivers, testRecord, photos } as const;

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

function withSection(harness: Harness, name: keyof Harness, value: unknown): Harness {
  return value === harness[name] ? harness : ({ ...harness, [name]: value } as Harness);
}

/** Checks without copying, so that what an edit did not touch inside a value stays the same object. */
function checked<S extends z.ZodMiniType>(
  shape: S,
  value: unknown,
): { readonly ok: true; readonly value: z.infer<S> } | Refused {
  const result = shape.safeParse(value);
  if (result.success) return { ok: true, value: value as z.infer<S> };
  const issue = result.error.issues[0];
  if (!issue) return refused("that value is not possible");
  const { path, found, expected } = asFound(issue, value, []);
  return refused(`${path.map(sayField).join(" ") || "this"} cannot be ${found}; expected ${expected}`);
}

function firstOf(problems: Iterable<Dangling>): Refused | null {
  for (const { found, expected } of problems) return refused(`there is no ${found}; expected ${expected}`);
  return null;
}

function changePart(
  harness: Harness,
  id: PartId,
  changes: Readonly<Record<string, unknown>>,
): Applied | Refused {
  const part = harness.parts[id];
  if (!part) return refused(`there is no part ${id}`);
  if ("id" in changes || "kind" in changes) return refused("a part keeps its id and its kind");
  const result = checked(partSchema, changed<Part>(part, changes));
  if (!result.ok) return result;
  const made = result.value as Part;
  if (made === part) return { ok: true, harness };
  let next: Harness = { ...harness, parts: { ...harness.parts, [id]: made } };
  const lost = firstOf(danglingOfPart(next, made));
  if (lost) return lost;
  // A housing that lost cavities leaves their wires loose rather than pointing at nothing.
  const count = contactsOf(made).length;
  if (count < contactsOf(part).length) next = loosen(next, (end) => end.part === id && end.contact > count);
  return { ok: true, harness: next };
}

function putWire(harness: Harness, wire: Wire): Applied | Refused {
  const result = checked(schema.wire, wire);
  if (!result.ok) return result;
  for (const end of wire.ends) {
    const problem = danglingEnd(harness, end, wire.designation);
    if (problem) return refused(endWords(harness, end));
  }
  const lost = firstOf(danglingOfWire(harness, wire));
  if (lost) return lost;
  const [a, b] = wire.ends;
  if (a !== "loose" && b !== "loose" && a.part === b.part && a.contact === b.contact) {
    return refused("both ends of the wire would be on one contact");
  }
  return { ok: true, harness: withSection(harness, "wires", changed(harness.wires, { [wire.id]: wire })) };
}

function endWords(harness: Harness, end: Wire["ends"][0]): string {
  if (end === "loose") return "the end is loose";
  const part = harness.parts[end.part];
  return part ? `${part.designation} has no contact ${end.contact}` : `there is no part ${end.part}`;
}

function remove(harness: Harness, parts: readonly PartId[], wires: readonly WireId[]): Applied | Refused {
  const goneParts = new Set(parts.filter((id) => Object.hasOwn(harness.parts, id)));
  const goneWires = new Set(wires.filter((id) => Object.hasOwn(harness.wires, id)));
  if (!goneParts.size && !goneWires.size) return refused("what was to be removed is no longer there");
  const next = goneWires.size ? forgetWires(harness, goneWires) : harness;
  return { ok: true, harness: goneParts.size ? removeParts(next, goneParts) : next };
}

function layOut(
  harness: Harness,
  places: Readonly<Record<string, Place>>,
  paths: Readonly<Record<string, Path | null>>,
): Applied | Refused {
  const newPlaces = Object.entries(places).filter(([id]) => Object.hasOwn(harness.parts, id));
  const newPaths = Object.entries(paths).filter(([id]) => Object.hasOwn(harness.wires, id));
  for (const [id, place] of newPlaces) {
    const result = checked(schema.place, place);
    if (!result.ok) return refused(`place of ${harness.parts[id as PartId]!.designation}: ${result.why}`);
  }
  const kept = newPaths.filter(([, path]) => path !== null);
  for (const [id, path] of kept) {
    const result = checked(schema.path, path);
    if (!result.ok) return refused(`path of ${harness.wires[id as WireId]!.designation}: ${result.why}`);
  }
  const { layout } = harness;
  const forgotten = new Set(newPaths.filter(([, path]) => path === null).map(([id]) => id));
  const left = without(layout.paths, forgotten);
  const next = changed(layout, {
    places: changed(layout.places, Object.fromEntries(newPlaces)),
    paths: changed(left, Object.fromEntries(kept) as Harness["layout"]["paths"]),
  });
  return { ok: true, harness: next === layout ? harness : { ...harness, layout: next } };
}
