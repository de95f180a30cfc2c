import type { ElkExtendedEdge, ElkNode, ElkPort, LayoutOptions } from "elkjs/lib/elk-api.js";
import { orderOf } from "./order.ts";
import type { Component, Plan, PlannedEnd } from "./plan.ts";
import type { ArrangeBlock } from "./types.ts";

/** Distance between blocks of one column. Above MARGIN, so that snapping to the grid cannot go below it. */
const BLOCK_SPACING = 16;
const TRACK = 8;
/** Blocks of one column get overlapping x ranges here, those of different columns never. */
const COLUMN_PITCH = 100_000;
/** ELK's slower placement gives straighter wires; beyond this size it is not worth the wait. */
const STRAIGHT_UP_TO_WIRES = 400;

/**
 * A small piece may change the order of its housings, starting from ours; in a larger one (see orderOf) that costs
 * seconds and makes it worse, so there ELK only sorts what is between.
 */
const FREE_ORDER_UP_TO_WIRES = 80;

/** Room in front of all blocks of a column, the same for all so that their edges line up. */
export type Stubs = { readonly left: number; readonly right: number };

export function stubsOf(plan: Plan, component: Component): Stubs[] {
  const stubs: { left: number; right: number }[] = [];
  for (const [index, layer] of component.layers.entries()) {
    const { stub } = plan.blocks[component.blocks[index]!]!;
    const known = stubs[layer] ?? { left: 0, right: 0 };
    stubs[layer] = { left: Math.max(known.left, stub.left), right: Math.max(known.right, stub.right) };
  }
  return stubs;
}

/** Chosen by trial: `npm run bench -- arrange` shows them beside ELK's defaults. */
export function optionsFor(wireCount: number): LayoutOptions {
  return {
    "elk.algorithm": "layered",
    "elk.direction": "RIGHT",
    "elk.edgeRouting": "ORTHOGONAL",
    "elk.randomSeed": "1",
    "elk.padding": "[top=0,left=0,bottom=0,right=0]",
    "elk.separateConnectedComponents": "false",
    "elk.spacing.nodeNode": String(BLOCK_SPACING),
    "elk.spacing.edgeNode": "8",
    "elk.spacing.edgeEdge": String(TRACK),
    "elk.layered.spacing.nodeNodeBetweenLayers": "32",
    "elk.layered.spacing.edgeNodeBetweenLayers": "16",
    "elk.layered.spacing.edgeEdgeBetweenLayers": String(TRACK),
    // The columns are ours (see layersOf); ELK reads them from the places it is given.
    "elk.layered.layering.strategy": "INTERACTIVE",
    "elk.layered.cycleBreaking.strategy": "INTERACTIVE",
    "elk.layered.crossingMinimization.strategy": "LAYER_SWEEP",
    ...(wireCount <= FREE_ORDER_UP_TO_WIRES
      ? { "elk.layered.considerModelOrder.strategy": "PREFER_NODES", "elk.layered.thoroughness": "20" }
      : { "elk.layered.crossingMinimization.semiInteractive": "true", "elk.layered.thoroughness": "7" }),
    "elk.layered.nodePlacement.strategy":
      wireCount <= STRAIGHT_UP_TO_WIRES ? "NETWORK_SIMPLEX" : "BRANDES_KOEPF",
    "elk.layered.nodePlacement.favorStraightEdges": "true",
  };
}

/**
 * The ELK graph of one connected piece. Blocks are widened by the room of their column for labels, so that ELK keeps that
 * room free and its wires run straight through it.
 *
 * ELK cannot take a wire between two blocks of one column. Such a wire goes by way of a bend in the next column:
 * a node with no size to speak of, to which both its halves run.
 * Ids: `b3` block 3 of the plan, `b3:7` its contact 7, `w2` wire 2 of the component, `w2:a`, `w2:b` its halves.
 */
