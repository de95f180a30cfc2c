import type {
  ArrangeBlock,
  Arranged,
  ArrangePort,
  ArrangeProblem,
  ArrangeWire,
} from "../../../src/layout/arrange/types.ts";

/** Problems in the sizes and proportions of real drawings, for tests and benchmarks. */
const ROW = 24;
const HEAD = 60;

export function housing(
  id: string,
  column: "vehicle" | "equipment",
  cavities: number,
  pinned: ArrangeBlock["pinned"] = null,
): ArrangeBlock {
  const side = column === "vehicle" ? "right" : "left";
  const width = 240;
  return {
    id,
    width,
    height: HEAD + cavities * ROW + 12,
    ports: Array.from({ length: cavities }, (_, index) => ({
      contact: index + 1,
      x: side === "left" ? 0 : width,
      y: HEAD + index * ROW + ROW / 2,
      side,
    })),
    column,
    pinned,
    stub: side === "left" ? { left: 88, right: 0 } : { left: 0, right: 88 },
  };
}

export function splice(id: string, pinned: ArrangeBlock["pinned"] = null, mayTurn = true): ArrangeBlock {
  return twoSided(id, 48, 40, 24, pinned, mayTurn);
}

export function fuse(id: string): ArrangeBlock {
  return twoSided(id, 72, 56, 32, null, true);
}

function twoSided(
  id: string,
  width: number,
  height: number,
  y: number,
  pinned: ArrangeBlock["pinned"],
  mayTurn: boolean,
): ArrangeBlock {
  const ports: ArrangePort[] = [
    { contact: 1, x: 0, y, side: "left" },
    { contact: 2, x: width, y, side: "right" },
  ];
  return { id, width, height, ports, column: "between", pinned, stub: { left: 88, right: 88 }, mayTurn };
}

/** A cap or a ground: one contact, facing left as drawn. */
export function ending(id: string, mayTurn = true, height = 40): ArrangeBlock {
  return {
    id,
    width: 40,
    height,
    ports: [{ contact: 1, x: 0, y: 24, side: "left" }],
    column: "between",
    pinned: null,
    stub: { left: 88, right: 0 },
    mayTurn,
  };
}

type End = readonly [block: string, contact: number];

export function wire(id: string, from: End, to: End): ArrangeWire {
  return {
    id,
    from: { block: from[0], contact: from[1] },
    to: { block: to[0], contact: to[1] },
  };
}

/** Numbers from 0 to 1 that are the same on every run. @source mulberry32, public domain, Tommy Ettinger */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Two housings of `rows` cavities, a splice in every lead. `spares` of the equipment's leads end in caps instead.
 * @param mixed how far the two charts differ in order: 0 not at all, 1 freely
 */
export function adapter(rows: number, spares = 0, mixed = 0.3, seed = 1): ArrangeProblem {
  const random = seeded(seed);
  const blocks: ArrangeBlock[] = [housing("V1", "vehicle", rows), housing("E1", "equipment", rows)];
  const wires: ArrangeWire[] = [];
  const order = Array.from({ length: rows }, (_, index) => index);
  const rank = order.map((index) => index + (random() - 0.5) * 2 * mixed * rows);
  order.sort((a, b) => rank[a]! - rank[b]!);
  for (let row = 0; row < rows; row++) {
    const other = order[row]! + 1;
    if (row >= rows - spares) {
      blocks.push(ending(`cap v${row}`), ending(`cap e${row}`));
      wires.push(wire(`cv${row}`, ["V1", row + 1], [`cap v${row}`, 1]));
      wires.push(wire(`ce${row}`, ["E1", other], [`cap e${row}`, 1]));
      continue;
    }
    blocks.push(splice(`S${row}`));
    wires.push(wire(`l${row}`, ["V1", row + 1], [`S${row}`, 1]));
    wires.push(wire(`r${row}`, [`S${row}`, 2], ["E1", other]));
  }
  return { blocks, wires };
}

