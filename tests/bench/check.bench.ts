import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness, WireId } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { check } from "../../src/rules/check.ts";
import { generate } from "./generate.ts";

const TARGET_ms = 4;

/** Check after one edit, and trace, at three sizes; medians, with the least and the 95th percentile behind them. */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const size of [100, 1000, 10_000]) {
    let harness = generate(size);
    const rounds = size > 5000 ? 30 : 200;
    const traces: number[] = [];
    const checks: number[] = [];
    let findings = 0;
    for (let round = 0; round < rounds + 20; round++) {
      harness = oneEdit(harness, round);
      const start = performance.now();
      const traced = trace(harness);
      const between = performance.now();
      findings = check(harness, traced).length;
      const end = performance.now();
      // The first rounds warm the machine up.
      if (round < 20) continue;
      traces.push(between - start);
      checks.push(end - between);
    }
    const wires = Object.keys(harness.wires).length;
    const target = size === 1000 ? ` (target ${TARGET_ms} ms)` : "";
    lines.push(
      `${wires} wires, ${findings} findings: check ${spread(checks)}${target}, trace ${spread(traces)}`,
    );
  }
  return lines;
}

/** Moves one end of one wire to the next contact's wire, as a drag does. */
function oneEdit(harness: Harness, round: number): Harness {
  const ids = Object.keys(harness.wires) as WireId[];
  const id = ids[(round * 37) % ids.length]!;
  const wire = harness.wires[id]!;
  const ends = round % 2 ? wire.ends : ([wire.ends[1], wire.ends[0]] as const);
  const result = apply(harness, { kind: "change-wire", wire: id, changes: { ends, note: `round ${round}` } });
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

function spread(times_ms: readonly number[]): string {
  const sorted = [...times_ms].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(2);
  return `${at(0.5)} ms (least ${at(0)}, p95 ${at(0.95)})`;
}
