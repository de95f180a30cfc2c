import { COLOUR_NAMES } from "../catalogue/colours.ts";
import { contactsOf } from "../graph/contacts.ts";
import type { Cap, ColourCode, Harness, Splice } from "../graph/harness.ts";
import { COLOUR_CODES } from "../graph/schema/values.ts";
import type { Primitive } from "../layout/drawing.ts";
import { textWidth } from "../layout/text/measure.ts";
import type { Rect } from "./paper-size.ts";
import { directionMark } from "./part-drawing/cavity-row.ts";
import { CAPS, capBody, JOINTS, jointBody } from "./part-drawing/joint.ts";
import { box, circle, inkStroke, MIDDLE, path, RULE, words } from "./part-drawing/pen.ts";
import { swatch } from "./part-drawing/swatch.ts";
import { differsFromWanted } from "./part-drawing/switch-bank.ts";

/** One thing that the legend explains: a sign and its words. */
export type LegendEntry = {
  readonly words: string;
  readonly kind: "colour" | "symbol";
  /** The sign about a point at its left end, `SIGN` wide at most. */
  readonly sign: (x: number, y: number) => readonly Primitive[];
};

const SIGN = { colour: 18, symbol: 36 } as const;
const DIRECTION_WORDS = {
  gives: "gives to the lead",
  takes: "takes from the lead",
  both: "gives and takes",
} as const;
const SIZE = 9.5;
const ROW = { colour: 14, symbol: 20 } as const;
const GAP = 5;

/** What a harness uses: its colour letters, its joints and caps, and the marks that are ours. */
export function legendEntries(harness: Harness): readonly LegendEntry[] {
  return [...colourEntries(harness), ...symbolEntries(harness)];
}

function colourEntries(harness: Harness): LegendEntry[] {
  const used = new Set<ColourCode>();
  let unstated = false;
  const take = (colour: Harness["wires"][keyof Harness["wires"]]["colour"]): void => {
    if (!colour) {
      unstated = true;
      return;
    }
    used.add(colour.base);
    if (colour.tracer) used.add(colour.tracer);
  };
  for (const wire of Object.values(harness.wires)) take(wire.colour);
  for (const part of Object.values(harness.parts)) {
    for (const { cavity } of contactsOf(part)) if (cavity?.lead) take(cavity.lead.colour);
  }
  const entries = COLOUR_CODES.filter((code) => used.has(code)).map(
    (code): LegendEntry => ({
      words: `${code}  ${COLOUR_NAMES[code]}`,
      kind: "colour",
      sign: (x, y) => swatch(x, y - 4.5, SIGN.colour, 9, { base: code, tracer: null }),
    }),
  );
  if (unstated) {
    entries.push({
      words: "colour not stated",
      kind: "colour",
      sign: (x, y) => swatch(x, y - 4.5, SIGN.colour, 9, null),
    });
  }
  return entries;
}

