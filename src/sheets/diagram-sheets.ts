import type { Harness } from "../graph/harness.ts";
import { type Drawing, type Primitive, UNIT_MM } from "../layout/drawing.ts";
import type { Scene } from "../layout/scene.ts";
import type { Finding } from "../rules/rule.ts";
import { diagramBand, drawBand } from "./band.ts";
import { drawDiagram, itemBounds, within } from "./diagram.ts";
import { legendEntries } from "./legend.ts";
import {
  LARGER,
  type Orientation,
  type PaperSize,
  type Rect,
  right,
  type SheetFormat,
  sheetFormat,
  shrunk,
  units,
} from "./paper-size.ts";
import { circle, HAIR, inkStroke, line, MIDDLE, words } from "./part-drawing/pen.ts";
import { LEAST_TEXT_pt, OVERLAP, type Plan, planDiagram, type Tile } from "./tiling.ts";
import type { Layer } from "./writers/pdf.ts";

/** A sheet before it knows its number. */
export type RawSheet = {
  readonly content: string;
  readonly scale: string;
  /** The first sheet of its kind. */
  readonly first: boolean;
  readonly items: readonly Primitive[];
  /** Under the items. */
  readonly layers: readonly Layer[];
};

export type DiagramOptions = {
  readonly size: PaperSize;
  readonly orientation: Orientation;
  readonly fit: "one-page" | "tiles";
  readonly format: SheetFormat;
  readonly findingsFollow: boolean;
};

/** Paper kept free inside the frame. */
const INSIDE = units(4);

export function diagramArea(format: SheetFormat): Rect {
  return shrunk(diagramBand(format).area, INSIDE);
}

/** How a diagram would come out on a paper, without drawing it: for a person who is choosing one. */
export function previewPlan(
  bounds: Rect,
  size: PaperSize,
  orientation: Orientation,
  fit: "one-page" | "tiles",
): Plan {
  return planDiagram(bounds, diagramArea(sheetFormat(size, orientation)), fit);
}

export function diagramSheets(
  harness: Harness,
  { scene, findings }: { readonly scene: Scene; readonly findings: readonly Finding[] },
  options: DiagramOptions,
): { readonly sheets: readonly RawSheet[]; readonly needsFindings: boolean } {
  const drawing = drawDiagram(scene, harness);
  const band = diagramBand(options.format);
  const area = diagramArea(options.format);
  const parts = [...scene.parts.values()].map(({ x, y, shape }) => ({
    x,
    y,
    width: shape.width,
    height: shape.height,
  }));
  const plan = planDiagram(drawing, area, options.fit, parts);
  const bounds = itemBounds(drawing);
  const legend = legendEntries(harness);
  const count = plan.tiles.length;
  const noted = (tile: Tile, index: number, more: string) =>
    drawBand(band, { findings, legend, more, remarks: remarksOf(plan, tile, index, drawing, options) });
  const needsFindings =
    findings.length > 0 ||
    Object.keys(harness.waivers).length > 0 ||
    plan.tiles.some((tile, index) => noted(tile, index, "").overflow);
  const more = options.findingsFollow && needsFindings ? `sheet ${count + 1}` : "";
  const sheets = plan.tiles.map((tile, index): RawSheet => {
    const notes = noted(tile, index, more);
    const items: Primitive[] = [...notes.items];
    if (count > 1) items.push(...tileMarks(plan, tile, area));
    return {
      content: count > 1 ? `Diagram, tile ${index + 1} of ${count}` : "Diagram",
      scale: `${Math.round(plan.scale * 100)} %`,
      first: index === 0,
      items,
      layers: [layerOf(count > 1 ? within(drawing, bounds, tile.window) : drawing, tile, plan.scale, area)],
    };
  });
  return { sheets, needsFindings };
}

function layerOf(drawing: Drawing, tile: Tile, scale: number, area: Rect): Layer {
  const unit_mm = UNIT_MM * scale;
  const [x_mm, y_mm] = [area.x * UNIT_MM, area.y * UNIT_MM];
  return {
    drawing,
    x_mm: x_mm + (drawing.x - tile.window.x) * unit_mm,
    y_mm: y_mm + (drawing.y - tile.window.y) * unit_mm,
    unit_mm,
    clip_mm: { x: x_mm, y: y_mm, width: area.width * UNIT_MM, height: area.height * UNIT_MM },
  };
}

