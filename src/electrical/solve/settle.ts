import type { Circuit } from "./circuit.ts";
import { type Devices, evaluate, IDEAL, type Reading, readDevices, steerSlope_S } from "./devices.ts";
import { factorise, solveFactor } from "./factor.ts";
import { offsets_V } from "./ideal.ts";
import { findIslands, type Islands } from "./islands.ts";
import type { Prepared } from "./prepare.ts";

/** The circuit at rest in one state of its relays. */
export type Settled = {
  readonly islands: Islands;
  /** [nodes] over what `offset` says of the node's place in its group, before the reference is set to 0. */
  readonly volts: Float64Array;
  /** [elements] from the first node to the second through the element; ideal elements are left at 0. */
  readonly amps: Float64Array;
  readonly offset: Float64Array;
  /** Newton steps taken. */
  readonly steps: number;
  readonly settled: boolean;
};

/** A step this small against the highest voltage ends the search; being Newton's, it leaves an error far under it. */
const SETTLED_SHARE = 1e-11;
/** A step this small ends it too: circuits that are all but dead. */
const LEAST_STEP_V = 1e-13;
/** How well the circuit without its constant-power loads is to be known before they are switched on. */
const ROUGH_SHARE = 1e-4;
const MOST_STEPS = 100;
/** Nor is anything to be gained once what goes astray at each node is so little of what its elements round by. */
const ROUNDING = 32 * Number.EPSILON;

/**
 * How firmly an island's reference is held at 0. What holds it carries no current in the end, so any value gives the same
 * answer; a large one keeps the rounding of large currents from lifting the island as a whole.
 */
const HELD_S = 1e9;

type Search = {
  readonly prepared: Prepared;
  readonly devices: Devices;
  /** [elements] volts that the offsets of its ends add to an element's. */
  readonly added: Float64Array;
  readonly held: Int32Array;
  readonly volts: Float64Array;
  readonly trial: Float64Array;
  readonly step: Float64Array;
  readonly leaving: Float64Array;
  /** The amperes that a node's currents are small differences of. */
  readonly turned: Float64Array;
  readonly amps: Float64Array;
  readonly slopes: Float64Array;
  powerOn: boolean;
};

/**
 * Finds the operating point by Newton's method on the nodes' voltages.
 *
 * The currents of such a circuit are the slope of one function, the co-content of W. Millar (Phil. Mag. 42 (1951)
 * 1150), and stable points are its minima; so each step goes downhill on it and is cut short where it overshoots.
 * Constant-power loads come last, from above, which leads to the higher of the two voltages that can satisfy them.
 *
 * @param pulled [elements] 1 where a coil is pulled
 * @param startVolts [nodes] where to begin; saves steps, and does not change the answer
 */
export function settle(
  prepared: Prepared,
  circuit: Circuit,
  pulled: Uint8Array,
  startVolts: Float64Array | null,
): Settled {
  const { ideal, first } = prepared;
  const devices = readDevices(circuit, pulled, prepared.room.columns);
  const islands = findIslands(circuit, ideal, pulled);
  const offset = offsets_V(ideal, circuit.elements);
  const search = makeSearch(prepared, circuit, devices, offset, islands);
  if (startVolts) {
    for (let node = 0; node < circuit.nodeCount; node++)
      search.volts[ideal.group[node]!] = startVolts[node]! - offset[node]!;
  }
  let steps = 0;
  if (devices.hasPower) {
    search.powerOn = false;
    steps += descend(search, ROUGH_SHARE).steps;
  }
  search.powerOn = true;
  const last = descend(search, SETTLED_SHARE);
  flow(search, search.volts);
  const volts = new Float64Array(circuit.nodeCount);
  for (let node = 0; node < circuit.nodeCount; node++)
    volts[node] = search.volts[ideal.group[node]!]! + offset[node]!;
  for (let index = 0; index < first.length; index++) if (devices.law[index] === IDEAL) search.amps[index] = 0;
  return { islands, volts, amps: search.amps, offset, steps: steps + last.steps, settled: last.settled };
}

function makeSearch(
  prepared: Prepared,
  circuit: Circuit,
  devices: Devices,
  offset: Float64Array,
  islands: Islands,
): Search {
  const { ideal, room } = prepared;
  const count = circuit.elements.length;
  const { added } = room;
  for (let index = 0; index < count; index++) {
    const at = 2 + index * 3;
    added[index] = offset[prepared.shape[at]!]! - offset[prepared.shape[at + 1]!]!;
  }
  const { volts, trial, step, leaving, turned, slopes } = room;
  volts.fill(0);
  const held = new Int32Array(islands.held.length);
  for (let index = 0; index < held.length; index++) held[index] = ideal.group[islands.held[index]!]!;
  return {
    prepared,
    devices,
    added,
    held,
    volts,
    trial,
    step,
    leaving,
    turned,
    slopes,
    amps: new Float64Array(count),
    powerOn: true,
  };
}

