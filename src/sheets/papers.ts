import type { Harness } from "../graph/harness.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { type Drawing, type Primitive, UNIT_MM } from "../layout/drawing.ts";
import { makeScene, type Scene } from "../layout/scene.ts";
import { check } from "../rules/check.ts";
import type { Finding } from "../rules/rule.ts";
import { drawTableSheetNotes } from "./band.ts";
import { diagramSheets, type RawSheet } from "./diagram-sheets.ts";
import { drawFrame } from "./frame.ts";
import {
  type Orientation,
  type PaperSize,
  type SheetFormat,
  sheetFormat,
  shrunk,
  units,
} from "./paper-size.ts";
import { type PaperKind, sectionsOf } from "./sections.ts";
import { setSections } from "./table-pages.ts";
import { drawTitleBlock } from "./title-block.ts";
import { type Page, type WrittenPdf, writePages } from "./writers/pdf.ts";
import type { Typeface } from "./writers/typeface.ts";

export type { PaperKind };

export type PaperOptions = {
  readonly size: PaperSize;
  readonly orientation: Orientation;
  readonly fit: "one-page" | "tiles";
  readonly theme: "print" | "print-grey";
  /** Which papers, in their own order whatever the order here; all of them unless told. */
  readonly which?: readonly PaperKind[];
  /** When they are printed: stated, so that the same papers are the same bytes. */
  readonly date: Date;
};

/** What follows from a harness, for those who have it already. */
export type PaperSource = {
  readonly traced?: Traced;
  readonly findings?: readonly Finding[];
  readonly scene?: Scene;
};

export const PAPER_KINDS: readonly PaperKind[] = [
  "diagram",
  "findings",
  "connectors",
  "wires",
  "joints",
  "spares",
  "parts",
];

/**
 * The papers of a harness as pages: the diagram, what is wrong with it, and the tables behind it, each sheet
 * in a frame with a title block and its number.
 */
export function makePapers(
  harness: Harness,
  options: PaperOptions,
  source: PaperSource = {},
): readonly Page[] {
  const format = sheetFormat(options.size, options.orientation);
  const which = new Set(options.which ?? PAPER_KINDS);
  const all = complete(harness, source);
  const sheets: RawSheet[] = [];
  if (which.has("diagram")) {
    const drawn = diagramSheets(harness, all, { ...options, format, findingsFollow: which.has("findings") });
    sheets.push(...drawn.sheets);
    // Nothing is wrong and the legend stands on the diagram: a sheet that says so again is a sheet too many.
    if (!drawn.needsFindings) which.delete("findings");
  }
  const area = tableArea(format);
  const sections = PAPER_KINDS.flatMap((kind) =>
    kind === "diagram" || !which.has(kind) ? [] : sectionsOf(kind, { harness, ...all }, area.width),
  );
  const begun = new Set<string>();
  for (const { items, groups } of sections.length === 0 ? [] : setSections(sections, area)) {
    const first = groups.some((group) => !begun.has(group));
    for (const group of groups) begun.add(group);
    const notes = drawTableSheetNotes(format, harness);
    sheets.push({ content: groups.join(", "), scale: "", first, items: [...items, ...notes], layers: [] });
  }
  return sheets.map((sheet, index) => finish(sheet, index + 1, sheets.length, format, harness, options));
}

/** Writes the papers as one PDF with selectable text. */
export function writePapersPdf(
  harness: Harness,
  options: PaperOptions,
  typeface: Typeface,
  source: PaperSource = {},
  onProgress?: (done: number) => void | Promise<void>,
): Promise<WrittenPdf> {
  const { titleBlock } = harness;
  const pages = makePapers(harness, options, source);
  const title = [titleBlock.documentNumber, titleBlock.title || "Untitled harness"].filter(Boolean).join(" ");
  return writePages(pages, typeface, {
    theme: options.theme,
    title,
    author: titleBlock.creator,
    subject: titleBlock.documentType,
    created: options.date,
    ...(onProgress ? { onProgress } : {}),
  });
}

/** What is asked for and not given is derived here. */
function complete(harness: Harness, source: PaperSource): Required<PaperSource> {
  const traced = source.traced ?? trace(harness);
  return {
    traced,
    findings: source.findings ?? check(harness, traced),
    scene: source.scene ?? makeScene(harness, traced),
  };
}

function tableArea(format: SheetFormat) {
  const { frame, titleBlock } = format;
  return shrunk({ ...frame, height: titleBlock.y - frame.y }, units(4));
}

function finish(
  sheet: RawSheet,
  number: number,
  count: number,
  format: SheetFormat,
  harness: Harness,
  options: PaperOptions,
): Page {
  const items: Primitive[] = [
    ...sheet.items,
    ...drawFrame(format),
    ...drawTitleBlock(format.titleBlock, harness, {
      content: sheet.content,
      sheet: number,
      sheets: count,
      scale: sheet.scale,
      paper: `${options.size} ${options.orientation}`,
      printed: options.date.toISOString().slice(0, 10),
    }),
  ];
  const drawing: Drawing = { x: 0, y: 0, width: format.width, height: format.height, items };
  return {
    width_mm: format.width * UNIT_MM,
    height_mm: format.height * UNIT_MM,
    layers: [...sheet.layers, { drawing, x_mm: 0, y_mm: 0, unit_mm: UNIT_MM }],
    ...(sheet.first ? { bookmark: sheet.content } : {}),
  };
}
