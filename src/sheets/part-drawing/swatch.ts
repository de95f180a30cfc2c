import { writeColour } from "../../catalogue/colours.ts";
import type { Colour } from "../../graph/harness.ts";
import type { Ink, PathCommand, Primitive } from "../../layout/drawing.ts";
import { SMALL_TEXT } from "../../layout/geometry/caption.ts";
import { box, HAIR, inkStroke, line, MIDDLE, path, RULE, run, words } from "./pen.ts";

const SLANT = 4;

/** The tracer's letters: a second code, or the one that a two-colour code has in itself. */
export function tracerOf(colour: Colour): Colour["tracer"] {
  return colour.tracer ?? (colour.base === "GNYE" ? "YE" : null);
}

/**
 * A piece of insulation: outlined, in its base colour, the tracer as slanted stripes. A colour that nobody has
 * stated is hatched.
 */
export function swatch(
  x: number,
  y: number,
  width: number,
  height: number,
  colour: Colour | null,
): readonly Primitive[] {
  const outline = box(x, y, width, height, { stroke: inkStroke(HAIR + 0.25) });
  if (!colour) {
    return [
      box(x, y, width, height, { fill: "paper" }),
      path(hatching(x, y, width, height), { stroke: { colour: "quiet", width: HAIR } }),
      outline,
    ];
  }
  const ground = box(x, y, width, height, { fill: `wire:${colour.base}` });
  const tracer = tracerOf(colour);
  if (!tracer) return [ground, outline];
  return [
    ground,
    path(stripes(x, y, width, height), { fill: `wire:${tracer}`, stroke: inkStroke(0.35) }),
    outline,
  ];
}

/** Slanted stripes, as a spiral tracer shows on the near side of a wire. */
function stripes(x: number, y: number, width: number, height: number): PathCommand[] {
  const commands: PathCommand[] = [];
  const wide = 4;
  for (let at = 2; at + wide + SLANT <= width; at += 9) {
    commands.push(
      ...run(
        [x + at + SLANT, y, x + at + SLANT + wide, y, x + at + wide, y + height, x + at, y + height],
        true,
      ),
    );
  }
  return commands;
}

function hatching(x: number, y: number, width: number, height: number): PathCommand[] {
  const commands: PathCommand[] = [];
  for (let at = -height + 3; at < width; at += 4) {
    const from = Math.max(at, 0);
    const to = Math.min(at + height, width);
    commands.push(["M", x + from, y + height - (from - at)], ["L", x + to, y + height - (to - at)]);
  }
  return commands;
}

/** A cavity's lead as its chart states it: swatch and letters; hatched without letters; a dash where there is none. */
export function leadMark(
  x: number,
  middle: number,
  room: number,
  lead: { readonly colour: Colour | null } | null,
): readonly Primitive[] {
  if (!lead) return [line(x + 2, middle, x + 10, middle, RULE, "quiet")];
  return [
    ...swatch(x, middle - 5.5, 18, 11, lead.colour),
    ...words(x + 22, middle + SMALL_TEXT * MIDDLE, writeColour(lead.colour), {
      size: SMALL_TEXT,
      room: room - 22,
    }),
  ];
}

/** Paper under a text or symbol that stands on a wire. */
export function ground(x: number, y: number, width: number, height: number, fill: Ink = "paper"): Primitive {
  return box(x, y, width, height, { fill });
}
