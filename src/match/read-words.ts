import { FUNCTIONS } from "../catalogue/functions.ts";
import type { Colour } from "../graph/harness.ts";
import { readColourText } from "./words/read-colour.ts";
import { readFunction as readWording } from "./words/read-function.ts";

/** Lower case, no accents, one kind of minus, single blanks: how names are compared. */
function plainName(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[−–—‐‑]/g, "-")
    .replace(/[_\s]+/g, " ")
    .trim();
}

const NAMED: ReadonlyMap<string, string> = new Map(
  FUNCTIONS.filter(({ id }) => id !== "unknown")
    .flatMap((item) =>
      [item.id, item.name, ...item.synonyms].map((name) => [plainName(name), item.id] as const),
    )
    .filter(([name]) => name !== "")
    .reverse(),
);

/**
 * The function that a person names: by its name in the catalogue, or in words that mean one and no other.
 * @returns its id; `null` where the words fit none, or more than one: a wrong guess is worse than a question
 */
export function readFunction(text: string): string | null {
  const named = NAMED.get(plainName(text));
  if (named) return named;
  const { candidates, certain } = readWording(text);
  return certain ? (candidates[0]?.function ?? null) : null;
}

/** Reads one colour without its chart. `null` where it is none, or could be two. */
export function readChartColour(text: string): Colour | null {
  return readColourText(text);
}
