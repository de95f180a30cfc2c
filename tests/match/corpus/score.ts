import { FUNCTIONS } from "../../../src/catalogue/functions.ts";
import type { Chart, Lead, ReadCharts } from "../../../src/match/chart.ts";
import type { Proposal } from "../../../src/match/propose/proposal.ts";
import { isColourName, type Pair, type TrueJoin, type TrueRow } from "./truth.ts";

/** What is measured; handed in, so that the corpus does not depend on how a chart is read. */
export type Measured = {
  readonly readCharts: (text: string) => ReadCharts;
  readonly propose: (left: Chart, right: Chart) => Proposal;
};

export type Score = {
  readonly pairs: number;
  /** Rows of the truth, and rows that were read where there are none. */
  readonly rows: number;
  readonly rowsRight: number;
  readonly areas: number;
  readonly areasRight: number;
  /** Joins of the truth that no honest doubt hangs on. */
  readonly joinsSure: number;
  readonly sureMade: number;
  readonly sureAsked: number;
  readonly joinsDoubtful: number;
  readonly doubtfulMade: number;
  readonly doubtfulAsked: number;
  /** All that were proposed without asking. */
  readonly joinsMade: number;
  readonly joinsWrong: number;
  /** Wrong, and one of the two leads is a feed or a ground. */
  readonly joinsWrongOnPower: number;
  /** Right, but named by a function that neither lead has. */
  readonly joinsMisnamed: number;
  readonly questions: number;
  /** Leads of the truth that have no partner, and how many of them were capped without asking. */
  readonly spares: number;
  readonly sparesCapped: number;
  readonly time_ms: number;
  /** Every fault, in words. */
  readonly faults: readonly string[];
};

const GROUP_OF = new Map<string, string>(FUNCTIONS.map((one) => [one.id, one.group]));
const EMPTY: Chart = { title: "", leads: [], notes: [], unread: [] };

/** Reads and matches every pair, and adds up how that compares with the truth. */
export function score(pairs: readonly Pair[], measured: Measured | ((pair: Pair) => Measured)): Score {
  return pairs
    .map((pair) => scorePair(pair, typeof measured === "function" ? measured(pair) : measured))
    .reduce(add);
}

export function scorePair(pair: Pair, { readCharts, propose }: Measured): Score {
  const start = performance.now();
  const first = readCharts(pair.leftText).charts;
  const leftChart = first[0] ?? EMPTY;
  const rightChart = (pair.rightText === "" ? first[1] : readCharts(pair.rightText).charts[0]) ?? EMPTY;
  const proposal = propose(leftChart, rightChart);
  const time_ms = performance.now() - start;

  const left = scoreRows(pair.left, leftChart, `${pair.name} left`);
  const right = scoreRows(pair.right, rightChart, `${pair.name} right`);
  const joins = scoreJoins(pair, proposal, left.nameOf, right.nameOf);
  return {
    pairs: 1,
    rows: left.rows + right.rows,
    rowsRight: left.rowsRight + right.rowsRight,
    areas: left.areas + right.areas,
    areasRight: left.areasRight + right.areasRight,
    ...joins,
    time_ms,
    faults: [...left.faults, ...right.faults, ...joins.faults],
  };
}

function scoreRows(truth: readonly TrueRow[], chart: Chart, where: string) {
  const faults: string[] = [];
  const nameOf = new Map<string, string>();
  const taken = new Set<Lead>();
  let [rowsRight, areas, areasRight] = [0, 0, 0];
  for (const row of truth) {
    const lead = leadOf(row, chart, taken);
    if (!lead) {
      faults.push(`${where} ${row.name}: not read`);
      continue;
    }
    taken.add(lead);
    nameOf.set(lead.name, row.name);
    const isRight = nameIsRight(row, lead) && functionIsRight(row, lead) && colourIsRight(row, lead);
    if (isRight) rowsRight++;
    else
      faults.push(
        `${where} ${row.name}: ${wordsOf(lead)}, not ${row.functions} ${row.colours} — "${lead.source.trim()}"`,
      );
    if (row.area_mm2 === null) continue;
    areas++;
    const isNear = lead.area_mm2 !== null && Math.abs(lead.area_mm2 - row.area_mm2) < 0.05;
    if (isNear) areasRight++;
    else faults.push(`${where} ${row.name}: ${lead.area_mm2} mm², not ${row.area_mm2}`);
  }
  // A cavity that the truth does not list may be read as empty; a note may not be read as a lead.
  const extra = chart.leads.filter((lead) => !taken.has(lead) && !lead.isUnused);
  for (const lead of extra) faults.push(`${where}: no such lead as ${lead.name} — "${lead.source.trim()}"`);
  return { rows: truth.length + extra.length, rowsRight, areas, areasRight, faults, nameOf };
}

