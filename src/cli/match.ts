import { functionOf } from "../catalogue/functions.ts";
import { apply } from "../graph/edits/apply.ts";
import type { Connector, Harness, JobSide } from "../graph/harness.ts";
import { emptyHarness } from "../graph/make.ts";
import { serialise } from "../graph/parse/parse.ts";
import { arrangeInNode } from "../layout/arrange/node.ts";
import { arrangementEdit, arrangeProblem } from "../layout/arrangement.ts";
import type { Chart, ReadCharts } from "../match/chart.ts";
import { cautious } from "../match/propose/cautious.ts";
import type { Proposal } from "../match/propose/proposal.ts";
import { propose } from "../match/propose/propose.ts";
import { roleOf } from "../match/propose/role.ts";
import { readChartFile } from "../match/read-chart-file.ts";
import { acceptCertain } from "../match/review/items.ts";
import { USUAL_JOINT } from "../match/review/joints.ts";
import { startReview } from "../match/review/review.ts";
import { isLeadsOnly, statedView } from "../match/review/stated-view.ts";
import { type JobEnds, type NewEnd, toEdit } from "../match/review/to-edit.ts";
import { sayConfidence } from "../match/review/words.ts";
import { readArguments } from "./arguments.ts";
import { fileName, mustBeNew, readBytes, writeWhole } from "./files.ts";
import { complain, count, EXIT, plain, say, Unusable } from "./unusable.ts";

export const usage = "pigtail match LEFT [RIGHT] [--json] [-o OUT.harness.json] [--force]";

/**
 * Proposes which lead of one chart joins which of another. One file that holds two charts side by side is both.
 * With -o, what is certain is made into a harness; questions stay open leads in it, for a person to decide.
 */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    {
      json: { type: "boolean" },
      output: { type: "string", short: "o" },
      force: { type: "boolean" },
      awg: { type: "boolean" },
    },
    { usage, least: 1, most: 2 },
  );
  const out = values.output;
  if (out !== undefined && !values.force) mustBeNew(out);
  const sizes = values.awg ? "awg" : "metric";
  const reads = await Promise.all(positionals.map((path) => readChartFile(readBytes(path), { sizes })));
  const charts = pick(positionals, reads);
  const proposal = propose(charts.left, charts.right);
  for (const remark of reads.flatMap((read) => read.remarks)) complain(plain(remark));
  if (out !== undefined) writeWhole(out, serialise(await harnessOf(charts, proposal)));
  if (values.json) say(JSON.stringify(report(charts, proposal)));
  else if (out !== "-") say(inWords(charts, proposal));
  return EXIT.clean;
}

type Charts = { readonly left: Chart; readonly right: Chart };

function pick(paths: readonly string[], reads: readonly ReadCharts[]): Charts {
  const [first, second] = reads;
  const left = first?.charts[0];
  const right = second ? second.charts.at(-1) : first?.charts[1];
  for (const [index, chart] of [left, right].entries()) {
    const path = paths[index] ?? paths[0]!;
    if (!chart)
      throw new Unusable(
        `${plain(fileName(path))}: ${paths.length === 1 ? "this holds one chart or none" : "this holds no chart"}. → Name two files, or one in which two charts stand side by side.\nUsage: ${usage}`,
      );
  }
  return { left: left!, right: right! };
}

/** The shape is kept from version to version. */
function report({ left, right }: Charts, proposal: Proposal) {
  const unread = (side: "left" | "right", chart: Chart) =>
    chart.unread.map(({ line, text }) => ({ side, line, text }));
  return {
    joins: proposal.joins,
    ask: proposal.ask,
    splices: proposal.splices,
    capLeft: proposal.capLeft,
    capRight: proposal.capRight,
    missing: proposal.missing,
    unread: [...unread("left", left), ...unread("right", right)],
  };
}

function inWords({ left, right }: Charts, proposal: Proposal): string {
  const { joins, ask, splices, capLeft, capRight, missing } = proposal;
  const wide = Math.max(0, ...joins.map((join) => `${join.left} = ${join.right}`.length));
  const lines = [`${count(joins.length, "join")}, ${count(ask.length, "question")}`];
  for (const join of joins) {
    const name = `${join.left} = ${join.right}`.padEnd(wide);
    lines.push(
      `  ${name}  ${functionOf(join.function).name}, ${sayConfidence(join.confidence)}: ${join.why}`,
    );
    for (const trap of join.traps) lines.push(`  ${" ".repeat(wide)}  take care: ${trap}`);
  }
  for (const one of ask) lines.push(`  ask: ${one.left.join(", ")} with ${one.right.join(", ")}? ${one.why}`);
  for (const one of splices) {
    const draw = one.current_A === null ? "" : `, ${one.current_A} A together`;
    lines.push(
      `  splice of ${one.ends} ends: ${one.left.join(", ")} with ${one.right.join(", ")} (${functionOf(one.function).name}${draw})`,
    );
  }
  if (capLeft.length) lines.push(`  cap left: ${capLeft.join(", ")}`);
  if (capRight.length) lines.push(`  cap right: ${capRight.join(", ")}`);
  for (const one of missing) lines.push(`  without partner: ${one.lead} (${one.side}). ${one.why}`);
  for (const [side, chart] of [["left", left] as const, ["right", right] as const]) {
    for (const { line, text } of chart.unread) lines.push(`  not read, ${side} line ${line}: ${text}`);
  }
  return lines.map(plain).join("\n");
}

async function harnessOf(charts: Charts, proposal: Proposal): Promise<Harness> {
  const review = acceptCertain(startReview(charts, cautious(proposal), USUAL_JOINT));
  const side: JobSide = roleOf(charts.left) ?? opposite(roleOf(charts.right)) ?? "vehicle";
  const ends: JobEnds = {
    left: endOf(charts.left, side, "X1"),
    right: endOf(charts.right, opposite(side)!, "X2"),
  };
  const empty = emptyHarness();
  const made = toEdit(empty, review, ends);
  if (!made.ok) throw new Unusable(made.why);
  const joined = apply(empty, made.edit);
  if (!joined.ok) throw new Error(joined.why);
  const placed = arrangementEdit(joined.harness, await arrangeInNode(arrangeProblem(joined.harness)));
  const arranged = apply(joined.harness, placed);
  if (!arranged.ok) throw new Error(arranged.why);
  return arranged.harness;
}

function opposite(side: JobSide | null): JobSide | null {
  return side && (side === "vehicle" ? "equipment" : "vehicle");
}

function endOf(chart: Chart, side: JobSide, designation: string): NewEnd {
  const stated: Connector["view"] | null = statedView(chart);
  const isLeads = isLeadsOnly(chart);
  if (!stated && !isLeads)
    complain(
      `${designation}: the chart does not say from which side it sees the cavities; wire side is taken. Check it, a mirrored reading makes a wrong adapter.`,
    );
  return {
    part: null,
    side,
    designation,
    name: chart.title.slice(0, 400),
    view: stated ?? "wire-side",
    form: isLeads ? "flying-leads" : "housing",
    shell: null,
    rows: 1,
    chart: { title: chart.title.slice(0, 400), edition: "", date: "", measured: false },
  };
}
