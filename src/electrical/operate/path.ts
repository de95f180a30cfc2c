import { nameContact } from "../../catalogue/describe.ts";
import type { ContactKey } from "../../graph/contacts.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import { nodesOf } from "../solve/circuit.ts";
import { FRAME, type Owners, partOfElement, type Role, wireOfElement } from "./built.ts";
import type { Readings } from "./readings.ts";

/** One stretch of the way that a load's current takes. */
export type Step = {
  readonly element: number;
  readonly role: Role;
  readonly wire: WireId | null;
  readonly part: PartId | null;
  readonly side: "supply" | "return";
  /** What flows in it; more than the load's own where others share it. */
  readonly amps: number;
  readonly shared: boolean;
  /** Volts lost along it, 0 or more. */
  readonly drop_V: number;
  /** "the shared ground lead W5", "fuse F1" */
  readonly name: string;
};

export type LoadPath = {
  readonly load: ContactKey;
  readonly amps: number;
  /** Where the current comes from; `null` where the way up was lost. */
  readonly source: ContactKey | null;
  /** From the source to the load, then from the load back. */
  readonly steps: readonly Step[];
};

/** A path longer than this goes round in a circle. */
const MOST_STEPS = 500;

/** The elements at each node, as one list with the places where each node's begin. */
type Around = { readonly begins: Int32Array; readonly elements: Int32Array };
const remembered = new WeakMap<Readings["solved"], Around>();

export function aroundNodes(solved: Readings["solved"]): Around {
  let around = remembered.get(solved);
  if (around) return around;
  const { nodeCount, elements } = solved.built.circuit;
  const begins = new Int32Array(nodeCount + 1);
  for (const element of elements) for (const node of nodesOf(element)) begins[node + 1]!++;
  for (let node = 0; node < nodeCount; node++) begins[node + 1]! += begins[node]!;
  const at = begins.slice(0, nodeCount);
  const list = new Int32Array(elements.length * 2);
  elements.forEach((element, index) => {
    for (const node of nodesOf(element)) list[at[node]!++] = index;
  });
  around = { begins, elements: list };
  remembered.set(solved, around);
  return around;
}

/** Amperes that an element brings into one of its nodes; below 0: takes away. */
export function into(solved: Readings["solved"], element: number, node: number): number {
  const of = solved.built.circuit.elements[element]!;
  const [first] = nodesOf(of);
  const amps = solved.solution.amps[element]!;
  const outOfFirst = of.kind === "supply" || of.kind === "output" ? -amps : amps;
  return node === first ? -outOfFirst : outOfFirst;
}

const isSource = (role: Role | undefined) => role === "battery" || role === "feed";

/**
 * The way of a load's current, from what gives it, through the load and back: at each contact along the stretch that
 * brings most, or takes most away.
 * @returns `null` for a load that draws nothing
 */
export function pathOf(readings: Readings, load: ContactKey): LoadPath | null {
  const { built, solution } = readings.solved;
  const taker = built.takers.find((one) => one.key === load);
  if (!taker) return null;
  const drawn = solution.amps[taker.element]!;
  const amps = Math.abs(drawn);
  if (amps < 1e-9) return null;
  const [high, low] = drawn > 0 ? [taker.plus, taker.minus] : [taker.minus, taker.plus];
  const up = walk(readings, high, taker.element, 1, amps);
  const down = walk(readings, low, taker.element, -1, amps);
  const source = up.source === null ? null : sourceKey(readings, up.source);
  const back = up.source === null ? [] : backToSource(readings, up.source, down.end, amps);
  return { load, amps, source, steps: [...up.steps.reverse(), ...down.steps, ...back] };
}

type Walked = { readonly steps: Step[]; readonly source: number | null; readonly end: number };