function remarksOf(plan: Plan, tile: Tile, index: number, drawing: Rect, options: DiagramOptions): string[] {
  const remarks: string[] = [];
  const count = plan.tiles.length;
  if (count > 1) {
    remarks.push(
      `Tile ${index + 1} of ${count}: row ${tile.row + 1} of ${plan.rows}, column ${tile.column + 1} of ${plan.columns}. Neighbours overlap by 10 mm: lay cross on cross.`,
    );
  }
  if (plan.tooSmall && index === 0) remarks.push(tooSmallWords(plan, drawing, options));
  return remarks;
}

/** Says why one page became several, and which paper would do with fewer. */
export function tooSmallWords(
  plan: Plan,
  drawing: Rect,
  options: Pick<DiagramOptions, "size" | "orientation">,
): string {
  const said = `On one ${options.size} sheet the smallest text would be ${plan.onePage_pt.toFixed(1)} pt, under ${LEAST_TEXT_pt} pt: tiled instead.`;
  const better = betterPaper(drawing, options, plan.tiles.length);
  return better === "" ? said : `${said} ${better}`;
}

/** "A3 landscape holds it on one sheet.": the next paper that does better than so many tiles; "" where none does. */
function betterPaper(
  drawing: Rect,
  { size, orientation }: Pick<DiagramOptions, "size" | "orientation">,
  tiles: number,
): string {
  const other = orientation === "landscape" ? "portrait" : "landscape";
  const larger = LARGER[size];
  const choices: [PaperSize, Orientation][] = [[size, other]];
  if (larger) choices.push([larger, orientation], [larger, other]);
  const counted = choices.map(
    (choice) => [choice, previewPlan(drawing, ...choice, "one-page").tiles.length] as const,
  );
  const [best] = [...counted].sort((a, b) => a[1] - b[1]);
  if (!best || best[1] >= tiles) return "";
  const [paper, count] = best;
  return `${paper.join(" ")} holds it on ${count === 1 ? "one sheet" : `${count} sheets`}.`;
}

/** Crosses that fall on the same point of the drawing on both neighbours, and where the drawing goes on. */
function tileMarks(plan: Plan, tile: Tile, area: Rect): Primitive[] {
  const items: Primitive[] = [];
  const [w, h] = [area.width, area.height];
  const half = OVERLAP / 2;
  const xs = [tile.column > 0 ? half : null, tile.column < plan.columns - 1 ? w - half : null];
  const ys = [tile.row > 0 ? half : null, tile.row < plan.rows - 1 ? h - half : null];
  for (const x of xs) {
    if (x !== null) for (const y of [h * 0.2, h * 0.8]) items.push(...cross(area.x + x, area.y + y));
  }
  for (const y of ys) {
    if (y !== null) for (const x of [w * 0.2, w * 0.8]) items.push(...cross(area.x + x, area.y + y));
  }
  const number = (row: number, column: number): string => `tile ${row * plan.columns + column + 1}`;
  const edge = INSIDE - 4;
  const [middleX, middleY] = [area.x + w * 0.35, area.y + h * 0.35];
  const say = (x: number, y: number, text: string, turn: 0 | 90): Primitive[] =>
    words(x, y, text, { size: 9, colour: "quiet", align: "middle", room: units(40) }).map((item) =>
      item.kind === "text" && turn === 90 ? { ...item, turn } : item,
    );
  const { row, column } = tile;
  if (column < plan.columns - 1) {
    items.push(...say(right(area) + edge, middleY, `goes on: ${number(row, column + 1)}`, 90));
  }
  if (column > 0) items.push(...say(area.x - 4, middleY, `goes on: ${number(row, column - 1)}`, 90));
  if (row > 0) items.push(...say(middleX, area.y - 5, `goes on: ${number(row - 1, column)}`, 0));
  if (row < plan.rows - 1) {
    items.push(...say(middleX, area.y + h + 9 * MIDDLE + 7, `goes on: ${number(row + 1, column)}`, 0));
  }
  return items;
}

function cross(x: number, y: number): Primitive[] {
  const arm = units(2.5);
  return [
    line(x - arm, y, x + arm, y, HAIR),
    line(x, y - arm, x, y + arm, HAIR),
    circle(x, y, units(1), { stroke: inkStroke(HAIR) }),
  ];
}
