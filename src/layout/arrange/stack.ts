import { GRID, gridNear, gridUp, MARGIN } from "./types.ts";

/** A stretch of a column that nothing occupies. */
export type Gap = { readonly from: number; readonly to: number };

/** What is left of a column beside intervals that are taken; the first and the last gap have no end. */
export function gapsBetween(taken: readonly Gap[]): Gap[] {
  const gaps: Gap[] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const interval of [...taken].sort((a, b) => a.from - b.from)) {
    if (interval.from > from) gaps.push({ from, to: interval.from });
    from = Math.max(from, interval.to);
  }
  gaps.push({ from, to: Number.POSITIVE_INFINITY });
  return gaps;
}

/**
 * Stacks blocks in the given order into the gaps of a column, each as near as may be to where it would like to be, so that
 * they keep their order and a margin from each other and from the ends of the gaps.
 * @param wishes [n] tops they would like
 * @param heights [n]
 * @returns [n] tops, on the grid
 */
export function stackInGaps(
  wishes: readonly number[],
  heights: readonly number[],
  gaps: readonly Gap[],
): number[] {
  const rooms = gaps
    .map(({ from, to }) => ({ from: gridUp(from + MARGIN), to: Math.floor((to - MARGIN) / GRID) * GRID }))
    .filter(({ from, to }) => to > from);
  const pitches = heights.map((height) => gridUp(height + MARGIN));
  const groups: { room: Gap; members: number[] }[] = rooms.map((room) => ({ room, members: [] }));
  const left = rooms.map(({ from, to }) => to - from + MARGIN);
  let current = 0;
  for (const [index, wish] of wishes.entries()) {
    let best = rooms.length - 1;
    let least = Number.POSITIVE_INFINITY;
    for (let room = current; room < rooms.length; room++) {
      if (left[room]! < pitches[index]!) continue;
      const { from, to } = rooms[room]!;
      const distance = Math.max(0, from - wish, wish + heights[index]! - to);
      if (distance < least) [least, best] = [distance, room];
      if (from > wish) break;
    }
    current = best;
    left[best]! -= pitches[index]!;
    groups[best]!.members.push(index);
  }
  const tops = wishes.map(() => 0);
  for (const { room, members } of groups) {
    const placed = isotonic(
      members.map((index) => wishes[index]!),
      members.map((index) => pitches[index]!),
      room.from,
      room.to + MARGIN,
    );
    for (const [at, index] of members.entries()) tops[index] = placed[at]!;
  }
  return tops;
}

/**
 * Least squares with order: tops as near to the wishes as blocks of these pitches allow between two ends.
 * @source pool adjacent violators: Barlow, Bartholomew, Bremner and Brunk, Statistical Inference under Order
 *   Restrictions (1972), chapter 1
 */
function isotonic(wishes: readonly number[], pitches: readonly number[], from: number, to: number): number[] {
  const before: number[] = [];
  let sum = 0;
  for (const pitch of pitches) {
    before.push(sum);
    sum += pitch;
  }
  type Pool = { total: number; count: number };
  const pools: Pool[] = [];
  for (const [index, wish] of wishes.entries()) {
    let pool: Pool = { total: wish - before[index]!, count: 1 };
    let last = pools.at(-1);
    while (last && last.total / last.count >= pool.total / pool.count) {
      pool = { total: last.total + pool.total, count: last.count + pool.count };
      pools.pop();
      last = pools.at(-1);
    }
    pools.push(pool);
  }
  const tops: number[] = [];
  for (const { total, count } of pools) {
    const start = Math.min(Math.max(gridNear(total / count), from), to - sum);
    for (let i = 0; i < count; i++) tops.push(start + before[tops.length]!);
  }
  return tops;
}
