import { boxIsFree, type Field, makeField, transposed } from "./field.ts";
import type { RouteEnd, RouteProblem, Side } from "./types.ts";
import { zoneReach } from "./zone.ts";

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

/** With less than this before a neighbour, an end is for the fine search. */
const LEAST_STUB = 2;

const DIRECTION: Record<Side, readonly [number, number]> = {
  left: [-1, 0],
  right: [1, 0],
  top: [0, -1],
  bottom: [0, 1],
};
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
  const noRoom = Math.abs(freeX - end.x) + Math.abs(freeY - end.y) < LEAST_STUB;
  const behind =
    inside ||
    noRoom ||
    !boxIsFree(
      bodies,
      Math.min(end.x, freeX),
      Math.min(end.y, freeY),
      Math.max(end.x, freeX),
      Math.max(end.y, freeY),
    );
  return { x: end.x, y: end.y, dx, dy, freeX, freeY, block, tight: behind };
}
