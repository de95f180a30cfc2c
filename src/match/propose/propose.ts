import type { Chart } from "../chart.ts";
import { assign } from "./assign.ts";
import { type InContext, inContext } from "./context.ts";
import { decide, rivalsOf, WORTH_ASKING } from "./decide.ts";
import { missingOf } from "./missing.ts";
import { type Pair, pairsOf } from "./pairs.ts";
import type { Join, Proposal, Question } from "./proposal.ts";
import { type Roles, roleOf } from "./role.ts";
import { moreTakers, splicesOf } from "./takers.ts";
import { trapsOf } from "./traps.ts";
import { sayJoin, sayQuestion } from "./why.ts";

/** One pair that is to be joined, and how sure that is. */
export type Made = { readonly pair: Pair; readonly confidence: number };

/**
 * Proposes which lead of one chart joins which of the other: the best assignment over all, certain joins apart from
 * questions, one lead to several takers as a splice, what is left as caps. Colour only breaks ties.
 * The order of the rows and of the charts does not matter.
 */
export function propose(leftChart: Chart, rightChart: Chart): Proposal {
  const left = inContext(leftChart);
  const right = inContext(rightChart);
  const sides = { left, right };
  const roles = rolesOf(leftChart, rightChart);
  const used = pairsOf(left, right, roles).filter(
    (pair) => !left[pair.left]!.lead.isUnused && !right[pair.right]!.lead.isUnused,
  );
  const made: Made[] = [];
  let open = used;
  // What is certain is settled first and is then no rival to what is not.
  for (let round = 0; round < 3; round++) {
    const before = made.length;
    const byLeft = groupBy(open, (pair) => pair.left);
    const byRight = groupBy(open, (pair) => pair.right);
    for (const pair of assign(open.filter((one) => one.veto === null))) {
      const near = [...(byLeft.get(pair.left) ?? []), ...(byRight.get(pair.right) ?? [])];
      const isCertain = left[pair.left]!.reading.certain && right[pair.right]!.reading.certain;
      const rivals = rivalsOf(pair, isCertain, near);
      const verdict = decide(pair, left[pair.left]!, right[pair.right]!, rivals);
      const isExact = verdict.kind === "join" && verdict.confidence >= 0.94;
      if (verdict.kind === "join" && (round > 0 || isExact))
        made.push({ pair, confidence: verdict.confidence });
    }
    const taken = new Set(made.flatMap(({ pair }) => [`l${pair.left}`, `r${pair.right}`]));
    open = open.filter((pair) => !taken.has(`l${pair.left}`) && !taken.has(`r${pair.right}`));
    if (made.length === before && round > 0) break;
  }
  const { joined, asked } = moreTakers(used, made, sides, roles);
  made.push(...joined);
  const ask = questionsOf([...open, ...asked], made, sides);
  const joins = made
    .map((one) => joinOf(one, sides))
    .sort((a, b) => compareNames(a.left, b.left) || compareNames(a.right, b.right));
  const settled = settledNames(joins, ask);
  const capLeft = left.filter((one) => isSpare(one) && !settled.left.has(one.lead.name));
  const capRight = right.filter((one) => isSpare(one) && !settled.right.has(one.lead.name));
  return {
    joins,
    ask,
    splices: splicesOf(made, sides),
    capLeft: capLeft.map((one) => one.lead.name),
    capRight: capRight.map((one) => one.lead.name),
    missing: missingOf(sides, { left: capLeft, right: capRight }, roles),
  };
}

export type Sides = { readonly left: readonly InContext[]; readonly right: readonly InContext[] };

/** One side is what the other is not; two that seem the same are both in doubt. */
function rolesOf(left: Chart, right: Chart): Roles {
  const one = roleOf(left);
  const other = roleOf(right);
  if (one === other) return { left: null, right: null };
  const opposite = { vehicle: "equipment", equipment: "vehicle" } as const;
  return { left: one ?? (other && opposite[other]), right: other ?? (one && opposite[one]) };
}

