import type { Idea } from "../../catalogue/words/english.ts";
import { remembering } from "../remember.ts";
import { ideasOf } from "../words/ideas-of.ts";

/** Words of place and order that exclude each other: a front work lamp is no rear one. */
const OPPOSITES: readonly (readonly [Idea, Idea])[] = [
  ["front", "rear"],
  ["left", "right"],
  ["port", "starboard"],
  ["up", "down"],
  ["high", "low"],
  ["1", "2"],
  ["driver", "passenger"],
];

/** True where one text names a place or a number and the other names its opposite instead. */
export function contradict(a: string, b: string): boolean {
  const one = placesOf(a);
  const other = placesOf(b);
  if (one.size === 0 || other.size === 0) return false;
  return OPPOSITES.some(
    ([x, y]) =>
      (one.has(x) && !one.has(y) && other.has(y) && !other.has(x)) ||
      (one.has(y) && !one.has(x) && other.has(x) && !other.has(y)),
  );
}

const NAMED = new Set(OPPOSITES.flat());

const placesOf: (text: string) => ReadonlySet<Idea> = remembering((text) => {
  const [ideas = []] = ideasOf(text).alternatives;
  return new Set(ideas.filter((idea) => NAMED.has(idea)));
});
