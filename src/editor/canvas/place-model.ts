import { contactKey, contactsOf } from "../../graph/contacts.ts";
import { type Edit, group, type Refused, refused } from "../../graph/edits/edit.ts";
import { type CapTarget, capSpares, spliceInto } from "../../graph/edits/lead.ts";
import type { ContactRef, Harness, Part, PartId, PartKind, Place, WireId } from "../../graph/harness.ts";
import { makePart, makePlace, Names } from "../../graph/make.ts";
import type { Traced } from "../../graph/trace.ts";
import type { Scene } from "../../layout/scene.ts";
import type { Selection } from "../state/store.ts";
import { placed } from "./join-model.ts";
import { contactSpot } from "./nodes-model.ts";
import { freeSpot, freshShape } from "./room-model.ts";

type Spot = { readonly x: number; readonly y: number };

/** A cap stands this far from the contact of a lead without a drawn wire: room for the wire's label. */
const CAP_DISTANCE = 136;

/**
 * The spares among what is selected: loose wires, contacts without a wire, and of a whole connector the leads
 * that its chart states and nothing has been drawn to.
 */
export function capTargets(harness: Harness, traced: Traced, selection: Selection): readonly CapTarget[] {
  const targets: CapTarget[] = [];
  const taken = new Set<string>();
  const add = (key: string, target: CapTarget) => {
    if (taken.has(key)) return;
    taken.add(key);
    targets.push(target);
  };
  const contact = (ref: ContactRef, bare: boolean) => {
    const wires = traced.wiresAt(contactKey(ref.part, ref.contact));
    const loose = wires.find((wire) => wire.ends.includes("loose"));
    if (loose) add(loose.id, { wire: loose.id });
    else if (wires.length === 0 && bare) add(contactKey(ref.part, ref.contact), ref);
  };
  for (const id of selection.wires) {
    if (harness.wires[id]?.ends.includes("loose")) add(id, { wire: id });
  }
  if (selection.contact) contact(selection.contact, true);
  else {
    for (const id of selection.parts) {
      const part = harness.parts[id];
      if (part?.kind !== "connector" && part?.kind !== "module") continue;
      for (const one of contactsOf(part)) {
        contact({ part: id, contact: one.number }, one.cavity?.lead !== null);
      }
    }
  }
  return targets;
}

/** Caps spares, each cap on the row of its lead. */
export function capEdit(harness: Harness, scene: Scene, targets: readonly CapTarget[]): Edit | Refused {
  const change = capSpares(harness, targets);
  if ("ok" in change) return change;
  let next = 0;
  return placed(change, (part) => {
    const target = targets[next++];
    const at = target && capSpot(harness, scene, target);
    if (!at) return { x: 0, y: 0, turned: false };
    const shape = freshShape(part, at.leftwards);
    const port = shape.ports[0]!;
    const moving = new Set("wire" in target ? [target.wire] : []);
    return { ...freeSpot(scene, shape, at.x - port.x, at.y - port.y, { moving }), turned: at.leftwards };
  });
}

function capSpot(harness: Harness, scene: Scene, target: CapTarget): (Spot & { leftwards: boolean }) | null {
  if ("wire" in target) {
    const loose = scene.wires.get(target.wire)?.loose;
    const end = harness.wires[target.wire]?.ends.find((one) => one !== "loose");
    const root = end ? contactSpot(scene, end.part, end.contact) : null;
    return loose ? { ...loose, leftwards: (root?.x ?? loose.x) > loose.x } : null;
  }
  const root = contactSpot(scene, target.part, target.contact);
  if (!root) return null;
  const leftwards = root.side === "left";
  return { x: root.x + (leftwards ? -CAP_DISTANCE : CAP_DISTANCE), y: root.y, leftwards };
}

/** Cuts a wire in the middle of its longest piece and puts a splice there. */
export function cutWire(harness: Harness, scene: Scene, id: WireId): Edit | Refused {
  const path = scene.wires.get(id)?.path;
  if (!path) return refused("that wire is no longer there");
  let at = { x: path[0]!, y: path[1]! };
  let longest = -1;
  for (let i = 0; i + 3 < path.length; i += 2) {
    const length = Math.abs(path[i + 2]! - path[i]!) + Math.abs(path[i + 3]! - path[i + 1]!);
    if (length <= longest) continue;
    longest = length;
    at = { x: (path[i]! + path[i + 2]!) / 2, y: (path[i + 1]! + path[i + 3]!) / 2 };
  }
  const change = spliceInto(harness, id, null, at);
  if ("ok" in change) return change;
  return placed(change, (part) => {
    const shape = freshShape(part, false);
    const spot = freeSpot(scene, shape, at.x - shape.width / 2, at.y - shape.ports[0]!.y, {
      moving: new Set([id]),
    });
    // Its first contact looks to where the wire begins.
    return { ...spot, turned: path[0]! > path.at(-2)! };
  });
}

/** A new part of a kind, as near to a spot as there is room. Nothing is joined to it yet. */
export function addPart(
  harness: Harness,
  scene: Scene,
  kind: Exclude<PartKind, "connector">,
  at: Spot,
): { readonly edit: Edit; readonly id: PartId } {
  const names = new Names(harness);
  const part = makePart(kind, names.part(), names.designation(kind), {}) as Part;
  const shape = freshShape(part, false);
  const spot = freeSpot(scene, shape, at.x - shape.width / 2, at.y - shape.height / 2);
  const edit = group(`add ${part.designation}`, [
    { kind: "add-part", part, place: makePlace(spot.x, spot.y, true) },
  ]);
  return { edit, id: part.id };
}

/** Turns parts left for right, or pins them: whatever `change` makes of each one's place. */
export function changePlaces(
  scene: Scene,
  parts: Iterable<PartId>,
  name: string,
  change: (place: Place) => Place,
): Edit | Refused {
  const places: Record<PartId, Place> = {};
  for (const id of parts) {
    const now = scene.parts.get(id);
    if (now) places[id] = change({ x: now.x, y: now.y, pinned: now.pinned, turned: now.turned });
  }
  if (Object.keys(places).length === 0) return refused("select a part first");
  return group(name, [{ kind: "lay-out", places, paths: {} }]);
}
