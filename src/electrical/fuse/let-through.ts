import { type Answer, digits, doubts } from "../figure.ts";
import { type Blade, BREAKING_CAPACITY_A } from "./blade.ts";
import { blowTime } from "./blow-time.ts";
import { timeTable } from "./time-tables.ts";

/**
 * The most energy per ohm, I²t, that a blade lets pass before it opens at a current.
 * Up to the table's last point: current squared times the longest time promised. Beyond it the element melts before it
 * sheds heat, so that I²t no longer grows with the current: that of the last point is taken.
 * @returns A²s, or why it is not known: below the first point that must open, above the breaking capacity
 * @throws RangeError for NaN or a negative current
 */
export function letThrough(fuse: Blade, current_A: number): Answer {
  const time = blowTime(fuse, current_A);
  if (current_A > BREAKING_CAPACITY_A) return { unknown: time.doubt! };
  const last = timeTable(fuse.form, fuse.rating_A).points.at(-1)!;
  if (time.multiple > last.multiple) {
    const last_A = last.multiple * fuse.rating_A;
    const value = last_A ** 2 * last.most_s!;
    return {
      value,
      unit: "A²s",
      formula: `beyond ${digits(last.multiple * 100)} % of rating no more than there: (${digits(last_A)} A)² × ${digits(last.most_s!)} s = ${digits(value)} A²s`,
      table: time.table,
      source: time.source,
      doubt: doubts(
        time.doubt,
        "that I²t stops growing beyond the table is physics, not the table's word; the arc is left out",
      ),
    };
  }
  const most_s = time.promised.most_s;
  if (most_s === "unknown") {
    return { unknown: `${digits(time.multiple * 100)} % of rating: the fuse need never open` };
  }
  const value = current_A ** 2 * most_s;
  return {
    value,
    unit: "A²s",
    formula: `I²t = (${digits(current_A)} A)² × ${digits(most_s)} s = ${digits(value)} A²s`,
    table: time.table,
    source: time.source,
    doubt: time.doubt,
  };
}
