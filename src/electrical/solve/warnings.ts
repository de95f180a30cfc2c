import { type Circuit, type CircuitElement, LEAST_ohm, nodesOf } from "./circuit.ts";
import { isOpen } from "./devices.ts";
import type { IdealLoop } from "./ideal.ts";
import type { holdingRelays, RelayRest } from "./relays.ts";
import type { Solution } from "./solve.ts";

/** What to know about a solution before its figures are believed. Elements and nodes by their numbers. */
export type Warning =
  /** Elements that no supply feeds: nothing flows, and their volts against anything are anybody's guess. */
  | { readonly kind: "no-supply"; readonly elements: readonly number[] }
  /** A supply delivers what only a short can take. */
  | { readonly kind: "dead-short"; readonly elements: readonly number[]; readonly amps: number }
  /** A supply is forced back by another: more than charging would. */
  | { readonly kind: "conflicting-supplies"; readonly elements: readonly number[]; readonly amps: number }
  /** Ideal elements side by side: how the current divides among them is not determined; the first is shown with none. */
  | { readonly kind: "undivided-current"; readonly elements: readonly number[] }
  | { readonly kind: "output-at-limit"; readonly element: number }
  /** A constant-current or constant-power load sees less than its lowest voltage. */
  | { readonly kind: "load-starved"; readonly element: number; readonly volts: number }
  | { readonly kind: "relays-chatter"; readonly coils: readonly number[] }
  | { readonly kind: "relays-race"; readonly coils: readonly number[] }
  /** Each would stay the other way if it had been: a relay that holds itself, or holds while its supply sags. */
  | { readonly kind: "relays-hold"; readonly coils: readonly number[] }
  /** Whether relays hold was tried with all of them at once only, not with each: see `Start.turnEachRelay`. */
  | { readonly kind: "holding-half-searched" }
  /** Newton's method did not come to rest; at the worst node so many amperes go astray. */
  | { readonly kind: "not-settled"; readonly node: number; readonly astray_A: number };

type Found = {
  readonly loops: readonly IdealLoop[];
  readonly rest: RelayRest;
  readonly holding: ReturnType<typeof holdingRelays>;
  readonly settled: boolean;
};

/**
 * All that a circuit sees of a supply under which it is shorted, even if the supply has less inside than that.
 * `common practice, no source`: two metres of starter cable and its joints have less, a running starter has more.
 */
const SHORT_ohm = 0.01;

/** A supply under a load of less than its own resistance wastes more than it delivers, which nothing is made for. */
const isShort = (emf_V: number, amps: number, inside_ohm: number): boolean =>
  amps > 0 && Math.abs(emf_V) < amps * Math.max(2 * inside_ohm, SHORT_ohm);

/** Charging a battery takes a small part of its short-circuit current; a fifth is no charging. `common practice, no source` */
const isForcedBack = (emf_V: number, amps: number, inside_ohm: number): boolean =>
  amps < 0 && Math.abs(emf_V) < -amps * Math.max(5 * inside_ohm, SHORT_ohm);

export function findWarnings(
  circuit: Circuit,
  solution: Omit<Solution, "warnings">,
  found: Found,
): readonly Warning[] {
  const warnings: Warning[] = [...unfed(circuit, solution), ...fromLoops(circuit, found.loops)];
  const inLoop = new Set(found.loops.flatMap((loop) => (loop.mismatch_V === 0 ? [] : loop.elements)));
  for (let index = 0; index < circuit.elements.length; index++) {
    const warning = inLoop.has(index) ? null : ofElement(circuit, solution, index);
    if (warning) warnings.push(warning);
  }
  const { chattering, racing } = found.rest;
  if (chattering.length) warnings.push({ kind: "relays-chatter", coils: chattering });
  if (racing.length) warnings.push({ kind: "relays-race", coils: racing });
  if (found.holding.coils.length) warnings.push({ kind: "relays-hold", coils: found.holding.coils });
  if (!found.holding.eachTried) warnings.push({ kind: "holding-half-searched" });
  if (!found.settled) warnings.push({ kind: "not-settled", ...worstNode(circuit, solution) });
  return warnings;
}

