import type { Drawing, Primitive } from "../../src/layout/drawing.ts";
import { textWidth } from "../../src/layout/text/measure.ts";
import { writePages } from "../../src/sheets/writers/pdf.ts";
import { writeSvg } from "../../src/sheets/writers/svg.ts";
import { readTypeface } from "../../src/tasks/typeface.mjs";

/** As many primitives as a harness of that many wires has: three strokes and four texts a wire. */
function wires(count: number): Drawing {
  const items = Array.from({ length: count }, (_, index): Primitive[] => {
    const y = 12 * index;
    const line = { kind: "line", x1: 200, y1: y, x2: 900, y2: y } as const;
    const text = { kind: "text", y: y + 4, size: 8, colour: "ink" } as const;
    return [
      { ...line, stroke: { colour: "ink", width: 5 } },
      { ...line, stroke: { colour: "wire:RD", width: 3 } },
      { ...line, stroke: { colour: "wire:BK", width: 2, dash: [8, 8] } },
      { ...text, x: 10, text: `A${index + 1} constant feed` },
      { ...text, x: 210, text: `W${index + 1} RD/BK 0.75 mm²` },
      { ...text, x: 890, align: "end", text: `W${index + 1} RD/BK 0.75 mm²` },
      { ...text, x: 910, text: `B${index + 1} speaker front left +` },
    ];
  }).flat();
  return { x: 0, y: 0, width: 1100, height: 12 * count, items };
}

/** Time and size of each writer, and of one measure of a text. */
export async function bench(): Promise<string[]> {
  const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
  const lines: string[] = [];
  for (const count of [50, 200, 1000]) {
    const drawing = wires(count);
    const began = performance.now();
    const layer = { drawing, x_mm: 10, y_mm: 10, unit_mm: 0.2 };
    const { bytes } = await writePages([{ width_mm: 420, height_mm: 297, layers: [layer] }], typeface, {
      theme: "print",
      title: "bench",
      created: new Date(0),
    });
    const between = performance.now();
    const svg = writeSvg(drawing, { theme: "print", title: "bench", typeface });
    const ended = performance.now();
    lines.push(
      `${count} wires: PDF ${(between - began).toFixed(0)} ms, ${kilobytes(bytes.length)}; SVG ${(ended - between).toFixed(0)} ms, ${kilobytes(svg.length)}`,
    );
  }
  const began = performance.now();
  let sum = 0;
  for (let index = 0; index < 100_000; index++)
    sum += textWidth(`W${index} constant feed RD/BK 0.75 mm²`, 11);
  lines.push(
    `textWidth: ${((performance.now() - began) / 100).toFixed(2)} µs (mean width ${(sum / 100_000).toFixed(1)})`,
  );
  return lines;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(0)} kB`;
}
