import type { Cable, Wire } from "../graph/harness.ts";
import type { Ink, PathCommand, Primitive } from "../layout/drawing.ts";
import { LABEL_SIZE } from "../layout/label.ts";
import type { PlacedWire } from "../layout/scene.ts";
import { MIDDLE } from "./part-drawing/pen.ts";
import { ground, tracerOf } from "./part-drawing/swatch.ts";
import { twisted } from "./twist.ts";
import { piecesOf, pointsOf, rounded, tracerStripes } from "./wire-path.ts";

export type WireContext = {
  readonly cable: Cable | null;
  /** The other wire of a twisted pair: with it the two are drawn winding about each other. */
  readonly partner?: PlacedWire | null;
  /** Without tracer stripes, texts and twist: for a view so small that they cannot be seen. */
  readonly plain?: boolean;
};

/** What the outline adds to the width of the insulation, both sides together. */
export const OUTLINE = 1.5;
const BEND = 5;
const PAD = 3;
/** Height of the paper under a label: less than the distance between two wires that leave a housing. */
const BREAK_HEIGHT = 13;

/** Drawn width of the insulation: thicker wires look thicker, in four steps. */
export function wireWidth(area_mm2: Wire["area_mm2"]): number {
  if (area_mm2 === "unknown" || area_mm2 <= 1) return 3.2;
  return area_mm2 <= 2.5 ? 3.8 : area_mm2 <= 6 ? 4.4 : 5;
}

/**
 * A wire in its colours, absolute coordinates: ink outline, insulation, tracer, its label standing in a small
 * break near each end, an open ring where it hangs loose. A colour that nobody has stated is drawn as a
 * broken band, so that it is not taken for grey.
 */
export function drawWire(placed: PlacedWire, context: WireContext): readonly Primitive[] {
  const { wire, labels, loose } = placed;
  const width = wireWidth(wire.area_mm2);
  const winding = context.plain ? null : twisted(placed, context.partner ?? null);
  const points = pointsOf(placed.path);
  const route = winding?.commands ?? rounded(points, BEND);
  const items: Primitive[] = [...insulation(route, wire, width)];
  if (!context.plain) {
    const tracer = wire.colour && tracerOf(wire.colour);
    if (tracer) {
      const stripes = tracerStripes(winding?.straight ?? piecesOf(points), width);
      if (stripes.length > 0) {
        // The hairline keeps a tracer apart from a base that is as light as it in black and white.
        const stroke = { colour: "ink", width: 0.35 } as const;
        items.push({ kind: "path", commands: stripes, fill: `wire:${tracer}`, stroke });
      }
    }
  }
  if (loose) {
    items.push({
      kind: "circle",
      x: loose.x,
      y: loose.y,
      radius: 5,
      fill: "paper",
      stroke: { colour: "ink", width: 1.75 },
    });
  }
  if (!context.plain) for (const label of labels) items.push(...drawLabel(label));
  return items;
}

function insulation(commands: readonly PathCommand[], wire: Wire, width: number): readonly Primitive[] {
  const stroke = (colour: Ink, wide: number, dash?: readonly number[]): Primitive => ({
    kind: "path",
    commands,
    stroke: { colour, width: wide, ...(dash ? { dash } : {}) },
  });
  if (!wire.colour) {
    return [stroke("ink", width + OUTLINE), stroke("paper", width), stroke("quiet", width * 0.5, [2, 4])];
  }
  return [stroke("ink", width + OUTLINE), stroke(`wire:${wire.colour.base}`, width)];
}

/** What stands in a small break of a wire. */
export function drawLabel(label: PlacedWire["labels"][number], colour: Ink = "ink"): readonly Primitive[] {
  const { text, x, y, width } = label;
  return [
    ground(x - width / 2 - PAD, y - BREAK_HEIGHT / 2, width + 2 * PAD, BREAK_HEIGHT),
    {
      kind: "text",
      x,
      y: y + LABEL_SIZE * MIDDLE,
      text,
      size: LABEL_SIZE,
      align: "middle",
      colour,
    },
  ];
}
