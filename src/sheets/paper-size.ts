import type { Harness } from "../graph/harness.ts";
import { UNIT_MM } from "../layout/drawing.ts";

export type PaperSize = Harness["settings"]["sheet"]["size"];
export type Orientation = Harness["settings"]["sheet"]["orientation"];

export type Rect = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** Short and long side, mm. A sizes: ISO 216; Letter and Tabloid: 8.5 × 11 in and 11 × 17 in. */
const SIDES_mm: Readonly<Record<PaperSize, readonly [number, number]>> = {
  A4: [210, 297],
  A3: [297, 420],
  Letter: [215.9, 279.4],
  Tabloid: [279.4, 431.8],
};

/** From small to large within a family, to say which paper would do better. */
export const LARGER: Readonly<Record<PaperSize, PaperSize | null>> = {
  A4: "A3",
  A3: null,
  Letter: "Tabloid",
  Tabloid: null,
};

/** One sheet, in drawing units (`UNIT_MM` each), origin at the paper's top left corner. */
export type SheetFormat = {
  readonly width: number;
  readonly height: number;
  /** The frame: what is drawn stands inside it. Its margins: 20 mm at the left for filing, 10 mm elsewhere (ISO 5457, from memory). */
  readonly frame: Rect;
  readonly titleBlock: Rect;
  /** A4 and Letter carry their grid letters on two sides only (ISO 5457 says so of A4, from memory). */
  readonly small: boolean;
};

export const units = (length_mm: number): number => length_mm / UNIT_MM;

const FILING_mm = 20;
const MARGIN_mm = 10;
/** Widest title block of ISO 7200 that every size holds, A4 upright with its frame among them. */
const BLOCK_mm = { width: 180, height: 32 } as const;

export function sheetFormat(size: PaperSize, orientation: Orientation): SheetFormat {
  const [short, long] = SIDES_mm[size];
  const [width_mm, height_mm] = orientation === "landscape" ? [long, short] : [short, long];
  return formatOf(width_mm, height_mm, size === "A4" || size === "Letter");
}

/** A sheet of any size; the frame is at least as wide as the title block. */
export function formatOf(width_mm: number, height_mm: number, small = false): SheetFormat {
  const frame: Rect = {
    x: units(FILING_mm),
    y: units(MARGIN_mm),
    width: units(width_mm - FILING_mm - MARGIN_mm),
    height: units(height_mm - 2 * MARGIN_mm),
  };
  const block = { width: units(BLOCK_mm.width), height: units(BLOCK_mm.height) };
  return {
    width: units(width_mm),
    height: units(height_mm),
    frame,
    titleBlock: { x: right(frame) - block.width, y: bottom(frame) - block.height, ...block },
    small,
  };
}

/** A sheet just large enough for a drawing of a given size at scale 1:1 above a band of notes. */
export function formatAround(width: number, height: number, bandHeight: number): SheetFormat {
  const inner_mm = Math.max(width * UNIT_MM + 20, BLOCK_mm.width + 90);
  return formatOf(
    inner_mm + FILING_mm + MARGIN_mm,
    (height + bandHeight) * UNIT_MM + 20 + 2 * MARGIN_mm,
    false,
  );
}

export const right = (rect: Rect): number => rect.x + rect.width;
export const bottom = (rect: Rect): number => rect.y + rect.height;

export function shrunk(rect: Rect, by: number): Rect {
  return { x: rect.x + by, y: rect.y + by, width: rect.width - 2 * by, height: rect.height - 2 * by };
}