/** A cavity that the chart calls empty and that has no lead needs no cap. */
function isSpare({ lead }: InContext): boolean {
  return !lead.isUnused || lead.colour !== null;
}

function joinOf({ pair, confidence }: Made, sides: Sides): Join {
  const left = sides.left[pair.left]!;
  const right = sides.right[pair.right]!;
  return {
    left: left.lead.name,
    right: right.lead.name,
    function: pair.function,
    confidence: Math.round(confidence * 100) / 100,
    why: sayJoin(pair, left, right),
    traps: trapsOf(pair, sides),
  };
}

/** Open pairs that hang together make one question; a large knot is asked lead by lead. */
function questionsOf(open: readonly Pair[], made: readonly Made[], sides: Sides): readonly Question[] {
  const worth = open.filter((pair) => {
    if (pair.veto !== null && pair.veto !== "two outputs") return false;
    return pair.likely >= WORTH_ASKING || pair.sameWords;
  });
  const byLeft = groupBy(worth, (pair) => pair.left);
  // Leads with the very same candidates are one question, not two.
  const groups = new Map<string, { lefts: number[]; rights: readonly number[]; pairs: Pair[] }>();
  for (const [index, pairs] of byLeft) {
    const rights = best(pairs)
      .map((pair) => pair.right)
      .sort((a, b) => a - b);
    const key = rights.join();
    const group = groups.get(key);
    if (group) {
      group.lefts.push(index);
      group.pairs.push(...pairs);
    } else groups.set(key, { lefts: [index], rights, pairs: [...pairs] });
  }
  return mergeSingles([...groups.values()]).map(({ lefts, rights, pairs }) => ({
    left: lefts.map((index) => sides.left[index]!.lead.name),
    right: rights.map((index) => sides.right[index]!.lead.name),
    why: sayQuestion(lefts, rights, pairs, sides, made),
  }));
}

type Group = { lefts: number[]; rights: readonly number[]; pairs: Pair[] };

/** Groups that overlap in their right leads and are small become one: a person decides them together. */
function mergeSingles(groups: readonly Group[]): readonly Group[] {
  const merged: Group[] = [];
  for (const group of groups) {
    const near = merged.find(
      (one) =>
        one.rights.some((right) => group.rights.includes(right)) &&
        one.lefts.length + group.lefts.length <= 4,
    );
    if (!near) {
      merged.push({ ...group });
      continue;
    }
    near.lefts = [...near.lefts, ...group.lefts];
    near.rights = [...new Set([...near.rights, ...group.rights])].sort((a, b) => a - b);
    near.pairs = [...near.pairs, ...group.pairs];
  }
  return merged;
}

/** The likeliest candidates, at most five: a longer list is no help. */
function best(pairs: readonly Pair[]): readonly Pair[] {
  const most = Math.max(...pairs.map((pair) => pair.score));
  return [...pairs]
    .sort((a, b) => b.score - a.score)
    .filter((pair) => pair.score >= 0.3 * most)
    .slice(0, 5);
}

function settledNames(joins: readonly Join[], ask: readonly Question[]) {
  return {
    left: new Set([...joins.map((join) => join.left), ...ask.flatMap((question) => question.left)]),
    right: new Set([...joins.map((join) => join.right), ...ask.flatMap((question) => question.right)]),
  };
}

function groupBy(pairs: readonly Pair[], keyOf: (pair: Pair) => number): ReadonlyMap<number, Pair[]> {
  const groups = new Map<number, Pair[]>();
  for (const pair of pairs) {
    const list = groups.get(keyOf(pair));
    if (list) list.push(pair);
    else groups.set(keyOf(pair), [pair]);
  }
  return groups;
}

/** "A2" before "A10", whatever the machine's language. */
function compareNames(a: string, b: string): number {
  const pad = (name: string) => name.replace(/\d+/g, (digits) => digits.padStart(6, "0"));
  const one = pad(a);
  const other = pad(b);
  return one < other ? -1 : one > other ? 1 : 0;
}
