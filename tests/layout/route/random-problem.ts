import type { Block, RouteEnd, RouteProblem, Side, WireToRoute } from "../../../src/layout/route/types.ts";

/** Small seeded generator (mulberry32): the same seed gives the same harness on any machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const ROW = 24;
const HEAD = 32;

/** A part before it has a place: its size and its contacts, each with a side, an offset from the part's corner and a stub. */
export type Part = {
  readonly id: string;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly contacts: readonly {
    readonly side: Side;
    readonly x: number;
    readonly y: number;
    readonly stub: number;
  }[];
};

export type Joined = {
  readonly id: string;
  readonly from: readonly [part: number, contact: number];
  readonly to: readonly [part: number, contact: number];
  readonly circuit: string;
  readonly bond?: string;
};

export type RandomHarness = { readonly parts: readonly Part[]; readonly wires: readonly Joined[] };

/**
 * An adapter harness: vehicle connectors on the left, joints, fuses, caps and grounds between, the new
 * equipment's connectors on the right. Contacts of the two sides meet in a mostly ordered way with strays, as real
 * pinouts do.
 * @param size  about how many wires (the result has at most one or two more)
 */
export function randomHarness(size: number, seed: number): RandomHarness {
  const random = seeded(seed);
  const pick = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const parts: Part[] = [];
  const wires: Joined[] = [];
  let circuits = 0;

  const connectors = (column: number, side: Side, contacts: number) => {
    const free: [number, number][] = [];
    while (free.length < contacts) {
      const rows = Math.min(contacts - free.length, pick(4, size > 300 ? 40 : 20));
      const width = 160 + 8 * pick(0, 8);
      const stub = 60 + 2 * pick(0, 15);
      parts.push({
        id: `${side}${parts.length}`,
        column,
        width,
        height: HEAD + rows * ROW + 8,
        contacts: Array.from({ length: rows }, (_, r) => ({
          side,
          x: side === "right" ? width : 0,
          y: HEAD + r * ROW + ROW / 2,
          stub: Math.max(60, stub - 2 * pick(0, 5)),
        })),
      });
      for (let r = 0; r < rows; r++) free.push([parts.length - 1, r]);
    }
    return free;
  };
  const small = (kind: string, contacts: Part["contacts"], width: number, height: number) => {
    parts.push({ id: `${kind}${parts.length}`, column: 1, width, height, contacts });
    return parts.length - 1;
  };
  const join = (from: [number, number], to: [number, number], circuit: number, bond?: string) =>
    wires.push({
      id: `w${wires.length}`,
      from,
      to,
      circuit: `c${circuit}`,
      ...(bond === undefined ? {} : { bond }),
    });

  const pairs = Math.max(2, Math.ceil(size / 1.5));
  const left = connectors(0, "right", pairs);
  const right = connectors(2, "left", pairs);
  // Stray: swap contacts of the right side, mostly near ones.
  for (let k = 0; k < right.length; k++) {
    const reach = random() < 0.15 ? right.length : 6;
    const other = Math.min(right.length - 1, Math.max(0, k + pick(-reach, reach)));
    [right[k], right[other]] = [right[other]!, right[k]!];
  }
  /** A twisted pair sits in neighbouring contacts: brings one beside `b` to place k + 1, if both sides have one. */
  const bringNeighbour = (k: number, [part, contact]: [number, number]): boolean => {
    if (k + 1 >= pairs || left[k + 1]![0] !== left[k]![0]) return false;
    const at = right.findIndex(([p, c], m) => m > k && p === part && Math.abs(c - contact) === 1);
    if (at < 0) return false;
    [right[k + 1], right[at]] = [right[at]!, right[k + 1]!];
    return true;
  };
  for (let k = 0; k < pairs && wires.length < size; k++) {
    const a = left[k]!;
    const b = right[k]!;
    const kind = random();
    const circuit = circuits++;
    if (kind < 0.62) {
      const joint = small(
        "splice",
        [
          { side: "left", x: 0, y: 12, stub: 16 },
          { side: "right", x: 32, y: 12, stub: 16 },
        ],
        32,
        24,
      );
      join(a, [joint, 0], circuit);
      join([joint, 1], b, circuit);
      if (random() < 0.06 && k + 1 < pairs) join([joint, 1], right[++k]!, circuit);
    } else if (kind < 0.74) {
      const fuse = small(
        "fuse",
        [
          { side: "left", x: 0, y: 20, stub: 16 },
          { side: "right", x: 56, y: 20, stub: 16 },
        ],
        56,
        40,
      );
      join(a, [fuse, 0], circuit);
      join([fuse, 1], b, circuits++);
    } else if (kind < 0.82) {
      join(a, [small("ground", [{ side: "top", x: 16, y: 0, stub: 16 }], 32, 32), 0], circuit);
    } else if (kind < 0.88) {
      join(a, [small("cap", [{ side: "left", x: 0, y: 12, stub: 16 }], 24, 24), 0], circuit);
    } else if (kind < 0.94 && bringNeighbour(k, b)) {
      const bond = `pair${circuit}`;
      join(a, b, circuit, bond);
      join(left[k + 1]!, right[k + 1]!, circuits++, bond);
      k++;
    } else {
      join(a, b, circuit);
    }
  }
  return { parts, wires };
}

/** The harness as a routing problem, its parts standing at the given places (same order as `parts`). */
export function placed(harness: RandomHarness, places: readonly (readonly [number, number])[]): RouteProblem {
  const blocks: Block[] = harness.parts.map((part, i) => ({
    id: part.id,
    x: places[i]![0],
    y: places[i]![1],
    width: part.width,
    height: part.height,
  }));
  const end = ([p, c]: readonly [number, number]): RouteEnd => {
    const contact = harness.parts[p]!.contacts[c]!;
    const [x, y] = places[p]!;
    return {
      block: blocks[p]!.id,
      x: x + contact.x,
      y: y + contact.y,
      side: contact.side,
      stub: contact.stub,
    };
  };
  const wires: WireToRoute[] = harness.wires.map((wire) => ({
    id: wire.id,
    from: end(wire.from),
    to: end(wire.to),
    circuit: wire.circuit,
    ...(wire.bond === undefined ? {} : { bond: wire.bond }),
  }));
  return { blocks, wires, kept: new Map() };
}

/** Three columns, stacked from the top, with the joints spread over the height of the taller side. */
export function inColumns(harness: RandomHarness, gap = 40): [number, number][] {
  const wires = harness.wires.length;
  const channel = 200 + wires * 5;
  const tops = [0, 0, 0];
  const xs = [0, 260 + channel, 260 + channel + 100 + channel];
  return harness.parts.map((part) => {
    const y = tops[part.column]!;
    tops[part.column] = y + part.height + (part.column === 1 ? gap / 2 + 8 : gap);
    return [xs[part.column]!, y];
  });
}
