import type { Harness } from "../graph/harness.ts";
import { type Drawing, type Primitive, UNIT_MM } from "../layout/drawing.ts";
import type { Scene } from "../layout/scene.ts";
import type { Finding } from "../rules/rule.ts";
import { bandHeight, diagramBand, drawBand } from "./band.ts";
import { drawDiagram } from "./diagram.ts";
import { drawFrame } from "./frame.ts";
import { legendEntries } from "./legend.ts";
import { formatAround } from "./paper-size.ts";
import { drawTitleBlock } from "./title-block.ts";
import { type SvgOptions, writeSvg } from "./writers/svg.ts";

/** More room than any legend or list of findings takes. */
const PLENTY = 100_000;

/**
 * The whole diagram on one sheet that is as large as it needs to be, at scale 1:1, with frame, title block, legend
 * and cautions: for a picture file.
 * @param date when it is made, shown where the harness has no date of issue
 */
export function diagramPicture(
  harness: Harness,
  { scene, findings }: { readonly scene: Scene; readonly findings: readonly Finding[] },
  date: Date,
): Drawing {
  const diagram = drawDiagram(scene, harness);
  const said = { findings, legend: legendEntries(harness), remarks: [], more: "" };
  const bare = formatAround(diagram.width, diagram.height, 0);
  // There is no other sheet for what finds no room beside the title block; the notes then grow.
  const crowded = drawBand(diagramBand(bare), said).overflow;
  const high = crowded ? drawBand(diagramBand(bare, PLENTY), said).height : undefined;
  const format = formatAround(diagram.width, diagram.height, bandHeight(bare, high));
  const band = diagramBand(format, high);
  const { area } = band;
  const notes = drawBand(band, said);
  const placed: Primitive = {
    kind: "group",
    x: area.x + (area.width - diagram.width) / 2 - diagram.x,
    y: area.y + (area.height - diagram.height) / 2 - diagram.y,
    items: diagram.items,
  };
  return {
    x: 0,
    y: 0,
    width: format.width,
    height: format.height,
    items: [
      placed,
      ...notes.items,
      ...drawFrame(format),
      ...drawTitleBlock(format.titleBlock, harness, {
        content: "Diagram",
        sheet: 1,
        sheets: 1,
        scale: "100 %",
        paper: `${Math.ceil(format.width * UNIT_MM)} × ${Math.ceil(format.height * UNIT_MM)} mm`,
        printed: date.toISOString().slice(0, 10),
      }),
    ],
  };
}

/** That picture as a self-contained SVG file, to print at its own size. */
export function diagramSvg(
  harness: Harness,
  source: { readonly scene: Scene; readonly findings: readonly Finding[] },
  date: Date,
  options: Omit<SvgOptions, "title" | "unit_mm">,
): string {
  return writeSvg(diagramPicture(harness, source, date), {
    ...options,
    title: harness.titleBlock.title || "Wiring diagram",
    unit_mm: UNIT_MM,
  });
}
