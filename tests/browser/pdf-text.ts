import { readFileSync } from "node:fs";
import type { Download } from "@playwright/test";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Every word of a saved PDF, page after page. */
export async function textOfPdf(download: Download): Promise<string> {
  const data = new Uint8Array(readFileSync(await download.path()));
  const pdf = await getDocument({ data, useSystemFonts: true }).promise;
  const texts: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    texts.push(items.map((item) => ("str" in item ? item.str : "")).join(" "));
  }
  return texts.join(" ").replace(/\s+/g, " ");
}
