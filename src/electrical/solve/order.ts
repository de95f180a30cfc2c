import { Numbers } from "./numbers.ts";
import { PairSet } from "./pair-set.ts";

/**
 * In which order to eliminate the unknowns of a symmetric system, and where its factor has entries. Depends on who is
 * joined to whom only, so one pattern serves every state and every value of the same circuit.
 */
export type Pattern = {
  readonly size: number;
  /** [size] the place of each unknown in the order. */
  readonly place: Int32Array;
  /** [size + 1] where each column begins in `rows`; columns and rows are counted in places. */
  readonly start: Int32Array;
  /** The rows under the diagonal of each column, ascending. */
  readonly rows: Int32Array;
};

/** Once what is left is this dense, sorting out the rest saves nothing. */
const DENSE_SHARE = 0.7;

/**
 * Minimum degree: whichever unknown has the fewest neighbours goes next, and its neighbours become neighbours of each
 * other. A tree is eliminated from its leaves with no new pair at all; a harness nearly is one, so the work grows in
 * step with its size.
 * @param size how many unknowns
 * @param ends [2 × pairs] joined unknowns, two by two; pairs may repeat, or join one to itself
 * @source W. F. Tinney and J. W. Walker, Direct solutions of sparse network equations by optimally ordered triangular
 * factorization, Proc. IEEE 55 (1967) 1801, scheme 2
 */
export function orderByDegree(size: number, ends: Int32Array): Pattern {
  const graph = makeGraph(size, ends);
  const queue = makeQueue(graph.degree);
  const place = new Int32Array(size).fill(-1);
  const start = new Int32Array(size + 1);
  const rows = new Numbers(ends.length);
  const near: number[] = [];
  let done = 0;
  for (; done < size; done++) {
    const least = queue.first();
    const left = size - done - 1;
    if (graph.degree[least]! > 8 && graph.degree[least]! >= DENSE_SHARE * left) break;
    queue.remove(least);
    place[least] = done;
    near.length = 0;
    for (let at = graph.head[least]!; at >= 0; at = graph.next.at(at)) {
      const other = graph.to.at(at);
      if (place[other]! < 0) near.push(other);
    }
    for (const other of near) {
      queue.remove(other);
      graph.degree[other]!--;
      rows.push(other);
    }
    for (let one = 1; one < near.length; one++)
      for (let other = 0; other < one; other++) graph.join(near[one]!, near[other]!);
    for (const other of near) queue.add(other);
    start[done + 1] = rows.length;
  }
  // The rest is taken as all joined to all, in the order of their numbers.
  const rest: number[] = [];
  for (let unknown = 0; unknown < size; unknown++) if (place[unknown]! < 0) rest.push(unknown);
  for (const [at, unknown] of rest.entries()) {
    place[unknown] = done++;
    for (let later = at + 1; later < rest.length; later++) rows.push(rest[later]!);
    start[done] = rows.length;
  }
  return { size, place, start, rows: sortedRows(start, rows.toArray(), place) };
}

type Graph = {
  readonly degree: Int32Array;
  readonly head: Int32Array;
  readonly next: Numbers;
  readonly to: Numbers;
  join(one: number, other: number): void;
};

/** Neighbours as linked lists; who has left stays listed, since a list is read once only. */
function makeGraph(size: number, ends: Int32Array): Graph {
  const pairs = new PairSet(ends.length / 2);
  const degree = new Int32Array(size);
  const head = new Int32Array(size).fill(-1);
  const next = new Numbers(ends.length * 2);
  const to = new Numbers(ends.length * 2);
  const list = (from: number, other: number) => {
    next.push(head[from]!);
    head[from] = to.length;
    to.push(other);
    degree[from]!++;
  };
  const join = (one: number, other: number) => {
    if (one === other || !pairs.add(one, other)) return;
    list(one, other);
    list(other, one);
  };
  for (let at = 0; at < ends.length; at += 2) join(ends[at]!, ends[at + 1]!);
  return { degree, head, next, to, join };
}

/** Unknowns in lists by degree. `add` reads the degree; whoever changes it removes the unknown before. */
function makeQueue(degree: Int32Array) {
  const size = degree.length;
  const head = new Int32Array(size + 1).fill(-1);
  const next = new Int32Array(size);
  const previous = new Int32Array(size);
  let least = 0;
  const add = (unknown: number) => {
    const of = degree[unknown]!;
    const second = head[of]!;
    next[unknown] = second;
    previous[unknown] = -1;
    if (second >= 0) previous[second] = unknown;
    head[of] = unknown;
    if (of < least) least = of;
  };
  const remove = (unknown: number) => {
    const [before, after] = [previous[unknown]!, next[unknown]!];
    if (before >= 0) next[before] = after;
    else head[degree[unknown]!] = after;
    if (after >= 0) previous[after] = before;
  };
  const first = () => {
    while (head[least]! < 0) least++;
    return head[least]!;
  };
  // From the last to the first, so that each list begins with its smallest number.
  for (let unknown = size - 1; unknown >= 0; unknown--) add(unknown);
  return { add, remove, first };
}

/** From numbers of unknowns to places, ascending in each column. */
function sortedRows(start: Int32Array, unknowns: Int32Array, place: Int32Array): Int32Array {
  const rows = unknowns;
  for (let at = 0; at < rows.length; at++) rows[at] = place[rows[at]!]!;
  for (let column = 0; column + 1 < start.length; column++) {
    const [from, to] = [start[column]!, start[column + 1]!];
    if (to - from < 2) continue;
    if (to - from === 2) {
      const [one, other] = [rows[from]!, rows[from + 1]!];
      rows[from] = Math.min(one, other);
      rows[from + 1] = Math.max(one, other);
    } else rows.subarray(from, to).sort();
  }
  return rows;
}

/** Where the pair of two different unknowns stands in `rows`. */
export function slotOf(pattern: Pattern, one: number, other: number): number {
  const [p, q] = [pattern.place[one]!, pattern.place[other]!];
  const [column, row] = p < q ? [p, q] : [q, p];
  let low = pattern.start[column]!;
  let high = pattern.start[column + 1]! - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (pattern.rows[middle]! < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
