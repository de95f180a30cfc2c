import type { Drawing, Ink, Primitive, Stroke } from "../../layout/drawing.ts";
import { covered } from "../../layout/text/measure.ts";
import { printable } from "../../layout/text/printable.ts";
import { resolveInk, type Theme } from "./palette.ts";
import { FAMILY, STAND_IN } from "./typeface.ts";

/** What is used of a canvas's 2D context: the browser's, and the one that the command line draws with. */
export type Brush = {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: string;
  lineJoin: string;
  font: string;
  textAlign: string;
  textBaseline: string;
  fontKerning?: string;
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  rotate(angle: number): void;
  scale(x: number, y: number): void;
  setLineDash(segments: number[]): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  arc(x: number, y: number, radius: number, from: number, to: number): void;
  rect(x: number, y: number, width: number, height: number): void;
  roundRect(x: number, y: number, width: number, height: number, radius: number): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  fill(): void;
  stroke(): void;
  fillText(text: string, x: number, y: number): void;
};

export type PaintOptions = {
  readonly theme: Theme;
  /** Draw a box for a glyph that the typeface lacks, where no other face can step in. */
  readonly standIns?: boolean;
};

/** Paints primitives with a brush whose own transform says where and how large. */
export function paintItems(brush: Brush, items: readonly Primitive[], options: PaintOptions): void {
  brush.lineJoin = "round";
  if ("fontKerning" in brush) brush.fontKerning = "none";
  brush.textBaseline = "alphabetic";
  for (const item of items) paintItem(brush, item, options);
}

/**
 * Paints a whole drawing on its ground.
 * @param pixelsPerUnit size; the drawing's top left corner comes to lie at the brush's origin
 */
export function paintDrawing(
  brush: Brush,
  drawing: Drawing,
  pixelsPerUnit: number,
  options: PaintOptions,
): void {
  brush.save();
  brush.scale(pixelsPerUnit, pixelsPerUnit);
  brush.translate(-drawing.x, -drawing.y);
  brush.fillStyle = resolveInk("paper", options.theme);
  brush.fillRect(drawing.x, drawing.y, drawing.width, drawing.height);
  paintItems(brush, drawing.items, options);
  brush.restore();
}

function paintItem(brush: Brush, item: Primitive, options: PaintOptions): void {
  switch (item.kind) {
    case "line":
      brush.beginPath();
      brush.moveTo(item.x1, item.y1);
      brush.lineTo(item.x2, item.y2);
      mark(brush, undefined, item.stroke, options.theme);
      break;
    case "rectangle":
      brush.beginPath();
      if (item.radius) brush.roundRect(item.x, item.y, item.width, item.height, item.radius);
      else brush.rect(item.x, item.y, item.width, item.height);
      mark(brush, item.fill, item.stroke, options.theme);
      break;
    case "circle":
      brush.beginPath();
      brush.arc(item.x, item.y, item.radius, 0, 2 * Math.PI);
      mark(brush, item.fill, item.stroke, options.theme);
      break;
    case "path":
      brush.beginPath();
      for (const command of item.commands) {
        if (command[0] === "M") brush.moveTo(command[1], command[2]);
        else if (command[0] === "L") brush.lineTo(command[1], command[2]);
        else if (command[0] === "Z") brush.closePath();
        else brush.bezierCurveTo(command[1], command[2], command[3], command[4], command[5], command[6]);
      }
      mark(brush, item.fill, item.stroke, options.theme);
      break;
    case "text":
      writeText(brush, item, options);
      break;
    case "group":
      brush.save();
      brush.translate(item.x, item.y);
      for (const inner of item.items) paintItem(brush, inner, options);
      brush.restore();
      break;
  }
}

function mark(brush: Brush, fill: Ink | undefined, stroke: Stroke | undefined, theme: Theme): void {
  const filled = fill === undefined ? null : resolveInk(fill, theme);
  if (filled !== null) {
    brush.fillStyle = filled;
    brush.fill();
  }
  const drawn = stroke === undefined ? null : resolveInk(stroke.colour, theme);
  if (drawn === null || stroke === undefined) return;
  brush.strokeStyle = drawn;
  brush.lineWidth = stroke.width;
  brush.lineCap = stroke.cap ?? "butt";
  brush.setLineDash([...(stroke.dash ?? [])]);
  brush.stroke();
}

function writeText(brush: Brush, item: Extract<Primitive, { kind: "text" }>, options: PaintOptions): void {
  const colour = resolveInk(item.colour, options.theme);
  let line = printable(item.text);
  if (line === "" || colour === null) return;
  if (options.standIns) {
    for (const lacking of covered(line)) line = line.replaceAll(lacking, STAND_IN);
  }
  brush.fillStyle = colour;
  brush.font = `${item.weight === "bold" ? 700 : 400} ${item.size}px "${FAMILY}", sans-serif`;
  brush.textAlign = item.align === "middle" ? "center" : item.align === "end" ? "right" : "left";
  if (item.turn === 90) {
    brush.save();
    brush.translate(item.x, item.y);
    brush.rotate(-Math.PI / 2);
    brush.fillText(line, 0, 0);
    brush.restore();
  } else brush.fillText(line, item.x, item.y);
}
