import { type Field, nextLeft, nextRight } from "./field.ts";
import type { Scene } from "./scene.ts";

/** A wire on its way: its points, and whether they may still move. */
export type Draft = {
  readonly wire: number;
  readonly circuit: number;
  /** Wires of one pair carry one number; -1 for a wire of its own. */
  readonly bond: number;
  readonly points: number[];
  readonly fixed: boolean;
};

/**
 * One segment seen across its own direction: it lies at `at` and may lie anywhere in [low, high]; along its
 * direction it covers [from, to]. At each end the wire turns off: at coordinate `turn`, towards `way`
 * (-1 lower, +1 higher, 0 for a contact), as far as `far`; `sure` says that `turn` will stay where it is.
 */
export type Lane = {
  readonly draft: Draft;
  readonly segment: number;
  readonly fixed: boolean;
  readonly low: number;
  readonly high: number;
  readonly from: number;
  readonly to: number;
  readonly turn0: number;
  readonly way0: number;
  readonly far0: number;
  readonly sure0: boolean;
  readonly turn1: number;
  readonly way1: number;
  readonly far1: number;
  readonly sure1: boolean;
  at: number;
};

/** How far a neighbour with no bound on one side may be expected to move. */
const LOOSE_REACH = 160;

/**
 * @param upright  true for the segments that run up and down (they shift in x)
 * @param cautious  reckon each segment as long as it could become when the segments across it shift
 */
export function lanesOf(scene: Scene, drafts: readonly Draft[], upright: boolean, cautious: boolean): Lane[] {
  const field = upright ? scene.zones : scene.zonesTurned;
  const across = upright ? scene.zonesTurned : scene.zones;
  const shift = upright ? 0 : 1;
  const along = 1 - shift;
  const lanes: Lane[] = [];
  for (const draft of drafts) {
    const { points } = draft;
    const last = points.length / 2 - 2;
    for (let k = 0; k <= last; k++) {
      const at = points[k * 2 + shift]!;
      if (at !== points[k * 2 + 2 + shift]!) continue;
      const start = points[k * 2 + along]!;
      const end = points[k * 2 + 2 + along]!;
      let from = Math.min(start, end);
      let to = Math.max(start, end);
      const fixed = draft.fixed || k === 0 || k === last;
      let low = at;
      let high = at;
      if (!fixed) {
        low = nextLeft(field, at, from, to);
        high = nextRight(field, at, from, to);
      }
      const before = k > 0 ? points[k * 2 - 2 + shift]! : at;
      const after = k < last ? points[k * 2 + 4 + shift]! : at;
      if (cautious && !draft.fixed) {
        if (k > 1) [from, to] = stretched(across, start, at, before, from, to);
        if (k < last - 1) [from, to] = stretched(across, end, at, after, from, to);
      }
      lanes.push({
        draft,
        segment: k,
        fixed,
        low,
        high,
        from,
        to,
        turn0: start,
        way0: Math.sign(before - at),
        far0: before,
        sure0: !cautious || draft.fixed || k <= 1,
        turn1: end,
        way1: Math.sign(after - at),
        far1: after,
        sure1: !cautious || draft.fixed || k >= last - 1,
        at,
      });
    }
  }
  return lanes;
}

/** The stretch [from, to] when the neighbour that now lies at `place` is moved as far as it may go. */
function stretched(
  across: Field,
  place: number,
  at: number,
  far: number,
  from: number,
  to: number,
): [number, number] {
  const lower = Math.min(at, far);
  const upper = Math.max(at, far);
  return [
    Math.min(from, Math.max(nextLeft(across, place, lower, upper), place - LOOSE_REACH)),
    Math.max(to, Math.min(nextRight(across, place, lower, upper), place + LOOSE_REACH)),
  ];
}

/** Puts the lane's settled place back into its wire's points. */
export function settle(lane: Lane, upright: boolean): void {
  const shift = upright ? 0 : 1;
  const { points } = lane.draft;
  points[lane.segment * 2 + shift] = lane.at;
  points[lane.segment * 2 + 2 + shift] = lane.at;
}
