import type { Drawing } from "../../src/layout/drawing.ts";
import { writePages } from "../../src/sheets/writers/pdf.ts";
import { writePngBlob } from "../../src/sheets/writers/png.ts";

/** Writes one page in the browser; bytes travel to the test as base64. */
export async function pdfBase64(
  drawing: Drawing,
  fonts: { readonly regular: string; readonly bold: string },
): Promise<string> {
  const file = (base64: string): Uint8Array =>
    Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const { bytes } = await writePages(
    [{ width_mm: 148, height_mm: 105, layers: [{ drawing, x_mm: 10, y_mm: 10, unit_mm: 0.25 }] }],
    { regular: file(fonts.regular), bold: file(fonts.bold) },
    { theme: "print", title: "Wren", created: new Date(0) },
  );
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** The colour that a picture made in the browser has at a place of the drawing. */
export async function pngPixel(drawing: Drawing, x: number, y: number): Promise<string> {
  const blob = await writePngBlob(drawing, { theme: "paper", pixelsPerUnit: 2 });
  const picture = await createImageBitmap(blob);
  const canvas = document.createElement("canvas");
  canvas.width = picture.width;
  canvas.height = picture.height;
  const brush = canvas.getContext("2d");
  brush?.drawImage(picture, 0, 0);
  const { data } = brush?.getImageData(2 * x, 2 * y, 1, 1) ?? { data: [] };
  return `#${[...data]
    .slice(0, 3)
    .map((part) => part.toString(16).padStart(2, "0"))
    .join("")}`;
}
