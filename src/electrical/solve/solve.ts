import { checkCircuit } from "./check-circuit.ts";
import { type Circuit, nodesOf } from "./circuit.ts";
import { fillIdealAmps, idealLoops } from "./ideal.ts";
import type { Island } from "./islands.ts";
import { fits, type Prepared, prepare } from "./prepare.ts";
import { holdingRelays, restRelays } from "./relays.ts";
import { findWarnings, type Warning } from "./warnings.ts";

/** The direct-current operating point of a circuit. */
export type Solution = {
  /** [nodes] volts over the reference of the node's island. 0 in an island without a supply: ask `voltsAt`. */
  readonly volts: Float64Array;
  /** [elements] amperes through each: a supply's or output's out of its plus, all others' from their first node on. */
  readonly amps: Float64Array;
  /** [nodes] the island of each node. */
  readonly island: Int32Array;
  readonly islands: readonly Island[];
  /** [elements] 1 where a coil is pulled. */
  readonly pulled: Uint8Array;
  readonly warnings: readonly Warning[];
  /** Newton steps of the last relay state. */
  readonly steps: number;
};

/** Where to begin: an earlier solution of the same circuit, or only the coils that are pulled. */
export type Start = {
  /** [elements] 1 where a coil is pulled; none where left out. */
  readonly pulled?: Uint8Array;
  /** [nodes] saves steps; the answer does not depend on it. */
  readonly volts?: Float64Array;
  /** Whether to turn over each relay to see if it would hold; costs a solve for each. By itself, in small circuits only. */
  readonly turnEachRelay?: boolean;
};

/**
 * Solves a circuit for direct current.
 *
 * Always an answer: what has no supply floats at 0 A, shorts and supplies that fight carry what their resistances let
 * through, relays that do not come to rest are shown released; and a warning says so. The same circuit and start give
 * the same bits.
 *
 * @throws RangeError if the circuit has no meaning; see `checkCircuit`
 * @accuracy Kirchhoff's laws hold to 1e-11 of the largest current, or to the rounding of 12 V over the smallest
 * resistance (3 nA at 1 µΩ), whichever is more
 */
export function solve(circuit: Circuit, start: Start = {}): Solution {
  return solveChecked(prepare(circuit), circuit, start);
}

/**
 * The same for a circuit of a shape that was prepared before, which skips half of the work.
 * @throws RangeError if the circuit has no meaning or another shape: other nodes, elements of another kind at a place
 */
export function solvePrepared(prepared: Prepared, circuit: Circuit, start: Start = {}): Solution {
  checkCircuit(circuit);
  if (!fits(prepared, circuit))
    throw new RangeError("this circuit has another shape than the one prepared; call prepare() for it");
  return solveChecked(prepared, circuit, start);
}

/** The same for a circuit of which the caller answers for shape and figures: nothing is looked over. */
export function solveChecked(prepared: Prepared, circuit: Circuit, start: Start): Solution {
  const { elements } = circuit;
  const from = new Uint8Array(elements.length);
  for (const coil of prepared.coils) from[coil] = start.pulled?.[coil] ? 1 : 0;
  const rest = restRelays(prepared, circuit, from, start.volts ?? null);
  const { islands, offset, amps, volts, steps, settled } = rest.settled;
  const loops = idealLoops(prepared.ideal, elements, offset);
  fillIdealAmps(circuit, prepared.ideal, loops, amps);
  const zero = new Float64Array(islands.held.length);
  for (let index = 0; index < zero.length; index++) zero[index] = volts[islands.held[index]!]!;
  for (let node = 0; node < volts.length; node++) {
    const island = islands.island[node]!;
    volts[node] = islands.islands[island]!.reference === null ? 0 : volts[node]! - zero[island]!;
  }
  for (let index = 0; index < elements.length; index++) {
    const { kind } = elements[index]!;
    // Added to 0, so that nothing is ever −0.
    amps[index] = 0 + (kind === "supply" || kind === "output" ? -amps[index]! : amps[index]!);
    // Rounding only: without a supply nothing flows.
    if (islands.islands[islands.island[nodesOf(elements[index]!)[0]]!]!.reference === null) amps[index] = 0;
  }
  const solution = {
    volts,
    amps,
    island: islands.island,
    islands: islands.islands,
    pulled: rest.pulled,
    steps,
  };
  let warnings: readonly Warning[] | null = null;
  return {
    ...solution,
    // Relays that would hold cost more solves: they are turned over when somebody asks.
    get warnings() {
      if (warnings === null) {
        const holding = holdingRelays(prepared, circuit, rest, start.turnEachRelay ?? "if-small");
        warnings = findWarnings(circuit, solution, { loops, rest, holding, settled });
      }
      return warnings;
    },
  };
}

/** Volts of a node over its island's reference; null where the island has no supply, and so no voltage. */
export function voltsAt(solution: Solution, node: number): number | null {
  const island = solution.islands[solution.island[node]!]!;
  return island.reference === null ? null : solution.volts[node]!;
}

/** Volts from one node to another; null where nothing fixes them against each other. */
export function voltsAcross(solution: Solution, from: number, to: number): number | null {
  if (from === to) return 0;
  if (solution.island[from] !== solution.island[to]) return null;
  const [one, other] = [voltsAt(solution, from), voltsAt(solution, to)];
  return one === null || other === null ? null : one - other;
}

/** [elements] watts that each element takes up; negative where it delivers. */
export function wattsOf(circuit: Circuit, solution: Solution): Float64Array {
  return Float64Array.from(circuit.elements, (element, index) => {
    const [a, b] = nodesOf(element);
    const watts = (solution.volts[a]! - solution.volts[b]!) * solution.amps[index]!;
    return element.kind === "supply" || element.kind === "output" ? -watts : watts;
  });
}