/** A harness of many housings: splices, direct wires, fuses before splices, caps, grounds that several leads share. */
export function harness(wireCount: number, seed = 1): ArrangeProblem {
  const random = seeded(seed);
  const pick = (count: number) => Math.floor(random() * count);
  const housings = Math.max(2, Math.round(wireCount / 40));
  const cavities = 24;
  const blocks: ArrangeBlock[] = [];
  for (let index = 0; index < housings; index++) {
    blocks.push(housing(`V${index}`, "vehicle", cavities), housing(`E${index}`, "equipment", cavities));
  }
  const free = (letter: string): End[] =>
    Array.from(
      { length: housings * cavities },
      (_, at): End => [`${letter}${Math.floor(at / cavities)}`, (at % cavities) + 1],
    );
  const vehicle = free("V");
  const equipment = free("E");
  const takeNear = (list: End[], at: number): End =>
    list.splice(Math.min(list.length - 1, Math.max(0, at + pick(9) - 4)), 1)[0]!;
  const wires: ArrangeWire[] = [];
  const add = (from: End, to: End) => wires.push(wire(`w${wires.length}`, from, to));
  const grounds = Math.max(1, Math.round(wireCount / 60));
  for (let index = 0; index < grounds; index++) blocks.push(ending(`G${index}`, true, 56));
  while (wires.length < wireCount && vehicle.length > 0 && equipment.length > 0) {
    const at = pick(vehicle.length);
    const from = takeNear(vehicle, at);
    const kind = random();
    const id = wires.length;
    if (kind < 0.1) {
      blocks.push(ending(`C${id}`));
      add(from, [`C${id}`, 1]);
    } else if (kind < 0.2) add(from, [`G${pick(grounds)}`, 1]);
    else {
      const to = takeNear(equipment, at);
      if (kind < 0.35) add(from, to);
      else {
        blocks.push(splice(`S${id}`));
        if (kind < 0.5) {
          blocks.push(fuse(`F${id}`));
          add(from, [`F${id}`, 1]);
          add([`F${id}`, 2], [`S${id}`, 1]);
        } else add(from, [`S${id}`, 1]);
        add([`S${id}`, 2], to);
        if (kind > 0.92 && equipment.length > 0) add([`S${id}`, 2], takeNear(equipment, at));
      }
    }
  }
  return { blocks, wires };
}

/**
 * A fuse board: behind each of its cavities a switch, a feed joint, lamps, a ground joint and a ground. Each circuit hangs on
 * the board alone.
 */
export function board(circuits: number, lamps: number): ArrangeProblem {
  const blocks: ArrangeBlock[] = [housing("V", "vehicle", circuits), housing("B", "equipment", circuits)];
  const wires: ArrangeWire[] = [];
  const add = (from: End, to: End) => wires.push(wire(`w${wires.length}`, from, to));
  for (let circuit = 1; circuit <= circuits; circuit++) {
    blocks.push(fuse(`switch ${circuit}`), splice(`feed ${circuit}`), splice(`return ${circuit}`));
    blocks.push(ending(`ground ${circuit}`));
    add(["V", circuit], ["B", circuit]);
    add(["B", circuit], [`switch ${circuit}`, 1]);
    add([`switch ${circuit}`, 2], [`feed ${circuit}`, 1]);
    add([`return ${circuit}`, 1], [`ground ${circuit}`, 1]);
    for (let lamp = 1; lamp <= lamps; lamp++) {
      const id = `lamp ${circuit}.${lamp}`;
      blocks.push(housing(id, "equipment", 2));
      add([`feed ${circuit}`, 2], [id, 1]);
      add([id, 2], [`return ${circuit}`, 2]);
    }
  }
  return { blocks, wires };
}

/** Pairs of blocks nearer than the margin, in words; a pair of pinned ones is a person's own doing. */
export function tooClose(problem: ArrangeProblem, arranged: Arranged, margin = 16): string[] {
  const found: string[] = [];
  for (const [index, one] of problem.blocks.entries()) {
    for (const other of problem.blocks.slice(index + 1)) {
      if (one.pinned && other.pinned) continue;
      const [p, q] = [arranged.places.get(one.id)!, arranged.places.get(other.id)!];
      const apart =
        p.x >= q.x + other.width + margin ||
        q.x >= p.x + one.width + margin ||
        p.y >= q.y + other.height + margin ||
        q.y >= p.y + one.height + margin;
      if (!apart) found.push(`${one.id} and ${other.id}`);
    }
  }
  return found;
}

/** As plain data, to compare two of them. */
export function plain(arranged: Arranged): unknown {
  return {
    places: [...arranged.places],
    paths: [...arranged.paths],
    turned: [...arranged.turned],
  };
}
