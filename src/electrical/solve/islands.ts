import { type Circuit, type CircuitElement, nodesOf } from "./circuit.ts";
import { isOpen } from "./devices.ts";
import { findRoot, type Ideal } from "./ideal.ts";

/** Nodes that elements join, one way or another, in the present state of switches and relays. */
export type Island = {
  /** The node at 0 V by definition; null where no supply feeds the island, and its volts mean nothing. */
  readonly reference: number | null;
  readonly nodeCount: number;
};

export type Islands = {
  /** [nodes] the island of each. */
  readonly island: Int32Array;
  readonly islands: readonly Island[];
  /** [islands] a node of each, for the equations to hold on to: its reference where it has one. */
  readonly held: Int32Array;
};

/**
 * Parts the circuit into islands. The reference of one is the circuit's ground where that is in it, else the minus of its
 * first supply.
 */
export function findIslands(circuit: Circuit, ideal: Ideal, pulled: Uint8Array): Islands {
  const { nodeCount, elements, ground } = circuit;
  const { group, groupCount } = ideal;
  const root = new Int32Array(groupCount);
  for (let index = 0; index < groupCount; index++) root[index] = index;
  for (const element of elements) {
    if (!conducts(element, pulled)) continue;
    const [a, b] = nodesOf(element);
    const [rootA, rootB] = [findRoot(root, group[a]!), findRoot(root, group[b]!)];
    if (rootA !== rootB) root[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
  }
  const ofRoot = new Int32Array(groupCount).fill(-1);
  const island = new Int32Array(nodeCount);
  const firstNode: number[] = [];
  const nodes: number[] = [];
  for (let node = 0; node < nodeCount; node++) {
    const top = findRoot(root, group[node]!);
    if (ofRoot[top]! < 0) {
      ofRoot[top] = nodes.length;
      nodes.push(0);
      firstNode.push(node);
    }
    island[node] = ofRoot[top]!;
    nodes[island[node]!]!++;
  }
  const references = new Int32Array(nodes.length).fill(-1);
  for (const element of elements) {
    if (element.kind !== "supply" && element.kind !== "output") continue;
    const of = island[element.minus]!;
    if (references[of]! < 0) references[of] = element.minus;
  }
  if (ground !== undefined && references[island[ground]!]! >= 0) references[island[ground]!] = ground;
  const islands = nodes.map((count, index) => ({
    reference: references[index]! < 0 ? null : references[index]!,
    nodeCount: count,
  }));
  const held = new Int32Array(nodes.length);
  for (let index = 0; index < held.length; index++)
    held[index] = references[index]! < 0 ? firstNode[index]! : references[index]!;
  return { island, islands, held };
}

/** Whether current can pass an element at all. */
function conducts(element: CircuitElement, pulled: Uint8Array): boolean {
  if (element.kind === "current-load") return element.amps > 0;
  if (element.kind === "power-load") return element.power_W > 0;
  return !isOpen(element, pulled);
}