export function toElk(plan: Plan, component: Component): ElkNode {
  const stubs = stubsOf(plan, component);
  const layerOf = new Map(component.blocks.map((block, index) => [block, component.layers[index]!]));
  const used = component.blocks.map(() => new Set<number>());
  const localOf = new Map(component.blocks.map((block, index) => [block, index]));
  const bends: ElkNode[] = [];
  const edges: ElkExtendedEdge[] = [];
  const portId = (end: PlannedEnd) => `b${end.block}:${end.port.contact}`;
  for (const [index, { from, to }] of component.wires.entries()) {
    const fromLayer = layerOf.get(from.block)!;
    const toLayer = layerOf.get(to.block)!;
    const id = `w${index}`;
    if (fromLayer === toLayer) {
      if (from.port.side !== to.port.side) continue;
      const onLeft = from.port.side === "left";
      bends.push(bendNode(id, fromLayer + (onLeft ? -1 : 1), onLeft ? "EAST" : "WEST"));
      for (const [half, end] of [
        ["a", from],
        ["b", to],
      ] as const) {
        const [source, target] = onLeft ? [`${id}:${half}`, portId(end)] : [portId(end), `${id}:${half}`];
        edges.push({ id: `${id}:${half}`, sources: [source], targets: [target] });
      }
    } else {
      const [source, target] = fromLayer < toLayer ? [from, to] : [to, from];
      edges.push({ id, sources: [portId(source)], targets: [portId(target)] });
    }
    used[localOf.get(from.block)!]!.add(from.port.contact);
    used[localOf.get(to.block)!]!.add(to.port.contact);
  }
  const last = stubs.length - 1;
  const alignments = stubs.map((_, layer) => alignmentOf(plan, component, layer));
  const children = orderOf(plan, component).map((index, place) => {
    const block = component.blocks[index]!;
    const layer = component.layers[index]!;
    const node = blockNode(
      plan.blocks[block]!,
      block,
      layer,
      stubs[layer]!,
      alignments[layer]!,
      used[index]!,
    );
    const outer = layer === 0 || layer === last;
    return outer
      ? { ...node, layoutOptions: { ...node.layoutOptions, "elk.position": `(0,${place})` } }
      : node;
  });
  return {
    id: "harness",
    layoutOptions: optionsFor(component.wires.length),
    children: [...children, ...bends],
    edges,
  };
}

/** Housings line up on the side their wires leave from; what is between stands on one middle line. */
function alignmentOf(plan: Plan, component: Component, layer: number): "LEFT" | "CENTER" | "RIGHT" {
  for (const [index, block] of component.blocks.entries()) {
    const { column } = plan.blocks[block]!;
    if (component.layers[index] === layer && column !== "between")
      return column === "vehicle" ? "RIGHT" : "LEFT";
  }
  return "CENTER";
}

const ELK_SIDE = { left: "WEST", right: "EAST", top: "NORTH", bottom: "SOUTH" } as const;

function blockNode(
  block: ArrangeBlock,
  index: number,
  layer: number,
  stubs: Stubs,
  alignment: "LEFT" | "CENTER" | "RIGHT",
  used: ReadonlySet<number>,
): ElkNode {
  const width = stubs.left + block.width + stubs.right;
  const ports: ElkPort[] = [];
  const seen = new Set<number>();
  for (const port of block.ports) {
    if (!used.has(port.contact) || seen.has(port.contact)) continue;
    seen.add(port.contact);
    ports.push({
      id: `b${index}:${port.contact}`,
      x: port.side === "left" ? 0 : port.side === "right" ? width : stubs.left + port.x,
      y: port.y,
      width: 0,
      height: 0,
      layoutOptions: { "elk.port.side": ELK_SIDE[port.side] },
    });
  }
  return {
    id: `b${index}`,
    x: layer * COLUMN_PITCH,
    y: 0,
    width,
    height: block.height,
    ports,
    layoutOptions: {
      "elk.portConstraints": "FIXED_POS",
      "elk.alignment": alignment,
    },
  };
}

function bendNode(id: string, layer: number, side: "EAST" | "WEST"): ElkNode {
  const port = (half: string): ElkPort => ({
    id: `${id}:${half}`,
    width: 0,
    height: 0,
    layoutOptions: { "elk.port.side": side },
  });
  return {
    id: `bend:${id}`,
    x: layer * COLUMN_PITCH,
    y: 0,
    width: 1,
    height: TRACK,
    ports: [port("a"), port("b")],
    layoutOptions: {
      "elk.portConstraints": "FIXED_SIDE",
      "elk.alignment": side === "EAST" ? "RIGHT" : "LEFT",
    },
  };
}
