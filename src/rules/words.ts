import { sayColour } from "../catalogue/colours.ts";
import { nameContactOf } from "../catalogue/describe.ts";
import type { Point } from "../electrical/points.ts";
import type { Feed, ReachState } from "../electrical/reach.ts";
import type { Colour, Wire } from "../graph/harness.ts";
import type { Look } from "./look.ts";

const order = new Intl.Collator("en", { numeric: true });

/** Compares two designations as a person sorts them: X2 before X10. */
export function compareNames(a: string, b: string): number {
  return order.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);
}

/** "X1.A4". */
export function nameOf(point: Point): string {
  return nameContactOf(point.part, point.contact, point.contact.number);
}

export function byName(a: Point, b: Point): number {
  return (
    compareNames(a.part.designation, b.part.designation) ||
    a.contact.number - b.contact.number ||
    (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)
  );
}

/** The colour that a person sees at the contact: the wire's that lands there (the first by name), else the chart's. */
export function colourAt(context: Look, point: Point): Colour | null {
  const coloured = context.points.wiresAt(point).filter((wire) => wire.colour !== null);
  if (coloured.length > 1) coloured.sort((a, b) => compareNames(a.designation, b.designation));
  if (coloured[0]) return coloured[0].colour;
  return point.contact.cavity?.lead?.colour ?? null;
}

/** "X1.A4 constant feed (red)": a contact, what it is for, and the colour of its lead where one is known. */
export function sayPoint(context: Look, point: Point): string {
  const colour = colourAt(context, point);
  return `${nameAndPurpose(point)}${colour ? ` (${sayColour(colour)})` : ""}`;
}

/** "X1.A4 constant feed". */
export function nameAndPurpose(point: Point): string {
  return point.means.id === "unknown" ? nameOf(point) : `${nameOf(point)} ${point.means.name}`;
}

/** "W3 (blue with a white tracer)". */
export function sayWire(wire: Wire): string {
  return wire.colour ? `${wire.designation} (${sayColour(wire.colour)})` : wire.designation;
}

/** "XE1", or the contact of a chart that is a ground: "X1.A8 ground (brown)". */
export function sayGrounds(context: Look, grounds: readonly Point[]): string {
  return sayList(
    [...grounds]
      .sort(byName)
      .map((point) => (point.part.kind === "ground" ? nameOf(point) : sayPoint(context, point))),
  );
}

export function isOrAre(things: readonly unknown[]): string {
  return things.length === 1 ? "is" : "are";
}

/** "a, b and c"; past the limit, "a, b and 4 more". Items that hold a comma are parted by semicolons. */
export function sayList(items: readonly string[], most = 6): string {
  const shown =
    items.length > most ? [...items.slice(0, most - 1), `${items.length - most + 1} more`] : [...items];
  const last = shown.pop();
  if (last === undefined) return "";
  if (!shown.length) return last;
  const comma = shown.some((item) => item.includes(",")) ? "; " : ", ";
  return `${shown.join(comma)}${comma === "; " ? "; and " : " and "}${last}`;
}

/** The points in words, in the order in which a person reads designations. */
export function sayPoints(context: Look, points: readonly Point[]): string {
  return sayList([...points].sort(byName).map((point) => sayPoint(context, point)));
}

const KEY_WORDS: readonly (readonly [ReachState, string])[] = [
  ["accessory", "accessory"],
  ["run", "run"],
  ["crank", "crank"],
];
const OTHER_WORDS: readonly (readonly [ReachState, string])[] = [
  ["lights-on", "with the lights on"],
  ["reverse", "in reverse"],
  ["brake-on", "with the brake on"],
  ["unit-on", "while the unit is on"],
  ["at-times", "at times"],
];

/** "at all times", "with the key at accessory or run", "with the lights on". "" for no state. */
export function sayStates(states: readonly ReachState[]): string {
  if (states.includes("off")) return "at all times";
  const keys = KEY_WORDS.filter(([state]) => states.includes(state)).map(([, word]) => word);
  const last = keys.pop();
  const key =
    last === undefined
      ? []
      : [`with the key at ${[...keys, last].join(", ").replace(/, (?=[^,]*$)/, " or ")}`];
  // With the key on, that the unit is on as well tells nothing new.
  const others = OTHER_WORDS.filter(
    ([state]) => states.includes(state) && !(key.length && state === "unit-on"),
  );
  return [...key, ...others.map(([, word]) => word)].join(", or ");
}

/** "X1.A4 constant feed (red), at all times, through F1". */
export function sayFeed(context: Look, feed: Feed): string {
  const fuses = feed.fuses.map((id) => context.harness.parts[id]?.designation ?? id);
  const behind = feed.source.contact.cavity?.fuse_A;
  const protection =
    feed.protection === "fuse"
      ? `, through ${sayList(fuses)}`
      : feed.protection === "none"
        ? ", with no fuse on the way"
        : feed.protection === "far-side"
          ? `, behind its own ${behind} A fuse`
          : "";
  return `${sayPoint(context, feed.source)}, ${sayStates(feed.live)}${protection}`;
}
