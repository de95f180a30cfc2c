import type { Harness } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { type Checked, recheck } from "../../src/rules/check.ts";
import { RULES } from "../../src/rules/registry.ts";
import type { Rule } from "../../src/rules/rule.ts";
import { EDITS, edited } from "./edits.ts";
import { copies, drawing } from "./full-size.ts";
import { generate } from "./generate.ts";

const EDIT_TARGET_ms = 16;
const COLD_TARGET_ms = 250;
const ROUNDS = { small: 5, large: 2 };
/** As many rules are named in each list. */
const NAMED = 10;

/** A first check, and one after each kind of edit, with the rules that take longest: the least of several rounds. */
export async function bench(): Promise<string[]> {
  const harnesses: readonly (readonly [string, Harness])[] = [
    ["generated", generate(1000)],
    ["generated, currents stated", drawing(1000)],
    ["full-build beside itself", copies("full-build", 1000)],
    ["generated, currents stated", drawing(10_000)],
    ["full-build beside itself", copies("full-build", 10_000)],
  ];
  const lines: string[] = [];
  for (const [name, harness] of harnesses) {
    const wires = Object.keys(harness.wires).length;
    const isLarge = wires > 5000;
    const timed = RULES.map(timedRule);
    const rules = timed.map(({ rule }) => rule);
    const cold = leastOf(isLarge ? ROUNDS.large : ROUNDS.small, timed, () => {
      const again = { ...harness };
      const traced = trace(again);
      return () => recheck(null, again, traced, rules);
    });
    lines.push(
      `${name}, ${wires} wires, ${cold.findings} findings`,
      `  first check ${tell(cold)}${isLarge ? ` (target ${COLD_TARGET_ms} ms)` : ""}`,
    );
    if (isLarge) continue;
    for (const edit of Object.keys(EDITS)) {
      let now = harness;
      let before = recheck(null, now, trace(now), rules);
      let round = 0;
      const after = leastOf(ROUNDS.small, timed, () => {
        now = edited(now, edit, round++);
        const traced = trace(now);
        return () => {
          before = recheck(before, now, traced, rules);
          return before;
        };
      });
      lines.push(`  ${edit}: ${tell(after)} (target ${EDIT_TARGET_ms} ms)`);
    }
  }
  return lines;
}

type Timed = { readonly rule: Rule; readonly id: string; spent_ms: number; asked: boolean };

/** The same rule, with a note of how long it was at work. What several rules share is paid by the first that asks. */
function timedRule({ meta, check, review }: Rule): Timed {
  const timed: Timed = {
    id: meta.id,
    spent_ms: 0,
    asked: false,
    rule: {
      meta,
      check: (context) => {
        timed.asked = true;
        const start = performance.now();
        const found = [...check(context)];
        timed.spent_ms += performance.now() - start;
        return found;
      },
      ...(review ? { review } : {}),
    },
  };
  return timed;
}

type Least = {
  readonly total_ms: number;
  readonly asked: number;
  readonly findings: number;
  readonly rules: ReadonlyMap<string, number>;
};

/** @param prepare makes ready what is not timed, and returns what is */
function leastOf(rounds: number, timed: readonly Timed[], prepare: () => () => Checked): Least {
  const rules = new Map<string, number>();
  let total_ms = Number.POSITIVE_INFINITY;
  let [asked, findings] = [0, 0];
  for (let round = 0; round < rounds; round++) {
    const run = prepare();
    for (const one of timed) [one.spent_ms, one.asked] = [0, false];
    const start = performance.now();
    findings = run().findings.length;
    total_ms = Math.min(total_ms, performance.now() - start);
    asked = 0;
    for (const one of timed) {
      if (!one.asked) continue;
      asked++;
      rules.set(one.id, Math.min(one.spent_ms, rules.get(one.id) ?? Number.POSITIVE_INFINITY));
    }
  }
  return { total_ms, asked, findings, rules };
}

function tell({ total_ms, asked, rules }: Least): string {
  const slowest = [...rules].sort((a, b) => b[1] - a[1]).slice(0, NAMED);
  const inRules = [...rules.values()].reduce((sum, ms) => sum + ms, 0);
  return `${total_ms.toFixed(1)} ms, ${asked} rules asked (${inRules.toFixed(1)} ms): ${slowest
    .map(([id, ms]) => `${id} ${ms.toFixed(1)}`)
    .join(", ")}`;
}
