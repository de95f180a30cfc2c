import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BLADES } from "../../../src/electrical/fuse/blade.ts";
import { chooseFuse, FUSE_RULES, type FuseTask, mostAllowed } from "../../../src/electrical/fuse/choose.ts";

const task: FuseTask = {
  load_A: 7.5,
  weakest: { name: "W3", ampacity_A: 14 },
  form: "mini",
  rule: "at-most-ampacity",
};

// Source: two fuse makers' guides: at most 75 % of the rating for good; their example is 7.5 A on a 10 A fuse.
test("7.5 A for good takes a 10 A fuse, which is red", () => {
  const choice = chooseFuse(task);
  expect(choice).toMatchObject({ ok: true, blade: { rating_A: 10, colour: "red" }, most_A: 10 });
  expect(choice.ok && choice.rating.formula).toBe(
    "load 7.5 A / 0.75 = 10 A → 10 A; W3 carries 14 A, which allows up to 10 A",
  );
  expect(choice.ok && choice.rating.doubt).toContain("65, 75 and 80 % are all in use");
});

test("another share of the rating gives another fuse", () => {
  expect(chooseFuse({ ...task, continuousShare: 0.65 })).toMatchObject({ ok: false, grow: "wire" });
  expect(chooseFuse({ ...task, load_A: 8, continuousShare: 0.8 })).toMatchObject({ blade: { rating_A: 10 } });
});

describe("where none fits, it says what must grow", () => {
  test("the wire, and to what", () => {
    const choice = chooseFuse({ ...task, load_A: 9 });
    expect(choice).toMatchObject({ ok: false, grow: "wire", neededAmpacity_A: 15 });
    expect(!choice.ok && choice.why).toContain(
      "W3 carries 14 A and allows at most 10 A. It must carry 15 A or more",
    );
  });

  test("by the next-size rule a wire over the rating below is enough", () => {
    expect(chooseFuse({ ...task, load_A: 9, rule: "next-size" })).toMatchObject({
      ok: true,
      blade: { rating_A: 15 },
    });
    const thin = { name: "W3", ampacity_A: 9 };
    const choice = chooseFuse({ ...task, load_A: 9, rule: "next-size", weakest: thin });
    expect(choice).toMatchObject({ ok: false, grow: "wire", neededAmpacity_A: 10 });
    expect(!choice.ok && choice.why).toContain("more than 10 A");
  });

  test("the form", () => {
    const strong = { name: "W1", ampacity_A: 200 };
    expect(chooseFuse({ ...task, load_A: 30, weakest: strong })).toMatchObject({
      grow: "form",
      neededAmpacity_A: null,
    });
    expect(chooseFuse({ ...task, load_A: 30, weakest: strong, form: "maxi" })).toMatchObject({
      blade: { rating_A: 40, colour: "orange" },
    });
  });

  test("no rating at all is said", () => {
    const hair = { name: "W9", ampacity_A: 1.5 };
    const choice = chooseFuse({ ...task, load_A: 1, weakest: hair });
    expect(!choice.ok && choice.why).toContain("allows no rating at all");
  });
});

test("a fuse chosen carries the load, is the smallest that does, and keeps the rule", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 70, noNaN: true }),
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.constantFrom("mini", "regular", "maxi"),
      fc.constantFrom(...FUSE_RULES.map(({ id }) => id)),
      (load_A, ampacity_A, form, rule) => {
        const choice = chooseFuse({ load_A, form, rule, weakest: { name: "W", ampacity_A } });
        const bears = BLADES[form].filter(({ rating_A }) => rating_A * 0.75 >= load_A - 1e-9);
        const limit_A = rule === "at-most-ampacity" ? ampacity_A : ampacity_A * 1.5;
        if (choice.ok) {
          expect(choice.blade).toBe(bears[0]);
          expect(choice.blade.rating_A).toBeLessThanOrEqual(limit_A + 1e-6);
        } else if (choice.grow === "form") {
          expect(bears).toEqual([]);
        } else {
          expect(choice.neededAmpacity_A!).toBeGreaterThanOrEqual(ampacity_A * 0.999999);
          // With a hair more than it asks for, the wire is strong enough.
          const weakest = { name: "W", ampacity_A: choice.neededAmpacity_A! * 1.0001 };
          expect(chooseFuse({ load_A, form, rule, weakest }).ok).toBe(true);
        }
      },
    ),
    { seed: 8820, numRuns: 500 },
  );
});

test("the rules stand in the order of their caution", () => {
  for (const ampacity_A of [3, 9, 14, 20, 33, 61]) {
    const [strict, next, boats] = FUSE_RULES.map(({ id }) => mostAllowed(id, ampacity_A, BLADES.regular));
    expect(strict!).toBeLessThanOrEqual(next!);
    expect(next!).toBeLessThanOrEqual(Math.max(boats!, strict!));
  }
});

test.each([
  ["a negative load", { load_A: -1 }],
  ["no load", { load_A: Number.NaN }],
  ["a wire that carries nothing", { weakest: { name: "W", ampacity_A: 0 } }],
  ["a share above 1", { continuousShare: 1.1 }],
  ["a share of 0", { continuousShare: 0 }],
])("refuses %s", (_name, change) => {
  expect(() => chooseFuse({ ...task, ...change })).toThrow(RangeError);
});
