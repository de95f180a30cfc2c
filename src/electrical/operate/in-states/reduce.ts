import { type CircuitElement, isIdeal, nodesOf } from "../../solve/circuit.ts";

/**
 * A circuit with each chain of its resistances drawn together into one, and its dead ends cut off. Nothing is lost: what
 * stands between is worked out from the two ends when somebody asks.
 */
export type Reduced = {
  readonly nodeCount: number;
  /** [nodes] the number of each node that is left; −1 for one that is not. */
  readonly place: Int32Array;
  readonly elements: readonly CircuitElement[];
  /** [elements left] the element that it was, or the first of its chain. */
  readonly wasAt: readonly number[];
  /** [elements] the element left that carries its current; −1 where none ever flows. */
  readonly through: Int32Array;
  /** [elements] −1 where it runs against the element left. */
  readonly turn: Int8Array;
  /** [nodes] the node with the same volts that a dead end hangs on; −1 for all others. */
  readonly hangsOn: Int32Array;
  /** [nodes] the element left that a node stands inside of, else −1; and how far along it, from 0 to 1. */
  readonly inside: Int32Array;
  readonly share: Float64Array;
};

const isPlain = (element: CircuitElement): boolean => element.kind === "resistance" && !isIdeal(element);

/**
 * Draws together what nothing hangs on in between.
 * @param elements what is the same in every state; a coil before its contacts
 * @param single [elements] 1 for one that is not to be drawn together with others
 * @param kept [nodes] 1 where something else hangs on a node, so that it has to stay. Node 0 stays.
 */
export function reduce(elements: readonly CircuitElement[], single: Uint8Array, kept: Uint8Array): Reduced {
  const plain = Uint8Array.from(elements, (element, index) => (isPlain(element) && !single[index] ? 1 : 0));
  const net = netOf(elements, plain, kept);
  const hangsOn = cutDeadEnds(net);
  const place = new Int32Array(kept.length).fill(-1);
  const anchors: number[] = [];
  for (let node = 0; node < place.length; node++) {
    if (net.stays[node] || net.degree[node]! > 2) place[node] = anchors.push(node) - 1;
  }
  const left: CircuitElement[] = [];
  const wasAt: number[] = [];
  const through = new Int32Array(elements.length).fill(-1);
  const turn = new Int8Array(elements.length).fill(1);
  for (let index = 0; index < elements.length; index++) {
    if (plain[index]) continue;
    wasAt.push(index);
    through[index] = left.push(moved(elements[index]!, place, through)) - 1;
  }
  const inside = new Int32Array(place.length).fill(-1);
  const share = new Float64Array(place.length);
  for (const anchor of anchors) {
    for (let at = net.start[anchor]!; at < net.start[anchor + 1]!; at++) {
      const edge = net.edges[at]!;
      if (net.gone[edge]) continue;
      const { edges, nodes, upTo_ohm, end, sum_ohm } = walk(net, elements, place, anchor, edge);
      if (end === anchor) {
        // A loop out and back to the same node carries nothing.
        for (const node of nodes) hangsOn[node] = anchor;
        continue;
      }
      wasAt.push(edge);
      const [from, to] = [place[anchor]!, place[end]!];
      const number = left.push({ kind: "resistance", from, to, resistance_ohm: sum_ohm }) - 1;
      let from_node = anchor;
      for (let step = 0; step < edges.length; step++) {
        through[edges[step]!] = number;
        if (net.first[edges[step]!] !== from_node) turn[edges[step]!] = -1;
        if (step === nodes.length) break;
        from_node = nodes[step]!;
        inside[from_node] = number;
        share[from_node] = upTo_ohm[step]! / sum_ohm;
      }
    }
  }
  return { nodeCount: anchors.length, place, elements: left, wasAt, through, turn, hangsOn, inside, share };
}

