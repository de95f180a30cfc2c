import { digits, doubts } from "../figure.ts";
import { requirePositive } from "../require.ts";
import { type Blade, BREAKING_CAPACITY_A } from "./blade.ts";
import { blowTime, type Seconds } from "./blow-time.ts";
import { timeTable } from "./time-tables.ts";

/** Which of two fuses in series opens, over a stretch of currents. */
export type Stretch = {
  readonly from_A: number;
  readonly to_A: number;
  /** `lower`: only it may open, or it has opened before the upper may. `upper`: the other way about. `either`: they overlap. */
  readonly opens: "neither" | "lower" | "upper" | "either" | "not known";
};

export type Coordination = {
  /** `selective`: at every current that opens anything, the lower fuse alone opens. */
  readonly verdict: "selective" | "not selective" | "not proven";
  readonly stretches: readonly Stretch[];
  readonly why: string;
  readonly source: string;
  readonly doubt: string | null;
};

/**
 * Do two fuses in series open in the right order? Holds the slowest lower fuse against the fastest upper one.
 * Both tables are followed in steps as far as they go; beyond the last point of each, I²t is held constant.
 * @param upper nearer the supply; @param lower nearer the load
 * @param largest_A prospective current behind the lower fuse, above 0
 * @throws RangeError for NaN or a current not above 0
 */
export function coordinate(upper: Blade, lower: Blade, largest_A: number): Coordination {
  requirePositive("largest_A", largest_A);
  const stretches = mergeStretches(
    edges(upper, lower, largest_A).map(([from_A, to_A]) => ({
      from_A,
      to_A,
      opens: who(upper, lower, from_A, to_A),
    })),
  );
  const wrong = stretches.find(({ opens }) => opens === "upper");
  const open = stretches.find(({ opens }) => opens === "either" || opens === "not known");
  const name = (fuse: Blade) => `the ${digits(fuse.rating_A)} A ${fuse.form} blade`;
  const at = (stretch: Stretch) => `from ${digits(stretch.from_A, 3)} to ${digits(stretch.to_A, 3)} A`;
  const why = wrong
    ? `${at(wrong)} ${name(upper)} opens first`
    : open
      ? `${at(open)} the tables do not say which opens first`
      : `${name(lower)} opens alone up to ${digits(largest_A, 3)} A`;
  const tables = [upper, lower].map((fuse) => timeTable(fuse.form, fuse.rating_A));
  return {
    verdict: wrong ? "not selective" : open ? "not proven" : "selective",
    stretches,
    why,
    source: [...new Set(tables.map((table) => table.source))].join("; "),
    doubt: doubts(
      ...tables.map((table) => table.doubt),
      "beyond a table's last point I²t is taken as constant, which is physics and not the table's word",
    ),
  };
}

/** Between two neighbouring currents at which either table has a point, the tables' steps stay the same. */
function edges(upper: Blade, lower: Blade, largest_A: number): readonly (readonly [number, number])[] {
  const at = new Set([0, largest_A]);
  for (const fuse of [upper, lower]) {
    for (const { multiple } of timeTable(fuse.form, fuse.rating_A).points) {
      const current_A = multiple * fuse.rating_A;
      if (current_A < largest_A) at.add(current_A);
    }
  }
  if (BREAKING_CAPACITY_A < largest_A) at.add(BREAKING_CAPACITY_A);
  const sorted = [...at].sort((a, b) => a - b);
  return sorted.slice(1).map((to_A, index) => [sorted[index]!, to_A] as const);
}

function who(upper: Blade, lower: Blade, from_A: number, to_A: number): Stretch["opens"] {
  // Just inside the stretch on both sides: on its edges a table takes its step.
  const low_A = from_A + (to_A - from_A) * 1e-6;
  const high_A = to_A - (to_A - from_A) * 1e-6;
  if (high_A > BREAKING_CAPACITY_A) return "not known";
  const lowerNever = holds(lower, high_A);
  const upperNever = holds(upper, high_A);
  if (lowerNever && upperNever) return "neither";
  if (upperNever) return "lower";
  if (lowerNever) return "upper";
  const inOrder = [low_A, high_A].map((current_A) => before(lower, upper, current_A));
  if (inOrder.every(Boolean)) return "lower";
  const reversed = [low_A, high_A].map((current_A) => before(upper, lower, current_A));
  return reversed.every(Boolean) ? "upper" : "either";
}

/** Carries the current for good. */
function holds(fuse: Blade, current_A: number): boolean {
  const { least_s } = blowTime(fuse, current_A).promised;
  return least_s !== "unknown" && least_s >= 360_000;
}

/** The first has opened at its slowest before the second may at its fastest. */
function before(first: Blade, second: Blade, current_A: number): boolean {
  const most_s = slowest(first, current_A);
  const least_s = fastest(second, current_A);
  return most_s !== "unknown" && least_s !== "unknown" && most_s < least_s;
}

function slowest(fuse: Blade, current_A: number): Seconds {
  const last = timeTable(fuse.form, fuse.rating_A).points.at(-1)!;
  const { multiple, promised } = blowTime(fuse, current_A);
  return multiple > last.multiple ? last.most_s! * (last.multiple / multiple) ** 2 : promised.most_s;
}

function fastest(fuse: Blade, current_A: number): Seconds {
  const { multiple, promised } = blowTime(fuse, current_A);
  const last = timeTable(fuse.form, fuse.rating_A).points.findLast((point) => point.least_s !== null)!;
  return multiple > last.multiple ? last.least_s! * (last.multiple / multiple) ** 2 : promised.least_s;
}

function mergeStretches(stretches: readonly Stretch[]): readonly Stretch[] {
  const merged: Stretch[] = [];
  for (const stretch of stretches) {
    const last = merged.at(-1);
    if (last && last.opens === stretch.opens) merged[merged.length - 1] = { ...last, to_A: stretch.to_A };
    else merged.push(stretch);
  }
  return merged;
}
