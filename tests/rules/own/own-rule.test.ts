import { describe, expect, test } from "vitest";
import type { Harness } from "../../../src/graph/harness.ts";
import { check } from "../../../src/rules/check.ts";
import { type OwnRule, sayCondition, unreadable } from "../../../src/rules/own/own-rule.ts";
import { PROPERTIES } from "../../../src/rules/own/properties.ts";
import { build } from "../../build.ts";
import { namesOf, sentencesAreSound } from "../test-rule.ts";

const SEALED: OwnRule = {
  id: "sealed-outside",
  words: "Every joint outside is sealed",
  severity: "fault",
  of: "joint",
  where: [{ property: "zone", is: "one-of", values: ["outside", "engine-bay"] }],
  must: [{ property: "cover", is: "one-of", values: ["adhesive-sleeve", "housing"] }],
};
const NO_TAPS: OwnRule = {
  id: "no-taps",
  words: "no tap connectors.",
  severity: "weak",
  of: "joint",
  where: [],
  must: [{ property: "method", is: "none-of", values: ["tap"] }],
};
const LABELLED: OwnRule = {
  id: "labels",
  words: "Every wire is labelled at both ends",
  severity: "tidy",
  of: "wire",
  where: [],
  must: [{ property: "label", is: "given", values: [] }],
};
const BLACK: OwnRule = {
  id: "black-grounds",
  words: "Ground wires are black or brown",
  severity: "tidy",
  of: "wire",
  where: [{ property: "carries", is: "one-of", values: ["ground"] }],
  must: [{ property: "base-colour", is: "one-of", values: ["BK", "BN"] }],
};
const THICK: OwnRule = {
  id: "thick-feeds",
  words: "Feeds have at least 1.5 mm²",
  severity: "weak",
  of: "wire",
  where: [{ property: "carries", is: "one-of", values: ["feed"] }],
  must: [{ property: "size", is: "at-least", values: ["1,5"] }],
};

/** A lamp outside, fed through a joint that is taped, its ground blue. */
function lamp(own: readonly OwnRule[]): Harness {
  return build()
    .vehicle("X1", { "1": "constant-feed RD fuse:10", "2": "ground BN" })
    .part("load", "E1", { function: "work-lamp", current_A: 2 })
    .wire("X1.1", "XJ1", "RD", { label: "feed", area_mm2: 1.5, designation: "W1" })
    .wire("XJ1", "E1.+", "RD", { area_mm2: 0.75, designation: "W2" })
    .wire("E1.-", "X1.2", "BU", { label: "ground", area_mm2: 1.5, designation: "W3" })
    .change("XJ1", { method: "tap", cover: "tape" })
    .run("R1", { zone: "outside" }, ["W1", "W2"])
    .rules({ shop: "Thistledown workshop", own: [...own] }).harness;
}

function told(own: readonly OwnRule[], harness = lamp(own)): string[] {
  return check(harness)
    .filter((finding) => finding.group === "own")
    .map((finding) => {
      sentencesAreSound(finding);
      return `${finding.rule} ${finding.severity} at ${namesOf(harness, finding).join(", ")}`;
    });
}

describe("a shop's own rules", () => {
  test.each([
    ["joints outside, where a joint lies by its wires' runs", SEALED, ["own-sealed-outside fault at XJ1"]],
    ["a kind of joint is not wanted", NO_TAPS, ["own-no-taps weak at XJ1"]],
    ["every wire says something", LABELLED, ["own-labels tidy at W2"]],
    ["colours by what a wire carries", BLACK, ["own-black-grounds tidy at W3"]],
    ["sizes by what a wire carries, a comma for a point", THICK, ["own-thick-feeds weak at W2"]],
  ])("%s", (_, rule, expected) => {
    expect(told([rule])).toEqual(expected);
  });

  test("are silent where all is as they say", () => {
    const sound = (own: readonly OwnRule[]) => {
      const harness = lamp(own);
      const { parts, wires } = harness;
      const fixed = Object.values(parts).map((part) =>
        part.kind === "splice"
          ? { ...part, method: "crimped-butt" as const, cover: "adhesive-sleeve" as const }
          : part,
      );
      const good = Object.values(wires).map((wire) => ({
        ...wire,
        label: wire.designation,
        area_mm2: 1.5,
        colour: wire.designation === "W3" ? { base: "BN" as const, tracer: null } : wire.colour,
      }));
      return {
        ...harness,
        parts: Object.fromEntries(fixed.map((part) => [part.id, part])),
        wires: Object.fromEntries(good.map((wire) => [wire.id, wire])),
      };
    };
    const own = [SEALED, NO_TAPS, LABELLED, BLACK, THICK];
    expect(told(own, sound(own))).toEqual([]);
  });

  test("what nobody has stated fulfils nothing, and chooses nothing", () => {
    const harness = build()
      .vehicle("X1", { "1": "constant-feed RD fuse:10" })
      .unit("X2", { "1": "constant-feed" })
      .path("X1.1", "XJ1", "X2.1");
    expect(told([SEALED], harness.rules({ own: [SEALED] }).harness)).toEqual([]);
    const anywhere = { ...SEALED, where: [] };
    expect(told([anywhere], harness.rules({ own: [anywhere] }).harness)).toEqual([
      "own-sealed-outside fault at XJ1",
    ]);
  });

  test("name the shop and say what is and what ought to be", () => {
    const [finding] = check(lamp([SEALED])).filter(({ group }) => group === "own");
    expect(finding?.message).toBe(
      "Joint XJ1 is against a rule of Thistledown workshop, “Every joint outside is sealed” (cover: tape).",
    );
    expect(finding?.remedy).toBe("See to it that cover is adhesive sleeve or housing.");
  });

  test("one that cannot be read is told, and judges nothing", () => {
    const odd: OwnRule = { ...SEALED, where: [], must: [{ property: "flavour", is: "given", values: [] }] };
    expect(unreadable(odd)).toHaveLength(1);
    const harness = lamp([odd]);
    expect(told([odd], harness)).toEqual([]);
    const finding = check(harness).find(({ rule }) => rule === "unreadable-rule");
    expect(finding?.message).toContain("flavour");
    expect(
      unreadable({ ...THICK, must: [{ property: "size", is: "at-least", values: ["thick"] }] }),
    ).toHaveLength(1);
    expect(
      unreadable({ ...THICK, must: [{ property: "size", is: "one-of", values: ["1.5"] }] }),
    ).toHaveLength(1);
  });
});

test("every property of every kind of thing can be said in a form", () => {
  for (const [kind, properties] of Object.entries(PROPERTIES)) {
    expect(new Set(properties.map(({ id }) => id)).size).toBe(properties.length);
    for (const property of properties) {
      expect(property.id).toMatch(/^[a-z][a-z-]*$/);
      if (property.kind === "choice") expect(property.choices?.length, property.id).toBeGreaterThan(1);
      const words = sayCondition(kind as OwnRule["of"], { property: property.id, is: "given", values: [] });
      expect(words).toBe(`${property.words} is stated`);
    }
  }
});
