import { boxIsFree, type Field, makeField, nextLeft, nextRight, transposed } from "./field.ts";
import { MARGIN, type RouteEnd, type RouteProblem, type Side, type WireToRoute } from "./types.ts";

/** One end of a wire, ready for the router. */
export type Anchor = {
  readonly x: number;
  readonly y: number;
  /** Direction away from the block; one of dx, dy is 0. */
  readonly dx: number;
  readonly dy: number;
  /** Where the straight piece ends and bends may begin: on the border of the block's own zone. */
  readonly freeX: number;
  readonly freeY: number;
  readonly block: number;
  /** The free point lies inside a neighbour's zone, so only the fine search can route this end. */
  readonly tight: boolean;
};

export type Scene = {
  /** The parts' bodies. */
  readonly bodies: Field;
  /** Bodies with the room for labels in front of their contacts, and a margin on their other sides. */
  readonly zones: Field;
  readonly zonesTurned: Field;
  readonly anchors: readonly (readonly [Anchor, Anchor])[];
};

const DIRECTION: Record<Side, readonly [number, number]> = {
  left: [-1, 0],
  right: [1, 0],
  top: [0, -1],
  bottom: [0, 1],
};
/** Order of the reach of a zone: left, top, right, bottom. */
const SIDES: readonly Side[] = ["left", "top", "right", "bottom"];

export function prepare(problem: RouteProblem): Scene {
  const { blocks, wires } = problem;
  const indexOf = new Map<string, number>();
  for (let i = 0; i < blocks.length; i++) indexOf.set(blocks[i]!.id, i);
  const bodies = makeField(
    Float64Array.from(blocks, (b) => b.x),
    Float64Array.from(blocks, (b) => b.y),
    Float64Array.from(blocks, (b) => b.x + b.width),
    Float64Array.from(blocks, (b) => b.y + b.height),
  );
  const reach = zoneReach(wires, indexOf, bodies);
  const zones = makeField(
    bodies.x1.map((v, i) => v - reach[i * 4]!),
    bodies.y1.map((v, i) => v - reach[i * 4 + 1]!),
    bodies.x2.map((v, i) => v + reach[i * 4 + 2]!),
    bodies.y2.map((v, i) => v + reach[i * 4 + 3]!),
  );
  const anchors = wires.map((wire): [Anchor, Anchor] => [
    anchorOf(wire.from, indexOf, zones, bodies),
    anchorOf(wire.to, indexOf, zones, bodies),
  ]);
  return { bodies, zones, zonesTurned: transposed(zones), anchors };
}

/** How far each block's zone stands out on each side: [blocks × 4], as SIDES. */
function zoneReach(
  wires: readonly WireToRoute[],
  indexOf: ReadonlyMap<string, number>,
  bodies: Field,
): Float64Array {
  const stubs = new Float64Array(bodies.count * 4);
  for (const wire of wires) {
    for (const end of [wire.from, wire.to]) {
      const block = indexOf.get(end.block);
      if (block === undefined) continue;
      const at = block * 4 + SIDES.indexOf(end.side);
      stubs[at] = Math.max(stubs[at]!, end.stub);
    }
  }
  const reach = stubs.map((stub) => Math.max(stub, MARGIN));
  for (let i = 0; i < bodies.count; i++) {
    for (const side of [0, 2]) {
      if (reach[i * 4 + side]! <= MARGIN) continue;
      reach[i * 4 + side] = reachWithNeighbours(bodies, i, side, reach[i * 4 + side]!, stubs);
    }
  }
  return reach;
}

/**
 * A tall neighbour standing in front of a connector leaves less room for labels than they ask; the two then
 * share what there is. A small part in front of a few contacts changes nothing for the others.
 */
function reachWithNeighbours(bodies: Field, i: number, side: number, asked: number, stubs: Float64Array) {
  const { x1, y1, x2, y2 } = bodies;
  const facing = side === 0 ? 2 : 0;
  let reach = asked;
  const height = y2[i]! - y1[i]!;
  for (let j = 0; j < bodies.count; j++) {
    const distance = side === 0 ? x1[i]! - x2[j]! : x1[j]! - x2[i]!;
    const theirs = stubs[j * 4 + facing]!;
    if (j === i || distance < 0 || distance > asked + Math.max(theirs, MARGIN)) continue;
    const shared = Math.min(y2[i]!, y2[j]!) - Math.max(y1[i]!, y1[j]!);
    if (shared < height * 0.4) continue;
    const room = distance - MARGIN;
    const fair = theirs > 0 ? Math.max(room / 2, room - theirs) : room;
    reach = Math.min(reach, Math.max(fair, MARGIN));
  }
  return reach;
}

function anchorOf(end: RouteEnd, indexOf: ReadonlyMap<string, number>, zones: Field, bodies: Field): Anchor {
  const [dx, dy] = DIRECTION[end.side];
  const block = indexOf.get(end.block) ?? -1;
  let freeX = end.x;
  let freeY = end.y;
  if (block < 0) {
    freeX += dx * end.stub;
    freeY += dy * end.stub;
  } else if (dx !== 0) freeX = dx < 0 ? zones.x1[block]! : zones.x2[block]!;
  else freeY = dy < 0 ? zones.y1[block]! : zones.y2[block]!;
  const inside = !boxIsFree(zones, freeX, freeY, freeX, freeY);
  const behind =
    inside ||
    !boxIsFree(
      bodies,
      Math.min(end.x, freeX),
      Math.min(end.y, freeY),
      Math.max(end.x, freeX),
      Math.max(end.y, freeY),
    );
  return { x: end.x, y: end.y, dx, dy, freeX, freeY, block, tight: inside || behind };
}

/** How far an upright or level line may shift before it meets a zone: [low, high], either may be infinite. */
export function shiftRoom(
  scene: Scene,
  upright: boolean,
  at: number,
  from: number,
  to: number,
): [number, number] {
  const field = upright ? scene.zones : scene.zonesTurned;
  return [nextLeft(field, at, from, to), nextRight(field, at, from, to)];
}
