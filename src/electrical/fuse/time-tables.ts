import type { BladeForm } from "./blade.ts";

/** What a standard or a maker allows at one multiple of the rating. */
export type TimePoint = {
  readonly multiple: number;
  /** It must hold at least this long, seconds; `null` where no least time is given. */
  readonly least_s: number | null;
  /** It must have opened by then, seconds; `null` where it need never open. */
  readonly most_s: number | null;
};

export type TimeTable = {
  readonly name: string;
  /** Rising multiples; both times fall along them. */
  readonly points: readonly TimePoint[];
  readonly source: string;
  readonly doubt: string | null;
};

/** A hundred hours: the time that stands for "for good". */
const FOR_GOOD_s = 360_000;

const SMALL_POINTS: readonly TimePoint[] = [
  { multiple: 1.1, least_s: FOR_GOOD_s, most_s: null },
  { multiple: 1.35, least_s: 0.75, most_s: 600 },
  { multiple: 1.6, least_s: 0.25, most_s: 50 },
  { multiple: 2, least_s: 0.15, most_s: 5 },
  { multiple: 3.5, least_s: 0.04, most_s: 0.5 },
  { multiple: 6, least_s: null, most_s: 0.1 },
];

const REGULAR_SMALL: TimeTable = {
  name: "regular blade up to 30 A, opening time by per cent of rating",
  points: SMALL_POINTS,
  source: "a maker's datasheet naming ISO 8820-3",
  doubt: "160 and 200 % seen once; 110, 135, 350 and 600 % from memory",
};

const MINI: TimeTable = {
  name: "mini blade, opening time by per cent of rating",
  points: SMALL_POINTS,
  source: "a maker's mini-blade datasheet naming ISO 8820-3",
  doubt: "110 and 135 % seen once; the other points are the regular blade's, 350 and 600 % from memory",
};

const REGULAR_LARGE: TimeTable = {
  name: "regular blade 35 and 40 A, opening time by per cent of rating",
  points: [
    { multiple: 1, least_s: FOR_GOOD_s, most_s: null },
    { multiple: 1.35, least_s: 0.75, most_s: 600 },
    { multiple: 2, least_s: 0.15, most_s: 5 },
    { multiple: 3.5, least_s: 0.08, most_s: 0.5 },
    { multiple: 6, least_s: null, most_s: 0.15 },
  ],
  source: "a maker's datasheet naming ISO 8820-3",
  doubt: "seen once",
};

const MAXI: TimeTable = {
  name: "maxi blade, opening time by per cent of rating",
  points: [
    { multiple: 1, least_s: FOR_GOOD_s, most_s: null },
    { multiple: 1.35, least_s: 60, most_s: 1800 },
    { multiple: 2, least_s: 2, most_s: 50 },
    { multiple: 3.5, least_s: 0.2, most_s: 7 },
    { multiple: 6, least_s: 0.04, most_s: 1 },
  ],
  source: "a maker's datasheet of the 40 A maxi blade",
  doubt: "seen once, for 40 A; the other ratings are taken alike",
};

/** The table that a blade is judged by. */
export function timeTable(form: BladeForm, rating_A: number): TimeTable {
  if (form === "maxi") return MAXI;
  if (form === "mini") return MINI;
  return rating_A > 30 ? REGULAR_LARGE : REGULAR_SMALL;
}
