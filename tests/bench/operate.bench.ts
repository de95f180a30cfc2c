import { operate } from "../../src/electrical/operate/operate.ts";
import type { Readings } from "../../src/electrical/operate/readings.ts";
import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness, WireId } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { generate } from "./generate.ts";

const STATE = { key: "run", conditions: ["unit-on", "lights-on", "reverse"] } as const;

/** Harness to readings: from nothing, after one wire is made thicker, and with other battery volts; medians. */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const size of [100, 300, 1000, 10_000]) {
    let harness = generate(size, 0);
    const traced = trace(harness);
    const rounds = size > 5000 ? 15 : 60;
    const whole = times(rounds, () => timed(() => operate(harness, traced, STATE)));
    let before: Readings | null = operate(harness, traced, STATE);
    const after = times(rounds, (round) => {
      harness = thicker(harness, round);
      return timed(() => {
        before = operate(harness, traced, STATE, { before });
      });
    });
    const volts = times(rounds, (round) =>
      timed(() => {
        before = operate(harness, traced, STATE, { before, battery_V: 11 + (round % 40) / 10 });
      }),
    );
    const wires = Object.keys(harness.wires).length;
    lines.push(
      `${wires} wires: whole ${whole}, after an edit ${after}, other volts ${volts}; ${before.warnings.length} warnings`,
    );
  }
  return lines;
}

function thicker(harness: Harness, round: number): Harness {
  const ids = Object.keys(harness.wires) as WireId[];
  const wire = ids[(round * 37) % ids.length]!;
  const result = apply(harness, { kind: "change-wire", wire, changes: { area_mm2: 1 + (round % 5) } });
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** The median of some rounds and the least, ms; the first rounds warm the machine up. */
function times(rounds: number, once: (round: number) => number): string {
  const taken: number[] = [];
  for (let round = 0; round < rounds + 10; round++) {
    const took_ms = once(round);
    if (round >= 10) taken.push(took_ms);
  }
  taken.sort((a, b) => a - b);
  return `${taken[Math.floor(taken.length / 2)]!.toFixed(2)} ms (least ${taken[0]!.toFixed(2)})`;
}
