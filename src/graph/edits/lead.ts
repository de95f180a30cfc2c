import { contactsOf, keyOfEnd, sameEnd } from "../contacts.ts";
import type { ContactRef, End, Harness, Part, PartKind, WireId } from "../harness.ts";
import { makePart, makePlace, makeWire, Names } from "../make.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

type Spot = { readonly x: number; readonly y: number };

/** What a loose wire end, or a bare contact, is to be capped: one cap a lead, so that none is joined by chance. */
export type CapTarget = ContactRef | { readonly wire: WireId };

/**
 * Caps spares, each under a cap of its own. A contact without a wire first gets the lead its chart gives it.
 * @param spots a place for each cap in turn; a missing one is left to the arrangement
 */
export function capSpares(
  harness: Harness,
  targets: readonly CapTarget[],
  spots: readonly Spot[] = [],
): Edit | Refused {
  const names = new Names(harness);
  const edits: Edit[] = [];
  const seen = new Set<string>();
  for (const [index, target] of targets.entries()) {
    const key = "wire" in target ? target.wire : (looseWireAt(harness, target)?.id ?? keyOfEnd(target)!);
    if (seen.has(key)) continue;
    seen.add(key);
    const spot = spots[index];
    const cap = makePart("cap", names.part(), names.designation("cap"), {});
    const onCap: ContactRef = { part: cap.id, contact: 1 };
    edits.push({ kind: "add-part", part: cap, place: spot ? makePlace(spot.x, spot.y) : null });
    const wire = "wire" in target ? harness.wires[target.wire] : looseWireAt(harness, target);
    if (wire) {
      const open = wire.ends[0] === "loose" ? 0 : wire.ends[1] === "loose" ? 1 : null;
      if (open === null) return refused(`${wire.designation} has no loose end to cap`);
      const ends: [End, End] = open === 0 ? [onCap, wire.ends[1]] : [wire.ends[0], onCap];
      edits.push({ kind: "change-wire", wire: wire.id, changes: { ends } });
    } else if ("wire" in target) {
      return refused(`there is no wire ${target.wire}`);
    } else {
      const part = harness.parts[target.part];
      const contact = part && contactsOf(part)[target.contact - 1];
      if (!part || !contact) return refused("that contact is no longer there");
      if (Object.values(harness.wires).some((one) => one.ends.some((end) => sameEnd(end, target))))
        return refused(`${part.designation}.${contact.label} is joined already`);
      edits.push({
        kind: "add-wire",
        wire: makeWire(names.wire(), names.wireDesignation(), [target, onCap], contact.cavity?.lead ?? {}),
      });
      if (contact.cavity && contact.cavity.use !== "spare") {
        edits.push({
          kind: "change-cavity",
          part: target.part,
          contact: target.contact,
          changes: { use: "spare" },
        });
      }
    }
  }
  if (!edits.length) return refused("there is no spare to cap");
  return group(seen.size === 1 ? "cap spare" : `cap ${seen.size} spares`, edits);
}

function looseWireAt(harness: Harness, ref: ContactRef) {
  return Object.values(harness.wires).find(
    (wire) => wire.ends.includes("loose") && wire.ends.some((end) => sameEnd(end, ref)),
  );
}

/**
 * Ends a lead from a contact in a new part of the given kind (ground, fuse, splice, cap, …), or leaves it
 * loose where `kind` is "loose".
 */
export function leadTo(
  harness: Harness,
  from: ContactRef,
  kind: PartKind | "loose",
  spot: Spot,
): Edit | Refused {
  if (kind === "cap") return capSpares(harness, [from], [spot]);
  const part = harness.parts[from.part];
  const contact = part && contactsOf(part)[from.contact - 1];
  if (!part || !contact) return refused("that contact is no longer there");
  const names = new Names(harness);
  const known = contact.cavity?.lead ?? {};
  const designation = names.wireDesignation();
  if (kind === "loose") {
    return group(`draw lead from ${part.designation}`, [
      { kind: "add-wire", wire: makeWire(names.wire(), designation, [from, "loose"], known) },
    ]);
  }
  if (kind === "connector" || kind === "module") return refused("give the new housing its cavities first");
  const made: Part = makePart(kind, names.part(), names.designation(kind), {});
  const open = looseWireAt(harness, from);
  const far: ContactRef = { part: made.id, contact: 1 };
  return group(`add ${made.designation} to ${part.designation}`, [
    { kind: "add-part", part: made, place: makePlace(spot.x, spot.y, true) },
    open
      ? {
          kind: "change-wire",
          wire: open.id,
          changes: { ends: open.ends[0] === "loose" ? [far, open.ends[1]] : [open.ends[0], far] },
        }
      : { kind: "add-wire", wire: makeWire(names.wire(), designation, [from, far], known) },
  ]);
}

/**
 * Cuts a wire, puts a splice there, and brings a new lead from a contact to it. `from` null only cuts.
 * Where the cut is was not said, so each half is given half of a known length: the sum, and the drop, stay.
 */
export function spliceInto(
  harness: Harness,
  id: WireId,
  from: ContactRef | null,
  spot: Spot,
): Edit | Refused {
  const wire = harness.wires[id];
  if (!wire) return refused(`there is no wire ${id}`);
  if (from && wire.ends.some((end) => sameEnd(end, from)))
    return refused("the wire already lands on that contact");
  const names = new Names(harness);
  const splice = makePart("splice", names.part(), names.designation("splice"), {});
  const far = wire.ends[1];
  const half_m = wire.length_m === "unknown" ? wire.length_m : wire.length_m / 2;
  const edits: Edit[] = [
    { kind: "add-part", part: splice, place: makePlace(spot.x, spot.y, true) },
    {
      kind: "change-wire",
      wire: id,
      changes: { ends: [wire.ends[0], { part: splice.id, contact: 1 }], length_m: half_m },
    },
    {
      kind: "add-wire",
      wire: {
        ...wire,
        id: names.wire(),
        length_m: half_m,
        designation: names.wireDesignation(),
        ends: [{ part: splice.id, contact: 2 }, far],
      },
    },
  ];
  if (from) {
    const part = harness.parts[from.part];
    const lead = part && contactsOf(part)[from.contact - 1]?.cavity?.lead;
    edits.push({
      kind: "add-wire",
      wire: makeWire(
        names.wire(),
        names.wireDesignation(),
        [from, { part: splice.id, contact: 1 }],
        lead ?? {
          colour: wire.colour,
          area_mm2: wire.area_mm2,
        },
      ),
    });
  }
  return group(`splice into ${wire.designation}`, edits);
}

/**
 * Exchanges what lands on two contacts: every wire end on `a` moves to `b` and the other way round.
 * The cure for a swapped pair, made at one place.
 */
export function exchange(
  harness: Harness,
  a: ContactRef,
  b: ContactRef,
  name = "exchange two leads",
): Edit | Refused {
  const keyA = keyOfEnd(a);
  const keyB = keyOfEnd(b);
  const edits: Edit[] = [];
  for (const wire of Object.values(harness.wires)) {
    const ends = wire.ends.map((end): End => {
      const key = keyOfEnd(end);
      return key === keyA ? b : key === keyB ? a : end;
    }) as [End, End];
    if (sameEnd(ends[0], wire.ends[0]) && sameEnd(ends[1], wire.ends[1])) continue;
    edits.push({ kind: "change-wire", wire: wire.id, changes: { ends } });
  }
  if (!edits.length) return refused("no wire lands on either contact");
  return group(name, edits);
}
