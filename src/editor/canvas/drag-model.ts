import { type Edit, group } from "../../graph/edits/edit.ts";
import type { End, Harness, PartId, Path, Place, Settings, WireId } from "../../graph/harness.ts";
import { snap } from "../../layout/geometry/shape.ts";
import { labelText, placeLabels, stubLength } from "../../layout/label.ts";
import { route } from "../../layout/route/route.ts";
import type { RouteEnd, WireToRoute } from "../../layout/route/types.ts";
import type { PlacedPart, PlacedWire, Scene } from "../../layout/scene.ts";

export type Guide = readonly [x1: number, x2: number, y: number];
export type Shift = { readonly dx: number; readonly dy: number; readonly guides: readonly Guide[] };

/** A dragged contact takes a neighbour's row from this far away; from further where a wire joins the two. */
const ROW_PULL = 5;
const JOINED_PULL = 9;
/** Rows of parts further off than this are not the neighbours a person has in mind. */
const NEIGHBOUR_REACH = 900;

/**
 * Where a drag puts parts: on the grid, or with a contact on the row of a neighbour's contact, so that the wire
 * between them runs straight.
 * @param held the part under the pointer, which the others follow
 * @param free let the parts go anywhere (a key is held)
 */
export function snapShift(
  scene: Scene,
  moving: ReadonlySet<PartId>,
  held: PartId,
  dx: number,
  dy: number,
  free = false,
): Shift {
  const placed = scene.parts.get(held);
  if (!placed || free) return { dx: Math.round(dx), dy: Math.round(dy), guides: [] };
  const snappedX = snap(placed.x + dx) - placed.x;
  const row = bestRow(scene, moving, placed, dx, dy);
  if (row) return { dx: snappedX, dy: row.dy, guides: [row.guide] };
  return { dx: snappedX, dy: snap(placed.y + dy) - placed.y, guides: [] };
}

function bestRow(
  scene: Scene,
  moving: ReadonlySet<PartId>,
  placed: PlacedPart,
  dx: number,
  dy: number,
): { dy: number; guide: Guide } | null {
  const mates = matesOf(scene, placed.part.id, moving);
  const left = placed.x + dx;
  const top = placed.y + dy;
  let best: { dy: number; guide: Guide } | null = null;
  let bestOff = Number.POSITIVE_INFINITY;
  for (const other of scene.parts.values()) {
    if (moving.has(other.part.id)) continue;
    if (Math.abs(other.x - left) > NEIGHBOUR_REACH) continue;
    if (other.y > top + placed.shape.height + JOINED_PULL) continue;
    if (other.y + other.shape.height < top - JOINED_PULL) continue;
    for (const theirs of other.shape.ports) {
      const y = other.y + theirs.y;
      for (const ours of placed.shape.ports) {
        const off = y - (top + ours.y);
        const joined = mates.has(`${ours.contact}|${other.part.id}#${theirs.contact}`);
        if (Math.abs(off) > (joined ? JOINED_PULL : ROW_PULL)) continue;
        // A row that a wire runs along is worth more than one that only happens to be near.
        const cost = Math.abs(off) + (joined ? 0 : JOINED_PULL);
        if (cost >= bestOff) continue;
        bestOff = cost;
        const [a, b] = [left + ours.x, other.x + theirs.x];
        best = { dy: dy + off, guide: [Math.min(a, b), Math.max(a, b), y] };
      }
    }
  }
  return best;
}

const remembered = new WeakMap<
  ReadonlySet<PartId>,
  { scene: Scene; part: PartId; mates: ReadonlySet<string> }
>();

/** Which contact of a part is wired to which contact that stays. Asked on every frame of a drag: found once. */
function matesOf(scene: Scene, part: PartId, moving: ReadonlySet<PartId>): ReadonlySet<string> {
  const known = remembered.get(moving);
  if (known?.scene === scene && known.part === part) return known.mates;
  const mates = new Set<string>();
  remembered.set(moving, { scene, part, mates });
  for (const { wire } of scene.wires.values()) {
    for (const [near, far] of [wire.ends, [wire.ends[1], wire.ends[0]]] as const) {
      if (near === "loose" || far === "loose" || near.part !== part || moving.has(far.part)) continue;
      mates.add(`${near.contact}|${far.part}#${far.contact}`);
    }
  }
  return mates;
}

/** The edit of moving parts by a shift. What a person has put somewhere is pinned there. */
export function moveEdit(
  harness: Harness,
  scene: Scene,
  moving: Iterable<PartId>,
  dx: number,
  dy: number,
): Edit {
  const places: Record<PartId, Place> = {};
  let count = 0;
  let name = "";
  for (const id of moving) {
    const placed = scene.parts.get(id);
    if (!placed) continue;
    places[id] = { x: placed.x + dx, y: placed.y + dy, pinned: true, turned: placed.turned };
    count++;
    name = harness.parts[id]?.designation ?? "part";
  }
  return group(count === 1 ? `move ${name}` : `move ${count} parts`, [
    { kind: "lay-out", places, paths: {} },
  ]);
}

