import type { Harness } from "../graph/harness.ts";
import type { Drawing, PathCommand, Primitive } from "../layout/drawing.ts";
import type { Scene } from "../layout/scene.ts";
import { boundsOf, overlaps } from "./bounds.ts";
import { drawWires } from "./cable-drawing.ts";
import type { Rect } from "./paper-size.ts";
import { drawPart } from "./part-drawing/draw-part.ts";

/** Paper kept free about the drawing. */
const AROUND = 8;

/** The whole diagram, as the screen shows it: wires, then parts over their ends. */
export function drawDiagram(scene: Scene, harness: Harness): Drawing {
  const items: Primitive[] = [...drawWires(scene, harness)];
  for (const placed of scene.parts.values()) {
    items.push({ kind: "group", x: placed.x, y: placed.y, items: drawPart(placed, { harness }) });
  }
  const drawn = boundsOf(items) ?? scene.bounds;
  return {
    x: drawn.x - AROUND,
    y: drawn.y - AROUND,
    width: drawn.width + 2 * AROUND,
    height: drawn.height + 2 * AROUND,
    items,
  };
}

/** A drawing without what lies wholly outside a window, so that a tile carries only what it shows. */
export function within(drawing: Drawing, bounds: readonly (Rect | null)[], window: Rect): Drawing {
  const items: Primitive[] = [];
  for (const [index, item] of drawing.items.entries()) {
    const own = bounds[index];
    if (own && overlaps(own, window)) items.push(item.kind === "path" ? pathWithin(item, window) : item);
  }
  return { ...drawing, items };
}

type PathItem = Extract<Primitive, { kind: "path" }>;

/** A path of many pieces, such as the stripes of a tracer, without the pieces outside a window. */
function pathWithin(item: PathItem, window: Rect): PathItem {
  const commands: PathCommand[] = [];
  let piece: PathCommand[] = [];
  const flush = (): void => {
    const own = boundsOf([{ ...item, commands: piece }]);
    if (own && overlaps(own, window)) commands.push(...piece);
    piece = [];
  };
  for (const command of item.commands) {
    if (command[0] === "M") flush();
    piece.push(command);
  }
  flush();
  return { ...item, commands };
}

/** The bounds of each item of a drawing, for `within`. */
export function itemBounds(drawing: Drawing): readonly (Rect | null)[] {
  return drawing.items.map((item) => boundsOf([item]));
}
