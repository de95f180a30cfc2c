import type { Drawing } from "../../layout/drawing.ts";
import { paintDrawing } from "./canvas.ts";
import type { Theme } from "./palette.ts";
import { FAMILY } from "./typeface.ts";

export type PngOptions = {
  readonly theme: Theme;
  /** How large: 1 is the size on the screen at zoom 1; 3 is about 300 dots an inch at scale 1:1. */
  readonly pixelsPerUnit: number;
};

export type PngSize = {
  readonly width: number;
  readonly height: number;
  /** Smaller than asked for where the picture would be larger than a canvas can be. */
  readonly pixelsPerUnit: number;
};

/** What every browser of today can hold in one canvas. */
const SIDE_LIMIT = 16_384;
const AREA_LIMIT = 100_000_000;

/**
 * How many pixels a picture will have.
 * @throws RangeError if the drawing has no size or the scale is not a positive number
 */
export function pngSize(drawing: Drawing, pixelsPerUnit: number): PngSize {
  const area = drawing.width * drawing.height;
  if (!(area > 0 && pixelsPerUnit > 0 && Number.isFinite(area * pixelsPerUnit))) {
    throw new RangeError("a picture needs a drawing with a width and a height, and a scale above 0");
  }
  const scale = Math.min(
    pixelsPerUnit,
    SIDE_LIMIT / Math.max(drawing.width, drawing.height),
    Math.sqrt(AREA_LIMIT / area),
  );
  const side = (length: number): number => Math.max(1, Math.min(SIDE_LIMIT, Math.round(length * scale)));
  return { width: side(drawing.width), height: side(drawing.height), pixelsPerUnit: scale };
}

/**
 * Paints a drawing into a PNG file, in a browser page that has the typeface.
 * @throws RangeError as `pngSize` does; Error if the browser cannot make the picture
 */
export async function writePngBlob(drawing: Drawing, options: PngOptions): Promise<Blob> {
  const { width, height, pixelsPerUnit } = pngSize(drawing, options.pixelsPerUnit);
  await Promise.all([
    document.fonts.load(`400 12px "${FAMILY}"`),
    document.fonts.load(`700 12px "${FAMILY}"`),
  ]);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const brush = canvas.getContext("2d");
  if (!brush) throw new Error("The browser gave no canvas to draw on. Close other tabs and try again.");
  paintDrawing(brush, drawing, pixelsPerUnit, { theme: options.theme });
  return new Promise((done, fail) => {
    canvas.toBlob((blob) => {
      if (blob) done(blob);
      else fail(new Error("The browser could not make the picture. Choose a smaller size and try again."));
    }, "image/png");
  });
}
