import { functionOf } from "../../catalogue/functions.ts";
import { remembering } from "../remember.ts";
import { plainWords } from "../words/plain-words.ts";
import type { InContext } from "./context.ts";
import { isPower, kinOf, kinship, vetoOf } from "./kin.ts";
import { contradict } from "./places.ts";
import type { Roles } from "./role.ts";

/** Two leads, one of each chart, and what speaks for joining them. */
export type Pair = {
  readonly left: number;
  readonly right: number;
  /** The function that both most likely have. */
  readonly function: string;
  /** How likely both are one circuit, 0 to 1. */
  readonly likely: number;
  /** Both words are the same, whatever they mean. */
  readonly sameWords: boolean;
  /** What the assignment compares: likelihood first, then words, direction, size, colour last. */
  readonly score: number;
  readonly power: boolean;
  /** What forbids the join; such a pair may be asked about, never made. */
  readonly veto: string | null;
  /** In no sense of their words is the join a forbidden one. */
  readonly harmless: boolean;
  /** Both wordings leave the same senses open, whatever they are in the end. */
  readonly sameSenses: boolean;
};

const NO_ROLES: Roles = { left: null, right: null };

/** Words short enough to say nothing do not make two leads the same. */
const LEAST_LETTERS = 2;

/** What a text is compared by: its words in plain form, sorted, so that their order does not matter. */
export const wordKey: (text: string) => string = remembering((text) =>
  plainWords(text)
    .replace(/[^a-z0-9+-]+/g, " ")
    .split(" ")
    .filter((word) => word !== "")
    .sort()
    .join(" "),
);

/**
 * Every pair that is worth a look: by function, by kinship of functions, by equal words. Near-linear, for leads
 * are found by what they mean, not compared each with each.
 */
export function pairsOf(
  left: readonly InContext[],
  right: readonly InContext[],
  roles: Roles = NO_ROLES,
): readonly Pair[] {
  const byFunction = new Map<string, number[]>();
  const byWords = new Map<string, number[]>();
  for (const [index, { lead, reading }] of right.entries()) {
    for (const one of reading.candidates) push(byFunction, one.function, index);
    push(byWords, wordKey(lead.text), index);
  }
  const pairs: Pair[] = [];
  for (const [index, { lead, reading }] of left.entries()) {
    const near = new Set<number>();
    for (const one of reading.candidates) {
      for (const other of byFunction.get(one.function) ?? []) near.add(other);
      for (const name of kinOf(one.function).keys()) {
        for (const other of byFunction.get(name) ?? []) near.add(other);
      }
    }
    const key = wordKey(lead.text);
    if (key.replace(/[^a-z]/g, "").length >= LEAST_LETTERS) {
      for (const other of byWords.get(key) ?? []) near.add(other);
    }
    for (const other of [...near].sort((a, b) => a - b)) {
      const pair = pairOf(index, other, left[index]!, right[other]!, key, roles);
      if (pair) pairs.push(pair);
    }
  }
  return pairs;
}

function push(map: Map<string, number[]>, key: string, value: number): void {
  const list = map.get(key);
  if (!list) map.set(key, [value]);
  else if (list.at(-1) !== value) list.push(value);
}

