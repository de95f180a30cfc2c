import { linearSumAssignment } from "linear-sum-assignment";
import type { Pair } from "./pairs.ts";

/**
 * The best set of pairs in which no lead stands twice: the one with the greatest sum of scores (Jonker and
 * Volgenant's shortest augmenting paths, as the package implements them). Leads that have nothing to do with each
 * other are assigned apart, so that the cost is that of the largest knot, not of the whole chart.
 */
export function assign(pairs: readonly Pair[]): readonly Pair[] {
  const chosen: Pair[] = [];
  for (const knot of knotsOf(pairs)) {
    const lefts = [...new Set(knot.map((pair) => pair.left))].sort((a, b) => a - b);
    const rights = [...new Set(knot.map((pair) => pair.right))].sort((a, b) => a - b);
    if (lefts.length === 1 || rights.length === 1) {
      chosen.push(knot.reduce((best, pair) => (pair.score > best.score + 1e-9 ? pair : best)));
      continue;
    }
    const rowOf = new Map(lefts.map((left, row) => [left, row]));
    const columnOf = new Map(rights.map((right, column) => [right, column]));
    const scores = lefts.map(() => new Array<number>(rights.length).fill(0));
    const at = new Map<string, Pair>();
    for (const pair of knot) {
      const row = rowOf.get(pair.left)!;
      const column = columnOf.get(pair.right)!;
      scores[row]![column] = pair.score;
      at.set(`${row},${column}`, pair);
    }
    const { rowAssignments } = linearSumAssignment(scores, { maximaze: true });
    for (let row = 0; row < lefts.length; row++) {
      const pair = at.get(`${row},${rowAssignments[row]}`);
      if (pair) chosen.push(pair);
    }
  }
  return chosen;
}

/** Pairs that share a lead, directly or over others. */
export function knotsOf(pairs: readonly Pair[]): readonly (readonly Pair[])[] {
  const parent = new Map<string, string>();
  const find = (key: string): string => {
    let root = key;
    while (parent.get(root) !== undefined && parent.get(root) !== root) root = parent.get(root)!;
    parent.set(key, root);
    return root;
  };
  for (const { left, right } of pairs) parent.set(find(`l${left}`), find(`r${right}`));
  const knots = new Map<string, Pair[]>();
  for (const pair of pairs) {
    const root = find(`l${pair.left}`);
    const list = knots.get(root);
    if (list) list.push(pair);
    else knots.set(root, [pair]);
  }
  return [...knots.values()];
}
