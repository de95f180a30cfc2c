import type { Drawing, PathCommand, Primitive, Stroke } from "../../layout/drawing.ts";
import { textWidth } from "../../layout/text/measure.ts";
import { printable } from "../../layout/text/printable.ts";
import { resolveInk, type Theme } from "./palette.ts";
import { subsetFont } from "./subset.ts";
import { binaryString, FAMILY, type Typeface } from "./typeface.ts";

export type SvgOptions = {
  readonly theme: Theme;
  /** What the picture shows, for readers that cannot see it. */
  readonly title: string;
  /** Carried inside the file, cut down to the glyphs that the drawing uses. */
  readonly typeface?: Typeface;
  /** Size on paper, millimetres for one drawing unit; without it the file says only its proportions. */
  readonly unit_mm?: number;
};

/**
 * Writes a drawing as one self-contained SVG file: no style sheet, script or address outside it.
 * @returns well-formed XML whatever the texts hold
 * @throws RangeError if a coordinate is not a finite number
 */
export function writeSvg(drawing: Drawing, options: SvgOptions): string {
  const box = [drawing.x, drawing.y, drawing.width, drawing.height].map(figure).join(" ");
  const size =
    options.unit_mm === undefined
      ? ""
      : ` width="${figure(drawing.width * options.unit_mm)}mm" height="${figure(drawing.height * options.unit_mm)}mm"`;
  const writer = new Writer(options);
  const ground = `<rect x="${figure(drawing.x)}" y="${figure(drawing.y)}" width="${figure(drawing.width)}" height="${figure(drawing.height)}" fill="${resolveInk("paper", options.theme)}"/>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="${box}"${size} font-family="'${FAMILY}', sans-serif" style="font-kerning:none;font-variant-ligatures:none" stroke-linejoin="round">`,
    `<title>${escapeXml(printable(options.title))}</title>`,
    options.typeface ? fontStyle(drawing, options.typeface) : "",
    ground,
    ...drawing.items.map((item) => writer.write(item)),
    "</svg>",
    "",
  ]
    .filter((line, index, all) => line !== "" || index === all.length - 1)
    .join("\n");
}

/** Text made safe for XML content and for a quoted attribute. Give it what `printable` returned. */
export function escapeXml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

class Writer {
  private readonly theme: Theme;
  /** Without the typeface inside, another face may stand in; each text is then held to its measured width. */
  private readonly holdWidths: boolean;

  constructor(options: SvgOptions) {
    this.theme = options.theme;
    this.holdWidths = options.typeface === undefined;
  }

  write(item: Primitive): string {
    switch (item.kind) {
      case "line":
        return `<line x1="${figure(item.x1)}" y1="${figure(item.y1)}" x2="${figure(item.x2)}" y2="${figure(item.y2)}"${this.stroke(item.stroke)}/>`;
      case "rectangle": {
        const round = item.radius === undefined ? "" : ` rx="${figure(item.radius)}"`;
        return `<rect x="${figure(item.x)}" y="${figure(item.y)}" width="${figure(item.width)}" height="${figure(item.height)}"${round}${this.paint(item)}/>`;
      }
      case "circle":
        return `<circle cx="${figure(item.x)}" cy="${figure(item.y)}" r="${figure(item.radius)}"${this.paint(item)}/>`;
      case "path":
        return `<path d="${item.commands.map(pathData).join("")}"${this.paint(item)}/>`;
      case "text":
        return this.text(item);
      case "group":
        return `<g transform="translate(${figure(item.x)} ${figure(item.y)})">${item.items.map((inner) => this.write(inner)).join("")}</g>`;
    }
  }

  private text(item: Extract<Primitive, { kind: "text" }>): string {
    const line = printable(item.text);
    if (line === "") return "";
    const weight = item.weight === "bold" ? ' font-weight="700"' : "";
    const anchor = item.align === undefined || item.align === "start" ? "" : ` text-anchor="${item.align}"`;
    const turn = item.turn === 90 ? ` transform="rotate(-90 ${figure(item.x)} ${figure(item.y)})"` : "";
    const width = this.holdWidths
      ? ` textLength="${figure(textWidth(line, item.size, item.weight ?? "regular"))}" lengthAdjust="spacingAndGlyphs"`
      : "";
    const place = `x="${figure(item.x)}" y="${figure(item.y)}" font-size="${figure(item.size)}"`;
    const fill = resolveInk(item.colour, this.theme) ?? "none";
    return `<text ${place}${weight}${anchor}${turn}${width} fill="${fill}" xml:space="preserve">${escapeXml(line)}</text>`;
  }

  private paint(item: {
    readonly fill?: Parameters<typeof resolveInk>[0];
    readonly stroke?: Stroke;
  }): string {
    const fill = item.fill === undefined ? null : resolveInk(item.fill, this.theme);
    return ` fill="${fill ?? "none"}"${item.stroke ? this.stroke(item.stroke) : ""}`;
  }

  private stroke(stroke: Stroke): string {
    const colour = resolveInk(stroke.colour, this.theme);
    if (colour === null) return "";
    const dash = stroke.dash?.length ? ` stroke-dasharray="${stroke.dash.map(figure).join(" ")}"` : "";
    const cap = stroke.cap === "round" ? ' stroke-linecap="round"' : "";
    return ` stroke="${colour}" stroke-width="${figure(stroke.width)}"${dash}${cap}`;
  }
}

function pathData(command: PathCommand): string {
  const [letter, ...numbers] = command;
  return letter + numbers.map(figure).join(" ");
}

function fontStyle(drawing: Drawing, typeface: Typeface): string {
  const used = { regular: "", bold: "" };
  const collect = (items: readonly Primitive[]): void => {
    for (const item of items) {
      if (item.kind === "text") used[item.weight ?? "regular"] += printable(item.text);
      else if (item.kind === "group") collect(item.items);
    }
  };
  collect(drawing.items);
  const face = (weight: number, font: Uint8Array, text: string): string => {
    if (text === "") return "";
    const base64 = btoa(binaryString(subsetFont(font, text)));
    return `@font-face{font-family:"${FAMILY}";font-weight:${weight};src:url(data:font/ttf;base64,${base64}) format("truetype")}`;
  };
  return `<style>${face(400, typeface.regular, used.regular)}${face(700, typeface.bold, used.bold)}</style>`;
}

/** Three decimals: a thousandth of a unit is a quarter of a micrometre on paper. */
function figure(value: number): string {
  if (!Number.isFinite(value))
    throw new RangeError(`a drawing holds a coordinate that is not a number: ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return Object.is(rounded, -0) ? "0" : String(rounded);
}
