import { nameContact } from "../../catalogue/describe.ts";
import { contactKey, sameEnd } from "../../graph/contacts.ts";
import { type Edit, group, type Refused, refused } from "../../graph/edits/edit.ts";
import { join } from "../../graph/edits/join.ts";
import { leadTo, spliceInto } from "../../graph/edits/lead.ts";
import type { ContactRef, End, Harness, Part, PartKind, Place, Wire, WireId } from "../../graph/harness.ts";
import { makePlace } from "../../graph/make.ts";
import { labelText, stubLength } from "../../layout/label.ts";
import type { Scene } from "../../layout/scene.ts";
import { contactSpot } from "./nodes-model.ts";
import { freeSpot, freshShape, jointColumns } from "./room-model.ts";

/** Where a lead being drawn starts: at a contact, or at the loose end of a wire that is there already. */
export type Source = { readonly contact: ContactRef } | { readonly wire: WireId; readonly open: 0 | 1 };

export type Target =
  | { readonly kind: "contact"; readonly ref: ContactRef }
  | { readonly kind: "wire"; readonly wire: WireId }
  | { readonly kind: "ground" };

type Spot = { readonly x: number; readonly y: number };

/** The contact that a source leads back to; `null` for a wire with both ends loose. */
export function rootOf(harness: Harness, from: Source): ContactRef | null {
  if ("contact" in from) return from.contact;
  const end = harness.wires[from.wire]?.ends[1 - from.open];
  return end && end !== "loose" ? end : null;
}

function sourceName(harness: Harness, from: Source): string {
  if ("contact" in from) return nameContact(harness, from.contact);
  return `the loose end of ${harness.wires[from.wire]?.designation ?? "the wire"}`;
}

/** What letting go here would do, in words. */
export function sayDrop(harness: Harness, from: Source, target: Target): string {
  const start = sourceName(harness, from);
  if (target.kind === "wire") {
    return `Let go to splice ${start} into ${harness.wires[target.wire]?.designation ?? "this wire"}.`;
  }
  if (target.kind === "ground") return `Lead from ${start}. Let go to choose what it ends in.`;
  const change = dropEdit(harness, from, target, null);
  const end = nameContact(harness, target.ref);
  if ("ok" in change) return `${start} cannot be joined to ${end}: ${change.why}.`;
  const splices = change.kind === "group" && change.edits.some((one) => one.kind === "add-part");
  return `Let go to join ${start} to ${end}${splices ? " by a splice" : ""}.`;
}

/**
 * The edit of letting a lead go on a contact or on a wire.
 * @param scene where parts stand, so that a splice finds room; `null` leaves its place to the arrangement
 */
export function dropEdit(
  harness: Harness,
  from: Source,
  target: Exclude<Target, { kind: "ground" }>,
  scene: Scene | null,
  at: Spot = { x: 0, y: 0 },
): Edit | Refused {
  const root = rootOf(harness, from);
  if (target.kind === "wire") return spliceDrop(harness, from, root, target.wire, scene, at);
  if (!root) {
    if (!("wire" in from)) return refused("the lead starts nowhere");
    return endOn(harness, from.wire, from.open, target.ref);
  }
  const change = join(harness, root, target.ref, scene ? { x: 0, y: 0 } : null);
  return "ok" in change || !scene
    ? change
    : placed(change, (part) => placeBetween(harness, scene, change, part, root, target.ref));
}

function endOn(harness: Harness, id: WireId, open: 0 | 1, end: ContactRef): Edit | Refused {
  const wire = harness.wires[id];
  if (!wire) return refused(`there is no wire ${id}`);
  const ends: [End, End] = open === 0 ? [end, wire.ends[1]] : [wire.ends[0], end];
  return group(`end ${wire.designation} on ${nameContact(harness, end)}`, [
    { kind: "change-wire", wire: id, changes: { ends } },
  ]);
}

function spliceDrop(
  harness: Harness,
  from: Source,
  root: ContactRef | null,
  into: WireId,
  scene: Scene | null,
  at: Spot,
): Edit | Refused {
  const open = "wire" in from ? from : root ? looseLead(harness, root) : null;
  if (open?.wire === into) return refused("a wire is not spliced into itself");
  const change = spliceInto(harness, into, open ? null : root, { x: 0, y: 0 });
  if ("ok" in change || change.kind !== "group") return change;
  const run = scene?.wires.get(into)?.path;
  // The first contact of the splice looks to where the wire begins, and the new lead lands on its own side.
  const turned = run !== undefined && run[0]! > run.at(-2)!;
  const start = scene && root ? contactSpot(scene, root.part, root.contact) : null;
  const landing = start && start.x > at.x !== turned ? 2 : 1;
  const splice = change.edits.find((one) => one.kind === "add-part");
  if (splice?.kind !== "add-part") return change;
  const edits = change.edits.map((one): Edit => {
    if (one.kind !== "add-wire" || !root || !one.wire.ends.some((end) => sameEnd(end, root))) return one;
    return { ...one, wire: { ...one.wire, ends: [root, { part: splice.part.id, contact: landing }] } };
  });
  if (open) {
    const ends = harness.wires[open.wire]!.ends;
    const far: ContactRef = { part: splice.part.id, contact: landing };
    edits.push({
      kind: "change-wire",
      wire: open.wire,
      changes: { ends: open.open === 0 ? [far, ends[1]] : [ends[0], far] },
    });
  }
  const joined = group(change.name, edits);
  if (!scene) return joined;
  return placed(joined, (part) => {
    const shape = freshShape(part, turned, (contact) => (contact === landing ? 2 : 1));
    const port = shape.ports[0]!;
    const leads = leadsOf(harness, joined);
    const lead = Math.max(...leads.map((wire) => stubLength(labelText(wire, harness.settings.sizes))));
    const x = run ? roomOnRun(run, at, shape.width, lead) : at.x - shape.width / 2;
    const moving = new Set(leads.map((wire) => wire.id));
    return { ...freeSpot(scene, shape, x, at.y - port.y, { moving }), turned };
  });
}

