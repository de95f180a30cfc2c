import type { Ink, PathCommand, Primitive, Stroke } from "../../layout/drawing.ts";
import { fitText, type Weight } from "../../layout/text/measure.ts";

/** Line widths, drawing units: separating lines, symbols and leads, outlines. */
export const HAIR = 0.75;
export const RULE = 1.25;
export const HEAVY = 1.75;

/** How far below its middle a text's baseline lies, as a part of its size (capital letters of the typeface). */
export const MIDDLE = 0.34;

export function line(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  width = RULE,
  colour: Ink = "ink",
  dash?: readonly number[],
): Primitive {
  return { kind: "line", x1, y1, x2, y2, stroke: { colour, width, ...(dash ? { dash } : {}) } };
}

type Look = { readonly fill?: Ink; readonly stroke?: Stroke; readonly radius?: number };

export const inkStroke = (width = RULE, dash?: readonly number[]): Stroke => ({
  colour: "ink",
  width,
  ...(dash ? { dash } : {}),
});

export function box(
  x: number,
  y: number,
  width: number,
  height: number,
  look: Look = { stroke: inkStroke() },
): Primitive {
  return { kind: "rectangle", x, y, width, height, ...look };
}

export function circle(
  x: number,
  y: number,
  radius: number,
  look: Look = { stroke: inkStroke() },
): Primitive {
  const { fill, stroke } = look;
  return { kind: "circle", x, y, radius, ...(fill ? { fill } : {}), ...(stroke ? { stroke } : {}) };
}

export function path(
  commands: readonly PathCommand[],
  look: { readonly fill?: Ink; readonly stroke?: Stroke } = { stroke: inkStroke() },
): Primitive {
  return { kind: "path", commands, ...look };
}

/** An open or closed run of straight pieces: x, y, x, y, … */
export function run(points: readonly number[], closed = false): PathCommand[] {
  const commands: PathCommand[] = [];
  for (let i = 0; i + 1 < points.length; i += 2) {
    commands.push([i === 0 ? "M" : "L", points[i]!, points[i + 1]!]);
  }
  if (closed) commands.push(["Z"]);
  return commands;
}

export type Words = {
  readonly size: number;
  readonly weight?: Weight;
  readonly align?: "start" | "middle" | "end";
  readonly colour?: Ink;
  /** Longer texts end in an ellipsis. */
  readonly room: number;
};

/** One line of text on a baseline; nothing where there is no text or no room for any. */
export function words(x: number, y: number, content: string, look: Words): Primitive[] {
  const { size, weight = "regular", align = "start", colour = "ink", room } = look;
  const fitted = fitText(content, size, weight, room);
  return fitted === "" ? [] : [{ kind: "text", x, y, text: fitted, size, weight, align, colour }];
}

/** Turns a symbol drawn with its first contact on the left into its mirror image, where `on`. Texts stay readable. */
export function mirrored(items: readonly Primitive[], width: number, on: boolean): readonly Primitive[] {
  return on ? items.map((item) => mirror(item, width)) : items;
}

function mirror(item: Primitive, width: number): Primitive {
  switch (item.kind) {
    case "line":
      return { ...item, x1: width - item.x1, x2: width - item.x2 };
    case "rectangle":
      return { ...item, x: width - item.x - item.width };
    case "circle":
      return { ...item, x: width - item.x };
    case "path":
      return { ...item, commands: item.commands.map((command) => mirrorCommand(command, width)) };
    case "text": {
      const { align = "start" } = item;
      const other = align === "start" ? "end" : align === "end" ? "start" : "middle";
      return { ...item, x: width - item.x, align: other };
    }
    case "group":
      return { ...item, x: width - item.x, items: item.items.map((inner) => mirror(inner, 0)) };
  }
}

function mirrorCommand(command: PathCommand, width: number): PathCommand {
  switch (command[0]) {
    case "M":
    case "L":
      return [command[0], width - command[1], command[2]];
    case "C":
      return [
        "C",
        width - command[1],
        command[2],
        width - command[3],
        command[4],
        width - command[5],
        command[6],
      ];
    case "Z":
      return command;
  }
}