function pairOf(
  left: number,
  right: number,
  a: InContext,
  b: InContext,
  key: string,
  roles: Roles,
): Pair | null {
  let likely = 0;
  let forbidden = 0;
  let veto: string | null = null;
  let best = { function: "unknown", weight: 0 };
  for (const one of a.reading.candidates) {
    for (const other of b.reading.candidates) {
      const weight = one.share * other.share;
      const stop = vetoOf(one.function, other.function);
      if (stop) {
        forbidden += weight;
        veto ??= stop;
        continue;
      }
      const near = kinship(one.function, other.function);
      likely += weight * near;
      if (weight * near > best.weight) {
        // The more particular of two kin names the join: "ground for lamps", not "ground".
        best = { function: one.function, weight: weight * near };
      }
    }
  }
  const sameWords = key !== "" && key === wordKey(b.lead.text);
  if (contradict(a.lead.text, b.lead.text)) likely *= 0.1;
  if (likely < 0.05 && !sameWords) return null;
  // An ambiguous wording that is forbidden in one sense and fits in another is a question, not a veto.
  if (forbidden < 0.75 && likely >= 0.1) veto = null;
  const clash = directionClash(a, b, roles);
  veto ??= clash;
  const power = [a, b].some(({ reading }) =>
    reading.candidates.some((one) => one.share >= 0.15 && isPower(one.function)),
  );
  return {
    left,
    right,
    function: best.function,
    likely: Math.min(1, likely),
    sameWords,
    score: likely + (sameWords ? 0.12 : 0.1 * alikeness(a.lead.text, b.lead.text)) + smallThings(a, b),
    power,
    veto,
    harmless: forbidden === 0 && veto === null,
    sameSenses: !a.reading.certain && !b.reading.certain && senseOverlap(a, b) > 0.95,
  };
}

/** How far two readings have the same senses with the same shares, 0 to 1 (cosine). */
function senseOverlap(a: InContext, b: InContext): number {
  let [both, one, other] = [0, 0, 0];
  for (const { function: name, share } of a.reading.candidates) {
    one += share * share;
    both += share * (b.reading.candidates.find((each) => each.function === name)?.share ?? 0);
  }
  for (const { share } of b.reading.candidates) other += share * share;
  return one === 0 || other === 0 ? 0 : both / Math.sqrt(one * other);
}

/**
 * Two outputs on one wire fight. Grounds and data lines have no such direction. What the vehicle gives by nature
 * (speed, reverse, parking brake) clashes with a box that calls its own lead an output.
 */
function directionClash(a: InContext, b: InContext, roles: Roles): string | null {
  const both = a.lead.direction === "gives" && b.lead.direction === "gives";
  const boxGives =
    (a.lead.direction === "gives" && b.lead.direction === "unknown" && roles.right === "vehicle") ||
    (b.lead.direction === "gives" && a.lead.direction === "unknown" && roles.left === "vehicle");
  if (!both && !(boxGives && vehicleGives(a) && vehicleGives(b))) return null;
  const [first] = a.reading.candidates;
  const group = first ? functionOf(first.function).group : "none";
  if (group === "ground" || group === "data" || group === "none") return null;
  return "two outputs";
}

function vehicleGives({ reading }: InContext): boolean {
  const [first] = reading.candidates;
  if (!first || !reading.certain) return false;
  const { givenBy, group } = functionOf(first.function);
  return givenBy === "vehicle" && (group === "control" || group === "lighting");
}

/** What breaks a tie: direction, current, size, and colour, which weighs least. */
function smallThings(a: InContext, b: InContext): number {
  let sum = 0;
  const directions = [a.lead.direction, b.lead.direction];
  if (directions.includes("gives") && directions.includes("takes")) sum += 0.04;
  else if (directions[0] === "takes" && directions[1] === "takes") sum -= 0.03;
  if (a.lead.current_A !== null && a.lead.current_A === b.lead.current_A) sum += 0.02;
  if (a.lead.area_mm2 !== null && a.lead.area_mm2 === b.lead.area_mm2) sum += 0.01;
  const one = a.lead.colour;
  const other = b.lead.colour;
  if (one && other && one.base === other.base) sum += one.tracer === other.tracer ? 0.015 : 0.005;
  return sum;
}

const wordsOf: (text: string) => ReadonlySet<string> = remembering(
  (text) => new Set(wordKey(text).split(" ")),
);

/** The part of the words that two texts share, 0 to 1 (Dice). */
export function alikeness(a: string, b: string): number {
  const one = wordsOf(a);
  const other = wordsOf(b);
  let shared = 0;
  for (const word of one) if (other.has(word)) shared++;
  return (2 * shared) / (one.size + other.size);
}
