import { digits, doubts } from "../figure.ts";
import { requireNotNegative } from "../require.ts";
import { type Blade, BREAKING_CAPACITY_A } from "./blade.ts";
import { type TimePoint, type TimeTable, timeTable } from "./time-tables.ts";

export type Seconds = number | "unknown";
export type Band = { readonly least_s: Seconds; readonly most_s: Seconds };

export type BlowTime = {
  readonly multiple: number;
  /**
   * What the table itself promises: a fuse opens no later at more current, and no sooner at less. So the most is that of
   * the point below, the least that of the point above.
   */
  readonly promised: Band;
  /** The straight line between the points on logarithmic paper; unknown outside them. A picture, not a promise. */
  readonly between: Band;
  readonly formula: string;
  readonly table: string;
  readonly source: string;
  readonly doubt: string | null;
};

/**
 * How long a blade takes to open at a current.
 * @param current_A 0 or more
 * @returns seconds, or "unknown" where the table does not say: the least time beyond its last point, the most below its
 * first, everything above the breaking capacity of 1 000 A
 * @throws RangeError for NaN or a negative current
 */
export function blowTime(fuse: Blade, current_A: number): BlowTime {
  requireNotNegative("current_A", current_A);
  const table = timeTable(fuse.form, fuse.rating_A);
  const multiple = current_A / fuse.rating_A;
  const beyond = current_A > BREAKING_CAPACITY_A;
  const promised = beyond ? NOTHING : promisedBand(table, multiple);
  return {
    multiple,
    promised,
    between: beyond ? NOTHING : betweenBand(table, multiple),
    formula: `${digits(current_A)} A / ${digits(fuse.rating_A)} A = ${digits(multiple * 100)} % of rating: ${sayBand(promised)}`,
    table: table.name,
    source: table.source,
    doubt: doubts(
      table.doubt,
      beyond
        ? `more than the ${BREAKING_CAPACITY_A} A that a blade can break: it may not clear at all`
        : null,
    ),
  };
}

const NOTHING: Band = { least_s: "unknown", most_s: "unknown" };
/** 8.5 A through 10 A is 0.85, not 0.8500000000000001. */
const HAIR = 1e-9;

function promisedBand(table: TimeTable, multiple: number): Band {
  const least = table.points.find((point) => point.multiple >= multiple - HAIR)?.least_s;
  const most = table.points.findLast((point) => point.multiple <= multiple + HAIR)?.most_s;
  return { least_s: least ?? "unknown", most_s: most ?? "unknown" };
}

function betweenBand(table: TimeTable, multiple: number): Band {
  const above = table.points.findIndex((point) => point.multiple >= multiple - HAIR);
  const upper = table.points[above];
  if (!upper) return NOTHING;
  if (Math.abs(upper.multiple - multiple) <= HAIR) return bandOf(upper);
  const lower = table.points[above - 1];
  if (!lower) return NOTHING;
  const share = Math.log(multiple / lower.multiple) / Math.log(upper.multiple / lower.multiple);
  return {
    least_s: onLine(lower.least_s, upper.least_s, share),
    most_s: onLine(lower.most_s, upper.most_s, share),
  };
}

function bandOf(point: TimePoint): Band {
  return { least_s: point.least_s ?? "unknown", most_s: point.most_s ?? "unknown" };
}

function onLine(from_s: number | null, to_s: number | null, share: number): Seconds {
  return from_s === null || to_s === null ? "unknown" : from_s * (to_s / from_s) ** share;
}

/** "0.15 to 5 s", "at least 360 000 s", "at most 0.1 s", "not known". */
export function sayBand({ least_s, most_s }: Band): string {
  if (least_s === "unknown") return most_s === "unknown" ? "not known" : `at most ${digits(most_s)} s`;
  return most_s === "unknown" ? `at least ${digits(least_s)} s` : `${digits(least_s)} to ${digits(most_s)} s`;
}
