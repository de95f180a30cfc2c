import type { Harness } from "../../graph/harness.ts";
import { drawDiagram } from "../../sheets/diagram.ts";
import { diagramPicture, diagramSvg } from "../../sheets/diagram-picture.ts";
import { previewPlan } from "../../sheets/diagram-sheets.ts";
import { makePapers, type PaperOptions, writePapersPdf } from "../../sheets/papers.ts";
import type { Page } from "../../sheets/writers/pdf.ts";
import { writePngBlob } from "../../sheets/writers/png.ts";
import { writeSvg } from "../../sheets/writers/svg.ts";
import type { Derived } from "../state/derive.ts";
import { loadTypeface } from "../typeface.ts";

/** About 200 dots an inch at scale 1:1: reads well and still opens everywhere. */
const PIXELS_PER_UNIT = 2;

export type Made = {
  readonly blob: Blob;
  readonly extension: "pdf" | "svg" | "png";
  readonly warning: string;
};

export async function makePdf(
  harness: Harness,
  derived: Derived,
  options: PaperOptions,
  onProgress: (done: number) => void,
): Promise<Made> {
  const typeface = await loadTypeface();
  const { bytes, missingGlyphs } = await writePapersPdf(harness, options, typeface, derived, async (done) => {
    onProgress(done);
    // Lets the page draw the progress and answer the Close button.
    await new Promise((resolve) => setTimeout(resolve, 0));
  });
  const warning = missingGlyphs.length
    ? `The typeface has no ${missingGlyphs.slice(0, 8).join(" ")}: a box stands in its place.`
    : "";
  return { blob: new Blob([bytes], { type: "application/pdf" }), extension: "pdf", warning };
}

export async function makeSvg(harness: Harness, derived: Derived, options: PaperOptions): Promise<Made> {
  const typeface = await loadTypeface();
  const text = diagramSvg(harness, derived, options.date, {
    theme: options.theme,
    typeface,
  });
  return { blob: new Blob([text], { type: "image/svg+xml" }), extension: "svg", warning: "" };
}

export async function makePng(harness: Harness, derived: Derived, options: PaperOptions): Promise<Made> {
  const drawing = diagramPicture(harness, derived, options.date);
  const blob = await writePngBlob(drawing, { theme: options.theme, pixelsPerUnit: PIXELS_PER_UNIT });
  return { blob, extension: "png", warning: "" };
}

/** The pages as they will be printed; the first one is shown. */
export function preview(harness: Harness, derived: Derived, options: PaperOptions) {
  const pages = makePapers(harness, options, derived);
  const [first] = pages;
  const bounds = drawDiagram(derived.scene, harness);
  const plan = previewPlan(bounds, options.size, options.orientation, options.fit);
  return { plan, pageCount: pages.length, first: first ? layersOf(first, options.theme) : null };
}

/** Each layer of a page as an SVG text with its place and window, in parts of the page's width and height. */
function layersOf(page: Page, theme: PaperOptions["theme"]) {
  const layers = page.layers.map(({ drawing, x_mm, y_mm, unit_mm, clip_mm }) => ({
    svg: writeSvg(drawing, { theme, title: "First page" }).replace(/<rect [^>]*\/>/, ""),
    x: x_mm,
    y: y_mm,
    width: drawing.width * unit_mm,
    height: drawing.height * unit_mm,
    clip: clip_mm ?? { x: 0, y: 0, width: page.width_mm, height: page.height_mm },
  }));
  return { width_mm: page.width_mm, height_mm: page.height_mm, layers };
}