/** Newton steps until one is smaller than the share asked for. */
function descend(search: Search, share: number): { steps: number; settled: boolean } {
  const { prepared, devices, volts, trial, step, leaving, turned } = search;
  for (let steps = 1; steps <= MOST_STEPS; steps++) {
    flow(search, volts);
    if (steps > 2 && isBalanced(leaving, turned)) return { steps: steps - 1, settled: true };
    if (steps === 1 || !devices.isLinear) {
      load(search, false);
      if (!factorise(prepared.factor)) {
        load(search, true);
        if (!factorise(prepared.factor)) return { steps, settled: false };
      }
    }
    for (let at = 0; at < leaving.length; at++) leaving[at] = -leaving[at]!;
    solveFactor(prepared.factor, leaving, step);
    let longest = 0;
    let highest = 0;
    for (let at = 0; at < step.length; at++) {
      longest = Math.max(longest, Math.abs(step[at]!));
      highest = Math.max(highest, Math.abs(volts[at]! + step[at]!));
    }
    const small = longest <= Math.max(share * highest, LEAST_STEP_V);
    const part = devices.isLinear || small || longest <= 1e-7 * highest ? 1 : howFar(search);
    for (let at = 0; at < step.length; at++) trial[at] = volts[at]! + part * step[at]!;
    volts.set(trial);
    if (small && part === 1) return { steps, settled: true };
  }
  return { steps: MOST_STEPS, settled: false };
}

function isBalanced(leaving: Float64Array, turned: Float64Array): boolean {
  for (let at = 0; at < leaving.length; at++)
    if (!(Math.abs(leaving[at]!) <= ROUNDING * turned[at]!)) return false;
  return true;
}

const reading: Reading = { amps: 0, slope_S: 0 };

/** Currents and slopes of all elements at some volts, and what leaves each unknown through them. */
function flow(search: Search, volts: Float64Array): void {
  const { prepared, devices, added, held, leaving, turned, amps, slopes, powerOn } = search;
  const { first, second } = prepared;
  leaving.fill(0);
  turned.fill(0);
  for (let index = 0; index < first.length; index++) {
    if (devices.law[index] === IDEAL) continue;
    const [a, b] = [first[index]!, second[index]!];
    const [atA, atB] = [volts[a]!, volts[b]!];
    evaluate(devices, index, atA - atB + added[index]!, powerOn, reading);
    const size =
      Math.abs(reading.amps) +
      Math.abs(reading.slope_S) * (Math.abs(atA) + Math.abs(atB) + Math.abs(added[index]!));
    turned[a]! += size;
    turned[b]! += size;
    amps[index] = reading.amps;
    slopes[index] = reading.slope_S;
    leaving[a]! += reading.amps;
    leaving[b]! -= reading.amps;
  }
  for (const at of held) {
    leaving[at]! += HELD_S * volts[at]!;
    // What is right at all others is right there; it collects their rounding.
    turned[at] = Number.POSITIVE_INFINITY;
  }
}

/** Puts the slopes into the matrix. `steered`: negative ones are replaced by hardly anything. */
function load(search: Search, steered: boolean): void {
  const { prepared, devices, held, slopes } = search;
  const { slot, factor } = prepared;
  factor.joined_S.fill(0);
  factor.held_S.fill(0);
  for (let index = 0; index < slot.length; index++) {
    const at = slot[index]!;
    if (at < 0) continue;
    const slope = slopes[index]!;
    factor.joined_S[at]! += steered && slope < 0 ? steerSlope_S(devices, index) : slope;
  }
  for (const at of held) factor.held_S[factor.pattern.place[at]!]! += HELD_S;
}

/** The part of a step after which the way no longer leads down steeply: 1, or less where the whole overshoots. */
function howFar(search: Search): number {
  const { volts, trial, step, leaving } = search;
  const slopeAt = (part: number) => {
    for (let at = 0; at < step.length; at++) trial[at] = volts[at]! + part * step[at]!;
    flow(search, trial);
    let slope = 0;
    for (let at = 0; at < step.length; at++) slope += step[at]! * leaving[at]!;
    return slope;
  };
  const atStart = slopeAt(0);
  let [low, high] = [0, 1];
  let [slopeLow, slopeHigh] = [atStart, slopeAt(1)];
  const goodEnough = Math.abs(atStart) / 2;
  if (!(slopeHigh > goodEnough)) return 1;
  // Regula falsi, which halves the weight of an end that stays (the Illinois rule).
  for (let round = 0; round < 40; round++) {
    const part =
      slopeLow < slopeHigh ? low + ((high - low) * -slopeLow) / (slopeHigh - slopeLow) : (low + high) / 2;
    const slope = slopeAt(part);
    if (Math.abs(slope) <= goodEnough) return part;
    if (slope > 0) {
      [high, slopeHigh] = [part, slope];
      slopeLow /= 2;
    } else {
      [low, slopeLow] = [part, slope];
      slopeHigh /= 2;
    }
  }
  return low > 0 ? low : high;
}