/** @param sign 1: against the current, to where it comes from; −1: with it */
function walk(readings: Readings, start: number, without: number, sign: 1 | -1, amps: number): Walked {
  const { solved } = readings;
  const around = aroundNodes(solved);
  const { role } = solved.built.owners;
  const steps: Step[] = [];
  const seen = new Set([without]);
  let node = start;
  while (steps.length < MOST_STEPS) {
    if (sign < 0 && node === FRAME) break;
    let best = -1;
    let most = amps * 1e-6;
    for (let at = around.begins[node]!; at < around.begins[node + 1]!; at++) {
      const element = around.elements[at]!;
      if (seen.has(element)) continue;
      const brought = sign * into(solved, element, node);
      if (brought <= most) continue;
      most = brought;
      best = element;
    }
    if (best < 0) break;
    seen.add(best);
    if (isSource(role[best])) return { steps, source: best, end: node };
    const [first, second] = nodesOf(solved.built.circuit.elements[best]!);
    steps.push(stepOf(readings, best, sign > 0 ? "supply" : "return", amps));
    node = node === first ? second : first;
  }
  return { steps, source: null, end: node };
}

/** From the frame to the minus of the battery that gave it. */
function backToSource(readings: Readings, source: number, end: number, amps: number): readonly Step[] {
  const minus = nodesOf(readings.solved.built.circuit.elements[source]!)[1];
  if (end !== FRAME || minus === FRAME) return [];
  const { steps } = walkTo(readings, minus, source, amps);
  return steps.reverse();
}

/** Against the current from the battery's minus up to the frame. */
function walkTo(readings: Readings, minus: number, source: number, amps: number): Walked {
  const { solved } = readings;
  const around = aroundNodes(solved);
  const steps: Step[] = [];
  const seen = new Set([source]);
  let node = minus;
  while (node !== FRAME && steps.length < MOST_STEPS) {
    let best = -1;
    let most = amps * 1e-6;
    for (let at = around.begins[node]!; at < around.begins[node + 1]!; at++) {
      const element = around.elements[at]!;
      const brought = into(solved, element, node);
      if (seen.has(element) || brought <= most) continue;
      most = brought;
      best = element;
    }
    if (best < 0) break;
    seen.add(best);
    steps.push(stepOf(readings, best, "return", amps));
    const [first, second] = nodesOf(solved.built.circuit.elements[best]!);
    node = node === first ? second : first;
  }
  return { steps, source: null, end: node };
}

function sourceKey(readings: Readings, element: number): ContactKey | null {
  return readings.solved.built.givers.find((one) => one.element === element)?.key ?? null;
}

function stepOf(readings: Readings, element: number, side: Step["side"], load_A: number): Step {
  const { built, solution } = readings.solved;
  const amps = Math.abs(solution.amps[element]!);
  const [first, second] = nodesOf(built.circuit.elements[element]!);
  const role = built.owners.role[element]!;
  const shared = amps > load_A * 1.001 + 1e-6;
  return {
    element,
    role,
    wire: wireOfElement(built.owners, element),
    part: partOfElement(built.owners, element),
    side,
    amps,
    shared,
    drop_V: Math.abs(solution.volts[first]! - solution.volts[second]!),
    name: nameOfElement(readings, element, side, shared),
  };
}

const ROLE_WORDS: Readonly<Partial<Record<Role, string>>> = {
  mate: "plug",
  joint: "joint",
  fuse: "fuse",
  switch: "switch",
  diode: "diode",
  suppression: "suppression of",
  make: "relay",
  rest: "relay",
  resistor: "resistor",
  ground: "ground",
  output: "output",
  sink: "contact",
  tie: "inside of",
};

/** "ground lead W5", "fuse F1": an element in a sentence. */
export function nameOfElement(
  readings: Readings,
  element: number,
  side: Step["side"] = "supply",
  shared = false,
): string {
  const { harness, built } = readings.solved;
  const { owners } = built;
  const wire = wireOfElement(owners, element);
  if (wire !== null) {
    const lead = side === "return" ? "ground lead" : "lead";
    const name = harness.wires[wire]!.designation;
    return shared ? `the shared ${lead} ${name}` : `${lead} ${name}`;
  }
  const part = partOfElement(owners, element)!;
  return `${ROLE_WORDS[owners.role[element]!] ?? ""} ${placeOf(readings, owners, element, part)}`.trim();
}

function placeOf(readings: Readings, owners: Owners, element: number, part: PartId): string {
  const { harness } = readings.solved;
  const contact = owners.contact[element]!;
  return contact > 0 ? nameContact(harness, { part, contact }) : harness.parts[part]!.designation;
}
