import type { Solution } from "../solve/solve.ts";
import { type Built, FRAME } from "./built.ts";
import type { Volts } from "./readings.ts";

/** Far under what any sum here is good for. */
const LEAST_V = 1e-12;

/** What volts mean where: an island that only outputs of unfed boxes hold up has none. */
export class VoltsAt {
  private readonly fed: Uint8Array;

  constructor(
    built: Pick<Built, "circuit">,
    private readonly solution: Solution,
  ) {
    this.fed = new Uint8Array(solution.islands.length);
    for (const element of built.circuit.elements) {
      if (element.kind !== "supply" && element.kind !== "output") continue;
      if (element.emf_V !== 0) this.fed[solution.island[element.minus]!] = 1;
    }
    // The frame is what volts are measured from, whatever stands on it.
    this.fed[solution.island[FRAME]!] = 1;
  }

  volts(node: number): Volts {
    if (!this.fed[this.solution.island[node]!]) return "floating";
    const volts = this.solution.volts[node]!;
    // What is left over from rounding is nothing, and no minus nothing either.
    return Math.abs(volts) < LEAST_V ? 0 : volts;
  }

  /** From one node to another; `null` where one floats against the other. */
  across(from: number, to: number): number | null {
    const island = this.solution.island[from]!;
    if (island !== this.solution.island[to] || !this.fed[island]) return null;
    return this.solution.volts[from]! - this.solution.volts[to]!;
  }
}
