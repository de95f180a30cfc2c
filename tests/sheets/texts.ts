import type { Primitive } from "../../src/layout/drawing.ts";

export type Text = Extract<Primitive, { kind: "text" }>;

/** Every text of a drawing, groups opened, at its absolute place. */
export function textsIn(items: readonly Primitive[], dx = 0, dy = 0): Text[] {
  return items.flatMap((item) => {
    if (item.kind === "group") return textsIn(item.items, dx + item.x, dy + item.y);
    return item.kind === "text" ? [{ ...item, x: item.x + dx, y: item.y + dy }] : [];
  });
}

export function wordsIn(items: readonly Primitive[]): string[] {
  return textsIn(items).map((item) => item.text);
}
