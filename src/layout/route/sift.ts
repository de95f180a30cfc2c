import type { Channel } from "./order.ts";
import { TRACK_SPACING } from "./types.ts";

const PASSES = 4;
/** What squeezing between two tracks that stay costs, against 1 for a crossing; then what a squeeze with no room at all costs. */
const TIGHT = 1.5;
const FULL = 40;
/** Less than this between tracks is no room. */
const LEAST_SPACING = 1.5;

/**
 * Betters an order, in place: moves each slot that may move to the place where its price is least.
 * @param order  [n] indices of the channel's slots
 * @param price  [n × n] price of i before j less that of j before i
 */
export function sift(order: Int32Array, price: Float32Array, channel: Channel): void {
  const { slots } = channel;
  const count = order.length;
  const withFixed = slots.some((slot) => slot.fixed);
  const crowding = new Float64Array(count);
  for (let pass = 0; pass < PASSES; pass++) {
    let moved = false;
    for (let item = 0; item < count; item++) {
      if (slots[item]!.fixed) continue;
      const row = item * count;
      const here = order.indexOf(item);
      if (withFixed) priceCrowding(crowding, order, item, channel);
      let best = here;
      let bestGain = -1e-6;
      let gain = -crowding[here]!;
      for (let k = here + 1; k < count; k++) {
        gain -= price[row + order[k]!]!;
        if (gain + crowding[k]! < bestGain) {
          bestGain = gain + crowding[k]!;
          best = k;
        }
      }
      gain = -crowding[here]!;
      for (let k = here - 1; k >= 0; k--) {
        gain += price[row + order[k]!]!;
        if (gain + crowding[k]! < bestGain) {
          bestGain = gain + crowding[k]!;
          best = k;
        }
      }
      if (best === here) continue;
      moved = true;
      if (best > here) order.copyWithin(here, here + 1, best + 1);
      else order.copyWithin(best + 1, best, here);
      order[best] = item;
    }
    if (!moved) return;
  }
}

/** Fills in what each place in the order would cost the item for want of room between the fixed slots on either side. */
function priceCrowding(crowding: Float64Array, order: Int32Array, item: number, channel: Channel): void {
  const { slots, overlap } = channel;
  const count = order.length;
  const { low, high } = slots[item]!;
  const row = item * count;
  const wall = new Float64Array(count);
  const between = new Int32Array(count);
  let reached = low;
  let free = 0;
  let place = 0;
  for (let k = 0; k < count; k++) {
    const other = order[k]!;
    if (other === item) continue;
    wall[place] = reached;
    between[place++] = free;
    if (overlap[row + other] === 0) continue;
    const slot = slots[other]!;
    if (!slot.fixed) free++;
    else if (slot.low > reached) {
      reached = slot.low;
      free = 0;
    }
  }
  wall[place] = reached;
  between[place] = free;
  reached = high;
  free = 0;
  for (let k = count - 1; k >= 0; k--) {
    const other = order[k]!;
    if (other === item) continue;
    crowding[place] = crowded(reached - wall[place]!, between[place]! + free + 1);
    place--;
    if (overlap[row + other] === 0) continue;
    const slot = slots[other]!;
    if (!slot.fixed) free++;
    else if (slot.high < reached) {
      reached = slot.high;
      free = 0;
    }
  }
  crowding[place] = crowded(reached - wall[place]!, between[place]! + free + 1);
}

function crowded(room: number, tracks: number): number {
  const spacing = room / (tracks + 1);
  if (spacing >= TRACK_SPACING) return 0;
  if (spacing < LEAST_SPACING) return FULL;
  return TIGHT + TIGHT * (1 - spacing / TRACK_SPACING);
}
