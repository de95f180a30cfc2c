import type { Drawing, Primitive } from "../../../src/layout/drawing.ts";

/** Every kind of primitive, every alignment, both turns, a dash, a group in a group. */
export const SPECIMEN_ITEMS: readonly Primitive[] = [
  {
    kind: "rectangle",
    x: 20,
    y: 20,
    width: 120,
    height: 160,
    radius: 6,
    fill: "panel",
    stroke: { colour: "ink", width: 1.5 },
  },
  { kind: "rectangle", x: 20, y: 20, width: 120, height: 28, stroke: { colour: "ink", width: 1 } },
  { kind: "text", x: 30, y: 39, text: "X1 receiver", size: 14, weight: "bold", colour: "ink" },
  { kind: "text", x: 30, y: 68, text: "A4 constant feed", size: 11, colour: "ink" },
  { kind: "text", x: 30, y: 88, text: "12.5 Ω ±0.5 Ω → 0.75 mm² at 40 °C", size: 11, colour: "quiet" },
  { kind: "text", x: 130, y: 108, text: "Ηχείο αριστερά", size: 11, align: "end", colour: "ink" },
  { kind: "text", x: 80, y: 128, text: "Задний ход", size: 11, align: "middle", colour: "fault" },
  { kind: "text", x: 152, y: 180, text: "run R1 cabin", size: 11, align: "start", colour: "ink", turn: 90 },
  { kind: "text", x: 166, y: 100, text: "middle", size: 11, align: "middle", colour: "ink", turn: 90 },
  { kind: "line", x1: 140, y1: 64, x2: 300, y2: 64, stroke: { colour: "ink", width: 6 } },
  { kind: "line", x1: 140, y1: 64, x2: 300, y2: 64, stroke: { colour: "wire:YE", width: 4 } },
  {
    kind: "line",
    x1: 140,
    y1: 64,
    x2: 300,
    y2: 64,
    stroke: { colour: "wire:RD", width: 2, dash: [8, 8] },
  },
  {
    kind: "path",
    commands: [
      ["M", 140, 100],
      ["C", 180, 100, 180, 140, 220, 140],
      ["L", 300, 140],
    ],
    stroke: { colour: "wire:BU", width: 4, cap: "round" },
  },
  {
    kind: "path",
    commands: [["M", 200, 160], ["L", 240, 160], ["L", 220, 190], ["Z"]],
    fill: "wire:GN",
    stroke: { colour: "ink", width: 1 },
  },
  {
    kind: "group",
    x: 260,
    y: 160,
    items: [
      { kind: "circle", x: 10, y: 10, radius: 10, fill: "danger", stroke: { colour: "ink", width: 1 } },
      {
        kind: "group",
        x: 30,
        y: 0,
        items: [{ kind: "circle", x: 10, y: 10, radius: 10, stroke: { colour: "accent", width: 2 } }],
      },
    ],
  },
];

export const SPECIMEN: Drawing = { x: 0, y: 0, width: 340, height: 200, items: SPECIMEN_ITEMS };

/** A drawing that holds one text. */
export function oneText(text: string): Drawing {
  const item: Primitive = { kind: "text", x: 10, y: 30, text, size: 12, colour: "ink" };
  return { x: 0, y: 0, width: 400, height: 40, items: [item] };
}
