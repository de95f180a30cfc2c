import type { Pattern } from "./order.ts";

/** The numbers of a factor LDLᵀ over a pattern, and the room to work out the next one. */
export type Factor = {
  readonly pattern: Pattern;
  /** Filled by the caller before `factorise`: siemens between the two unknowns of each slot. */
  readonly joined_S: Float64Array;
  /** Filled by the caller before `factorise`: [size, by place] siemens from each unknown to the reference. */
  readonly held_S: Float64Array;
  readonly lower: Float64Array;
  readonly diagonal: Float64Array;
  readonly work: Float64Array;
  /** [size] the next entry to use of each column, and the columns waiting at each row. */
  readonly upTo: Int32Array;
  readonly waiting: Int32Array;
  readonly after: Int32Array;
};

export function makeFactor(pattern: Pattern): Factor {
  const { size, rows } = pattern;
  return {
    pattern,
    joined_S: new Float64Array(rows.length),
    held_S: new Float64Array(size),
    lower: new Float64Array(rows.length),
    diagonal: new Float64Array(size),
    work: new Float64Array(size),
    upTo: new Int32Array(size),
    waiting: new Int32Array(size),
    after: new Int32Array(size),
  };
}

/**
 * Factorises the conductance matrix, column by column. To eliminate a node is to replace its star of conductances by a
 * mesh between its neighbours; diagonals are added up from what is joined instead of subtracted down, so that where all
 * conductances are positive nothing cancels and milliohms beside megohms cost no digits.
 * @returns false if a diagonal is not positive, as negative conductances can make it; nothing is to be solved then
 * @source the elimination without subtraction of W. K. Grassmann, M. I. Taksar and D. P. Heyman, Operations Research
 * 33 (1985) 1107, for the symmetric case
 */
export function factorise(factor: Factor): boolean {
  const { pattern, joined_S, held_S, lower, diagonal, work, upTo, waiting, after } = factor;
  const { size, start, rows } = pattern;
  waiting.fill(-1);
  for (let column = 0; column < size; column++) {
    const from = start[column]!;
    const to = start[column + 1]!;
    for (let at = from; at < to; at++) work[rows[at]!] = joined_S[at]!;
    let held = held_S[column]!;
    for (let earlier = waiting[column]!; earlier >= 0; ) {
      const next = after[earlier]!;
      let at = upTo[earlier]!;
      const end = start[earlier + 1]!;
      const share = lower[at]!;
      held += share * held_S[earlier]!;
      const joined = share * diagonal[earlier]!;
      upTo[earlier] = ++at;
      if (at < end) {
        const row = rows[at]!;
        after[earlier] = waiting[row]!;
        waiting[row] = earlier;
        for (; at < end; at++) work[rows[at]!]! += joined * lower[at]!;
      }
      earlier = next;
    }
    let sum = held;
    for (let at = from; at < to; at++) sum += work[rows[at]!]!;
    if (!(sum > 0)) return false;
    held_S[column] = held;
    diagonal[column] = sum;
    for (let at = from; at < to; at++) lower[at] = work[rows[at]!]! / sum;
    if (from < to) {
      upTo[column] = from;
      const row = rows[from]!;
      after[column] = waiting[row]!;
      waiting[row] = column;
    }
  }
  return true;
}

/**
 * Volts from amperes fed into each unknown, with the last factor.
 * @param amps [size] by unknown
 * @param volts [size] by unknown; written here, and may be the same array
 */
export function solveFactor(factor: Factor, amps: Float64Array, volts: Float64Array): void {
  const { pattern, lower, diagonal, work } = factor;
  const { size, place, start, rows } = pattern;
  for (let unknown = 0; unknown < size; unknown++) work[place[unknown]!] = amps[unknown]!;
  for (let column = 0; column < size; column++) {
    const value = work[column]!;
    if (value === 0) continue;
    for (let at = start[column]!; at < start[column + 1]!; at++) work[rows[at]!]! += lower[at]! * value;
  }
  for (let column = size - 1; column >= 0; column--) {
    let value = work[column]! / diagonal[column]!;
    for (let at = start[column]!; at < start[column + 1]!; at++) value += lower[at]! * work[rows[at]!]!;
    work[column] = value;
  }
  for (let unknown = 0; unknown < size; unknown++) volts[unknown] = work[place[unknown]!]!;
}
