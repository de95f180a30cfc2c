import type { Component, PlannedEnd } from "./plan.ts";

/** Contacts of a left-hand and a right-hand block that wires join, directly or by way of what is between them. */
export type Link = {
  readonly left: number;
  readonly leftY: number;
  readonly right: number;
  readonly rightY: number;
};

/** The first and the last column of a piece, from top to bottom: places in `component.blocks`. */
export type Outer = { readonly left: number[]; readonly right: number[] };

/** A joint with more leads than this on both sides says little about order, and has too many links to list. */
const MOST_LINKS_OF_A_JOINT = 64;

export function linksOf(component: Component): Link[] {
  const last = Math.max(...component.layers);
  const localOf = new Map(component.blocks.map((block, index) => [block, index]));
  const local = (end: PlannedEnd) => localOf.get(end.block)!;
  const isOuter = (index: number) => component.layers[index] === 0 || component.layers[index] === last;
  const root = component.blocks.map((_, index) => index);
  const find = (start: number): number => {
    let at = start;
    while (root[at] !== at) at = root[at]!;
    return at;
  };
  for (const { from, to } of component.wires) {
    const [a, b] = [local(from), local(to)];
    if (!isOuter(a) && !isOuter(b)) root[find(a)] = find(b);
  }
  type Reached = { left: { index: number; y: number }[]; right: { index: number; y: number }[] };
  const groups = new Map<number, Reached>();
  const links: Link[] = [];
  for (const { from, to } of component.wires) {
    const [a, b] = [local(from), local(to)];
    if (isOuter(a) && isOuter(b)) {
      const [left, right] = component.layers[a] === 0 ? [from, to] : [to, from];
      if (component.layers[a] === component.layers[b]) continue;
      links.push({ left: local(left), leftY: left.port.y, right: local(right), rightY: right.port.y });
      continue;
    }
    if (!isOuter(a) && !isOuter(b)) continue;
    const [outer, inner] = isOuter(a) ? [from, b] : [to, a];
    const group = groups.get(find(inner)) ?? { left: [], right: [] };
    groups.set(find(inner), group);
    const side = component.layers[local(outer)] === 0 ? group.left : group.right;
    side.push({ index: local(outer), y: outer.port.y });
  }
  for (const { left, right } of groups.values()) {
    if (left.length * right.length > MOST_LINKS_OF_A_JOINT) continue;
    for (const one of left) {
      for (const other of right) {
        links.push({ left: one.index, leftY: one.y, right: other.index, rightY: other.y });
      }
    }
  }
  return links;
}

/** More than any column is high. */
const HEIGHTS = 2 ** 24;

/** How many pairs of links cross if the two columns stand in this order. Takes n log n time for n links. */
export function countCrossings(
  outer: Outer,
  links: readonly Link[],
  heightOf: (index: number) => number,
): number {
  const tops = new Map<number, number>();
  for (const side of [outer.left, outer.right]) {
    let top = 0;
    for (const index of side) {
      tops.set(index, top);
      top += heightOf(index);
    }
  }
  // Both heights in one number, so that the engine's own sort of numbers can be used: this runs thousands of times.
  const keys = new Float64Array(links.length);
  for (const [index, { left, leftY, right, rightY }] of links.entries()) {
    keys[index] = Math.round(tops.get(left)! + leftY) * HEIGHTS + Math.round(tops.get(right)! + rightY);
  }
  return inversions(keys.sort().map((key) => key % HEIGHTS));
}

function inversions(values: Float64Array<ArrayBuffer>): number {
  let list = values;
  let spare = new Float64Array(list.length);
  let count = 0;
  for (let width = 1; width < list.length; width *= 2) {
    for (let start = 0; start < list.length; start += 2 * width) {
      const middle = Math.min(start + width, list.length);
      const end = Math.min(start + 2 * width, list.length);
      let [i, j] = [start, middle];
      for (let at = start; at < end; at++) {
        if (i < middle && (j >= end || list[i]! <= list[j]!)) spare[at] = list[i++]!;
        else {
          spare[at] = list[j++]!;
          count += middle - i;
        }
      }
    }
    [list, spare] = [spare, list];
  }
  return count;
}
