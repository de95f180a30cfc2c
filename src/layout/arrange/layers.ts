import type { PlannedEnd, PlannedWire } from "./plan.ts";
import type { ArrangeBlock } from "./types.ts";

/**
 * Puts the blocks of one connected piece into columns: vehicle first, equipment last, everything between them as
 * far left as the wires from right-hand to left-hand ports allow, but parts of one width in one column where
 * they have the choice. A part that ends a lead stands next to what the lead comes from.
 *
 * ELK could do this too, but only with length in mind: it scatters joints that have room to move.
 * @returns a column for each of `members`, from 0, none empty
 */
export function layersOf(
  blocks: readonly ArrangeBlock[],
  members: readonly number[],
  wires: readonly PlannedWire[],
): number[] {
  const local = new Map(members.map((block, index) => [block, index]));
  const between = members.map((block) => blocks[block]!.column === "between");
  const before: number[][] = members.map(() => []);
  const after: number[][] = members.map(() => []);
  const hasLeft = members.map(() => false);
  const hasRight = members.map(() => false);
  for (const wire of wires) {
    const pair = leftToRight(wire);
    if (!pair) continue;
    const u = local.get(pair[0].block)!;
    const v = local.get(pair[1].block)!;
    hasRight[u] = true;
    hasLeft[v] = true;
    if (!between[u] || !between[v]) continue;
    after[u]!.push(v);
    before[v]!.push(u);
  }
  const order = withoutCycles(before, after);
  const low = members.map(() => 1);
  for (const v of order) for (const w of after[v]!) low[w] = Math.max(low[w]!, low[v]! + 1);
  let last = 1;
  for (let index = 0; index < members.length; index++) {
    if (between[index]) last = Math.max(last, low[index]! + 1);
  }
  const high = members.map(() => last - 1);
  for (const u of [...order].reverse()) for (const v of after[u]!) high[u] = Math.min(high[u]!, high[v]! - 1);

  // How many blocks of a width have no choice of column: the others join the larger company.
  const company = new Map<string, number>();
  const widthOf = (index: number) => blocks[members[index]!]!.width;
  for (const index of order) {
    if (!between[index] || low[index] !== high[index]) continue;
    const key = `${low[index]}/${widthOf(index)}`;
    company.set(key, (company.get(key) ?? 0) + 1);
  }
  const layers = members.map((block) => {
    const { column } = blocks[block]!;
    return column === "vehicle" ? 0 : column === "equipment" ? last : 1;
  });
  for (const index of order) {
    if (!between[index]) continue;
    let from = 1;
    for (const u of before[index]!) from = Math.max(from, layers[u]! + 1);
    const to = Math.max(from, high[index]!);
    let best = from;
    if (!hasLeft[index] && hasRight[index]) best = to;
    else if (hasRight[index]) {
      let most = -1;
      for (let layer = from; layer <= to; layer++) {
        const count = company.get(`${layer}/${widthOf(index)}`) ?? 0;
        if (count > most) [most, best] = [count, layer];
      }
    }
    layers[index] = best;
  }
  besideWhatTheyFaceAwayFrom(local, between, wires, layers);
  return withoutGaps(layers);
}

/** The ends of a wire from a right-hand port to a left-hand one, in that order; `null` for any other wire. */
export function leftToRight({ from, to }: PlannedWire): readonly [PlannedEnd, PlannedEnd] | null {
  if (from.port.side === "right" && to.port.side === "left") return [from, to];
  if (to.port.side === "right" && from.port.side === "left") return [to, from];
  return null;
}

/** Drops the arcs that close a cycle from both lists; returns an order in which arcs lead forward. */
function withoutCycles(before: number[][], after: number[][]): number[] {
  const waiting = before.map((list) => list.length);
  const order: number[] = [];
  const done = before.map(() => false);
  const ready: number[] = [];
  for (let index = 0; index < before.length; index++) if (waiting[index] === 0) ready.push(index);
  let next = 0;
  let lowest = 0;
  while (order.length < before.length) {
    let at: number;
    if (next < ready.length) at = ready[next++]!;
    else {
      while (done[lowest]) lowest++;
      at = lowest;
    }
    if (done[at]) continue;
    done[at] = true;
    order.push(at);
    for (const v of after[at]!) {
      waiting[v]!--;
      if (waiting[v] === 0 && !done[v]) ready.push(v);
    }
  }
  const position = new Map(order.map((index, at) => [index, at]));
  const forward = (u: number, v: number) => position.get(u)! < position.get(v)!;
  for (let index = 0; index < before.length; index++) {
    before[index] = before[index]!.filter((u) => forward(u, index));
    after[index] = after[index]!.filter((v) => forward(index, v));
  }
  return order;
}

/** A cap that cannot be turned stands in the column of the housing it caps: its wire is a plain bracket. */
function besideWhatTheyFaceAwayFrom(
  local: ReadonlyMap<number, number>,
  between: readonly boolean[],
  wires: readonly PlannedWire[],
  layers: number[],
): void {
  const sides = new Map<number, { same: number[]; side: string } | null>();
  for (const { from, to } of wires) {
    for (const [own, other] of [
      [from, to],
      [to, from],
    ] as const) {
      const index = local.get(own.block)!;
      if (!between[index]) continue;
      const known = sides.get(index);
      if (known === null) continue;
      const { side } = own.port;
      const same = side === other.port.side && (known === undefined || known.side === side);
      if (!same || (side !== "left" && side !== "right")) sides.set(index, null);
      else sides.set(index, { side, same: [...(known?.same ?? []), layers[local.get(other.block)!]!] });
    }
  }
  for (const [index, known] of sides) {
    if (known) layers[index] = known.side === "left" ? Math.min(...known.same) : Math.max(...known.same);
  }
}

function withoutGaps(layers: readonly number[]): number[] {
  const used = [...new Set(layers)].sort((a, b) => a - b);
  const renumbered = new Map(used.map((layer, index) => [layer, index]));
  return layers.map((layer) => renumbered.get(layer)!);
}