function leadOf(row: TrueRow, chart: Chart, taken: ReadonlySet<Lead>): Lead | undefined {
  const free = chart.leads.filter((lead) => !taken.has(lead));
  if (row.name.startsWith("@")) return free.find((lead) => `@${lead.line}` === row.name);
  const wanted = plain(row.name);
  if (!isColourName(row)) {
    const exact = free.find((lead) => lead.label !== null && plain(lead.label) === wanted);
    // A label cut wrongly is a misread row; what is joined to it is still judged by what it is.
    return exact ?? free.find((lead) => startsWith(lead.source, row.name));
  }
  const alike = chart.leads.filter((lead) => lead.label === null && row.colours.includes(letters(lead)));
  return alike[Number(row.name.split("#")[1] ?? 1) - 1];
}

const nameIsRight = (row: TrueRow, lead: Lead): boolean =>
  isColourName(row) ||
  row.name.startsWith("@") ||
  (lead.label !== null && plain(lead.label) === plain(row.name));

function functionIsRight(row: TrueRow, lead: Lead): boolean {
  const top = lead.reading.candidates[0]?.function ?? "unknown";
  if (row.functions[0] === "not-used") return lead.isUnused || top === "not-used";
  if (lead.isUnused) return false;
  if (row.functions.includes("*") || row.functions.includes(top)) return true;
  return row.functions.includes("?") && (!lead.reading.certain || top === "unknown");
}

const colourIsRight = (row: TrueRow, lead: Lead): boolean =>
  row.colours.includes("*") || row.colours.includes(letters(lead));

function letters({ colour }: Lead): string {
  if (!colour) return "-";
  return colour.tracer ? `${colour.base}/${colour.tracer}` : colour.base;
}

/** Past bullets, quotes, bars and a word such as "pin". */
function startsWith(source: string, name: string): boolean {
  const bare = (text: string) => plain(text).replace(/^[^\p{L}\p{N}]+/u, "");
  const [text, wanted] = [bare(source), bare(name)];
  return [text, text.replace(/^\p{L}+\.? /u, "")].some(
    (start) => start.startsWith(wanted) && !/^[\p{L}\p{N}]/u.test(start.slice(wanted.length)),
  );
}

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

function wordsOf(lead: Lead): string {
  const candidates = lead.reading.candidates.map((one) => `${one.function} ${Math.round(one.share * 100)} %`);
  return `"${lead.name}" ${lead.isUnused ? "unused " : ""}${candidates.join(" or ") || "no function"} ${letters(lead)}`;
}

type Names = ReadonlyMap<string, string>;

function scoreJoins(pair: Pair, proposal: Proposal, leftNames: Names, rightNames: Names) {
  const faults: string[] = [];
  const nets = netsOf(pair.joins);
  const made = new Set<string>();
  const functionsOf = {
    left: new Map(pair.left.map((row) => [row.name, row.functions])),
    right: new Map(pair.right.map((row) => [row.name, row.functions])),
  };
  let [joinsWrong, joinsWrongOnPower, joinsMisnamed] = [0, 0, 0];
  for (const join of proposal.joins) {
    const left = leftNames.get(join.left) ?? `(${join.left})`;
    const right = rightNames.get(join.right) ?? `(${join.right})`;
    const functions = [...(functionsOf.left.get(left) ?? []), ...(functionsOf.right.get(right) ?? [])];
    const net = nets.get(`left ${left}`);
    if (net !== undefined && net === nets.get(`right ${right}`)) {
      made.add(`left ${left}`).add(`right ${right}`);
      if (functions.includes(join.function) || functions.some((id) => id === "?" || id === "*")) continue;
      joinsMisnamed++;
      faults.push(`${pair.name}: ${left} = ${right} is called ${join.function}`);
      continue;
    }
    joinsWrong++;
    const isPower = functions.some((id) => ["feed", "ground"].includes(GROUP_OF.get(id) ?? ""));
    if (isPower) joinsWrongOnPower++;
    const why = `${join.function}, ${Math.round(join.confidence * 100)} %: ${join.why}`;
    faults.push(`${pair.name}: WRONG ${isPower ? "POWER " : ""}JOIN ${left} = ${right} (${why})`);
  }
  const asked = new Set<string>();
  for (const question of proposal.ask)
    for (const left of question.left.map((name) => `left ${leftNames.get(name)}`))
      for (const right of question.right.map((name) => `right ${rightNames.get(name)}`))
        if (nets.has(left) && nets.get(left) === nets.get(right)) asked.add(left).add(right);

  const counts = {
    joinsSure: 0,
    sureMade: 0,
    sureAsked: 0,
    joinsDoubtful: 0,
    doubtfulMade: 0,
    doubtfulAsked: 0,
  };
  for (const { lead, how } of unitsOf(pair.joins, nets)) {
    const sure = how === "must";
    counts[sure ? "joinsSure" : "joinsDoubtful"]++;
    if (made.has(lead)) counts[sure ? "sureMade" : "doubtfulMade"]++;
    else if (asked.has(lead)) counts[sure ? "sureAsked" : "doubtfulAsked"]++;
    if (!made.has(lead) && (sure || !asked.has(lead)))
      faults.push(`${pair.name}: ${lead} is ${asked.has(lead) ? "asked about" : "not joined"}`);
  }
  const capped = new Set([
    ...proposal.capLeft.map((name) => `left ${leftNames.get(name)}`),
    ...proposal.capRight.map((name) => `right ${rightNames.get(name)}`),
  ]);
  const spares = sparesOf(pair, nets);
  return {
    ...counts,
    joinsMade: proposal.joins.length,
    joinsWrong,
    joinsWrongOnPower,
    joinsMisnamed,
    questions: proposal.ask.length,
    spares: spares.length,
    sparesCapped: spares.filter((lead) => capped.has(lead)).length,
    faults,
  };
}

