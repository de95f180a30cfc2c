import { apply } from "../../graph/edits/apply.ts";
import { type Edit, group } from "../../graph/edits/edit.ts";
import type { Harness, PartId, Place } from "../../graph/harness.ts";
import { snap } from "../../layout/geometry/shape.ts";
import type { PlacedPart, Scene } from "../../layout/scene.ts";

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

function matesOf(scene: Scene, part: PartId, moving: ReadonlySet<PartId>): ReadonlySet<string> {
  const mates = new Set<string>();
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

/** The harness as it would be after a move, for showing while the drag is under way. */
export function movedHarness(
  harness: Harness,
  scene: Scene,
  moving: Iterable<PartId>,
  dx: number,
  dy: number,
): Harness {
  const result = apply(harness, moveEdit(harness, scene, moving, dx, dy));
  return result.ok ? result.harness : harness;
}
