import { describe, expect, test } from "vitest";
import {
  conditionOn,
  firstCondition,
  freshRule,
  limitRows,
  waysToAsk,
  withLimit,
  withRule,
} from "../../../src/editor/rules/profile-model.ts";
import { rulesFound } from "../../../src/editor/rules/rule-list-model.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { LIMITS, OWN_RULE_THINGS } from "../../../src/graph/schema/rules.ts";
import { unreadable } from "../../../src/rules/own/own-rule.ts";
import { PRESETS } from "../../../src/rules/own/presets.ts";
import { PROPERTIES } from "../../../src/rules/own/properties.ts";
import { RULES } from "../../../src/rules/registry.ts";

const rules = emptyHarness().settings.rules;

describe("limits as the form shows them", () => {
  test("the book's figure stands beside the shop's own", () => {
    const own = { ...rules, limits: [{ name: "ringsOnStud" as const, value: 2 }] };
    const rows = limitRows(own);
    expect(rows.map(({ name }) => name)).toEqual([...LIMITS]);
    expect(rows.find(({ name }) => name === "ringsOnStud")).toMatchObject({ value: 4, own: 2 });
    expect(rows.find(({ name }) => name === "turnOn_A")).toMatchObject({ own: null, unit: "A" });
  });

  test("is set, changed, and left to the book again; a text that is no number is not taken", () => {
    const set = withLimit(rules, "turnOn_A", " 0,3 ")!;
    expect(set).toEqual([{ name: "turnOn_A", value: 0.3 }]);
    expect(withLimit({ ...rules, limits: set }, "turnOn_A", "1")).toEqual([{ name: "turnOn_A", value: 1 }]);
    expect(withLimit({ ...rules, limits: set }, "turnOn_A", "")).toEqual([]);
    for (const typed of ["many", "-1", "1e9"]) expect(withLimit(rules, "turnOn_A", typed)).toBeNull();
  });
});

describe("rules of the shop's own", () => {
  test("get a name that none has yet, and are changed in their place", () => {
    const one = freshRule([], PRESETS[0]!);
    const two = freshRule([one], PRESETS[0]!);
    expect([one.id, two.id]).toEqual(["sealed-outside", "sealed-outside-2"]);
    const changed = { ...one, words: "Sealed" };
    expect(withRule([one, two], changed)).toEqual([changed, two]);
    expect(withRule([one], two)).toEqual([one, two]);
  });

  test("whatever the form can put together can be read", () => {
    for (const of of OWN_RULE_THINGS) {
      expect(unreadable({ ...freshRule([], null), of, must: [firstCondition(of)] })).toEqual([]);
      for (const property of PROPERTIES[of]) {
        const start = conditionOn(property);
        expect(unreadable({ ...freshRule([], null), of, must: [start] }), property.id).toEqual([]);
        for (const [is] of waysToAsk(property)) {
          const values =
            is === "given" || is === "not-given" ? [] : property.kind === "number" ? ["2"] : ["x"];
          expect(unreadable({ ...freshRule([], null), of, must: [{ ...start, is, values }] })).toEqual([]);
        }
      }
    }
    for (const preset of PRESETS) expect(unreadable(preset)).toEqual([]);
  });
});

describe("the list of rules", () => {
  test("holds all of them, group by group", () => {
    const groups = rulesFound(RULES, "");
    expect(groups.flatMap((group) => group.rules)).toHaveLength(RULES.length);
    expect(groups[0]?.name).toBe("Loose ends and spares");
  });

  test("is narrowed by every word typed", () => {
    const ids = (typed: string) =>
      rulesFound(RULES, typed).flatMap((group) => group.rules.map(({ meta }) => meta.id));
    expect(ids("no-fuse")).toContain("no-fuse");
    expect(ids("SUPPLY fuse danger")).toContain("no-fuse");
    expect(ids("no such words")).toEqual([]);
  });
});
