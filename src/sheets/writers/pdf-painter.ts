import type { jsPDF } from "jspdf";
import type { Drawing, Ink, PathCommand, Primitive, Stroke } from "../../layout/drawing.ts";
import { covered, textWidth } from "../../layout/text/measure.ts";
import { printable } from "../../layout/text/printable.ts";
import { channels } from "./colour-math.ts";
import { resolveInk, type Theme } from "./palette.ts";
import { binaryString, STAND_IN, type Typeface } from "./typeface.ts";

/** A drawing laid on a page. */
export type Layer = {
  readonly drawing: Drawing;
  /** Where the drawing's own top left corner comes to lie, millimetres from the page's. */
  readonly x_mm: number;
  readonly y_mm: number;
  /** Millimetres for one drawing unit: `UNIT_MM` at scale 1:1. */
  readonly unit_mm: number;
  /** Nothing of the drawing shows outside it. A tile of a large drawing is the whole drawing, moved and clipped. */
  readonly clip_mm?: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
};

/** The name that a reader of the papers may see in a list of fonts. */
const FONT = "SourceSans3";
const POINT_MM = 25.4 / 72;

/** Where a layer's units come to lie: page millimetres = units × scale + offset. */
type Frame = { readonly scale: number; readonly x: number; readonly y: number };

/** Turns primitives into jsPDF calls, one drawing unit at a time; keeps the list of glyphs that were missing. */
export class PdfPainter {
  private readonly missing = new Set<string>();

  constructor(
    private readonly document: jsPDF,
    typeface: Typeface,
    private readonly theme: Theme,
  ) {
    document.addFileToVFS("regular.ttf", binaryString(typeface.regular));
    document.addFont("regular.ttf", FONT, "normal");
    document.addFileToVFS("bold.ttf", binaryString(typeface.bold));
    document.addFont("bold.ttf", FONT, "bold");
    document.setLineJoin("round");
  }

  missingGlyphs(): readonly string[] {
    return [...this.missing];
  }

  layer({ drawing, x_mm, y_mm, unit_mm, clip_mm }: Layer): void {
    const frame = { scale: unit_mm, x: x_mm - drawing.x * unit_mm, y: y_mm - drawing.y * unit_mm };
    this.document.saveGraphicsState();
    this.document.setLineJoin("round");
    if (clip_mm) {
      this.document.rect(clip_mm.x, clip_mm.y, clip_mm.width, clip_mm.height, null);
      this.document.clip();
      this.document.discardPath();
    }
    for (const item of drawing.items) this.paint(item, frame);
    this.document.restoreGraphicsState();
  }

  private paint(item: Primitive, frame: Frame): void {
    const x = (value: number): number => finite(value * frame.scale + frame.x);
    const y = (value: number): number => finite(value * frame.scale + frame.y);
    const length = (value: number): number => finite(value * frame.scale);
    switch (item.kind) {
      case "line":
        if (this.style(undefined, item.stroke, frame) !== null) {
          this.document.line(x(item.x1), y(item.y1), x(item.x2), y(item.y2), "S");
        }
        break;
      case "rectangle": {
        const style = this.style(item.fill, item.stroke, frame);
        if (style === null) break;
        const radius = length(item.radius ?? 0);
        if (radius > 0) {
          this.document.roundedRect(
            x(item.x),
            y(item.y),
            length(item.width),
            length(item.height),
            radius,
            radius,
            style,
          );
        } else this.document.rect(x(item.x), y(item.y), length(item.width), length(item.height), style);
        break;
      }
      case "circle": {
        const style = this.style(item.fill, item.stroke, frame);
        if (style !== null) this.document.circle(x(item.x), y(item.y), length(item.radius), style);
        break;
      }
      case "path": {
        const style = this.style(item.fill, item.stroke, frame);
        if (style === null) break;
        for (const command of item.commands) this.trace(command, x, y);
        if (style === "S") this.document.stroke();
        else if (style === "F") this.document.fill();
        else this.document.fillStroke();
        break;
      }
      case "text":
        this.text(item, frame);
        break;
      case "group": {
        const inner = { ...frame, x: frame.x + item.x * frame.scale, y: frame.y + item.y * frame.scale };
        for (const part of item.items) this.paint(part, inner);
        break;
      }
    }
  }

  private trace(command: PathCommand, x: (value: number) => number, y: (value: number) => number): void {
    switch (command[0]) {
      case "M":
        this.document.moveTo(x(command[1]), y(command[2]));
        break;
      case "L":
        this.document.lineTo(x(command[1]), y(command[2]));
        break;
      case "C":
        this.document.curveTo(
          x(command[1]),
          y(command[2]),
          x(command[3]),
          y(command[4]),
          x(command[5]),
          y(command[6]),
        );
        break;
      case "Z":
        this.document.close();
        break;
    }
  }

  /** Sets colours and line, and says what to do with the shape; null where it would leave no mark. */
  private style(fill: Ink | undefined, stroke: Stroke | undefined, frame: Frame): "S" | "F" | "DF" | null {
    const filled = fill === undefined ? null : resolveInk(fill, this.theme);
    const drawn = stroke === undefined ? null : resolveInk(stroke.colour, this.theme);
    if (filled !== null) this.document.setFillColor(...bytes(filled));
    if (drawn !== null && stroke) {
      this.document.setDrawColor(...bytes(drawn));
      this.document.setLineWidth(finite(stroke.width * frame.scale));
      this.document.setLineCap(stroke.cap ?? "butt");
      this.document.setLineDashPattern(
        (stroke.dash ?? []).map((part) => finite(part * frame.scale)),
        0,
      );
    }
    if (filled !== null) return drawn === null ? "F" : "DF";
    return drawn === null ? null : "S";
  }

  private text(item: Extract<Primitive, { kind: "text" }>, frame: Frame): void {
    const colour = resolveInk(item.colour, this.theme);
    const line = this.drawable(printable(item.text));
    if (line === "" || colour === null) return;
    const weight = item.weight ?? "regular";
    const width = textWidth(line, item.size, weight);
    // jsPDF's own alignment and its turning do not agree with each other, so the start is computed here.
    const back = item.align === "middle" ? width / 2 : item.align === "end" ? width : 0;
    const start = item.turn === 90 ? { x: item.x, y: item.y + back } : { x: item.x - back, y: item.y };
    this.document.setFont(FONT, weight === "bold" ? "bold" : "normal");
    this.document.setFontSize(finite((item.size * frame.scale) / POINT_MM));
    this.document.setTextColor(...bytes(colour));
    this.document.text(
      line,
      finite(start.x * frame.scale + frame.x),
      finite(start.y * frame.scale + frame.y),
      item.turn === 90 ? { angle: 90 } : {},
    );
  }

  /** jsPDF drops a glyph that the typeface lacks without a word; here a box takes its place and it is told. */
  private drawable(line: string): string {
    const lacking = covered(line);
    if (lacking.length === 0) return line;
    for (const character of lacking) this.missing.add(character);
    return [...line].map((character) => (lacking.includes(character) ? STAND_IN : character)).join("");
  }
}

function bytes(hex: string): [number, number, number] {
  return channels(hex).map((part) => Math.round(part * 255)) as [number, number, number];
}

function finite(value: number): number {
  if (!Number.isFinite(value))
    throw new RangeError(`a drawing holds a coordinate that is not a number: ${value}`);
  return value;
}
