import type { Harness, PartId, Place } from "../harness.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

/** A part as it stands: its top left corner and what it covers, in drawing units. */
export type Box = {
  readonly part: PartId;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

export type Alignment = "left" | "centre" | "right" | "top" | "middle" | "bottom";

/** The rhythm of the drawing: places that a person chooses fall on whole multiples of it. */
export const GRID = 8;

/** The nearest multiple of the grid. */
export function snap(value: number, grid = GRID): number {
  // Adding zero turns −0 into 0, which JSON would lose.
  return Math.round(value / grid) * grid + 0;
}

/** Moves parts to one edge or middle line of all of them. The caller knows the sizes; the document does not. */
export function align(harness: Harness, boxes: readonly Box[], to: Alignment): Edit | Refused {
  if (boxes.length < 2) return refused("choose two parts or more to align");
  const left = Math.min(...boxes.map((box) => box.x));
  const right = Math.max(...boxes.map((box) => box.x + box.width));
  const top = Math.min(...boxes.map((box) => box.y));
  const bottom = Math.max(...boxes.map((box) => box.y + box.height));
  const moves: Readonly<Record<Alignment, (box: Box) => Partial<Box>>> = {
    left: () => ({ x: left }),
    centre: (box) => ({ x: (left + right - box.width) / 2 }),
    right: (box) => ({ x: right - box.width }),
    top: () => ({ y: top }),
    middle: (box) => ({ y: (top + bottom - box.height) / 2 }),
    bottom: (box) => ({ y: bottom - box.height }),
  };
  const moved = boxes.map((box) => ({ ...box, ...moves[to](box) }));
  return place(harness, moved, `align ${to}`);
}

/** Leaves equal room between neighbours; the two outermost stay where they are. */
export function distribute(
  harness: Harness,
  boxes: readonly Box[],
  direction: "horizontally" | "vertically",
): Edit | Refused {
  if (boxes.length < 3) return refused("choose three parts or more to distribute");
  const [start, size] = direction === "horizontally" ? (["x", "width"] as const) : (["y", "height"] as const);
  const order = [...boxes].sort((a, b) => a[start] - b[start]);
  const first = order[0]!;
  const last = order[order.length - 1]!;
  const covered = order.reduce((sum, box) => sum + box[size], 0);
  const room = (last[start] + last[size] - first[start] - covered) / (order.length - 1);
  let at = first[start];
  const moved = order.map((box, index) => {
    const here = index === 0 ? box : index === order.length - 1 ? last : { ...box, [start]: at };
    at += box[size] + room;
    return here;
  });
  return place(harness, moved, `distribute ${direction}`);
}

/** Puts parts on the grid. */
export function snapToGrid(harness: Harness, boxes: readonly Box[]): Edit | Refused {
  return place(harness, boxes, "snap to grid");
}

function place(harness: Harness, boxes: readonly Box[], name: string): Edit | Refused {
  const places: Record<PartId, Place> = {};
  let changes = 0;
  for (const { part, x, y } of boxes) {
    if (!harness.parts[part]) return refused(`there is no part ${part}`);
    const old = harness.layout.places[part];
    const next = { x: snap(x), y: snap(y), pinned: true, turned: old?.turned ?? false };
    if (old && old.x === next.x && old.y === next.y) continue;
    places[part] = old ? { ...old, ...next } : next;
    changes++;
  }
  if (!changes) return refused("they stand so already");
  return group(name, [{ kind: "lay-out", places, paths: {} }]);
}
