import type { Drawing } from "../layout/drawing.ts";
import { paintDrawing } from "../sheets/writers/canvas.ts";
import { type PngOptions, pngSize } from "../sheets/writers/png.ts";
import { FAMILY } from "../sheets/writers/typeface.ts";
import { typefaceFile } from "../tasks/typeface.mjs";

/**
 * Paints a drawing into a PNG file under Node.
 * @returns the file's bytes
 * @throws RangeError if the drawing has no size or the scale is not a positive number
 */
export async function writePng(drawing: Drawing, options: PngOptions): Promise<Uint8Array> {
  const { width, height, pixelsPerUnit } = pngSize(drawing, options.pixelsPerUnit);
  // Loaded only here: it is a native binding, which a check or a trace has no use for.
  const { createCanvas, GlobalFonts } = await import("@napi-rs/canvas");
  if (!GlobalFonts.has(FAMILY)) {
    for (const weight of ["regular", "bold"] as const)
      GlobalFonts.registerFromPath(typefaceFile(weight), FAMILY);
  }
  const canvas = createCanvas(width, height);
  paintDrawing(canvas.getContext("2d"), drawing, pixelsPerUnit, { theme: options.theme, standIns: true });
  return canvas.encode("png");
}
