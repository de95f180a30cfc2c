import type { Harness } from "../graph/harness.ts";
import type { Primitive } from "../layout/drawing.ts";
import { type Finding, SEVERITIES } from "../rules/rule.ts";
import { type LegendEntry, setLegend } from "./legend.ts";
import { bottom, type Rect, right, type SheetFormat, units } from "./paper-size.ts";
import { line, RULE, words } from "./part-drawing/pen.ts";
import { wrapText } from "./wrap.ts";

const SIZE = 9;
const LINE = 11.5;
const PAD = 8;
/** Room beside the title block that is worth writing in. */
const LEAST_BESIDE = units(60);
const NOTES_ABOVE = units(32);

/** Common practice, no source; the vehicle maker's own instructions come first. */
export const CAUTIONS =
  "Disconnect the battery's negative lead first. Airbag and high-voltage circuits are not to be touched. Keep screens out of the driver's sight. Follow the vehicle maker's instructions and local law; where the law asks for a licensed person, have one do it.";

/** The bottom of a diagram sheet: cautions across it, notes beside or above the title block. */
export type Band = {
  /** What is left for the drawing. */
  readonly area: Rect;
  readonly cautions: Rect;
  readonly notes: Rect;
};

/** @param high height of notes that need more than the title block's; they stand beside it all the same */
export function diagramBand(format: SheetFormat, high?: number): Band {
  const { frame, titleBlock } = format;
  const beside = high !== undefined || titleBlock.x - frame.x >= LEAST_BESIDE;
  const height = beside ? Math.max(high ?? 0, titleBlock.height) : NOTES_ABOVE;
  const notesTop = beside ? bottom(frame) - height : titleBlock.y - height;
  const lines = wrapText(CAUTIONS, SIZE, "bold", frame.width - 2 * PAD).length;
  const strip = lines * LINE + 7;
  return {
    area: { ...frame, height: notesTop - strip - frame.y },
    cautions: { x: frame.x, y: notesTop - strip, width: frame.width, height: strip },
    notes: {
      x: frame.x,
      y: notesTop,
      width: beside ? titleBlock.x - frame.x : frame.width,
      height,
    },
  };
}

/** How high the band of a diagram sheet is. */
export function bandHeight(format: SheetFormat, high?: number): number {
  return bottom(format.frame) - bottom(diagramBand(format, high).area);
}

export type Notes = {
  readonly findings: readonly Finding[];
  readonly legend: readonly LegendEntry[];
  /** What this sheet has to say of itself: its place among the tiles, a size that would not do. */
  readonly remarks: readonly string[];
  /** Where the findings stand in full: "sheet 4". "" where there is no such sheet. */
  readonly more: string;
};

export type SetBand = {
  readonly items: readonly Primitive[];
  /** True where legend or findings found no room and another sheet must carry them. */
  readonly overflow: boolean;
  /** The height that the notes take, or would take if they had it. */
  readonly height: number;
};

export function drawBand(band: Band, notes: Notes): SetBand {
  const { cautions, notes: box } = band;
  const items: Primitive[] = [
    line(cautions.x, cautions.y, right(cautions), cautions.y, RULE),
    line(cautions.x, box.y, right(cautions), box.y, RULE),
    ...paragraph(CAUTIONS, { ...cautions, x: cautions.x + PAD, width: cautions.width - 2 * PAD }, "bold")
      .items,
  ];
  const inner: Rect = { ...box, x: box.x + PAD, y: box.y, width: box.width - 2 * PAD };
  const head = paragraph(summary(notes.findings, notes.more), inner, "bold");
  items.push(...head.items);
  let y = head.bottom;
  for (const remark of notes.remarks) {
    const set = paragraph(remark, { ...inner, y: y - 4 }, "regular");
    items.push(...set.items);
    y = set.bottom;
  }
  const legend = setLegend(notes.legend, { ...inner, y, height: bottom(box) - y - 3 });
  items.push(...legend.items);
  y += legend.height;
  const open = notes.findings.filter((finding) => finding.waiver === null);
  const lines = open.flatMap((finding) =>
    wrapText(`${finding.severity}: ${finding.message}`, SIZE, "regular", inner.width),
  );
  const fits = y + lines.length * LINE <= bottom(box) - 4;
  if (fits) {
    for (const [index, text] of lines.entries()) {
      items.push(...words(inner.x, y + 9 + index * LINE, text, { size: SIZE, room: inner.width }));
    }
  }
  return { items, overflow: !fits || legend.left.length > 0, height: y + lines.length * LINE + 6 - box.y };
}

function paragraph(
  text: string,
  rect: Rect,
  weight: "regular" | "bold",
): { items: Primitive[]; bottom: number } {
  const lines = wrapText(text, SIZE, weight, rect.width);
  return {
    items: lines.flatMap((one, index) =>
      words(rect.x, rect.y + 12 + index * LINE, one, { size: SIZE, weight, room: rect.width + 1 }),
    ),
    bottom: rect.y + 5 + lines.length * LINE,
  };
}

/** "Open findings: 1 danger, 2 fault; 1 waived. In full, with the legend: sheet 4." */
export function summary(findings: readonly Finding[], more: string): string {
  const open = findings.filter((finding) => finding.waiver === null);
  const waived = findings.length - open.length;
  const counted = SEVERITIES.map(
    (severity) => [severity, open.filter((one) => one.severity === severity).length] as const,
  ).filter(([, count]) => count > 0);
  const said =
    counted.length === 0
      ? "No open findings"
      : `Open findings: ${counted.map(([severity, count]) => `${count} ${severity}`).join(", ")}`;
  const where =
    more === ""
      ? ""
      : findings.length > 0
        ? ` In full, with the legend: ${more}.`
        : ` Legend in full: ${more}.`;
  return `${said}${waived > 0 ? `; ${waived} waived` : ""}.${where}`;
}

/** Cautions beside the title block of a sheet of tables, where there is room beside it. */
export function drawTableSheetNotes(format: SheetFormat, harness: Harness): readonly Primitive[] {
  const { frame, titleBlock } = format;
  const width = titleBlock.x - frame.x - 2 * PAD;
  if (width < LEAST_BESIDE - 2 * PAD) return [];
  const box: Rect = { x: frame.x + PAD, y: titleBlock.y, width, height: titleBlock.height };
  const first = paragraph(CAUTIONS, box, "bold");
  const view =
    harness.settings.sizes === "awg" ? "Sizes are the nearest gauge." : "Sizes are metal cross-sections.";
  const second = paragraph(
    `Colours by their IEC 60757 letters, base before tracer. ${view}`,
    {
      ...box,
      y: first.bottom,
    },
    "regular",
  );
  return [
    line(frame.x, titleBlock.y, titleBlock.x, titleBlock.y, RULE),
    ...first.items,
    ...(second.bottom <= bottom(box) ? second.items : []),
  ];
}
