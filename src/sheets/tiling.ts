import { UNIT_MM } from "../layout/drawing.ts";
import { SMALL_TEXT } from "../layout/geometry/caption.ts";
import { type Rect, units } from "./paper-size.ts";

const POINT_MM = 25.4 / 72;
/** Nothing is printed smaller than this. */
export const LEAST_TEXT_pt = 6;
/** Two neighbouring tiles both show this much of the drawing, page units. */
export const OVERLAP = units(10);
/** A small harness is not blown up beyond this on a large sheet. */
const LARGEST_SCALE = 1.25;
const LARGEST_TILE_SCALE = 1;

/** The size in which the smallest text of a drawing comes out at a scale, points. */
export function textSize_pt(scale: number): number {
  return (SMALL_TEXT * UNIT_MM * scale) / POINT_MM;
}

/** The scale below which the smallest text would be under `LEAST_TEXT_pt`. */
export const LEAST_SCALE = LEAST_TEXT_pt / textSize_pt(1);

export type Tile = {
  readonly row: number;
  readonly column: number;
  /** What the tile shows, in the drawing's own units. */
  readonly window: Rect;
};

export type Plan = {
  readonly scale: number;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
  /** The smallest text as it comes out, points. */
  readonly text_pt: number;
  /** What the smallest text would be on one page. */
  readonly onePage_pt: number;
  /** One page was asked for, and its text would be too small to print. */
  readonly tooSmall: boolean;
};

type Size = { readonly width: number; readonly height: number };

/**
 * How a drawing is laid on sheets.
 * @param drawing its bounds, drawing units
 * @param area what a sheet offers it, page units
 * @param fit one page, or as few tiles as keep the text legible. One page turns into tiles where its text would be
 *   under `LEAST_TEXT_pt`.
 * @param parts what had better not be cut; where tiles leave room to shift, as few of these as can be are
 */
export function planDiagram(
  drawing: Rect,
  area: Size,
  fit: "one-page" | "tiles",
  parts: readonly Rect[] = [],
): Plan {
  const whole = Math.min(
    LARGEST_SCALE,
    area.width / Math.max(1, drawing.width),
    area.height / Math.max(1, drawing.height),
  );
  const onePage_pt = textSize_pt(whole);
  const tooSmall = onePage_pt < LEAST_TEXT_pt - 1e-9;
  if (!tooSmall && (fit === "one-page" || whole >= LARGEST_TILE_SCALE)) {
    return { ...laid(drawing, area, whole, [1, 1], parts), onePage_pt, tooSmall };
  }
  const columns = count(drawing.width * LEAST_SCALE, area.width);
  const rows = count(drawing.height * LEAST_SCALE, area.height);
  // As large as the same count of tiles allows.
  const scale = Math.min(
    LARGEST_TILE_SCALE,
    covered(columns, area.width) / drawing.width,
    covered(rows, area.height) / drawing.height,
  );
  return { ...laid(drawing, area, scale, [columns, rows], parts), onePage_pt, tooSmall };
}

function count(length: number, tile: number): number {
  return Math.max(1, Math.ceil((length - OVERLAP) / (tile - OVERLAP) - 1e-9));
}

/** What a row of tiles covers together, page units. */
function covered(tiles: number, tile: number): number {
  return tiles * tile - (tiles - 1) * OVERLAP;
}

function laid(
  drawing: Rect,
  area: Size,
  scale: number,
  [columns, rows]: readonly [number, number],
  parts: readonly Rect[],
): Omit<Plan, "onePage_pt" | "tooSmall"> {
  const tile: Size = { width: area.width / scale, height: area.height / scale };
  const overlap = OVERLAP / scale;
  const left = startOf(
    { from: drawing.x, length: drawing.width, tile: tile.width, tiles: columns, overlap },
    parts.map(({ x, width }) => [x, x + width]),
  );
  const top = startOf(
    { from: drawing.y, length: drawing.height, tile: tile.height, tiles: rows, overlap },
    parts.map(({ y, height }) => [y, y + height]),
  );
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      tiles.push({
        row,
        column,
        window: {
          x: left + column * (tile.width - overlap),
          y: top + row * (tile.height - overlap),
          ...tile,
        },
      });
    }
  }
  return { scale, rows, columns, tiles, text_pt: textSize_pt(scale) };
}

type Axis = {
  readonly from: number;
  readonly length: number;
  readonly tile: number;
  readonly tiles: number;
  readonly overlap: number;
};

/** Steps in which the tiles are tried, drawing units. */
const STEP = 4;

/**
 * Where the first tile begins along one axis. One tile is centred; of several, the one start is taken that cuts
 * fewest parts and, among equals, lies nearest to the drawing's own beginning.
 */
function startOf(axis: Axis, parts: readonly (readonly [number, number])[]): number {
  const { from, length, tile, tiles, overlap } = axis;
  const slack = Math.max(0, tiles * tile - (tiles - 1) * overlap - length);
  if (tiles === 1) return from - slack / 2;
  let best = from;
  let least = Infinity;
  for (let shift = 0; shift <= slack; shift += STEP) {
    const cut = parts.filter((part) => isCut(part, from - shift, axis)).length;
    if (cut >= least) continue;
    least = cut;
    best = from - shift;
  }
  return best;
}

/** True where no tile holds the whole part. */
function isCut(
  [low, high]: readonly [number, number],
  start: number,
  { tile, tiles, overlap }: Axis,
): boolean {
  for (let index = 0; index < tiles; index++) {
    const from = start + index * (tile - overlap);
    if (low >= from && high <= from + tile) return false;
  }
  return true;
}
