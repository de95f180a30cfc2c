import { layersOf } from "./layers.ts";
import { turnsFor } from "./turns.ts";
import type { ArrangeBlock, ArrangePort, ArrangeProblem, ArrangeWire } from "./types.ts";

/** One end of a wire: an index into the plan's blocks, and the port there. */
export type PlannedEnd = { readonly block: number; readonly port: ArrangePort };
export type PlannedWire = { readonly wire: ArrangeWire; readonly from: PlannedEnd; readonly to: PlannedEnd };

/** A connected piece of the harness. */
export type Component = {
  readonly blocks: readonly number[];
  readonly wires: readonly PlannedWire[];
  /** Column of each block of `blocks`, from 0; vehicle blocks share the first, equipment the last. */
  readonly layers: readonly number[];
};

export type Plan = {
  /** As given, but mirrored where `turned` says so. */
  readonly blocks: readonly ArrangeBlock[];
  readonly turned: ReadonlySet<string>;
  /** Largest first. */
  readonly components: readonly Component[];
  /** Blocks that no wire reaches. */
  readonly unwired: readonly number[];
};

/**
 * Sorts a problem out before ELK sees it: which blocks to mirror, which hang together, who stands in which
 * column. Wires that lead nowhere, or from a block to itself, say nothing about places and are left out.
 */
export function planOf(problem: ArrangeProblem): Plan {
  const turned = turnsFor(problem);
  const blocks = problem.blocks.map((block) => (turned.has(block.id) ? mirrored(block) : block));
  const wires = plannedWires(blocks, problem.wires);
  const pieces = connected(blocks.length, wires);
  const components: Component[] = [];
  const unwired: number[] = [];
  for (const piece of pieces) {
    if (piece.wires.length === 0) unwired.push(...piece.blocks);
    else components.push({ ...piece, layers: layersOf(blocks, piece.blocks, piece.wires) });
  }
  components.sort((a, b) => b.wires.length - a.wires.length || a.blocks[0]! - b.blocks[0]!);
  return { blocks, turned, components, unwired };
}

/** The same block seen in a mirror: left is right. */
export function mirrored(block: ArrangeBlock): ArrangeBlock {
  const opposite = { left: "right", right: "left", top: "top", bottom: "bottom" } as const;
  return {
    ...block,
    ports: block.ports.map((port) => ({ ...port, x: block.width - port.x, side: opposite[port.side] })),
    stub: { left: block.stub.right, right: block.stub.left },
  };
}

/** Resolves the ends of wires; shared with the choice of mirroring, which comes before the plan. */
export function plannedWires(
  blocks: readonly ArrangeBlock[],
  wires: readonly ArrangeWire[],
): readonly PlannedWire[] {
  const indexes = new Map(blocks.map((block, index) => [block.id, index]));
  const portMaps = blocks.map((block) => {
    const ports = new Map<number, ArrangePort>();
    for (const port of block.ports) if (!ports.has(port.contact)) ports.set(port.contact, port);
    return ports;
  });
  const endOf = (end: ArrangeWire["from"]): PlannedEnd | null => {
    const block = indexes.get(end.block);
    const port = block === undefined ? undefined : portMaps[block]?.get(end.contact);
    return block === undefined || port === undefined ? null : { block, port };
  };
  const planned: PlannedWire[] = [];
  for (const wire of wires) {
    const from = endOf(wire.from);
    const to = endOf(wire.to);
    if (from && to && from.block !== to.block) planned.push({ wire, from, to });
  }
  return planned;
}

type Piece = { readonly blocks: number[]; readonly wires: PlannedWire[] };

function connected(count: number, wires: readonly PlannedWire[]): Piece[] {
  const root = Array.from({ length: count }, (_, index) => index);
  const find = (start: number): number => {
    let at = start;
    while (root[at] !== at) {
      root[at] = root[root[at]!]!;
      at = root[at]!;
    }
    return at;
  };
  for (const { from, to } of wires) {
    const [a, b] = [find(from.block), find(to.block)];
    if (a !== b) root[Math.max(a, b)] = Math.min(a, b);
  }
  const pieces = new Map<number, Piece>();
  for (let index = 0; index < count; index++) {
    const piece = pieces.get(find(index)) ?? { blocks: [], wires: [] };
    piece.blocks.push(index);
    pieces.set(find(index), piece);
  }
  for (const wire of wires) pieces.get(find(wire.from.block))!.wires.push(wire);
  return [...pieces.values()];
}