function symbolEntries(harness: Harness): LegendEntry[] {
  const joints = new Set<Splice["method"]>();
  const caps = new Set<Cap["method"]>();
  const directions = new Set<string>();
  let switchDiffers = false;
  for (const part of Object.values(harness.parts)) {
    if (part.kind === "splice") joints.add(part.method);
    if (part.kind === "cap") caps.add(part.method);
    if (part.kind === "module") switchDiffers ||= part.switches.some(differsFromWanted);
    for (const { direction, cavity } of contactsOf(part)) if (cavity) directions.add(direction);
  }
  const entries: LegendEntry[] = [];
  const symbol = (text: string, sign: LegendEntry["sign"]): void => {
    entries.push({ words: text, kind: "symbol", sign });
  };
  for (const direction of ["gives", "takes", "both"] as const) {
    if (!directions.has(direction)) continue;
    symbol(DIRECTION_WORDS[direction], (x, y) => directionMark(x + 18, y, direction, true));
  }
  for (const method of Object.keys(JOINTS) as Splice["method"][]) {
    if (!joints.has(method)) continue;
    symbol(JOINTS[method].words, (x, y) => [
      ...jointBody(method, x + 18, y),
      ...letter(x + 18, y, JOINTS[method].letter),
    ]);
  }
  for (const method of Object.keys(CAPS) as Cap["method"][]) {
    if (!caps.has(method)) continue;
    symbol(CAPS[method].words, (x, y) => [
      ...capBody(method, x + 18, y),
      ...letter(x + 18, y, CAPS[method].letter),
    ]);
  }
  const kinds = new Set(Object.values(harness.cables).map((cable) => cable.kind));
  if (kinds.has("twisted-pair") || kinds.has("shielded-pair")) symbol("twisted pair", twistSign);
  if (kinds.has("shielded") || kinds.has("shielded-pair") || kinds.has("coax")) {
    symbol("shield and its drain", (x, y) => [
      box(x + 2, y - 6, 32, 12, { radius: 6, stroke: inkStroke(RULE, [5, 3]) }),
    ]);
  }
  if (Object.values(harness.wires).some((wire) => wire.ends.includes("loose"))) {
    symbol("loose end", (x, y) => [
      box(x + 4, y - 2, 16, 4, { fill: "ink" }),
      circle(x + 24, y, 5, { fill: "paper", stroke: inkStroke(1.75) }),
    ]);
  }
  if (switchDiffers) {
    symbol("switch set unlike its chart", (x, y) => [
      box(x + 11, y - 8, 14, 16, { radius: 2, stroke: inkStroke(1.75) }),
    ]);
  }
  return entries;
}

function letter(x: number, y: number, text: string): Primitive[] {
  return words(x, y + 11 * MIDDLE, text, { size: 11, weight: "bold", align: "middle", room: 20 });
}

function twistSign(x: number, y: number): readonly Primitive[] {
  const strand = (up: number): Primitive =>
    path(
      [
        ["M", x + 2, y + up],
        ["C", x + 10, y + up, x + 10, y - up, x + 18, y - up],
        ["C", x + 26, y - up, x + 26, y + up, x + 34, y + up],
      ],
      { stroke: inkStroke(RULE * 1.4) },
    );
  return [strand(5), strand(-5)];
}

export type SetLegend = {
  readonly items: readonly Primitive[];
  readonly height: number;
  /** What found no room. */
  readonly left: readonly LegendEntry[];
};

/** Sets entries in columns, colours first, each kind in columns as wide as its widest words. */
export function setLegend(entries: readonly LegendEntry[], area: Rect): SetLegend {
  const items: Primitive[] = [];
  const left: LegendEntry[] = [];
  let y = area.y;
  for (const kind of ["colour", "symbol"] as const) {
    const own = entries.filter((entry) => entry.kind === kind);
    if (own.length === 0) continue;
    const widest = Math.max(...own.map((entry) => textWidth(entry.words, SIZE, "regular")));
    const pitch = Math.min(area.width, SIGN[kind] + GAP + widest + 14);
    const columns = Math.max(1, Math.floor((area.width + 14) / pitch));
    const rows = Math.ceil(own.length / columns);
    const room = Math.max(0, Math.floor((area.y + area.height - y) / ROW[kind]));
    for (const [index, entry] of own.entries()) {
      // Down the columns, so that the eye runs through one list.
      const [column, row] = [Math.floor(index / rows), index % rows];
      if (row >= room) {
        left.push(entry);
        continue;
      }
      const x = area.x + column * pitch;
      const middle = y + row * ROW[kind] + ROW[kind] / 2;
      items.push(
        ...entry.sign(x, middle),
        ...words(x + SIGN[kind] + GAP, middle + SIZE * MIDDLE, entry.words, {
          size: SIZE,
          room: pitch - SIGN[kind] - GAP - 2,
        }),
      );
    }
    y += Math.min(rows, room) * ROW[kind];
  }
  return { items, height: y - area.y, left };
}
