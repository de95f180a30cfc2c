import { digits, doubts, type Figure } from "../figure.ts";
import { requireBetween, requireNotNegative, requirePositive } from "../require.ts";
import { BLADES, type Blade, type BladeForm } from "./blade.ts";

/** How large a fuse may be against the wire it protects, by who says so. */
export type FuseRule = {
  readonly id: "at-most-ampacity" | "next-size" | "150-percent";
  readonly covers: string;
  readonly source: string;
};

export const FUSE_RULES: readonly FuseRule[] = [
  {
    id: "at-most-ampacity",
    covers: "the fuse opens before the wire's rating is passed: rating at most the ampacity",
    source: "FAA AC 43.13-1B par. 11-47 and 11-48",
  },
  {
    id: "next-size",
    covers: "at most the ampacity, or the next standard rating above it where that is not over 150 %",
    source: "46 CFR 183.380(d) and 111.50-3; ABYC E-11",
  },
  {
    id: "150-percent",
    covers: "gasoline boats under 50 V: at most 150 % of the table 5 ampacity",
    source: "33 CFR 183.455(c)(1)",
  },
];

/** Share of its rating that a fuse carries for good. 0.75 is two fuse makers' habit at 25 °C; 0.65 and 0.80 are in use too. */
export const CONTINUOUS_SHARE = 0.75;

export type FuseTask = {
  /** What flows for good, amperes. */
  readonly load_A: number;
  /** The weakest wire between this fuse and the next one downstream, and what it may carry. */
  readonly weakest: { readonly name: string; readonly ampacity_A: number };
  readonly form: BladeForm;
  readonly rule: FuseRule["id"];
  /** Share of the rating that the load may be; above 0 to 1. */
  readonly continuousShare?: number;
};

export type FuseChoice =
  | {
      readonly ok: true;
      readonly blade: Blade;
      readonly rating: Figure;
      /** The largest rating that the wire allows; the chosen one is the smallest that carries the load. */
      readonly most_A: number;
    }
  | {
      readonly ok: false;
      /** `wire`: the weakest wire must grow. `form`: no blade of this form is large enough. */
      readonly grow: "wire" | "form";
      /** What the wire must carry for the smallest fuse that bears the load; `null` where the form is the trouble. */
      readonly neededAmpacity_A: number | null;
      readonly why: string;
    };

/**
 * The smallest standard blade that carries the load for good and still protects the weakest wire.
 * @throws RangeError for NaN, a negative load, an ampacity not above 0, a share outside 0 to 1
 */
export function chooseFuse(task: FuseTask): FuseChoice {
  const share = task.continuousShare ?? CONTINUOUS_SHARE;
  requireNotNegative("load_A", task.load_A);
  requirePositive("ampacity_A", task.weakest.ampacity_A);
  requireBetween("continuousShare", share, 0.05, 1);
  const blades = BLADES[task.form];
  const needed_A = task.load_A / share;
  const needs = `${digits(task.load_A)} A / ${digits(share)} = ${digits(needed_A)} A`;
  // A hair's tolerance: 7.5 A / 0.75 is 10 A on paper.
  const found = blades.find((one) => one.rating_A >= needed_A - 1e-9);
  if (!found) {
    const largest = blades.at(-1)!;
    return {
      ok: false,
      grow: "form",
      neededAmpacity_A: null,
      why: `the load asks for ${needs}; ${task.form} blades end at ${largest.rating_A} A`,
    };
  }
  const rule = FUSE_RULES.find((one) => one.id === task.rule)!;
  const most_A = mostAllowed(task.rule, task.weakest.ampacity_A, blades);
  if (found.rating_A > most_A) {
    const neededAmpacity_A = leastAmpacity(task.rule, found.rating_A, blades);
    return {
      ok: false,
      grow: "wire",
      neededAmpacity_A,
      why: `the load asks for ${needs}, so ${found.rating_A} A; ${task.weakest.name} carries ${digits(task.weakest.ampacity_A)} A and allows ${sayMost(most_A)}. It must carry ${sayNeeded(task.rule, neededAmpacity_A)}`,
    };
  }
  return {
    ok: true,
    blade: found,
    most_A,
    rating: {
      value: found.rating_A,
      unit: "A",
      formula: `load ${needs} → ${found.rating_A} A; ${task.weakest.name} carries ${digits(task.weakest.ampacity_A)} A, which allows up to ${digits(most_A)} A`,
      table: "standard blade ratings, ISO 8820-3",
      source: `${rule.source}; continuous load at ${digits(share * 100)} % of the rating`,
      doubt: doubts(
        found.doubt,
        "how much of its rating a fuse may carry for good is habit: 65, 75 and 80 % are all in use",
      ),
    },
  };
}

/** The largest rating of a form that a rule allows on a wire; 0 where none is. */
export function mostAllowed(rule: FuseRule["id"], ampacity_A: number, blades: readonly Blade[]): number {
  const under = (limit_A: number) => blades.findLast((one) => one.rating_A <= limit_A + 1e-9)?.rating_A ?? 0;
  const within = under(ampacity_A);
  if (rule === "at-most-ampacity") return within;
  if (rule === "150-percent") return under(ampacity_A * 1.5);
  if (Math.abs(within - ampacity_A) < 1e-9) return within;
  const next = blades.find((one) => one.rating_A > ampacity_A);
  return next && next.rating_A <= ampacity_A * 1.5 + 1e-9 ? next.rating_A : within;
}

/** The ampacity from which on a rule allows a rating: for `next-size`, anything above the rating below it. */
function leastAmpacity(rule: FuseRule["id"], rating_A: number, blades: readonly Blade[]): number {
  if (rule === "at-most-ampacity") return rating_A;
  if (rule === "150-percent") return rating_A / 1.5;
  const below = blades.findLast((one) => one.rating_A < rating_A)?.rating_A ?? 0;
  return Math.max(below, rating_A / 1.5);
}

function sayMost(most_A: number): string {
  return most_A === 0 ? "no rating at all" : `at most ${digits(most_A)} A`;
}

function sayNeeded(rule: FuseRule["id"], needed_A: number): string {
  return rule === "next-size" ? `more than ${digits(needed_A)} A` : `${digits(needed_A)} A or more`;
}