/** Plain resistances as a graph. */
type Net = {
  readonly stays: Uint8Array;
  /** [elements] of plain resistances: their two nodes. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** [nodes + 1] where the resistances at each node begin in `edges`. */
  readonly start: Int32Array;
  readonly edges: Int32Array;
  /** [nodes] how many resistances at it are left. */
  readonly degree: Int32Array;
  /** [elements] 1 where it is cut off or drawn together already. */
  readonly gone: Uint8Array;
};

function netOf(elements: readonly CircuitElement[], plain: Uint8Array, kept: Uint8Array): Net {
  const count = elements.length;
  const stays = kept.slice();
  stays[0] = 1;
  const first = new Int32Array(count).fill(-1);
  const second = new Int32Array(count);
  const degree = new Int32Array(stays.length);
  const gone = new Uint8Array(count);
  for (let index = 0; index < count; index++) {
    const [a, b] = nodesOf(elements[index]!);
    if (!plain[index]) stays[a] = stays[b] = 1;
    else if (a !== b) {
      [first[index], second[index]] = [a, b];
      degree[a]!++;
      degree[b]!++;
    }
  }
  const start = new Int32Array(stays.length + 1);
  for (let node = 0; node < stays.length; node++) start[node + 1] = start[node]! + degree[node]!;
  const edges = new Int32Array(start[stays.length]!);
  const filled = start.slice();
  for (let index = 0; index < count; index++) {
    if (first[index]! < 0) continue;
    edges[filled[first[index]!]!++] = index;
    edges[filled[second[index]!]!++] = index;
  }
  return { stays, first, second, start, edges, degree, gone };
}

function edgeLeftAt({ start, edges, gone }: Net, node: number): number {
  let at = start[node]!;
  while (gone[edges[at]!]) at++;
  return edges[at]!;
}

/** Takes away what ends nowhere, from its end inwards. @returns [nodes] what each of it hangs on */
function cutDeadEnds(net: Net): Int32Array {
  const { stays, first, second, degree, gone } = net;
  const hangsOn = new Int32Array(stays.length).fill(-1);
  for (let end = 0; end < stays.length; end++) {
    for (let node = end; degree[node] === 1 && !stays[node]; ) {
      const edge = edgeLeftAt(net, node);
      const next = first[edge] === node ? second[edge]! : first[edge]!;
      gone[edge] = 1;
      degree[node] = 0;
      degree[next]!--;
      hangsOn[node] = next;
      node = next;
    }
  }
  return hangsOn;
}

/** Follows a chain from one node that stays to the next. */
function walk(
  net: Net,
  elements: readonly CircuitElement[],
  place: Int32Array,
  anchor: number,
  edge: number,
) {
  const edges: number[] = [];
  const nodes: number[] = [];
  const upTo_ohm: number[] = [];
  let sum_ohm = 0;
  let end = anchor;
  for (let at = edge; ; at = edgeLeftAt(net, end)) {
    const element = elements[at]!;
    net.gone[at] = 1;
    edges.push(at);
    if (element.kind === "resistance") sum_ohm += element.resistance_ohm;
    end = net.first[at] === end ? net.second[at]! : net.first[at]!;
    if (place[end]! >= 0) return { edges, nodes, upTo_ohm, end, sum_ohm };
    nodes.push(end);
    upTo_ohm.push(sum_ohm);
  }
}

/** The same element at the nodes' new numbers. */
function moved(element: CircuitElement, place: Int32Array, through: Int32Array): CircuitElement {
  switch (element.kind) {
    case "supply":
    case "output":
      return { ...element, plus: place[element.plus]!, minus: place[element.minus]! };
    case "diode":
      return { ...element, anode: place[element.anode]!, cathode: place[element.cathode]! };
    case "contact": {
      const { coil } = element;
      return { ...element, from: place[element.from]!, to: place[element.to]!, coil: through[coil]! };
    }
    default:
      return { ...element, from: place[element.from]!, to: place[element.to]! };
  }
}
