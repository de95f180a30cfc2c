import { writeColour } from "../catalogue/colours.ts";
import { nearestAwg } from "../catalogue/conductors.ts";
import type { Settings, Wire } from "../graph/harness.ts";
import { textWidth } from "./text/measure.ts";

/** Size of the text that stands in a wire, drawing units. */
export const LABEL_SIZE = 11.5;
/** Bare wire between a contact and its label, and on the label's other side. */
export const LABEL_GAP = 8;

/** What stands in a wire near its ends: number, colour letters, size ("W12 BU/WH 0.75"). */
export function labelText(wire: Wire, sizes: Settings["sizes"]): string {
  const size =
    wire.area_mm2 === "unknown"
      ? ""
      : sizes === "awg"
        ? `${nearestAwg(wire.area_mm2)} AWG`
        : String(Number(wire.area_mm2.toPrecision(3)));
  return [wire.label || wire.designation, writeColour(wire.colour), size]
    .filter((word) => word !== "")
    .join(" ");
}

export type PlacedLabel = {
  readonly text: string;
  /** Middle of the label, on the wire. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
};

/** How far a wire must run straight out of a contact so that its label has room. */
export function stubLength(text: string): number {
  return Math.ceil(textWidth(text, LABEL_SIZE, "regular")) + 2 * LABEL_GAP;
}

/**
 * Puts a wire's label near both ends, on its first and last straight piece. Where one straight piece must serve
 * both ends and is too short for two, there is one in its middle; where not even that fits, there is none.
 */
export function placeLabels(path: readonly number[], text: string): readonly PlacedLabel[] {
  const width = Math.ceil(textWidth(text, LABEL_SIZE, "regular"));
  const points = path.length / 2;
  if (points < 2) return [];
  const at = (index: number) => ({ x: path[2 * index]!, y: path[2 * index + 1]! });
  const need = width + 2 * LABEL_GAP;
  if (points === 2) {
    const [a, b] = [at(0), at(1)];
    if (a.y !== b.y) return [];
    const length = Math.abs(b.x - a.x);
    if (length < need) return [];
    if (length < 2 * need) return [{ text, x: (a.x + b.x) / 2, y: a.y, width }];
  }
  const labels: PlacedLabel[] = [];
  for (const [near, next] of [
    [at(0), at(1)],
    [at(points - 1), at(points - 2)],
  ] as const) {
    if (near.y !== next.y) continue;
    const length = Math.abs(next.x - near.x);
    if (length < need) continue;
    const outward = Math.sign(next.x - near.x);
    labels.push({ text, x: near.x + outward * (LABEL_GAP + width / 2), y: near.y, width });
  }
  return labels;
}
