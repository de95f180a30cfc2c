import type { jsPDF } from "jspdf";
import { printable } from "../../layout/text/printable.ts";
import type { Theme } from "./palette.ts";
import { type Layer, PdfPainter } from "./pdf-painter.ts";
import type { Typeface } from "./typeface.ts";

export type { Layer };

export type Page = {
  readonly width_mm: number;
  readonly height_mm: number;
  /** Painted in order. */
  readonly layers: readonly Layer[];
  /** Name in the reader's list of contents. */
  readonly bookmark?: string;
};

export type PdfOptions = {
  readonly theme: Extract<Theme, "print" | "print-grey">;
  readonly title: string;
  readonly author?: string;
  readonly subject?: string;
  /** Stated, not read from the clock: the same papers are the same bytes. */
  readonly created: Date;
  /** Called after each page with the part that is done, 0 to 1; a promise is waited for, so that a page can breathe. */
  readonly onProgress?: (done: number) => void | Promise<void>;
};

export type WrittenPdf = {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Characters that the typeface lacks; a box stands in their place. */
  readonly missingGlyphs: readonly string[];
};

/**
 * Writes pages as one vector PDF with selectable text, in the browser and under Node alike.
 * @param typeface embedded; only the glyphs that are used
 * @throws RangeError if there is no page, or a coordinate is not a finite number
 */
export async function writePages(
  pages: readonly Page[],
  typeface: Typeface,
  options: PdfOptions,
): Promise<WrittenPdf> {
  const [first] = pages;
  if (!first) throw new RangeError("a PDF needs at least one page");
  const { jsPDF } = await import("jspdf");
  const document = new jsPDF({
    unit: "mm",
    format: [first.width_mm, first.height_mm],
    orientation: orientation(first),
    compress: true,
    putOnlyUsedFonts: true,
    // A hundredth of a point.
    floatPrecision: 2,
  });
  inscribe(document, options, pages.length);
  const painter = new PdfPainter(document, typeface, options.theme);
  for (const [index, page] of pages.entries()) {
    if (index > 0) document.addPage([page.width_mm, page.height_mm], orientation(page));
    for (const layer of page.layers) painter.layer(layer);
    if (page.bookmark !== undefined)
      document.outline.add(null, printable(page.bookmark), { pageNumber: index + 1 });
    await options.onProgress?.((index + 1) / pages.length);
  }
  return { bytes: new Uint8Array(document.output("arraybuffer")), missingGlyphs: painter.missingGlyphs() };
}

function orientation(page: Page): "landscape" | "portrait" {
  return page.width_mm > page.height_mm ? "landscape" : "portrait";
}

function inscribe(document: jsPDF, options: PdfOptions, pageCount: number): void {
  document.setDocumentProperties({
    title: printable(options.title),
    author: printable(options.author ?? ""),
    subject: printable(options.subject ?? ""),
    creator: "Pigtail",
  });
  const stamp = options.created.toISOString().replace(/\D/g, "").slice(0, 14);
  document.setCreationDate(`D:${stamp}+00'00'`);
  document.setFileId(fileId(`${options.title}\n${stamp}\n${pageCount}`));
  document.viewerPreferences({ DisplayDocTitle: true });
}

/** 32 hexadecimal digits made from a text: enough to tell papers apart, and the same each time (FNV-1a). */
function fileId(text: string): string {
  return [0, 1, 2, 3]
    .map((salt) => {
      let hash = 0x811c9dc5 ^ salt;
      for (let index = 0; index < text.length; index++) {
        hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
      }
      return (hash >>> 0).toString(16).padStart(8, "0");
    })
    .join("")
    .toUpperCase();
}
