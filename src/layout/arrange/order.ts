import { countCrossings, type Link, linksOf, type Outer } from "./links.ts";
import type { Component, Plan } from "./plan.ts";

const WALK_ROUNDS = 200;
const MEAN_ROUNDS = 8;
/** Passes over all pairs of housings, and the counting they may cost in all (links looked at). */
const SWAP_PASSES = 6;
const SWAP_BUDGET = 3_000_000;

/**
 * A first order from top to bottom for the blocks of one piece; ELK's sweeps start from it. Left to itself ELK starts
 * from chance, and where several large housings stand on each side it seldom finds its way out of a bad order of
 * those. Housings are ordered by what they are wired to (the slowest mode of a walk along the wires: M. Fiedler,
 * Algebraic connectivity of graphs, 1973), then by trying swaps; what is between follows the mean of its neighbours.
 * @returns places in `component.blocks`, in order
 */
export function orderOf(plan: Plan, component: Component): number[] {
  const indexes = component.blocks.map((_, index) => index);
  const last = Math.max(...component.layers);
  if (last === 0) return indexes;
  const links = linksOf(component);
  const heightOf = (index: number) => plan.blocks[component.blocks[index]!]!.height;
  const slow = slowestMode(indexes.length, links);
  // Which end of the walk is up, the walk does not say: the order of contacts within the housings does.
  const [one, other] = [1, -1].map((up) => {
    const bySlow = (a: number, b: number) => up * (slow[a]! - slow[b]!) || a - b;
    const outer: Outer = {
      left: indexes.filter((index) => component.layers[index] === 0).sort(bySlow),
      right: indexes.filter((index) => component.layers[index] === last).sort(bySlow),
    };
    return { outer, crossings: improveBySwaps(outer, links, heightOf) };
  });
  const { outer } = other!.crossings < one!.crossings ? other! : one!;
  const at = heightsAcross(plan, component, outer);
  return indexes.sort((a, b) => at[a]! - at[b]! || a - b);
}

/** One number a block, near for blocks that are much wired to each other. */
function slowestMode(count: number, links: readonly Link[]): Float64Array {
  const degree = new Float64Array(count);
  for (const { left, right } of links) {
    degree[left]!++;
    degree[right]!++;
  }
  const total = degree.reduce((sum, value) => sum + value, 0);
  let mode = Float64Array.from(degree, (_, index) => index - (count - 1) / 2);
  if (total === 0) return mode;
  for (let round = 0; round < WALK_ROUNDS; round++) {
    const next = new Float64Array(count);
    for (const { left, right } of links) {
      next[left]! += mode[right]!;
      next[right]! += mode[left]!;
    }
    let mean = 0;
    for (let i = 0; i < count; i++) {
      // Half stays where it is, so that the walk does not swing between the two sides.
      next[i] = degree[i]! > 0 ? mode[i]! / 2 + next[i]! / (2 * degree[i]!) : 0;
      mean += (next[i]! * degree[i]!) / total;
    }
    let most = 0;
    for (let i = 0; i < count; i++) {
      if (degree[i]! > 0) next[i]! -= mean;
      most = Math.max(most, Math.abs(next[i]!));
    }
    if (most === 0) break;
    mode = next.map((value) => value / most);
  }
  return mode;
}

/** @returns the crossings that are left */
function improveBySwaps(outer: Outer, links: readonly Link[], heightOf: (index: number) => number): number {
  let least = countCrossings(outer, links, heightOf);
  let budget = SWAP_BUDGET;
  for (let pass = 0; pass < SWAP_PASSES; pass++) {
    let better = false;
    for (const side of [outer.left, outer.right]) {
      // Near pairs first: they are the likeliest, and a budget may end the pass early.
      for (let reach = 1; reach < side.length; reach++) {
        for (let i = 0; i + reach < side.length; i++) {
          budget -= links.length;
          if (least === 0 || budget < 0) return least;
          const j = i + reach;
          [side[i], side[j]] = [side[j]!, side[i]!];
          const crossings = countCrossings(outer, links, heightOf);
          if (crossings < least) {
            least = crossings;
            better = true;
          } else [side[i], side[j]] = [side[j]!, side[i]!];
        }
      }
    }
    if (!better) break;
  }
  return least;
}

/** Where each block's middle comes to stand, from 0 at the top to 1, if both outer columns are as tall. */
function heightsAcross(plan: Plan, component: Component, outer: Outer): number[] {
  const at = component.blocks.map(() => 0.5);
  const tops = new Map<number, { from: number; size: number; total: number }>();
  for (const side of [outer.left, outer.right]) {
    const heights = side.map((index) => plan.blocks[component.blocks[index]!]!.height);
    const total = heights.reduce((sum, height) => sum + height, 0);
    let from = 0;
    for (const [place, index] of side.entries()) {
      tops.set(index, { from, size: heights[place]!, total });
      at[index] = (from + heights[place]! / 2) / total;
      from += heights[place]!;
    }
  }
  const localOf = new Map(component.blocks.map((block, index) => [block, index]));
  for (let round = 0; round < MEAN_ROUNDS; round++) {
    const sums = component.blocks.map(() => 0);
    const counts = component.blocks.map(() => 0);
    for (const { from, to } of component.wires) {
      for (const [own, other] of [
        [from, to],
        [to, from],
      ] as const) {
        const index = localOf.get(own.block)!;
        if (tops.has(index)) continue;
        const far = localOf.get(other.block)!;
        const stand = tops.get(far);
        sums[index]! += stand ? (stand.from + other.port.y) / stand.total : at[far]!;
        counts[index]!++;
      }
    }
    for (const [index, count] of counts.entries()) if (count > 0) at[index] = sums[index]! / count;
  }
  return at;
}
