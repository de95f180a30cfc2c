import { type Circuit, type CircuitElement, isIdeal, LEAST_ohm, nodesOf } from "./circuit.ts";

/**
 * Ideal supplies and joins of no resistance, taken out of the equations: nodes that they tie together become one
 * unknown, each node standing at a fixed offset from it. What is left stays symmetric and positive definite.
 */
export type Ideal = {
  readonly groupCount: number;
  /** [nodes] the unknown of each node. */
  readonly group: Int32Array;
  /** [nodes] nodes so that each comes after the one it hangs on. */
  readonly order: Int32Array;
  /** [nodes] the node it hangs on, −1 at the first of a group. */
  readonly parent: Int32Array;
  /** [nodes] the ideal element between the two, −1 at the first of a group. */
  readonly by: Int32Array;
  /** Ideal elements that close a loop of such, and so fix nothing. */
  readonly closers: readonly number[];
};

/** Finds what is tied to what. Depends on which elements are ideal and where, not on their volts. */
export function tieIdeal(circuit: Circuit): Ideal {
  const { nodeCount, elements } = circuit;
  const root = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) root[node] = node;
  const tied: number[][] = [];
  const closers: number[] = [];
  for (let index = 0; index < elements.length; index++) {
    const element = elements[index]!;
    if (!isIdeal(element)) continue;
    const [a, b] = nodesOf(element);
    const [rootA, rootB] = [findRoot(root, a), findRoot(root, b)];
    if (rootA === rootB) {
      closers.push(index);
      continue;
    }
    root[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
    for (const node of [a, b]) {
      const list = tied[node];
      if (list) list.push(index);
      else tied[node] = [index];
    }
  }
  const group = new Int32Array(nodeCount).fill(-1);
  const order = new Int32Array(nodeCount);
  const parent = new Int32Array(nodeCount).fill(-1);
  const by = new Int32Array(nodeCount).fill(-1);
  let groupCount = 0;
  let filled = 0;
  for (let first = 0; first < nodeCount; first++) {
    if (group[first] !== -1) continue;
    group[first] = groupCount;
    let next = filled;
    order[filled++] = first;
    for (; next < filled; next++) {
      const node = order[next]!;
      for (const index of tied[node] ?? []) {
        const [a, b] = nodesOf(elements[index]!);
        const other = a === node ? b : a;
        if (group[other] !== -1) continue;
        group[other] = groupCount;
        parent[other] = node;
        by[other] = index;
        order[filled++] = other;
      }
    }
    groupCount++;
  }
  return { groupCount, group, order, parent, by, closers };
}

/** The first of a set of joined numbers, by union-find with halved paths. */
export function findRoot(root: Int32Array, start: number): number {
  let at = start;
  while (root[at] !== at) {
    root[at] = root[root[at]!]!;
    at = root[at]!;
  }
  return at;
}

const emf_V = (element: CircuitElement): number => (element.kind === "supply" ? element.emf_V : 0);

/** [nodes] volts of each node over the unknown of its group. */
export function offsets_V(ideal: Ideal, elements: readonly CircuitElement[]): Float64Array {
  const offset = new Float64Array(ideal.order.length);
  for (const node of ideal.order) {
    const parent = ideal.parent[node]!;
    if (parent < 0) continue;
    const element = elements[ideal.by[node]!]!;
    const step = nodesOf(element)[0] === node ? emf_V(element) : -emf_V(element);
    offset[node] = offset[parent]! + step;
  }
  return offset;
}

/** A loop of nothing but ideal elements, and the volts by which it does not close. */
export type IdealLoop = { readonly elements: readonly number[]; readonly mismatch_V: number };

/** What each closing element closes: all ideal elements around, the closing one first. */
export function idealLoops(
  ideal: Ideal,
  elements: readonly CircuitElement[],
  offset: Float64Array,
): readonly IdealLoop[] {
  return ideal.closers.map((closer) => {
    const element = elements[closer]!;
    const [a, b] = nodesOf(element);
    const up = (from: number) => {
      const path: number[] = [];
      for (let node = from; ideal.parent[node]! >= 0; node = ideal.parent[node]!) path.push(ideal.by[node]!);
      return path;
    };
    const [pathA, pathB] = [up(a), up(b)];
    // What both share on the way up lies outside the loop.
    while (pathA.length && pathB.length && pathA.at(-1) === pathB.at(-1)) {
      pathA.pop();
      pathB.pop();
    }
    const mismatch_V = emf_V(element) - (offset[a]! - offset[b]!);
    const exact = Math.abs(mismatch_V) <= 1e-12 * (Math.abs(offset[a]!) + Math.abs(offset[b]!));
    return { elements: [closer, ...pathA, ...pathB], mismatch_V: exact ? 0 : mismatch_V };
  });
}

/**
 * Fills in the amperes of ideal elements, which no equation holds, from those of all others: what enters a node must
 * leave it. A loop that closes carries nothing; one that does not drives its mismatch through `LEAST_ohm`.
 * @param amps [elements] from the first node to the second through the element; filled in here
 */
export function fillIdealAmps(
  circuit: Circuit,
  ideal: Ideal,
  loops: readonly IdealLoop[],
  amps: Float64Array,
): void {
  const { elements, nodeCount } = circuit;
  for (const loop of loops) amps[loop.elements[0]!] = -loop.mismatch_V / LEAST_ohm;
  const tree = new Uint8Array(elements.length);
  for (const index of ideal.by) if (index >= 0) tree[index] = 1;
  const leaving = new Float64Array(nodeCount);
  for (let index = 0; index < elements.length; index++) {
    if (tree[index]) continue;
    const [a, b] = nodesOf(elements[index]!);
    leaving[a]! += amps[index]!;
    leaving[b]! -= amps[index]!;
  }
  for (let at = nodeCount - 1; at >= 0; at--) {
    const node = ideal.order[at]!;
    const index = ideal.by[node]!;
    if (index < 0) continue;
    const out = -leaving[node]!;
    amps[index] = nodesOf(elements[index]!)[0] === node ? out : -out;
    leaving[ideal.parent[node]!]! -= out;
  }
}
