import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { type Checked, recheck } from "../../src/rules/check.ts";
import { FACETS, type Facet } from "../../src/rules/facets.ts";
import { changedFacets } from "../../src/rules/facets-changed.ts";
import { defineRule, type Rule } from "../../src/rules/rule.ts";
import { build } from "../build.ts";
import { randomEdit } from "../graph/random.ts";
import { telling } from "./telling.ts";

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });

/** All that a person or another program reads of a check, cures included. */
function told({ findings }: Checked): readonly string[] {
  return findings.map(({ fix, suggestions, ...rest }) =>
    JSON.stringify([rest, fix && [fix.label, fix.edit], suggestions.map(({ label, edit }) => [label, edit])]),
  );
}

/** The same harness as new objects throughout, so that nothing remembered for the other one answers. */
const anew = (harness: Harness): Harness => JSON.parse(JSON.stringify(harness)) as Harness;

test("after every edit, what is checked again equals a full check", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      let { dice, harness } = telling(seed);
      let checked = recheck(null, harness, trace(harness));
      for (let step = 0; step < 8; step++) {
        const edit = randomEdit(dice, harness);
        if ("ok" in edit) continue;
        const result = apply(harness, edit);
        if (!result.ok) continue;
        harness = result.harness;
        checked = recheck(checked, harness, trace(harness));
        const full = anew(harness);
        expect(told(checked), edit.kind).toEqual(told(recheck(null, full, trace(full))));
      }
    }),
    { numRuns: 60, seed: 20261101 },
  );
});

describe("what an edit changed", () => {
  const before = build()
    .vehicle("X1", { A4: "constant-feed RD 1.5 fuse:15" })
    .unit("X2", { "1": "constant-feed YE" })
    .path("X1.A4", "F1", "X2.1")
    .run("R1", { zone: "cabin" }, ["W1"]).harness;
  const changed = (change: (from: ReturnType<typeof build>) => Harness): readonly Facet[] =>
    [...changedFacets(before, change(build(before)))].sort();

  test.each<[string, (from: ReturnType<typeof build>) => Harness, readonly Facet[]]>([
    ["nothing", (from) => from.harness, []],
    ["a length", (from) => from.change("W1", { length_m: 2 }).harness, ["lengths"]],
    [
      "a size and a colour",
      (from) => from.change("W1", { area_mm2: 4, colour: null }).harness,
      ["colours", "sizes"],
    ],
    ["a rating", (from) => from.change("F1", { rating_A: 10 }).harness, ["ratings"]],
    ["a name", (from) => from.change("F1", { designation: "F9" }).harness, ["designations"]],
    ["a note", (from) => from.change("F1", { note: "by the door" }).harness, ["notes"]],
    [
      "the way a connector is seen",
      (from) => from.change("X1", { view: "mating-face" }).harness,
      ["housings"],
    ],
    ["a label", (from) => from.change("W2", { label: "radio" }).harness, ["labels"]],
    ["a part more", (from) => from.part("ground", "XE1").harness, ["designations", "parts"]],
    ["the voltage", (from) => from.settings({ systemVoltage_V: 24 }).harness, ["settings"]],
    [
      "where things stand on the drawing",
      (from) => ({ ...from.harness, layout: { places: {}, paths: {} } }),
      [],
    ],
  ])("%s", (_, change, facets) => {
    expect(changed(change)).toEqual(facets);
  });
});

test("a rule is asked again only where something that it reads has changed", () => {
  let asked = 0;
  const rule: Rule = defineRule({
    meta: {
      id: "counts",
      group: "drawing",
      severity: "tidy",
      summary: "Counts.",
      source: "a test of ours",
      reads: ["lengths"],
      fixable: false,
    },
    check: () => {
      asked++;
      return [];
    },
  });
  const first = build().vehicle("X1", { "1": "constant-feed" }).wire("X1.1", "XC1");
  const again = (before: Checked | null, harness: Harness) =>
    recheck(before, harness, trace(harness), [rule]);
  let checked = again(null, first.harness);
  expect(asked).toBe(1);
  checked = again(checked, build(first.harness).change("W1", { area_mm2: 1 }).harness);
  expect(asked).toBe(1);
  again(checked, build(checked.harness).change("W1", { length_m: 1 }).harness);
  expect(asked).toBe(2);
  expect(FACETS).toContain("lengths");
});
