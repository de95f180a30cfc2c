import { describe, expect, test } from "vitest";
import type { Join, Proposal } from "../../../src/match/propose/proposal.ts";
import { score, scorePair } from "./score.ts";
import { loadPairs, type Pair, parsePair } from "./truth.ts";
import { readAsKnown } from "./truth-chart.ts";

const ALL = (["pairs", "held-out", "second", "third", "fourth"] as const).flatMap(loadPairs);

/** A reader that knows the answer, so that what is tested is the counting. */
function oracle(pair: Pair, joins: readonly Join[]) {
  return {
    readCharts: readAsKnown(pair),
    propose: (): Proposal => ({
      joins,
      ask: [],
      splices: [],
      capLeft: pair.left.map((row) => row.name),
      capRight: pair.right.map((row) => row.name),
      missing: [],
    }),
  };
}

const trueJoins = (pair: Pair): Join[] =>
  pair.joins.map(({ left, right }) => {
    const functionId = pair.left.find((row) => row.name === left)!.functions[0]!;
    return { left, right, function: functionId, confidence: 1, why: "the answer says so", traps: [] };
  });

describe("the corpus", () => {
  test("is large enough, and a third of it is held out", () => {
    expect(ALL.length).toBeGreaterThanOrEqual(60);
    expect(loadPairs("held-out").length).toBeGreaterThanOrEqual(20);
  });

  test("refuses an answer that forgets a lead", () => {
    const text =
      "===== left\n1 x\n===== right\nA x\n===== answer\nleft\n1 | ground | - | = A\nright\nA | | -\nB | horn | -\n";
    expect(() => parsePair("made up", text)).toThrow("right B: joined or capped?");
  });
});

describe("the score", () => {
  test.each(ALL.map((pair) => [pair.name, pair] as const))("gives the truth full marks: %s", (_, pair) => {
    const sum = scorePair(pair, oracle(pair, trueJoins(pair)));
    expect(sum.faults).toEqual([]);
    expect(sum.rowsRight).toBe(sum.rows);
    expect(sum.sureMade).toBe(sum.joinsSure);
    expect(sum.joinsWrong).toBe(0);
  });

  test("counts a feed joined with another feed as wrong on power", () => {
    const pair = ALL.find((one) => one.name === "08-exchanged-a4-a7")!;
    const crossed = trueJoins(pair).map((join) =>
      join.left === "A4" ? { ...join, right: "A4" } : join.left === "A7" ? { ...join, right: "A7" } : join,
    );
    const sum = scorePair(pair, oracle(pair, crossed));
    expect(sum.joinsWrong).toBe(2);
    expect(sum.joinsWrongOnPower).toBe(2);
    expect(sum.sureMade).toBe(sum.joinsSure - 2);
  });

  test("gives nothing for saying nothing", () => {
    const silent = {
      readCharts: () => ({ charts: [], remarks: [] }),
      propose: (): Proposal => ({ joins: [], ask: [], splices: [], capLeft: [], capRight: [], missing: [] }),
    };
    const sum = score(ALL, silent);
    expect(sum.rowsRight).toBe(0);
    expect(sum.sureMade).toBe(0);
    expect(sum.rows).toBeGreaterThan(1000);
  });
});