/** Leads that end up on one node share a net, so that either of two plain grounds may go to either of two others. */
function netsOf(joins: readonly TrueJoin[]): Map<string, number> {
  const nets = new Map<string, number>();
  joins.forEach((join, index) => {
    const [left, right] = [`left ${join.left}`, `right ${join.right}`];
    const known = [nets.get(left), nets.get(right)];
    for (const [lead, net] of nets) if (known.includes(net)) nets.set(lead, index);
    nets.set(left, index).set(right, index);
  });
  return nets;
}

/** A net counts as many joins as its longer side has leads; leads that may stay apart count none. */
function unitsOf(joins: readonly TrueJoin[], nets: ReadonlyMap<string, number>) {
  return [...new Set(nets.values())].flatMap((net) => {
    const own = joins.filter((join) => nets.get(`left ${join.left}`) === net && join.how !== "may");
    const sides = (["left", "right"] as const).map((side) => [
      ...new Set(own.map((join) => `${side} ${join[side]}`)),
    ]);
    const longer = sides[0]!.length >= sides[1]!.length ? sides[0]! : sides[1]!;
    return longer.map((lead) => {
      const sure = own.some(
        (join) => join.how === "must" && [`left ${join.left}`, `right ${join.right}`].includes(lead),
      );
      return { lead, how: sure ? ("must" as const) : ("may-ask" as const) };
    });
  });
}

function sparesOf(pair: Pair, nets: ReadonlyMap<string, number>): string[] {
  const spare = (side: "left" | "right") =>
    pair[side]
      .filter((row) => row.functions[0] !== "not-used")
      .map((row) => `${side} ${row.name}`)
      .filter((lead) => !nets.has(lead));
  return [...spare("left"), ...spare("right")];
}

function add(one: Score, other: Score): Score {
  const sums = Object.entries(one)
    .filter(([key]) => key !== "faults")
    .map(([key, value]) => [key, (value as number) + (other[key as keyof Score] as number)]);
  return { ...(Object.fromEntries(sums) as Omit<Score, "faults">), faults: [...one.faults, ...other.faults] };
}

/** Two lines for a person. */
export function sayScore(name: string, sum: Score): string[] {
  const share = (part: number, whole: number) =>
    `${part}/${whole} (${((100 * part) / (whole || 1)).toFixed(1)} %)`;
  return [
    `${name}: ${sum.pairs} pairs; rows right ${share(sum.rowsRight, sum.rows)}, sizes ${share(sum.areasRight, sum.areas)}; ` +
      `${(sum.questions / sum.pairs).toFixed(2)} questions and ${(sum.time_ms / sum.pairs).toFixed(1)} ms a pair`,
    `${" ".repeat(name.length)}  joins right without asking ${share(sum.sureMade, sum.joinsSure)}, asked ${sum.sureAsked}, ` +
      `missed ${sum.joinsSure - sum.sureMade - sum.sureAsked}; doubtful ones made ${sum.doubtfulMade}, asked ${sum.doubtfulAsked} ` +
      `of ${sum.joinsDoubtful}; wrong ${share(sum.joinsWrong, sum.joinsMade)}, on power leads ${sum.joinsWrongOnPower}; ` +
      `misnamed ${sum.joinsMisnamed}; spares capped ${share(sum.sparesCapped, sum.spares)}`,
  ];
}
