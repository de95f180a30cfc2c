import type { Lane } from "./lane.ts";
import { sift } from "./sift.ts";
import { SAME_TRACK, TRACK_SPACING } from "./types.ts";

/** One place in a channel: a lane, or the two lanes of a bonded pair side by side. */
export type Slot = {
  readonly lanes: readonly Lane[];
  readonly fixed: boolean;
  readonly low: number;
  readonly high: number;
};

/** Slots that can get in each other's way. `overlap[i*n+j]` is 1 where i and j run beside each other. */
export type Channel = { readonly slots: readonly Slot[]; readonly overlap: Uint8Array };

/** Weight of an order that would lay two wires on one track or a wire into a part. */
const IMPOSSIBLE = 10_000;
/** Room in which two slots, with those that will come between them, are too tight; and the weight of that. */
const CORNER = 64;
const SQUEEZE = 4;
/** Weight of two end rows closer than the spacing, against 1 for a crossing. */
const CROWDED = 0.25;

/**
 * Orders each channel's slots across the channel so that their wires cross as little as can be.
 * Each pair of slots has a price for either order. A greedy start (the heuristic of Eades, Lin and Smyth for feedback
 * arcs, 1993) keeps every wish when no wishes go in circles; moving single slots to their best place (sifting)
 * betters the rest.
 */
export function orderChannels(lanes: readonly Lane[]): Channel[] {
  const slots = nearFree(makeSlots(lanes));
  const channels: Channel[] = [];
  for (const group of groups(slots)) {
    if (group.every((slot) => slot.fixed)) continue;
    const count = group.length;
    const overlap = new Uint8Array(count * count);
    const price = new Float32Array(count * count);
    for (let i = 0; i < count; i++) {
      for (let j = i + 1; j < count; j++) {
        const a = group[i]!;
        const b = group[j]!;
        // What lies wholly on one side comes first even when the two never meet: a third may meet both.
        const aHigher = a.low >= b.high;
        const bHigher = b.low >= a.high;
        let difference = aHigher === bHigher ? 0 : aHigher ? IMPOSSIBLE : -IMPOSSIBLE;
        if ((!a.fixed || !b.fixed) && beside(a, b)) {
          overlap[i * count + j] = 1;
          overlap[j * count + i] = 1;
          difference += priceOf(a, b) - priceOf(b, a);
        }
        price[i * count + j] = difference;
        price[j * count + i] = -difference;
      }
    }
    const order = cheapestFirst(price, count);
    sift(order, price, { slots: group, overlap });
    channels.push({
      slots: Array.from(order, (i) => group[i]!),
      overlap: permuted(overlap, order),
    });
  }
  return channels;
}

function permuted(matrix: Uint8Array, order: Int32Array): Uint8Array {
  const count = order.length;
  const out = new Uint8Array(count * count);
  for (let i = 0; i < count; i++) {
    const row = order[i]! * count;
    for (let j = 0; j < count; j++) out[i * count + j] = matrix[row + order[j]!]!;
  }
  return out;
}

function makeSlots(lanes: readonly Lane[]): Slot[] {
  const slots: Slot[] = [];
  const waiting = new Map<string, Lane>();
  const single = (lane: Lane) =>
    slots.push({ lanes: [lane], fixed: lane.fixed, low: lane.low, high: lane.high });
  for (const lane of lanes) {
    if (lane.fixed || lane.draft.bond < 0) {
      single(lane);
      continue;
    }
    const key = `${lane.draft.bond}/${lane.segment}/${lane.draft.points.length}`;
    const mate = waiting.get(key);
    if (!mate) {
      waiting.set(key, lane);
      continue;
    }
    waiting.delete(key);
    const low = Math.max(mate.low, lane.low);
    const high = Math.min(mate.high, lane.high);
    if (low >= high || mate.from >= lane.to || lane.from >= mate.to) {
      single(mate);
      single(lane);
      continue;
    }
    const wish = lanePrice(mate, lane) - lanePrice(lane, mate) || contactsOf(mate) - contactsOf(lane);
    const pair = wish <= 0 ? [mate, lane] : [lane, mate];
    slots.push({ lanes: pair, fixed: false, low, high });
  }
  for (const lane of waiting.values()) single(lane);
  return slots;
}

/** Drops the fixed slots that lie beside nothing that may move. */
function nearFree(slots: readonly Slot[]): Slot[] {
  const free = slots.filter((slot) => !slot.fixed);
  if (free.length * 4 > slots.length) return [...slots];
  return slots.filter((slot) => !slot.fixed || free.some((other) => beside(slot, other)));
}

/** Where a wire's two contacts lie across the lane, added up. */
function contactsOf(lane: Lane): number {
  const { points } = lane.draft;
  const upright = points[lane.segment * 2] === points[lane.segment * 2 + 2];
  return upright ? points[0]! + points[points.length - 2]! : points[1]! + points[points.length - 1]!;
}

function beside(a: Slot, b: Slot): boolean {
  if (a.low - TRACK_SPACING >= b.high || b.low - TRACK_SPACING >= a.high) return false;
  for (const p of a.lanes) {
    for (const q of b.lanes) if (p.from < q.to + TRACK_SPACING && q.from < p.to + TRACK_SPACING) return true;
  }
  return false;
}

