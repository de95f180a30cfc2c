import type { Connector } from "../graph/harness.ts";
import type { Primitive } from "../layout/drawing.ts";
import { textWidth } from "../layout/text/measure.ts";
import { box, HAIR, HEAVY, inkStroke, line, MIDDLE, RULE, words } from "./part-drawing/pen.ts";
import { swatch } from "./part-drawing/swatch.ts";

const SIZE = 10;
const CELL = { widest: 44, narrowest: 13, height: 34, low: 18 } as const;

export type Figure = {
  readonly width: number;
  readonly height: number;
  /** Drawn with its top left corner there. */
  readonly draw: (x: number, y: number) => readonly Primitive[];
};

/**
 * The face of a connector from its stated side: every cavity in its place with what the housing prints beside it
 * and the colour of its lead; a plugged one is crossed, a gap is left out.
 * @returns null where the face has not been stated
 */
export function faceFigure(part: Connector, width: number): Figure | null {
  const columns = Math.max(0, ...part.rows.map((row) => row.length));
  if (columns === 0) return null;
  const pitch = Math.min(CELL.widest, Math.max(CELL.narrowest, (width - 16) / columns));
  // A face that is wider than the sheet goes on below itself.
  const perBand = Math.min(columns, Math.floor((width - 16) / pitch));
  const bands = Math.ceil(columns / perBand);
  const cellHeight = pitch >= 26 ? CELL.height : CELL.low;
  const bandHeight = part.rows.length * cellHeight + 14;
  return {
    width: perBand * pitch + 12,
    height: bands * bandHeight,
    draw: (x, y) =>
      Array.from({ length: bands }, (_, band) =>
        drawBand(part, band * perBand, Math.min(columns, (band + 1) * perBand), pitch, cellHeight, {
          x,
          y: y + band * bandHeight,
        }),
      ).flat(),
  };
}

function drawBand(
  part: Connector,
  from: number,
  to: number,
  pitch: number,
  cellHeight: number,
  at: { readonly x: number; readonly y: number },
): Primitive[] {
  const width = (to - from) * pitch;
  const height = part.rows.length * cellHeight;
  const items: Primitive[] = [
    box(at.x, at.y, width + 12, height + 12, { radius: 5, fill: "panel", stroke: inkStroke(HEAVY) }),
  ];
  for (const [rowIndex, row] of part.rows.entries()) {
    for (let column = from; column < to; column++) {
      const contact = row[column] ?? 0;
      const cavity = part.cavities[contact - 1];
      if (!cavity) continue;
      const x = at.x + 6 + (column - from) * pitch;
      const y = at.y + 6 + rowIndex * cellHeight;
      items.push(
        box(x + 1, y + 1, pitch - 2, cellHeight - 2, { fill: "paper", stroke: inkStroke(RULE * 0.8) }),
      );
      const low = cellHeight < CELL.height;
      const middle = x + pitch / 2;
      if (textWidth(cavity.label, SIZE, "bold") <= pitch - 3) {
        items.push(
          ...words(middle, y + (low ? cellHeight / 2 : 12) + SIZE * MIDDLE, cavity.label, {
            size: SIZE,
            weight: "bold",
            align: "middle",
            room: pitch - 2,
          }),
        );
      }
      if (!low && cavity.lead)
        items.push(...swatch(middle - 10, y + cellHeight - 13, 20, 8, cavity.lead.colour));
      if (cavity.use === "plugged") {
        items.push(
          line(x + 2, y + 2, x + pitch - 2, y + cellHeight - 2, HAIR),
          line(x + 2, y + cellHeight - 2, x + pitch - 2, y + 2, HAIR),
        );
      }
    }
  }
  return items;
}
