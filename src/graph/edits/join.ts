import { contactsOf, keyOfEnd, sameEnd } from "../contacts.ts";
import type { Colour, ContactRef, End, Harness, Part, Wire } from "../harness.ts";
import { makePart, makePlace, makeWire, Names } from "../make.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

/**
 * Joins two contacts as it is done on the bench.
 *
 * Two cavities that each have a lead of their own chart become lead, splice, lead, and each lead keeps its
 * colour; a lead that is already drawn and ends loose or in a cap is used, not doubled, and the cap goes.
 * Where only one side has a lead, that lead runs through; where neither has, one wire of no stated colour.
 * @param at where a splice goes, in drawing units; `null` leaves it to the arrangement
 * @returns one edit, or why the two cannot be joined
 */
export function join(
  harness: Harness,
  a: ContactRef,
  b: ContactRef,
  at: { readonly x: number; readonly y: number } | null = null,
): Edit | Refused {
  const left = harness.parts[a.part];
  const right = harness.parts[b.part];
  if (!left || !right) return refused("one of the two parts is no longer there");
  if (!contactsOf(left)[a.contact - 1]) return refused(`${left.designation} has no contact ${a.contact}`);
  if (!contactsOf(right)[b.contact - 1]) return refused(`${right.designation} has no contact ${b.contact}`);
  if (sameEnd(a, b)) return refused("that is the same contact");
  const wires = Object.values(harness.wires);
  if (wires.some((wire) => isBetween(wire, a, b))) return refused("a wire already joins these two contacts");

  const names = new Names(harness);
  const name = `join ${called(left, a)} to ${called(right, b)}`;
  const leadA = openLead(harness, a);
  const leadB = openLead(harness, b);
  const colourA = leadColour(left, a);
  const colourB = leadColour(right, b);
  const edits: Edit[] = [];
  const clear = [leadA, leadB].flatMap((lead) => (lead?.cap ? [lead.cap] : []));

  const bothHaveLeads = (leadA || colourA) && (leadB || colourB);
  if (!bothHaveLeads) {
    const open = leadA ? { lead: leadA, far: b } : leadB ? { lead: leadB, far: a } : null;
    if (open) edits.push(attach(open.lead, open.far));
    else {
      const charted = colourA ?? colourB;
      edits.push({
        kind: "add-wire",
        wire: makeWire(names.wire(), names.wireDesignation(), [a, b], charted ?? inherited(harness, a, b)),
      });
    }
  } else {
    const splice = makePart("splice", names.part(), names.designation("splice"), {});
    edits.push({ kind: "add-part", part: splice, place: at ? makePlace(at.x, at.y) : null });
    const sides: [ContactRef, OpenLead | null, Charted | null, number][] = [
      [a, leadA, colourA, 1],
      [b, leadB, colourB, 2],
    ];
    for (const [contact, open, charted, spliceContact] of sides) {
      const far = { part: splice.id, contact: spliceContact };
      if (open) edits.push(attach(open, far));
      else {
        edits.push({
          kind: "add-wire",
          wire: makeWire(names.wire(), names.wireDesignation(), [contact, far], charted ?? {}),
        });
      }
    }
  }
  if (clear.length) edits.push({ kind: "remove", parts: clear, wires: [] });
  for (const { part, contact } of [a, b]) {
    if (contactsOf(harness.parts[part]!)[contact - 1]?.cavity?.use !== "spare") continue;
    // What is joined is a spare no longer; nor was it among what had to be joined.
    edits.push({ kind: "change-cavity", part, contact, changes: { use: "optional" } });
  }
  return group(name, edits);
}

/** "X1.4" for a cavity; a joint, cap or ground by its designation alone. */
function called(part: Part, { contact }: ContactRef): string {
  if (part.kind === "splice" || part.kind === "cap" || part.kind === "ground") return part.designation;
  return `${part.designation}.${contactsOf(part)[contact - 1]?.label ?? contact}`;
}

type Charted = { readonly colour: Colour | null; readonly area_mm2: number | "unknown" };
type OpenLead = { readonly wire: Wire; readonly openEnd: 0 | 1; readonly cap: Part["id"] | null };

function isBetween(wire: Wire, a: ContactRef, b: ContactRef): boolean {
  const [p, q] = wire.ends;
  return (sameEnd(p, a) && sameEnd(q, b)) || (sameEnd(p, b) && sameEnd(q, a));
}

/** The lead that a chart says stands in this cavity. */
function leadColour(part: Part, ref: ContactRef): Charted | null {
  return contactsOf(part)[ref.contact - 1]?.cavity?.lead ?? null;
}

/** A wire drawn from this contact whose other end is free to be joined: loose, or alone in a cap. */
function openLead(harness: Harness, ref: ContactRef): OpenLead | null {
  const here = keyOfEnd(ref);
  for (const wire of Object.values(harness.wires)) {
    const near = wire.ends.findIndex((end) => keyOfEnd(end) === here);
    if (near < 0) continue;
    const openEnd = near === 0 ? 1 : 0;
    const far = wire.ends[openEnd];
    if (far === "loose") return { wire, openEnd, cap: null };
    const part = harness.parts[far.part];
    if (part?.kind === "cap" && alone(harness, far)) return { wire, openEnd, cap: part.id };
  }
  return null;
}

function alone(harness: Harness, end: ContactRef): boolean {
  let count = 0;
  for (const wire of Object.values(harness.wires)) {
    if (wire.ends.some((other) => sameEnd(other, end))) count++;
  }
  return count === 1;
}

function attach(open: OpenLead, far: ContactRef): Edit {
  const [first, second] = open.wire.ends;
  const ends: [End, End] = open.openEnd === 0 ? [far, second] : [first, far];
  return { kind: "change-wire", wire: open.wire.id, changes: { ends } };
}

/** A wire to a splice, fuse or ground goes on in the colour and size of what already lands there. */
function inherited(harness: Harness, a: ContactRef, b: ContactRef): Charted {
  for (const ref of [a, b]) {
    const kind = harness.parts[ref.part]?.kind;
    if (kind === "connector" || kind === "module") continue;
    for (const wire of Object.values(harness.wires)) {
      if (wire.ends.some((end) => end !== "loose" && end.part === ref.part)) {
        return { colour: wire.colour, area_mm2: wire.area_mm2 };
      }
    }
  }
  return { colour: null, area_mm2: "unknown" };
}
