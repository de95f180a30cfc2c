import { contactKey, sameEnd } from "../../graph/contacts.ts";
import type { ContactRef, Harness, PartId, Wire, WireId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import type { PlacedPart, Scene } from "../../layout/scene.ts";
import type { Selection } from "../state/store.ts";
import { contactSpot } from "./nodes-model.ts";

/** Where the keyboard stands: the selection says it, so that mouse and keys never disagree. */
export type Cursor =
  | { readonly level: "none" }
  | { readonly level: "part"; readonly part: PartId }
  | { readonly level: "contact"; readonly ref: ContactRef }
  /** `from`: the contact it was walked onto from. */
  | { readonly level: "wire"; readonly wire: WireId; readonly from: ContactRef | null };

export type Direction = "left" | "right" | "up" | "down";

type View = {
  readonly harness: Pick<Harness, "parts" | "wires">;
  readonly traced: Traced;
  readonly scene: Scene;
};

const DIRECTIONS: Readonly<Record<string, Direction>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** Reads the cursor out of a selection; with several things selected there is none to walk from but the first. */
export function cursorOf(selection: Selection): Cursor {
  const [wire] = selection.wires;
  if (wire && selection.wires.size === 1 && selection.parts.size === 0) {
    return { level: "wire", wire, from: selection.contact };
  }
  if (selection.contact) return { level: "contact", ref: selection.contact };
  const [part] = selection.parts;
  return part ? { level: "part", part } : { level: "none" };
}

/** The selection that a cursor stands for. */
export function selectionOf(cursor: Cursor): Selection {
  switch (cursor.level) {
    case "none":
      return { parts: new Set(), wires: new Set(), contact: null };
    case "part":
      return { parts: new Set([cursor.part]), wires: new Set(), contact: null };
    case "contact":
      return { parts: new Set([cursor.ref.part]), wires: new Set(), contact: cursor.ref };
    case "wire":
      return { parts: new Set(), wires: new Set([cursor.wire]), contact: cursor.from };
  }
}

/**
 * Where a key leads.
 * @param joining a lead is being drawn: sideways then leads to the next part's contacts, not along wires
 * @returns the new cursor, or `null` where the key means nothing here
 */
export function moveByKey(view: View, cursor: Cursor, key: string, joining: boolean): Cursor | null {
  const direction = DIRECTIONS[key];
  switch (cursor.level) {
    case "none": {
      const first = firstPart(view.scene);
      return direction && first ? { level: "part", part: first.part.id } : null;
    }
    case "part":
      if (direction) return neighbour(view.scene, cursor.part, direction);
      if (key === "Enter") return contactInOrder(view.scene, cursor.part, null, 1);
      if (key === "Home" || key === "End") return edgePart(view.scene, key === "End");
      if (key === "Escape") return { level: "none" };
      return null;
    case "contact":
      return fromContact(view, cursor.ref, key, direction, joining);
    case "wire":
      return fromWire(view, cursor.wire, cursor.from, key, direction);
  }
}

function fromContact(
  view: View,
  ref: ContactRef,
  key: string,
  direction: Direction | undefined,
  joining: boolean,
): Cursor | null {
  if (direction === "up") return contactInOrder(view.scene, ref.part, ref.contact, -1);
  if (direction === "down") return contactInOrder(view.scene, ref.part, ref.contact, 1);
  if (key === "Home") return contactInOrder(view.scene, ref.part, null, 1);
  if (key === "End") return contactInOrder(view.scene, ref.part, null, -1);
  if (direction && joining) return nearestContact(view.scene, ref, direction);
  if (direction || key === "w") {
    const [wire] = view.traced.wiresAt(contactKey(ref.part, ref.contact));
    return wire ? { level: "wire", wire: wire.id, from: ref } : null;
  }
  if (key === "Escape") return { level: "part", part: ref.part };
  return null;
}

function fromWire(
  view: View,
  id: WireId,
  from: ContactRef | null,
  key: string,
  direction: Direction | undefined,
): Cursor | null {
  const wire = view.harness.wires[id];
  if (!wire) return { level: "none" };
  if (direction === "up" || direction === "down") {
    if (!from) return null;
    const all = view.traced.wiresAt(contactKey(from.part, from.contact));
    const at = all.findIndex((one) => one.id === id);
    const next = all[(at + (direction === "down" ? 1 : all.length - 1)) % Math.max(1, all.length)];
    return next && next.id !== id ? { level: "wire", wire: next.id, from } : null;
  }
  if (direction || key === "w" || key === "Enter") {
    const far = farEnd(view.scene, wire, from, direction);
    return far ? { level: "contact", ref: far } : null;
  }
  if (key === "Escape") return from ? { level: "contact", ref: from } : { level: "none" };
  return null;
}

/** The end to walk to: away from where it was entered, or the one that lies in the direction of the arrow. */
function farEnd(
  scene: Scene,
  wire: Wire,
  from: ContactRef | null,
  direction: Direction | undefined,
): ContactRef | null {
  const ends = wire.ends.filter((end): end is ContactRef => end !== "loose");
  if (from) return ends.find((end) => !sameEnd(end, from)) ?? null;
  const sorted = ends
    .map((end) => ({ end, x: contactSpot(scene, end.part, end.contact)?.x ?? 0 }))
    .sort((a, b) => a.x - b.x);
  return (direction === "left" ? sorted[0] : sorted[sorted.length - 1])?.end ?? null;
}

/** The part most nearly in a direction: distance along it, with what lies aside counting double. */
function neighbour(scene: Scene, from: PartId, direction: Direction): Cursor | null {
  const start = scene.parts.get(from);
  if (!start) return null;
  const a = middle(start);
  let best: PlacedPart | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const placed of scene.parts.values()) {
    if (placed === start) continue;
    const b = middle(placed);
    const along =
      direction === "left"
        ? a.x - b.x
        : direction === "right"
          ? b.x - a.x
          : direction === "up"
            ? a.y - b.y
            : b.y - a.y;
    const aside = direction === "left" || direction === "right" ? Math.abs(b.y - a.y) : Math.abs(b.x - a.x);
    if (along <= 0) continue;
    const cost = along + 2 * aside;
    if (cost < bestCost) {
      bestCost = cost;
      best = placed;
    }
  }
  return best ? { level: "part", part: best.part.id } : null;
}

