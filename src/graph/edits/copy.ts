import * as z from "zod/mini";
import type { Cable, End, Harness, Part, PartId, Place, Wire, WireId } from "../harness.ts";
import { Names } from "../make.ts";
import { unfitAt } from "../parse/scan.ts";
import * as schema from "../schema/harness.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

/** A piece of a harness that can be put into the same or another one. Plain data: it travels by clipboard. */
export type Fragment = {
  readonly pigtailFragment: 1;
  readonly parts: readonly Part[];
  readonly wires: readonly Wire[];
  readonly cables: readonly Cable[];
  readonly places: Readonly<Record<string, Place>>;
};

/**
 * Takes out a copy of parts and wires. A wire between two of the parts comes along unasked; an end on a part
 * that stays behind becomes loose.
 */
export function copyFragment(
  harness: Harness,
  parts: ReadonlySet<PartId>,
  wires: ReadonlySet<WireId>,
): Fragment {
  const held = (end: End) => end !== "loose" && parts.has(end.part);
  const taken = Object.values(harness.wires).filter(
    (wire) => wires.has(wire.id) || (held(wire.ends[0]) && held(wire.ends[1])),
  );
  const ids = new Set(taken.map((wire) => wire.id));
  return {
    pigtailFragment: 1,
    parts: Object.values(harness.parts).filter((part) => parts.has(part.id)),
    wires: taken.map((wire) => ({
      ...wire,
      ends: wire.ends.map((end) => (held(end) ? end : "loose")) as [End, End],
    })),
    cables: Object.values(harness.cables).filter(
      (cable) => cable.wires.length > 0 && cable.wires.every((id) => ids.has(id)),
    ),
    places: Object.fromEntries(
      Object.entries(harness.layout.places).filter(([id]) => parts.has(id as PartId)),
    ),
  };
}

const fragmentSchema = z.object({
  pigtailFragment: z.literal(1),
  parts: z.array(schema.sections.parts).check(z.maxLength(10_000)),
  wires: z.array(schema.sections.wires).check(z.maxLength(100_000)),
  cables: z.array(schema.sections.cables).check(z.maxLength(10_000)),
  places: z.record(z.string(), schema.place),
});

/** Reads a fragment from text that came by clipboard; `null` where the text is something else. */
export function readFragment(text: string): Fragment | null {
  if (!text.includes('"pigtailFragment"') || text.length > 20_000_000 || unfitAt(text)) return null;
  try {
    const result = fragmentSchema.safeParse(JSON.parse(text));
    return result.success ? (result.data as unknown as Fragment) : null;
  } catch {
    return null;
  }
}

/** Puts a fragment into a harness under new ids and designations, moved by (dx, dy). */
export function insertFragment(
  harness: Harness,
  fragment: Fragment,
  dx: number,
  dy: number,
): { readonly edit: Edit; readonly parts: readonly PartId[]; readonly wires: readonly WireId[] } | Refused {
  if (!fragment.parts.length && !fragment.wires.length) return refused("there is nothing to paste");
  const names = new Names(harness);
  const taken = new Set(Object.values(harness.parts).map((part) => part.designation));
  const own = new Set(fragment.parts.map((part) => part.designation));
  const partOf = new Map<PartId, PartId>(fragment.parts.map((part) => [part.id, names.part()]));
  const wireOf = new Map<WireId, WireId>(fragment.wires.map((wire) => [wire.id, names.wire()]));
  const edits: Edit[] = [];
  for (const part of fragment.parts) {
    let { designation } = part;
    if (taken.has(designation)) {
      do designation = names.designation(part.kind);
      while (taken.has(designation) || own.has(designation));
    }
    taken.add(designation);
    const id = partOf.get(part.id)!;
    const place = fragment.places[part.id];
    let made: Part = { ...part, id, designation };
    if (made.kind === "connector") {
      made = {
        ...made,
        matedWith: made.matedWith ? (partOf.get(made.matedWith) ?? null) : null,
        belongsTo: {
          ...made.belongsTo,
          module: made.belongsTo.module ? (partOf.get(made.belongsTo.module) ?? null) : null,
        },
      };
    }
    edits.push({
      kind: "add-part",
      part: made,
      place: place ? { ...place, x: place.x + dx, y: place.y + dy, pinned: true } : null,
    });
  }
  for (const wire of fragment.wires) {
    const ends = wire.ends.map((end): End => {
      const part = end === "loose" ? undefined : partOf.get(end.part);
      return end === "loose" || !part ? "loose" : { ...end, part };
    }) as [End, End];
    edits.push({
      kind: "add-wire",
      wire: { ...wire, id: wireOf.get(wire.id)!, designation: names.wireDesignation(), ends, runs: [] },
    });
  }
  for (const cable of fragment.cables) {
    edits.push({
      kind: "put-entry",
      section: "cables",
      entry: {
        ...cable,
        id: names.id("cables") as Cable["id"],
        wires: cable.wires.flatMap((id) => wireOf.get(id) ?? []),
        shield: cable.shield ? (wireOf.get(cable.shield) ?? null) : null,
      },
    });
  }
  const count = fragment.parts.length + fragment.wires.length;
  return {
    edit: group(`paste ${count} ${count === 1 ? "thing" : "things"}`, edits),
    parts: [...partOf.values()],
    wires: [...wireOf.values()],
  };
}
