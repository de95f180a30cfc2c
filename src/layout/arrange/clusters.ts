import { layersOf } from "./layers.ts";
import type { Component, Plan, PlannedWire } from "./plan.ts";
import { MARGIN } from "./types.ts";

/** A part of a piece that hangs on one block, its hub, and on nothing else: a circuit behind one lead of a fuse board. */
export type Cluster = {
  /** Index into the plan's blocks; `null` where it hangs on several (see bandsOf). */
  readonly hub: number | null;
  readonly component: Component;
  /** The wires from the hub to the cluster. */
  readonly feeds: readonly PlannedWire[];
};

/** A cluster has at most this share of the piece: what is larger is no branch but a trunk of its own. */
const LARGEST_SHARE = 1 / 4;
/** The clusters of a hub have at least this share together; fewer would not make the drawing lower. */
const LEAST_SHARE = 0.15;

/** With the height of its first contact on the hub. */
type Hanging = Cluster & { readonly hub: number; readonly top: number };
type Candidate = { readonly hub: number; readonly members: readonly number[]; readonly weight: number };

/**
 * Finds what can be taken out of a piece and set beside it with few wires between: the largest parts that one block
 * alone joins to the rest, that have new equipment in them, and nothing of the vehicle.
 * @returns in the order of their hubs' contacts from top to bottom
 */
export function clustersOf(plan: Plan, component: Component): Cluster[] {
  const { blocks } = component;
  const neighbours = neighboursOf(component);
  const weights = blocks.map((block) => plan.blocks[block]!.height + MARGIN);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const found: Candidate[] = [];
  for (let hub = 0; hub < blocks.length; hub++) {
    if (neighbours[hub]!.length > 1)
      found.push(...branchesOf(hub, neighbours, weights, total * LARGEST_SHARE));
  }
  const columnOf = (index: number) => plan.blocks[blocks[index]!]!.column;
  found.sort((a, b) => b.weight - a.weight || a.hub - b.hub || a.members[0]! - b.members[0]!);
  const claimed = new Set<number>();
  const largest: Candidate[] = [];
  for (const candidate of found) {
    // Two of them lie apart, or one within the other: none has more than a quarter of the piece.
    if (claimed.has(candidate.members[0]!)) continue;
    for (const index of candidate.members) claimed.add(index);
    const { members } = candidate;
    if (members.some((index) => columnOf(index) === "vehicle")) continue;
    if (members.some((index) => columnOf(index) === "equipment")) largest.push(candidate);
  }
  const ofHub = new Map<number, number>();
  for (const { hub, weight } of largest) ofHub.set(hub, (ofHub.get(hub) ?? 0) + weight);
  return largest
    .filter(({ hub }) => ofHub.get(hub)! >= total * LEAST_SHARE && !claimed.has(hub))
    .map(({ hub, members }) => clusterOf(plan, component, hub, members))
    .sort((a, b) => a.hub - b.hub || a.top - b.top || a.component.blocks[0]! - b.component.blocks[0]!);
}

/** The same piece without some of its blocks. */
export function withoutBlocks(plan: Plan, component: Component, gone: ReadonlySet<number>): Component {
  const blocks = component.blocks.filter((block) => !gone.has(block));
  const wires = component.wires.filter(({ from, to }) => !gone.has(from.block) && !gone.has(to.block));
  return { blocks, wires, layers: layersOf(plan.blocks, blocks, wires) };
}

function neighboursOf({ blocks, wires }: Component): number[][] {
  const localOf = new Map(blocks.map((block, index) => [block, index]));
  const sets = blocks.map(() => new Set<number>());
  for (const { from, to } of wires) {
    const [a, b] = [localOf.get(from.block)!, localOf.get(to.block)!];
    sets[a]!.add(b);
    sets[b]!.add(a);
  }
  return sets.map((set) => [...set].sort((a, b) => a - b));
}

/** What falls off when the hub is taken away, as far as it weighs no more than the limit. */
function branchesOf(
  hub: number,
  neighbours: readonly (readonly number[])[],
  weights: readonly number[],
  limit: number,
): Candidate[] {
  const seen = new Set([hub]);
  const branches: Candidate[] = [];
  for (const start of neighbours[hub]!) {
    if (seen.has(start)) continue;
    seen.add(start);
    const members = [start];
    let weight = 0;
    for (let at = 0; at < members.length; at++) {
      weight += weights[members[at]!]!;
      for (const next of neighbours[members[at]!]!) {
        if (seen.has(next)) continue;
        seen.add(next);
        members.push(next);
      }
    }
    if (weight <= limit) branches.push({ hub, members: members.sort((a, b) => a - b), weight });
  }
  return branches;
}

function clusterOf(plan: Plan, component: Component, hub: number, members: readonly number[]): Hanging {
  const blocks = members.map((index) => component.blocks[index]!);
  const inside = new Set(blocks);
  const wires: PlannedWire[] = [];
  const feeds: PlannedWire[] = [];
  for (const wire of component.wires) {
    const ends = Number(inside.has(wire.from.block)) + Number(inside.has(wire.to.block));
    if (ends === 2) wires.push(wire);
    else if (ends === 1) feeds.push(wire);
  }
  const block = component.blocks[hub]!;
  return {
    hub: block,
    top: Math.min(...feeds.map(({ from, to }) => (from.block === block ? from : to).port.y)),
    component: { blocks, wires, layers: layersOf(plan.blocks, blocks, wires) },
    feeds,
  };
}