function middle({ x, y, shape }: PlacedPart): { x: number; y: number } {
  return { x: x + shape.width / 2, y: y + shape.height / 2 };
}

/** Contacts top to bottom, those on the left side first. */
function orderOf(placed: PlacedPart): number[] {
  const seen = new Set<number>();
  return [...placed.shape.ports]
    .sort((a, b) => Number(a.side === "right") - Number(b.side === "right") || a.y - b.y)
    .map((port) => port.contact)
    .filter((contact) => !seen.has(contact) && seen.add(contact));
}

function contactInOrder(scene: Scene, part: PartId, from: number | null, step: 1 | -1): Cursor | null {
  const placed = scene.parts.get(part);
  if (!placed) return null;
  const order = orderOf(placed);
  const at = from === null ? (step > 0 ? 0 : order.length - 1) : order.indexOf(from) + step;
  const contact = order[at];
  return contact === undefined ? null : { level: "contact", ref: { part, contact } };
}

function nearestContact(scene: Scene, from: ContactRef, direction: Direction): Cursor | null {
  const next = neighbour(scene, from.part, direction);
  const placed = next?.level === "part" ? scene.parts.get(next.part) : undefined;
  const start = contactSpot(scene, from.part, from.contact);
  if (!placed || !start) return null;
  let best: number | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const port of placed.shape.ports) {
    const distance = Math.abs(placed.y + port.y - start.y) + Math.abs(placed.x + port.x - start.x) / 4;
    if (distance >= bestDistance) continue;
    bestDistance = distance;
    best = port.contact;
  }
  return best === null ? next : { level: "contact", ref: { part: placed.part.id, contact: best } };
}

/** Top left first: columns are told apart only where they do not overlap. */
function firstPart(scene: Scene): PlacedPart | undefined {
  return [...scene.parts.values()].sort((a, b) => a.x + a.y - (b.x + b.y))[0];
}

function edgePart(scene: Scene, last: boolean): Cursor | null {
  const sorted = [...scene.parts.values()].sort((a, b) => a.x + a.y - (b.x + b.y));
  const placed = last ? sorted[sorted.length - 1] : sorted[0];
  return placed ? { level: "part", part: placed.part.id } : null;
}
