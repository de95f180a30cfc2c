import type { Primitive } from "../layout/drawing.ts";
import { textWidth } from "../layout/text/measure.ts";
import type { Rect } from "./paper-size.ts";

type Box = { left: number; top: number; right: number; bottom: number };

/** The rectangle that holds what primitives draw, half their lines' width included; `null` where they draw nothing. */
export function boundsOf(items: readonly Primitive[]): Rect | null {
  const box: Box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const item of items) take(item, 0, 0, box);
  if (box.left > box.right) return null;
  return { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top };
}

function take(item: Primitive, dx: number, dy: number, box: Box): void {
  const add = (x: number, y: number, around = 0): void => {
    box.left = Math.min(box.left, x + dx - around);
    box.right = Math.max(box.right, x + dx + around);
    box.top = Math.min(box.top, y + dy - around);
    box.bottom = Math.max(box.bottom, y + dy + around);
  };
  switch (item.kind) {
    case "line":
      add(item.x1, item.y1, item.stroke.width / 2);
      add(item.x2, item.y2, item.stroke.width / 2);
      break;
    case "rectangle": {
      const around = (item.stroke?.width ?? 0) / 2;
      add(item.x, item.y, around);
      add(item.x + item.width, item.y + item.height, around);
      break;
    }
    case "circle":
      add(item.x, item.y, item.radius + (item.stroke?.width ?? 0) / 2);
      break;
    case "path": {
      const around = (item.stroke?.width ?? 0) / 2;
      // A curve lies inside the hull of its control points.
      for (const command of item.commands) {
        for (let i = 1; i + 1 < command.length; i += 2) {
          add(command[i] as number, command[i + 1] as number, around);
        }
      }
      break;
    }
    case "text": {
      const width = textWidth(item.text, item.size, item.weight ?? "regular");
      const back = item.align === "middle" ? width / 2 : item.align === "end" ? width : 0;
      // Ascenders of the typeface reach 0.75 of its size above the baseline, descenders 0.25 below.
      if (item.turn === 90) {
        add(item.x - item.size * 0.75, item.y + back - width);
        add(item.x + item.size * 0.25, item.y + back);
      } else {
        add(item.x - back, item.y - item.size * 0.75);
        add(item.x - back + width, item.y + item.size * 0.25);
      }
      break;
    }
    case "group":
      for (const inner of item.items) take(inner, dx + item.x, dy + item.y, box);
      break;
  }
}

export function overlaps(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
