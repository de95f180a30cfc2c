import type { Circuit, CircuitElement } from "../solve/circuit.ts";
import { fits, type Prepared, prepare } from "../solve/prepare.ts";
import { type Solution, solveChecked, solvePrepared } from "../solve/solve.ts";
import type { Box, Choice } from "./built.ts";

/** How often boxes may wake one another before it is called a circle. */
const MOST_ROUNDS = 12;
/** Under this a load has nothing to speak of against it. */
const REVERSED_V = 0.1;

/** What was prepared or solved before. */
type Before = {
  readonly prepared: Prepared;
  /** Its voltages are where the search begins. */
  readonly solution?: Pick<Solution, "volts">;
  /** The caller answers for it that the circuit is of the shape prepared, and its figures sound. */
  readonly isOfShape?: boolean;
  /** See `Start`. */
  readonly turnEachRelay?: boolean;
};

/** What of a circuit is settled here. */
type Settling = {
  readonly circuit: Circuit;
  readonly choices: readonly Choice[];
  readonly boxes: readonly Box[];
};

export type SettledBoxes<Built extends Settling> = {
  readonly built: Built;
  readonly solution: Solution;
  readonly prepared: Prepared;
  /** [boxes] */
  readonly awake: readonly boolean[];
  /** Boxes that wake and sleep without end; they are shown asleep. */
  readonly restless: readonly number[];
};

/**
 * Solves a circuit and lets its boxes wake and sleep, and its loads block what runs against them, until nothing changes.
 * @param before the last solve of a like circuit: its preparation serves again where the shape is the same
 */
export function settleBoxes<Built extends Settling>(
  built: Built,
  wakes_V: number,
  before: Before | null,
): SettledBoxes<Built> {
  const elements: CircuitElement[] = [...built.circuit.elements];
  const circuit: Circuit = { ...built.circuit, elements };
  const isOfShape = before?.isOfShape ?? false;
  const reused = before !== null && (isOfShape || fits(before.prepared, circuit));
  const turning = before?.turnEachRelay === undefined ? {} : { turnEachRelay: before.turnEachRelay };
  const solve = isOfShape ? solveChecked : solvePrepared;
  const prepared = reused ? before.prepared : prepare(circuit);
  const awake = built.boxes.map((box) => box.fixed);
  let guess = awakeAtFirst(built);
  let blocked = built.choices.map(() => false);
  let start: Float64Array | undefined = reused ? before.solution?.volts : undefined;
  let restless: readonly number[] = [];
  for (let round = 0; ; round++) {
    for (const [index, choice] of built.choices.entries()) {
      const on = choice.box >= 0 ? guess[choice.box]! : !blocked[index];
      elements[choice.element] = on ? choice.on : choice.off;
    }
    const solution = solve(prepared, circuit, { ...turning, ...(start ? { volts: start } : {}) });
    const next = awake.map((fixed, index) => fixed ?? wakesAt(built, index, solution, wakes_V));
    const nextBlocked = built.choices.map((choice, index) => {
      if (choice.box >= 0) return false;
      return blocked[index]! ? !isForward(choice.on, solution) : isReversed(choice.on, solution);
    });
    const changedBoxes = next.flatMap((value, index) => (value === guess[index] ? [] : [index]));
    const changed = changedBoxes.length > 0 || nextBlocked.some((value, index) => value !== blocked[index]);
    if (!changed || restless.length > 0) {
      return { built: { ...built, circuit }, solution, prepared, awake: guess, restless };
    }
    if (round >= MOST_ROUNDS) {
      restless = changedBoxes;
      for (const box of changedBoxes) next[box] = false;
    }
    guess = next;
    blocked = nextBlocked;
    start = solution.volts;
  }
}

function awakeAtFirst(built: Settling): boolean[] {
  const awake = built.boxes.map((box) => box.fixed ?? false);
  for (const choice of built.choices) {
    if (choice.box >= 0 && built.circuit.elements[choice.element] === choice.on) awake[choice.box] = true;
  }
  return awake;
}

function wakesAt(built: Settling, index: number, solution: Solution, wakes_V: number): boolean {
  const box = built.boxes[index]!;
  return box.wakeNodes.some((node) => across(solution, node, box.returnNode) >= wakes_V);
}

/** Volts between two nodes; 0 where one of them hangs in the air. */
function across(solution: Solution, from: number, to: number): number {
  if (solution.island[from] !== solution.island[to]) return 0;
  return solution.volts[from]! - solution.volts[to]!;
}

function ends(element: CircuitElement): readonly [number, number] {
  return "from" in element ? [element.from, element.to] : [0, 0];
}

function isReversed(element: CircuitElement, solution: Solution): boolean {
  return across(solution, ...ends(element)) < -REVERSED_V;
}

function isForward(element: CircuitElement, solution: Solution): boolean {
  return across(solution, ...ends(element)) > 0;
}
