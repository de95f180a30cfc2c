import { Matrix, solve as solveDense } from "ml-matrix";
import { type Circuit, nodesOf } from "../../src/electrical/solve/circuit.ts";
import { prepare } from "../../src/electrical/solve/prepare.ts";
import { solve, solvePrepared } from "../../src/electrical/solve/solve.ts";
import { writeSpice } from "../../src/electrical/solve/spice-deck.ts";
import { randomCircuit } from "../electrical/solve/random-circuit.ts";
import { runDecks } from "../spice/ngspice.ts";

const SIZES = [100, 1000, 10_000, 100_000];
const TARGET_ms: Readonly<Record<number, number>> = { 1000: 10, 10000: 150 };
/** Past these the others take minutes. */
const DENSE_UP_TO = 1000;
const NGSPICE_UP_TO = 10_000;
/** In the largest circuit of this kind some of the four thousand relays chatter, which takes dozens of solves. */
const RELAYS_UP_TO = 10_000;

/**
 * The operating point of circuits like a harness, from scratch and again after one wire has changed, beside ngspice (a
 * whole process, its deck read from a file) and a dense solver (the same conductances in a full matrix).
 */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const wires of SIZES) {
    const rounds = wires > 10_000 ? 5 : wires > 1000 ? 15 : 60;
    const linear = randomCircuit(7, { wires, nonlinear: false, passive: true });
    const target = TARGET_ms[wires] ? ` (target ${TARGET_ms[wires]} ms)` : "";
    const parts = [`from scratch ${spread(time(rounds, () => solve(linear)))}${target}`];
    parts.push(`one wire changed ${spread(timeChanges(linear, rounds))}`);
    const mixed = randomCircuit(7, { wires, nonlinear: true, passive: true });
    parts.push(`with lamps and constant power ${spread(time(rounds, () => solve(mixed)))}`);
    lines.push(`${wires} wires: ${parts.join(", ")}`);
    lines.push(`  ${others(linear, wires).join(", ")}`);
    if (wires <= RELAYS_UP_TO) lines.push(`  ${withRelays(wires, rounds)}`);
  }
  return lines;
}

function withRelays(wires: number, rounds: number): string {
  const circuit = randomCircuit(7, { wires, nonlinear: false });
  const coils = circuit.elements.filter(({ kind }) => kind === "coil").length;
  return `with ${coils} relays and several supplies ${spread(time(Math.min(rounds, 15), () => solve(circuit)))}`;
}

/** The same circuit again and again, each time with one wire of another resistance, from the solution before. */
function timeChanges(circuit: Circuit, rounds: number): number[] {
  const prepared = prepare(circuit);
  let solution = solvePrepared(prepared, circuit);
  let round = 0;
  return time(rounds, () => {
    const elements = circuit.elements.slice();
    let at = (round++ * 37) % elements.length;
    while (elements[at]!.kind !== "resistance") at = (at + 1) % elements.length;
    const wire = elements[at]!;
    if (wire.kind === "resistance") elements[at] = { ...wire, resistance_ohm: wire.resistance_ohm * 1.1 };
    solution = solvePrepared(prepared, { ...circuit, elements }, solution);
  });
}

function others(circuit: Circuit, wires: number): string[] {
  const parts: string[] = [];
  if (wires <= NGSPICE_UP_TO) {
    const deck = writeSpice(circuit, solve(circuit).pulled);
    parts.push(`ngspice ${spread(time(wires > 1000 ? 1 : 5, () => runDecks([deck])))}`);
  } else parts.push("ngspice not run at this size");
  if (wires <= DENSE_UP_TO) parts.push(`dense ${spread(time(5, () => dense(circuit)))}`);
  else parts.push("dense not run at this size");
  return parts;
}

/** Node voltages by a full matrix. */
function dense(circuit: Circuit): Matrix {
  const matrix = Matrix.zeros(circuit.nodeCount, circuit.nodeCount);
  const amps = Matrix.zeros(circuit.nodeCount, 1);
  const add = (to: Matrix, row: number, column: number, value: number) =>
    to.set(row, column, to.get(row, column) + value);
  for (const element of circuit.elements) {
    if (!("resistance_ohm" in element) || (element.kind === "switch" && !element.closed)) continue;
    const [a, b] = nodesOf(element);
    const siemens = 1 / element.resistance_ohm;
    for (const [row, column] of [
      [a, b],
      [b, a],
    ] as const) {
      add(matrix, row, row, siemens);
      add(matrix, row, column, -siemens);
    }
    if (element.kind !== "supply") continue;
    add(amps, a, 0, element.emf_V * siemens);
    add(amps, b, 0, -element.emf_V * siemens);
  }
  // Hardly anything from each node to the reference, so that pieces behind open switches have an answer too.
  for (let node = 0; node < circuit.nodeCount; node++) add(matrix, node, node, node === 0 ? 1 : 1e-9);
  return solveDense(matrix, amps);
}

function time(rounds: number, run: () => unknown): number[] {
  const times: number[] = [];
  // The first rounds warm the machine up.
  for (let round = -Math.ceil(rounds / 5); round < rounds; round++) {
    const start = performance.now();
    run();
    if (round >= 0) times.push(performance.now() - start);
  }
  return times;
}

function spread(times_ms: readonly number[]): string {
  const sorted = [...times_ms].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(2);
  return sorted.length === 1 ? `${at(0)} ms` : `${at(0.5)} ms (least ${at(0)}, p95 ${at(0.95)})`;
}