/** The wires that a move takes along: every one that ends on a moved part. */
export function wiresTaken(scene: Scene, moving: ReadonlySet<PartId>): ReadonlySet<WireId> {
  const taken = new Set<WireId>();
  for (const { wire } of scene.wires.values()) {
    if (wire.ends.some((end) => end !== "loose" && moving.has(end.part))) taken.add(wire.id);
  }
  return taken;
}

/**
 * The scene while a drag is under way. Only the wires that end on moved parts run anew, round the parts but not yet
 * beside all other wires; what the drop costs more is paid once, not on every frame.
 * @param quick let the wires run straight out, across and in, whatever stands in their way
 */
export function draggedScene(
  scene: Scene,
  sizes: Settings["sizes"],
  moving: ReadonlySet<PartId>,
  taken: ReadonlySet<WireId>,
  dx: number,
  dy: number,
  quick = false,
): Scene {
  const parts = new Map(scene.parts);
  for (const id of moving) {
    const placed = parts.get(id);
    if (placed) parts.set(id, { ...placed, x: placed.x + dx, y: placed.y + dy });
  }
  const blocks = [...parts.values()].map(({ part, shape, x, y }) => ({
    id: part.id,
    x,
    y,
    width: shape.width,
    height: shape.height,
  }));
  const wires = new Map(scene.wires);
  const toRoute: WireToRoute[] = [];
  for (const id of taken) {
    const placed = scene.wires.get(id)!;
    const [a, b] = placed.wire.ends;
    const goes = (end: End) => end !== "loose" && moving.has(end.part);
    if ((a === "loose" || goes(a)) && (b === "loose" || goes(b))) {
      wires.set(id, shifted(placed, dx, dy));
      continue;
    }
    const stub = stubLength(labelText(placed.wire, sizes));
    const { path } = placed;
    const n = path.length;
    toRoute.push({
      id,
      circuit: String(placed.circuit),
      from: endOf(a, [path[0]!, path[1]!, path[2]!, path[3]!], goes(a), dx, dy, stub),
      to: endOf(b, [path[n - 2]!, path[n - 1]!, path[n - 4]!, path[n - 3]!], goes(b), dx, dy, stub),
    });
  }
  const { paths, failed } = quick
    ? { paths: new Map(toRoute.map((wire) => [wire.id, elbow(wire.from, wire.to)])), failed: [] }
    : route({ blocks, wires: toRoute, kept: new Map() });
  for (const [id, path] of paths) {
    const placed = scene.wires.get(id as WireId);
    if (!placed) continue;
    const labels = placeLabels(path, labelText(placed.wire, sizes));
    wires.set(placed.wire.id, { ...placed, path, labels });
  }
  return { ...scene, parts, wires, failed };
}

/** Out of the one contact, across in the middle, into the other: at right angles, round nothing. */
function elbow(from: RouteEnd, to: RouteEnd): Path {
  const out = (end: RouteEnd) => end.x + (end.side === "left" ? -end.stub : end.stub);
  const [a, b] = [out(from), out(to)];
  if (from.y === to.y && from.side !== to.side) return [from.x, from.y, to.x, to.y];
  const facing = from.side !== to.side && (from.side === "left" ? b <= a : b >= a);
  if (facing) {
    const middle = (a + b) / 2;
    return [from.x, from.y, middle, from.y, middle, to.y, to.x, to.y];
  }
  const across = (from.y + to.y) / 2;
  return [from.x, from.y, a, from.y, a, across, b, across, b, to.y, to.x, to.y];
}

/** The end of a wire from its present path: where it is, and on which side of its part it leaves. */
function endOf(
  end: End,
  [x, y, nextX, nextY]: readonly [number, number, number, number],
  goes: boolean,
  dx: number,
  dy: number,
  stub: number,
): RouteEnd {
  const side = nextX === x ? (nextY < y ? "top" : "bottom") : nextX < x ? "left" : "right";
  const block = end === "loose" ? "loose" : end.part;
  return goes ? { block, x: x + dx, y: y + dy, side, stub } : { block, x, y, side, stub };
}

function shifted(placed: PlacedWire, dx: number, dy: number): PlacedWire {
  return {
    ...placed,
    path: placed.path.map((value, index) => value + (index % 2 === 0 ? dx : dy)),
    labels: placed.labels.map((label) => ({ ...label, x: label.x + dx, y: label.y + dy })),
    loose: placed.loose && { x: placed.loose.x + dx, y: placed.loose.y + dy },
  };
}
