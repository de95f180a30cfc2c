import type { Cluster } from "./clusters.ts";
import type { Laid } from "./from-elk.ts";
import type { Component, Plan } from "./plan.ts";
import { gridNear, gridUp } from "./types.ts";

/** Between clusters of a strip, besides a track for every wire that goes on to the strips behind. */
const SPACING = 48;
/** Between a strip and what stands left of it, besides a track for every wire that comes to it or goes on. */
const CHANNEL = 64;
const TRACK = 8;

/** More than ELK allows before the equipment: its tracks serve several wires each, those of the router often one. */
const BEFORE_EQUIPMENT = 96;

/** Clusters one below the other. */
export type Strip = {
  readonly clusters: readonly Cluster[];
  readonly laid: readonly Laid[];
  /** How far each column of each cluster moves; the left edge of the strip is at 0. */
  readonly shifts: readonly (readonly number[])[];
  /** Left and right edge of each column. Clusters with fewer columns do without the first. */
  readonly columns: readonly { readonly left: number; readonly right: number }[];
  readonly width: number;
};

/** Lines up the clusters of a strip: equipment on one line, and what is before it, column by column, on its middle line. */
export function stripOf(plan: Plan, clusters: readonly Cluster[], laid: readonly Laid[]): Strip {
  const count = Math.max(...laid.map(({ columns }) => columns.length));
  const lines = laid.map((one) => one.columns.map((_, layer) => lineOf(plan, one, layer)));
  // From right to left: every column as far from the next as the widest cluster needs it.
  const places = Array.from({ length: count }, () => 0);
  for (let column = count - 2; column >= 0; column--) {
    let pitch = 0;
    for (const list of lines) {
      const layer = column - count + list.length;
      if (layer >= 0) pitch = Math.max(pitch, list[layer + 1]! - list[layer]!);
    }
    places[column] = places[column + 1]! - pitch - (column === count - 2 ? BEFORE_EQUIPMENT : 0);
  }
  const shifts = lines.map((list) =>
    list.map((line, layer) => gridNear(places[layer + count - list.length]! - line)),
  );
  const columns = places.map(() => ({ left: Number.POSITIVE_INFINITY, right: Number.NEGATIVE_INFINITY }));
  for (const [at, one] of laid.entries()) {
    for (const [layer, { left, right }] of one.columns.entries()) {
      const column = columns[layer + count - one.columns.length]!;
      column.left = Math.min(column.left, left + shifts[at]![layer]!);
      column.right = Math.max(column.right, right + shifts[at]![layer]!);
    }
  }
  const left = gridNear(Math.min(...columns.map((column) => column.left)));
  return {
    clusters,
    laid,
    shifts: shifts.map((list) => list.map((shift) => shift - left)),
    columns: columns.map((column) => ({ left: column.left - left, right: column.right - left })),
    width: Math.max(...columns.map((column) => column.right)) - left,
  };
}

/** What the blocks of a column have in common: the left edge of equipment, otherwise the middle. */
function lineOf(plan: Plan, { component, x }: Laid, layer: number): number {
  let line: number | null = null;
  for (const [index, block] of component.blocks.entries()) {
    if (component.layers[index] !== layer) continue;
    const { column, width } = plan.blocks[block]!;
    if (column === "equipment") return x[index]!;
    line ??= x[index]! + width / 2;
  }
  return line ?? 0;
}

/** Sets strips to the right of what they hang on: one piece again, with the columns of all in a row. */
export function besideEachOther(whole: Component, trunk: Laid, strips: readonly Strip[]): Laid {
  const xs = new Map<number, number>();
  const ys = new Map<number, number>();
  const layers = new Map<number, number>();
  const paths = new Map(trunk.paths);
  const columns = [...trunk.columns];
  for (const [index, block] of trunk.component.blocks.entries()) {
    xs.set(block, trunk.x[index]!);
    ys.set(block, trunk.y[index]!);
    layers.set(block, trunk.component.layers[index]!);
  }
  const feedsOf = strips.map(({ clusters }) => clusters.reduce((sum, { feeds }) => sum + feeds.length, 0));
  const beyond = (at: number) => feedsOf.slice(at + 1).reduce((sum, feeds) => sum + feeds, 0);
  const tops = strips.map((strip, at) => stackOf(strip, beyond(at)));
  const height = Math.max(trunk.height, ...tops.map((stack) => stack.height));
  let left = Math.max(...trunk.columns.map((column) => column.right));
  for (const [at, strip] of strips.entries()) {
    left = gridUp(left + CHANNEL + TRACK * (feedsOf[at]! + beyond(at)));
    const stack = tops[at]!;
    const top = topFor(strip, stack, height, ys);
    for (const [place, laid] of strip.laid.entries()) {
      const { component } = laid;
      const shifts = strip.shifts[place]!;
      const ahead = strip.columns.length - laid.columns.length;
      const down = top + stack.tops[place]!;
      for (const [index, block] of component.blocks.entries()) {
        const layer = component.layers[index]!;
        xs.set(block, laid.x[index]! + shifts[layer]! + left);
        ys.set(block, laid.y[index]! + down);
        layers.set(block, columns.length + ahead + layer);
      }
    }
    for (const column of strip.columns)
      columns.push({ left: column.left + left, right: column.right + left });
    left += strip.width;
  }
  const { blocks, wires } = whole;
  return {
    component: { blocks, wires, layers: blocks.map((block) => layers.get(block)!) },
    x: blocks.map((block) => xs.get(block)!),
    y: blocks.map((block) => ys.get(block)!),
    columns,
    ownColumns: trunk.ownColumns,
    height,
    paths,
  };
}

type Stack = { readonly tops: readonly number[]; readonly height: number };

function stackOf({ laid }: Strip, passing: number): Stack {
  const spacing = SPACING + TRACK * Math.ceil(passing / laid.length);
  const tops: number[] = [];
  let top = 0;
  for (const { height } of laid) {
    tops.push(top);
    top = gridUp(top + height + spacing);
  }
  return { tops, height: tops.at(-1)! + laid.at(-1)!.height };
}

/** Where a strip begins so that it is about level with its hubs. */
function topFor(
  { clusters, laid }: Strip,
  stack: Stack,
  height: number,
  ys: ReadonlyMap<number, number>,
): number {
  let sum = 0;
  for (const [at, { hub }] of clusters.entries()) {
    if (hub === null) return 0;
    sum += (ys.get(hub) ?? 0) - stack.tops[at]! - laid[at]!.height / 2;
  }
  return Math.min(
    Math.max(0, gridNear(sum / clusters.length)),
    Math.floor((height - stack.height) / TRACK) * TRACK,
  );
}