/**
 * The left edge of a splice let go on a level piece of a wire: shifted along it, so far as its length allows,
 * until what remains on either side has room for a label.
 */
function roomOnRun(run: readonly number[], at: Spot, width: number, lead: number): number {
  const wanted = at.x - width / 2;
  for (let i = 0; i + 3 < run.length; i += 2) {
    const [left, right] = [Math.min(run[i]!, run[i + 2]!), Math.max(run[i]!, run[i + 2]!)];
    const on =
      run[i + 1] === run[i + 3] && Math.abs(run[i + 1]! - at.y) < 12 && left <= at.x && at.x <= right;
    if (!on) continue;
    const [least, most] = [left + lead, right - lead - width];
    return least > most ? (least + most) / 2 : Math.min(most, Math.max(least, wanted));
  }
  return wanted;
}

/** A wire from this contact that hangs loose: drawing on from the contact uses it up. */
function looseLead(harness: Harness, ref: ContactRef): { wire: WireId; open: 0 | 1 } | null {
  const key = contactKey(ref.part, ref.contact);
  for (const wire of Object.values(harness.wires)) {
    for (const open of [0, 1] as const) {
      const near = wire.ends[1 - open]!;
      if (wire.ends[open] !== "loose" || near === "loose") continue;
      if (contactKey(near.part, near.contact) === key) return { wire: wire.id, open };
    }
  }
  return null;
}

/** The edit of ending a lead in a new part, or in nothing, on empty ground. */
export function endIn(
  harness: Harness,
  scene: Scene,
  from: Source,
  kind: PartKind | "loose",
  at: Spot,
): Edit | Refused {
  const root = rootOf(harness, from);
  if (!root) return refused("give the wire's other end a contact first");
  if (kind === "loose" && "wire" in from) return refused("it hangs loose already");
  const change = leadTo(harness, root, kind, { x: 0, y: 0 });
  if ("ok" in change) return change;
  const start = contactSpot(scene, root.part, root.contact);
  return placed(change, (part) => {
    // Its first contact looks back to where the lead comes from.
    const leftwards = (start?.x ?? 0) <= at.x;
    const port = freshShape(part, false).ports[0]!;
    const turned = (port.side === "left") !== leftwards;
    const shape = freshShape(part, turned);
    const first = shape.ports[0]!;
    const end = start ? roomForLead(start, at) : at;
    return { ...freeSpot(scene, shape, end.x - first.x, end.y - first.y), turned };
  });
}

/** A label stands on a lead near each end. Closer than this the lead would have to loop to carry them. */
const ROOM_STRAIGHT = 128;
const ROOM_BENT = 232;
/** So near to the row of its contact, a lead is meant to run straight. */
const SAME_ROW = 20;

/** Where a lead from `start` had better end, as near to `at` as its labels allow. */
export function roomForLead(start: Spot, at: Spot): Spot {
  const straight = Math.abs(start.y - at.y) <= SAME_ROW;
  const room = straight ? ROOM_STRAIGHT : ROOM_BENT;
  const away = at.x - start.x;
  const x = Math.abs(away) >= room ? at.x : start.x + (away < 0 ? -room : room);
  return { x, y: straight ? start.y : at.y };
}

/** Gives each part that an edit adds the place that `where` says; whether it is pinned stays as the edit has it. */
export function placed(change: Edit, where: (part: Part) => Spot & { readonly turned: boolean }): Edit {
  if (change.kind === "group") {
    return group(
      change.name,
      change.edits.map((one) => placed(one, where)),
    );
  }
  if (change.kind !== "add-part") return change;
  const { x, y, turned } = where(change.part);
  return { ...change, place: makePlace(x, y, change.place?.pinned ?? false, turned) };
}

function placeBetween(
  harness: Harness,
  scene: Scene,
  change: Edit,
  part: Part,
  a: ContactRef,
  b: ContactRef,
): Place {
  const left = contactSpot(scene, a.part, a.contact);
  const right = contactSpot(scene, b.part, b.contact);
  const from = left ?? { x: 0, y: 0 };
  const to = right ?? from;
  const turned = from.x > to.x;
  const shape = freshShape(part, turned);
  const leads = leadsOf(harness, change);
  const lead = Math.max(0, ...leads.map((wire) => stubLength(labelText(wire, harness.settings.sizes))));
  const spot = freeSpot(scene, shape, (from.x + to.x) / 2 - shape.width / 2, from.y - shape.ports[0]!.y, {
    moving: new Set(leads.map((wire) => wire.id)),
    lead,
    columns: jointColumns(from, to, shape.width, lead),
  });
  return makePlace(spot.x, spot.y, false, turned);
}

/** The wires that an edit draws, or draws elsewhere. */
function leadsOf(harness: Harness, change: Edit): readonly Wire[] {
  if (change.kind === "group") return change.edits.flatMap((one) => leadsOf(harness, one));
  if (change.kind === "add-wire") return [change.wire];
  const known = change.kind === "change-wire" ? harness.wires[change.wire] : undefined;
  return known ? [known] : [];
}
