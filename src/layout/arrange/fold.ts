import type { ElkNode } from "elkjs/lib/elk-api.js";
import { bandsOf } from "./bands.ts";
import { type Cluster, clustersOf, withoutBlocks } from "./clusters.ts";
import { fromElk, type Laid } from "./from-elk.ts";
import { orderOf } from "./order.ts";
import type { Component, Plan } from "./plan.ts";
import { besideEachOther, type Strip, stripOf } from "./strips.ts";
import { stubsOf, toElk } from "./to-elk.ts";
import { MARGIN } from "./types.ts";

/** Smaller pieces are read best as three plain columns, however tall. */
export const FOLD_ABOVE_WIRES = 40;
/** A piece is folded when it would be this many times as tall as wide. */
const TALL = 1.5;
const MOST_STRIPS = 6;
/** Between two columns of blocks at least, and for each wire that has to change its height there. */
const CHANNEL = 48;
const TRACK = 8;

/**
 * Lays one connected piece out. A tall one is folded: circuits that hang on one block of it stand in strips to its
 * right, each strip with its joints left and its equipment right, as the piece itself.
 */
export async function layPiece(
  layout: (graph: ElkNode) => Promise<ElkNode>,
  plan: Plan,
  component: Component,
): Promise<Laid> {
  const lay = async (one: Component) => fromElk(plan, one, await layout(toElk(plan, one)));
  if (!isTall(plan, component)) return lay(component);
  const clusters = clustersOf(plan, component);
  if (clusters.length === 0) return layBands(lay, plan, component);
  const laid: Laid[] = [];
  for (const cluster of clusters) laid.push(await lay(cluster.component));

  const strips = deal(plan, component, clusters, laid);
  const moved = new Set(strips.flatMap((strip) => strip.clusters.flatMap((one) => one.component.blocks)));
  if (moved.size === 0) return lay(component);
  const rest = withoutBlocks(plan, component, moved);
  const trunk = isTall(plan, rest) ? await layBands(lay, plan, rest) : await lay(rest);
  return besideEachOther(component, trunk, strips);
}

/** A tall piece without such circuits is cut across where that parts few wires, into bands side by side. */
async function layBands(
  lay: (one: Component) => Promise<Laid>,
  plan: Plan,
  component: Component,
): Promise<Laid> {
  const order = orderOf(plan, component);
  let bands: readonly Cluster[] = [];
  for (let count = 2; count <= MOST_STRIPS; count++) {
    const next = bandsOf(plan, component, order, count);
    if (!next) continue;
    bands = next;
    const most = (measure: typeof heightOf) => Math.max(...next.map((band) => measure(plan, band.component)));
    if (count * most(widthOf) >= most(heightOf)) break;
  }
  const [first, ...others] = bands;
  if (!first) return lay(component);
  const trunk = await lay(first.component);
  const strips: Strip[] = [];
  for (const band of others) strips.push(stripOf(plan, [band], [await lay(band.component)]));
  return besideEachOther(component, trunk, strips);
}

function isTall(plan: Plan, component: Component): boolean {
  if (component.wires.length <= FOLD_ABOVE_WIRES) return false;
  return heightOf(plan, component) > TALL * widthOf(plan, component);
}

/** About how tall a piece comes out: its tallest column. */
function heightOf(plan: Plan, { blocks, layers }: Component): number {
  const heights: number[] = [];
  for (const [index, block] of blocks.entries()) {
    const layer = layers[index]!;
    heights[layer] = (heights[layer] ?? 0) + plan.blocks[block]!.height + MARGIN;
  }
  return Math.max(0, ...heights);
}

/** About how wide a piece comes out: every second wire between two columns needs a track of its own. */
function widthOf(plan: Plan, component: Component): number {
  const { blocks, layers, wires } = component;
  const widths: number[] = [];
  for (const [index, block] of blocks.entries()) {
    const layer = layers[index]!;
    widths[layer] = Math.max(widths[layer] ?? 0, plan.blocks[block]!.width);
  }
  let sum = 0;
  for (const [layer, { left, right }] of stubsOf(plan, component).entries()) {
    sum += left + widths[layer]! + right + CHANNEL;
  }
  return sum + (TRACK * wires.length) / 2;
}

/**
 * Deals the clusters out to strips of about one height, in their order; the first few may stay with the trunk. Takes
 * the fewest strips that make the drawing as wide as tall.
 */
function deal(
  plan: Plan,
  component: Component,
  clusters: readonly Cluster[],
  laid: readonly Laid[],
): Strip[] {
  const all = new Set(clusters.flatMap((cluster) => cluster.component.blocks));
  const trunk = heightOf(plan, withoutBlocks(plan, component, all));
  const trunkWidth = widthOf(plan, component);
  let strips: Strip[] = [];
  for (let count = 2; count <= MOST_STRIPS; count++) {
    const cuts = cutEvenly(
      trunk,
      laid.map(({ height }) => height + 2 * CHANNEL),
      count,
    );
    const next = cuts.groups.slice(1).map((group) =>
      stripOf(
        plan,
        group.map((index) => clusters[index]!),
        group.map((index) => laid[index]!),
      ),
    );
    const width = trunkWidth + next.reduce((sum, strip) => sum + strip.width, 0);
    strips = next;
    if (width >= cuts.height) break;
  }
  return strips;
}

/**
 * Cuts a list into groups that follow each other, so that the tallest is as low as can be.
 * @param first what the first group already holds
 */
function cutEvenly(
  first: number,
  heights: readonly number[],
  count: number,
): { readonly groups: readonly (readonly number[])[]; readonly height: number } {
  const cut = (limit: number): number[][] => {
    const groups: number[][] = [[]];
    let filled = first;
    for (const [index, height] of heights.entries()) {
      if (filled + height > limit) {
        groups.push([]);
        filled = 0;
      }
      groups.at(-1)!.push(index);
      filled += height;
    }
    return groups;
  };
  let low = Math.max(first, ...heights);
  let high = heights.reduce((sum, height) => sum + height, first);
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (cut(middle).length <= count) high = middle;
    else low = middle;
  }
  return { groups: cut(high), height: high };
}
