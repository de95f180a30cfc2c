import type { Cable, ContactRef, End, Harness, Part, PartId, RunId, Wire, WireId } from "../harness.ts";

/** The record without some keys; the same object where it has none of them. */
export function without<T extends Readonly<Record<string, unknown>>>(
  record: T,
  gone: ReadonlySet<string>,
): T {
  let has = false;
  for (const id of gone) has ||= Object.hasOwn(record, id);
  if (!has) return record;
  return Object.fromEntries(Object.entries(record).filter(([id]) => !gone.has(id))) as unknown as T;
}

/** A section with every entry passed through a change; the same object where no entry changed, `null` drops one. */
function mapped<T extends object>(
  section: Readonly<Record<string, T>>,
  change: (entry: T) => T | null,
): Readonly<Record<string, T>> {
  const next: Record<string, T> = {};
  let touched = false;
  for (const [id, entry] of Object.entries(section)) {
    const after = change(entry);
    if (after !== entry) touched = true;
    if (after) next[id] = after;
  }
  return touched ? next : section;
}

/** Takes wires out, and every mention of them. */
export function forgetWires(harness: Harness, gone: ReadonlySet<WireId>): Harness {
  const cables = mapped<Cable>(harness.cables, (cable) => {
    const shield = cable.shield && gone.has(cable.shield) ? null : cable.shield;
    const wires = cable.wires.some((id) => gone.has(id))
      ? cable.wires.filter((id) => !gone.has(id))
      : cable.wires;
    return shield === cable.shield && wires === cable.wires ? cable : { ...cable, shield, wires };
  });
  const paths = without(harness.layout.paths, gone);
  const next = {
    ...harness,
    wires: without(harness.wires, gone),
    cables,
    layout: paths === harness.layout.paths ? harness.layout : { ...harness.layout, paths },
  };
  return forgetMentions(next, (about) => "wire" in about && gone.has(about.wire));
}

/** Takes parts out. Wires that ended on them become loose there; a wire with no end left to hold it goes too. */
export function removeParts(harness: Harness, gone: ReadonlySet<PartId>): Harness {
  const parts = mapped<Part>(harness.parts, (part) => {
    if (gone.has(part.id)) return null;
    return part.kind === "connector" ? withoutMentions(part, gone) : part;
  });
  const places = without(harness.layout.places, gone);
  const layout = places === harness.layout.places ? harness.layout : { ...harness.layout, places };
  const next = forgetMentions(
    { ...harness, parts, layout },
    (about) => "part" in about && gone.has(about.part),
  );
  return loosen(next, (end) => gone.has(end.part));
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

type About = ContactRef | { readonly wire: WireId } | { readonly part: PartId };

/**
 * A waiver of a finding about something that is gone is over: kept, it could silence a finding about whatever
 * takes the same id next. Photos and test rows stay as a record and lose only the mention.
 */
function forgetMentions(harness: Harness, gone: (about: About) => boolean): Harness {
  const waivers = mapped(harness.waivers, (waiver) => (waiver.about.some(gone) ? null : waiver));
  const photos = mapped(harness.photos, (photo) =>
    photo.about.some(gone) ? { ...photo, about: photo.about.filter((about) => !gone(about)) } : photo,
  );
  const testRecord = mapped(harness.testRecord, (row) =>
    row.at.some(gone) ? { ...row, at: row.at.filter((at) => !gone(at)) } : row,
  );
  return { ...harness, waivers, photos, testRecord };
}

/** Wires whose end answers the question become loose there; a wire with nothing left to hold it goes. */
export function loosen(harness: Harness, gone: (end: ContactRef) => boolean): Harness {
  const lost = new Set<WireId>();
  const wires = mapped<Wire>(harness.wires, (wire) => {
    const ends = wire.ends.map((end) => (end !== "loose" && gone(end) ? "loose" : end)) as [End, End];
    if (ends[0] === wire.ends[0] && ends[1] === wire.ends[1]) return wire;
    if (ends[0] === "loose" && ends[1] === "loose") lost.add(wire.id);
    return { ...wire, ends };
  });
  if (wires === harness.wires) return harness;
  const next = { ...harness, wires };
  return lost.size ? forgetWires(next, lost) : next;
}

/** No wire follows a run that is gone. */
export function leaveRun(harness: Harness, run: RunId | string): Harness {
  const wires = mapped<Wire>(harness.wires, (wire) =>
    wire.runs.some((id) => id === run) ? { ...wire, runs: wire.runs.filter((id) => id !== run) } : wire,
  );
  return wires === harness.wires ? harness : { ...harness, wires };
}
