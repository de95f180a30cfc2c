import type { Channel } from "./order.ts";
import { TRACK_SPACING } from "./types.ts";

/** Spacings tried in turn; past the last, what is too tight shrinks by a constant factor. */
const WISHED = [12, TRACK_SPACING];
const SHRINK = 0.75;
const ROUNDS = 24;
/** A channel wider than this has no middle worth aiming at. */
const WIDE = 1600;

/**
 * Gives every slot of a channel its place, in the channel's order: within its own bounds, spaced as wished
 * where there is room, and closer together only in those places where there is not.
 */
export function spread(channel: Channel): void {
  const { slots, overlap } = channel;
  const count = slots.length;
  const gap = new Float64Array(count).fill(WISHED[0]!);
  const lowest = new Float64Array(count);
  const highest = new Float64Array(count);
  const width = (i: number) => (slots[i]!.lanes.length - 1) * Math.min(TRACK_SPACING, gap[i]!);
  for (let round = 0; round < ROUNDS; round++) {
    for (let j = 0; j < count; j++) {
      let place = slots[j]!.low;
      for (let i = 0; i < j; i++) {
        if (overlap[i * count + j] === 0) continue;
        const next = lowest[i]! + width(i) + Math.min(gap[i]!, gap[j]!);
        if (next > place) place = next;
      }
      lowest[j] = place;
    }
    for (let i = count - 1; i >= 0; i--) {
      let place = slots[i]!.high - width(i);
      for (let j = i + 1; j < count; j++) {
        if (overlap[i * count + j] === 0) continue;
        const next = highest[j]! - width(i) - Math.min(gap[i]!, gap[j]!);
        if (next < place) place = next;
      }
      highest[i] = place;
    }
    let tight = false;
    for (let i = 0; i < count; i++) {
      if (lowest[i]! <= highest[i]! + 1e-9) continue;
      tight = true;
      gap[i] = round + 1 < WISHED.length ? WISHED[round + 1]! : gap[i]! * SHRINK;
    }
    if (!tight) break;
  }
  for (let j = 0; j < count; j++) {
    const slot = slots[j]!;
    if (slot.fixed) continue;
    const least = lowest[j]!;
    const most = highest[j]!;
    let place = slot.high - slot.low < WIDE ? (least + most) / 2 : slot.lanes[0]!.at;
    for (let i = 0; i < j; i++) {
      if (overlap[i * count + j] === 0) continue;
      const before = slots[i]!;
      const lastOf = before.lanes[before.lanes.length - 1]!.at;
      place = Math.max(place, lastOf + Math.min(gap[i]!, gap[j]!));
    }
    // In a channel with no order that fits, rather on another's track (which is put right later) than in a part.
    place = Math.max(slot.low, Math.min(slot.high, Math.max(least, Math.min(most, place))));
    slot.lanes[0]!.at = place;
    if (slot.lanes.length > 1) slot.lanes[1]!.at = place + width(j);
  }
}
