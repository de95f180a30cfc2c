import { FUNCTIONS } from "../../src/catalogue/functions.ts";
import { propose } from "../../src/match/propose/propose.ts";
import { readCharts } from "../../src/match/read-chart.ts";
import { sayScore, score } from "../match/corpus/score.ts";
import { missedTargets } from "../match/corpus/targets.ts";
import { loadPairs } from "../match/corpus/truth.ts";
import { readAsKnown } from "../match/corpus/truth-chart.ts";

const LEADS = 200;
const TARGET_ms = 50;

/**
 * The corpus of chart pairs against its answers, and the time for a large pair.
 * `FAULTS=1 npm run bench -- match` lists every fault; `FAULTS=held-out`, `second`, `third` and `fourth` those of the
 * held-out, the second, the third and the fourth pairs too, which are for judging and not for tuning.
 */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  const faults = process.env.FAULTS ?? "";
  // The first reading builds the vocabulary's indexes; a person pays that once.
  score(loadPairs("pairs").slice(0, 3), { readCharts, propose });
  for (const folder of ["pairs", "held-out", "second", "third", "fourth"] as const) {
    const pairs = loadPairs(folder);
    const sum = score(pairs, { readCharts, propose });
    const known = score(pairs, (pair) => ({ readCharts: readAsKnown(pair), propose }));
    lines.push(...sayScore(folder, sum), ...missedTargets(sum).map((why) => `  misses its target: ${why}`));
    lines.push(...sayScore(`${folder}, rows given right`, known));
    if (faults === folder || (faults !== "" && folder === "pairs"))
      lines.push(
        ...sum.faults.map((fault) => `  ${fault}`),
        ...known.faults.map((fault) => `  given right: ${fault}`),
      );
  }
  const left = largeChart("", 1);
  const right = largeChart("X", 7);
  const reading = times(9, () => readCharts(left));
  const charts = [readCharts(left).charts[0]!, readCharts(right).charts[0]!] as const;
  const leads = charts.map((chart) => chart.leads.length).join(" + ");
  const proposing = times(9, () => propose(...charts));
  lines.push(
    `${leads} leads: proposed in ${proposing} (target ${TARGET_ms} ms), one chart read in ${reading}`,
  );
  return lines;
}

/** Most of the vocabulary once, then grounds; a step of 7 through 200 gives the other side another order. */
function largeChart(prefix: string, step: number): string {
  const named = FUNCTIONS.filter((one) => one.group !== "none").slice(0, LEADS - 12);
  const texts = Array.from({ length: LEADS }, (_, index) => named[index]?.name ?? "ground");
  const colours = ["red", "black", "white/blue", "green", "grey/red", "brown", "violet/white"];
  const rows = texts.map((_, index) => {
    const text = texts[(index * step) % LEADS]!;
    return `${prefix}${index + 1}\t${text}\t${colours[(index * step) % colours.length]}`;
  });
  return ["Pin\tFunction\tColour", ...rows].join("\n");
}

/** The median of some rounds, and the least: other work on the machine moves the median. */
function times(rounds: number, work: () => unknown): string {
  const sorted = Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((one, other) => one - other);
  return `${sorted[rounds >> 1]!.toFixed(1)} ms (least ${sorted[0]!.toFixed(1)})`;
}