function groups(slots: readonly Slot[]): Slot[][] {
  const from = (slot: Slot) => Math.min(...slot.lanes.map((lane) => lane.from));
  const to = (slot: Slot) => Math.max(...slot.lanes.map((lane) => lane.to));
  const starts = Float64Array.from(slots, from);
  const ends = Float64Array.from(slots, to);
  const order = Int32Array.from(slots.keys()).sort((i, j) => starts[i]! - starts[j]! || i - j);
  const parent = Int32Array.from(slots.keys());
  const root = (i: number): number => {
    let r = i;
    while (parent[r] !== r) r = parent[r]!;
    let k = i;
    while (parent[k] !== r) {
      const next = parent[k]!;
      parent[k] = r;
      k = next;
    }
    return r;
  };
  const active: number[] = [];
  for (const i of order) {
    const a = slots[i]!;
    const start = starts[i]! - TRACK_SPACING;
    let kept = 0;
    for (const j of active) {
      if (ends[j]! <= start) continue;
      active[kept++] = j;
      if (a.fixed && slots[j]!.fixed) continue;
      if (beside(a, slots[j]!)) parent[root(i)] = root(j);
    }
    active.length = kept;
    active.push(i);
  }
  const bins = new Map<number, Slot[]>();
  for (let i = 0; i < slots.length; i++) {
    const r = root(i);
    const bin = bins.get(r);
    if (bin) bin.push(slots[i]!);
    else bins.set(r, [slots[i]!]);
  }
  return [...bins.values()];
}

/** Price of having `a` on the lower side of `b`. */
function priceOf(a: Slot, b: Slot): number {
  let sum = squeezed(a, b);
  for (const p of a.lanes) for (const q of b.lanes) sum += lanePrice(p, q);
  return sum;
}

/** Two slots that this order would press into a corner of their channel, when the other would not. */
function squeezed(a: Slot, b: Slot): number {
  const room = b.high - a.low;
  if (room >= CORNER) return 0;
  const other = a.high - b.low;
  return other > 2 * room ? SQUEEZE * (1 - room / CORNER) : 0;
}

function lanePrice(a: Lane, b: Lane): number {
  // Two segments of one wire keep the order that its way round the parts gave them.
  if (a.draft === b.draft) return a.at > b.at ? IMPOSSIBLE : 0;
  let sum = 0;
  if (a.way0 > 0) sum += turnPrice(a.turn0, a.far0, a.sure0, b, 1);
  if (a.way1 > 0) sum += turnPrice(a.turn1, a.far1, a.sure1, b, 1);
  if (b.way0 < 0) sum += turnPrice(b.turn0, b.far0, b.sure0, a, -1);
  if (b.way1 < 0) sum += turnPrice(b.turn1, b.far1, b.sure1, a, -1);
  return sum;
}

/** What it costs that a wire turning off at `turn` towards `way` has the lane `other` in its way. */
function turnPrice(turn: number, far: number, sure: boolean, other: Lane, way: number): number {
  if (way > 0 ? far < other.low : far > other.high) return 0;
  let sum = 0;
  const gap0 = sure && other.sure0 ? Math.abs(turn - other.turn0) : TRACK_SPACING;
  const gap1 = sure && other.sure1 ? Math.abs(turn - other.turn1) : TRACK_SPACING;
  if (gap0 < TRACK_SPACING && other.way0 === -way) sum += gap0 < SAME_TRACK ? IMPOSSIBLE : CROWDED;
  if (gap1 < TRACK_SPACING && other.way1 === -way) sum += gap1 < SAME_TRACK ? IMPOSSIBLE : CROWDED;
  if (turn > other.from && turn < other.to) sum += 1;
  return sum;
}

/**
 * Takes away, again and again, a slot that nothing wants before it (it comes next), or one that nothing wants
 * after it (it comes last), or, when all are caught in circles, the one whose being next costs least.
 */
function cheapestFirst(price: Float32Array, count: number): Int32Array {
  const sums = new Float64Array(count);
  const before = new Int32Array(count);
  const after = new Int32Array(count);
  const note = (i: number, value: number, sign: number) => {
    sums[i] = sums[i]! + sign * value;
    if (value > 0) before[i] = before[i]! + sign;
    else if (value < 0) after[i] = after[i]! + sign;
  };
  for (let i = 0; i < count; i++) for (let j = 0; j < count; j++) note(i, price[i * count + j]!, 1);
  const order = new Int32Array(count);
  const rest = Int32Array.from({ length: count }, (_, i) => i);
  let first = 0;
  let last = count;
  for (let left = count; left > 0; left--) {
    let best = -1;
    let bestKind = 3;
    for (let k = 0; k < left; k++) {
      const i = rest[k]!;
      const kind = before[i] === 0 ? 0 : after[i] === 0 ? 1 : 2;
      if (kind > bestKind) continue;
      if (kind === bestKind && sums[i]! >= sums[rest[best]!]!) continue;
      best = k;
      bestKind = kind;
    }
    const chosen = rest[best]!;
    rest[best] = rest[left - 1]!;
    if (bestKind === 1) order[--last] = chosen;
    else order[first++] = chosen;
    for (let k = 0; k < left - 1; k++) note(rest[k]!, price[rest[k]! * count + chosen]!, -1);
  }
  return order;
}
