import Flatbush from "flatbush";
import type { ContactRef, PartId, WireId } from "../../graph/harness.ts";
import type { PlacedPart, PlacedWire, Scene } from "../../layout/scene.ts";

/** What lies under a point of the drawing. */
export type Hit =
  | { readonly kind: "contact"; readonly ref: ContactRef; readonly x: number; readonly y: number }
  | { readonly kind: "loose"; readonly wire: WireId; readonly x: number; readonly y: number }
  | { readonly kind: "part"; readonly part: PartId }
  | { readonly kind: "wire"; readonly wire: WireId; readonly x: number; readonly y: number }
  | { readonly kind: "nothing" };

export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

type Segment = {
  readonly placed: PlacedWire;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
};

/** Finds what stands where on a scene, without asking the page: the canvas has no element for each wire. */
export type HitIndex = {
  readonly scene: Scene;
  readonly segments: readonly Segment[];
  readonly wires: Flatbush | null;
  readonly placed: readonly PlacedPart[];
  readonly parts: Flatbush | null;
};

/** How far a contact's own area reaches into its part: the cell with the cavity's label, or a third of a symbol. */
const INWARD_HOUSING = 32;
const INWARD_SYMBOL = 14;
const HALF_ROW = 12;

const indexes = new WeakMap<Scene, HitIndex>();

/** The index of a scene; the same scene always gives the same one. */
export function hitIndex(scene: Scene): HitIndex {
  const known = indexes.get(scene);
  if (known) return known;
  const made = makeIndex(scene);
  indexes.set(scene, made);
  return made;
}

function makeIndex(scene: Scene): HitIndex {
  const segments: Segment[] = [];
  for (const placed of scene.wires.values()) {
    const { path } = placed;
    for (let i = 0; i + 3 < path.length; i += 2) {
      segments.push({ placed, x1: path[i]!, y1: path[i + 1]!, x2: path[i + 2]!, y2: path[i + 3]! });
    }
  }
  const placed = [...scene.parts.values()];
  let wires: Flatbush | null = null;
  if (segments.length) {
    wires = new Flatbush(segments.length);
    for (const { x1, y1, x2, y2 } of segments) {
      wires.add(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
    }
    wires.finish();
  }
  let parts: Flatbush | null = null;
  if (placed.length) {
    parts = new Flatbush(placed.length);
    for (const { x, y, shape } of placed) parts.add(x, y, x + shape.width, y + shape.height);
    parts.finish();
  }
  return { scene, segments, wires, placed, parts };
}

/**
 * What is meant by a point: a contact before a loose end, that before a part, that before a wire.
 * @param reach how far off a point may be, drawing units: a finger is less exact than a mouse
 */
export function hitAt(scene: Scene, x: number, y: number, reach: number): Hit {
  const index = hitIndex(scene);
  return (
    contactNear(index, x, y, reach) ??
    looseNear(index, x, y, reach) ??
    partAt(index, x, y) ??
    wireNear(index, x, y, reach) ?? { kind: "nothing" }
  );
}

function contactNear(index: HitIndex, x: number, y: number, reach: number): Hit | null {
  const found = index.parts?.search(x - reach, y - reach, x + reach, y + reach) ?? [];
  let best: Hit | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const number of found) {
    const { part, shape, x: left, y: top } = index.placed[number]!;
    const inward = part.kind === "connector" || part.kind === "module" ? INWARD_HOUSING : INWARD_SYMBOL;
    for (const port of shape.ports) {
      const outwards = (x - left - port.x) * (port.side === "left" ? -1 : 1);
      const away = Math.abs(y - top - port.y);
      if (outwards > reach || outwards < -inward || away > Math.max(HALF_ROW, reach)) continue;
      const distance = away + Math.max(0, outwards);
      if (distance >= bestDistance) continue;
      bestDistance = distance;
      best = {
        kind: "contact",
        ref: { part: part.id, contact: port.contact },
        x: left + port.x,
        y: top + port.y,
      };
    }
  }
  return best;
}

function looseNear(index: HitIndex, x: number, y: number, reach: number): Hit | null {
  const wide = Math.max(reach, 10);
  for (const number of index.wires?.search(x - wide, y - wide, x + wide, y + wide) ?? []) {
    const { wire, loose } = index.segments[number]!.placed;
    if (loose && Math.hypot(loose.x - x, loose.y - y) <= wide) {
      return { kind: "loose", wire: wire.id, x: loose.x, y: loose.y };
    }
  }
  return null;
}

function partAt(index: HitIndex, x: number, y: number): Hit | null {
  const found = index.parts?.search(x, y, x, y) ?? [];
  // The later part is drawn above the earlier one.
  const top = found.length ? Math.max(...found) : -1;
  return top < 0 ? null : { kind: "part", part: index.placed[top]!.part.id };
}

function wireNear(index: HitIndex, x: number, y: number, reach: number): Hit | null {
  let best: Hit | null = null;
  let bestDistance = reach;
  for (const number of index.wires?.search(x - reach, y - reach, x + reach, y + reach) ?? []) {
    const { placed, x1, y1, x2, y2 } = index.segments[number]!;
    const nearX = Math.min(Math.max(x, Math.min(x1, x2)), Math.max(x1, x2));
    const nearY = Math.min(Math.max(y, Math.min(y1, y2)), Math.max(y1, y2));
    const distance = Math.hypot(x - nearX, y - nearY);
    if (distance > bestDistance) continue;
    bestDistance = distance;
    best = { kind: "wire", wire: placed.wire.id, x: nearX, y: nearY };
  }
  return best;
}

/** The wires of which any piece lies in a box, in drawing order. */
export function wiresIn(scene: Scene, box: Box): readonly PlacedWire[] {
  const index = hitIndex(scene);
  const found = index.wires?.search(box.x, box.y, box.x + box.width, box.y + box.height) ?? [];
  found.sort((a, b) => a - b);
  const wires: PlacedWire[] = [];
  for (const number of found) {
    const { placed } = index.segments[number]!;
    if (wires[wires.length - 1] !== placed) wires.push(placed);
  }
  return wires;
}

/** The parts of which any piece lies in a box, in drawing order. */
export function partsIn(scene: Scene, box: Box): readonly PlacedPart[] {
  const index = hitIndex(scene);
  const found = index.parts?.search(box.x, box.y, box.x + box.width, box.y + box.height) ?? [];
  return found.sort((a, b) => a - b).map((number) => index.placed[number]!);
}

/**
 * What a selection box takes: parts it touches, and wires it holds entirely. A wire that merely passes through
 * is not meant; otherwise no box round two connectors would leave the bundle between others alone.
 */
export function heldBy(scene: Scene, box: Box): { parts: Set<PartId>; wires: Set<WireId> } {
  const parts = new Set(partsIn(scene, box).map((placed) => placed.part.id));
  const wires = new Set<WireId>();
  for (const { wire, path } of wiresIn(scene, box)) {
    let inside = true;
    for (let i = 0; i < path.length && inside; i += 2) {
      inside =
        path[i]! >= box.x &&
        path[i]! <= box.x + box.width &&
        path[i + 1]! >= box.y &&
        path[i + 1]! <= box.y + box.height;
    }
    if (inside) wires.add(wire.id);
  }
  return { parts, wires };
}

/** The box with two opposite corners, whichever they are. */
export function boxOf(x1: number, y1: number, x2: number, y2: number): Box {
  return { x: Math.min(x1, x2), y: Math.min(y1, y2), width: Math.abs(x2 - x1), height: Math.abs(y2 - y1) };
}