/** One warning an island; a node that nothing touches is no island to speak of. */
function unfed(circuit: Circuit, solution: Omit<Solution, "warnings">): readonly Warning[] {
  const of = new Map<number, number[]>();
  for (let index = 0; index < circuit.elements.length; index++) {
    const element = circuit.elements[index]!;
    const island = solution.island[nodesOf(element)[0]]!;
    if (solution.islands[island]!.reference !== null || isOpen(element, solution.pulled)) continue;
    const elements = of.get(island);
    if (elements) elements.push(index);
    else of.set(island, [index]);
  }
  return [...of.values()].map((elements) => ({ kind: "no-supply", elements }));
}

function fromLoops(circuit: Circuit, loops: readonly IdealLoop[]): readonly Warning[] {
  return loops.map(({ elements, mismatch_V }): Warning => {
    if (mismatch_V === 0) return { kind: "undivided-current", elements };
    const supplies = elements.filter((index) => circuit.elements[index]!.kind === "supply").length;
    // Two of them are against each other; one alone is shorted by what has no resistance.
    return {
      kind: supplies > 1 ? "conflicting-supplies" : "dead-short",
      elements,
      amps: Math.abs(mismatch_V) / LEAST_ohm,
    };
  });
}

function ofElement(circuit: Circuit, solution: Omit<Solution, "warnings">, index: number): Warning | null {
  const element = circuit.elements[index]!;
  const amps = solution.amps[index]!;
  const [a, b] = nodesOf(element);
  const volts = solution.volts[a]! - solution.volts[b]!;
  switch (element.kind) {
    case "supply":
      return ofSupply(circuit, solution, index, element.emf_V, amps, element.resistance_ohm);
    case "output":
      if (amps > element.limit_A) return { kind: "output-at-limit", element: index };
      return isForcedBack(element.emf_V, amps, element.resistance_ohm)
        ? { kind: "conflicting-supplies", elements: [index], amps: -amps }
        : null;
    case "current-load":
    case "power-load": {
      // Next to nothing is off, not starved.
      const starved = volts < element.minimum_V && volts > element.minimum_V / 100 && amps > 0;
      return starved ? { kind: "load-starved", element: index, volts } : null;
    }
    default:
      return null;
  }
}

function ofSupply(
  circuit: Circuit,
  solution: Omit<Solution, "warnings">,
  index: number,
  emf_V: number,
  amps: number,
  inside_ohm: number,
): Warning | null {
  const forward = emf_V < 0 ? -amps : amps;
  if (isShort(emf_V, forward, inside_ohm)) return { kind: "dead-short", elements: [index], amps: forward };
  if (!isForcedBack(emf_V, forward, inside_ohm)) return null;
  // Named with it: the supply of the same island that delivers most.
  const island = solution.island[nodesOf(circuit.elements[index]!)[0]];
  const isSource = ({ kind }: CircuitElement) => kind === "supply" || kind === "output";
  let most = -1;
  for (let other = 0; other < circuit.elements.length; other++) {
    const element = circuit.elements[other]!;
    if (!isSource(element) || solution.island[nodesOf(element)[0]] !== island) continue;
    if (most < 0 || solution.amps[other]! > solution.amps[most]!) most = other;
  }
  return { kind: "conflicting-supplies", elements: [index, most], amps: -forward };
}

function worstNode(
  circuit: Circuit,
  solution: Omit<Solution, "warnings">,
): { node: number; astray_A: number } {
  const leaving = new Float64Array(circuit.nodeCount);
  for (let index = 0; index < circuit.elements.length; index++) {
    const element = circuit.elements[index]!;
    const amps = solution.amps[index]!;
    const through = element.kind === "supply" || element.kind === "output" ? -amps : amps;
    const [a, b] = nodesOf(element);
    leaving[a]! += through;
    leaving[b]! -= through;
  }
  let node = 0;
  for (let at = 1; at < leaving.length; at++)
    if (Math.abs(leaving[at]!) > Math.abs(leaving[node]!)) node = at;
  return { node, astray_A: Math.abs(leaving[node] ?? 0) };
}
