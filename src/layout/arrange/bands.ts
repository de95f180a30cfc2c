import type { Cluster } from "./clusters.ts";
import { layersOf } from "./layers.ts";
import type { Component, Plan, PlannedWire } from "./plan.ts";
import { MARGIN } from "./types.ts";

/** More wires than this share from band to band would be harder to follow than a tall drawing. */
const MOST_CUT = 0.15;
/** How far a cut may be from where it would make all bands alike, as a share of a band. */
const PLAY = 0.35;

/**
 * Cuts a piece that hangs together in many places into bands, as a tall table is set in columns: what stands at one height
 * stays together, and each cut is made where few wires cross it.
 * @param order of the blocks from top to bottom (see orderOf)
 * @returns the bands from top to bottom, none on a hub, `feeds` the wires to the bands before; `null` where a cut would
 *   part too much
 */
export function bandsOf(
  plan: Plan,
  component: Component,
  order: readonly number[],
  count: number,
): Cluster[] | null {
  const bandOfPlace = cutsAt(plan, component, order, count);
  if (!bandOfPlace) return null;
  const bandOf = new Map(order.map((index, place) => [component.blocks[index]!, bandOfPlace[place]!]));
  const wires = Array.from({ length: count }, (): PlannedWire[] => []);
  const feeds = Array.from({ length: count }, (): PlannedWire[] => []);
  for (const wire of component.wires) {
    const [a, b] = [bandOf.get(wire.from.block)!, bandOf.get(wire.to.block)!];
    (a === b ? wires : feeds)[Math.max(a, b)]!.push(wire);
  }
  const cut = feeds.reduce((sum, list) => sum + list.length, 0);
  if (cut > MOST_CUT * component.wires.length || wires.some((list) => list.length === 0)) return null;
  return wires.map((own, band) => {
    const blocks = component.blocks.filter((block) => bandOf.get(block) === band);
    return {
      hub: null,
      component: { blocks, wires: own, layers: layersOf(plan.blocks, blocks, own) },
      feeds: feeds[band]!,
    };
  });
}

/** @returns the band of each place in the order */
function cutsAt(plan: Plan, component: Component, order: readonly number[], count: number): number[] | null {
  const heights = order.map((index) => {
    const { column, height } = plan.blocks[component.blocks[index]!]!;
    return column === "between" ? 0 : height + MARGIN;
  });
  const total = heights.reduce((sum, height) => sum + height, 0);
  if (total === 0) return null;
  const placeOf = new Map(order.map((index, place) => [component.blocks[index]!, place]));
  // crossing[p]: wires between the places before p and the others.
  const crossing = order.map(() => 0);
  for (const { from, to } of component.wires) {
    const [a, b] = [placeOf.get(from.block)!, placeOf.get(to.block)!];
    for (let place = Math.min(a, b) + 1; place <= Math.max(a, b); place++) crossing[place]!++;
  }
  const bands: number[] = [];
  let [above, place] = [0, 0];
  for (let band = 0; band + 1 < count; band++) {
    const ideal = (total * (band + 1)) / count;
    const play = (PLAY * total) / count;
    let [best, least] = [-1, Number.POSITIVE_INFINITY];
    let reached = above;
    for (let at = place; at < order.length; at++) {
      if (Math.abs(reached - ideal) <= play && crossing[at]! < least) [best, least] = [at, crossing[at]!];
      reached += heights[at]!;
    }
    if (best <= place) return null;
    for (; place < best; place++) {
      bands.push(band);
      above += heights[place]!;
    }
  }
  while (bands.length < order.length) bands.push(count - 1);
  return bands;
}
