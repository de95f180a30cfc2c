import type { Harness } from "../graph/harness.ts";
import type { Drawing, Primitive } from "../layout/drawing.ts";
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
  const items = drawing.items.filter((_, index) => {
    const own = bounds[index];
    return own ? overlaps(own, window) : false;
  });
  return { ...drawing, items };
}

/** The bounds of each item of a drawing, for `within`. */
export function itemBounds(drawing: Drawing): readonly (Rect | null)[] {
  return drawing.items.map((item) => boundsOf([item]));
}
