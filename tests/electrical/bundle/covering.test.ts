import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BEND_RULES, leastBendRadius } from "../../../src/electrical/bundle/bend-radius.ts";
import { bundleMass } from "../../../src/electrical/bundle/bundle-mass.ts";
import { COVERINGS, type CoveringKind, chooseCovering } from "../../../src/electrical/bundle/covering.ts";
import {
  chooseHeatShrink,
  shrinkFit,
  stockedHeatShrink,
} from "../../../src/electrical/bundle/heat-shrink.ts";

describe("heat-shrink", () => {
  const tube = (supplied_mm: number, ratio: number) => ({
    name: `${supplied_mm} mm ${ratio}:1`,
    supplied_mm,
    recovered_mm: supplied_mm / ratio,
  });

  // Source: suppliers' size guides (20 % play; recovered no wider than the thinnest part): 5.0 mm over a 2.0 mm wire.
  test.each([
    [6.4, 2, false, true, false],
    [6.0, 3, true, true, true],
    [8.0, 4, true, true, true],
    [5.5, 3, false, false, true],
  ])("%f mm %i:1 over 5 mm and 2 mm: fits %s", (supplied_mm, ratio, fits, slidesOn, grips) => {
    expect(shrinkFit(tube(supplied_mm, ratio), 5, 2)).toMatchObject({ fits, slidesOn, grips });
  });

  test("it says both halves of the answer", () => {
    expect(shrinkFit(tube(6.4, 2), 5, 2).why).toBe(
      "slides on: 6.4 mm for 6 mm; stays loose: shrinks to 3.2 mm over 2 mm",
    );
  });

  test("the least ratio that does is taken, then the smallest tube", () => {
    expect(chooseHeatShrink(5, 4)?.name).toBe("6.4 mm 2:1");
    expect(chooseHeatShrink(5, 2.2)?.name).toBe("6.4 mm 3:1");
    expect(chooseHeatShrink(5, 1.7)?.name).toBe("6.4 mm 4:1");
    expect(chooseHeatShrink(5, 0.4)).toBeNull();
    expect(chooseHeatShrink(60, 50)).toBeNull();
    expect(chooseHeatShrink(5, 2.2, stockedHeatShrink(2))).toBeNull();
  });

  test("what is chosen fits", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 45, noNaN: true }),
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        (widest_mm, share) => {
          const thinnest_mm = widest_mm * share;
          const chosen = chooseHeatShrink(widest_mm, thinnest_mm);
          if (chosen === null) {
            const all = ([2, 3, 4] as const).flatMap(stockedHeatShrink);
            expect(all.some((one) => shrinkFit(one, widest_mm, thinnest_mm).fits)).toBe(false);
          } else {
            expect(chosen.supplied_mm).toBeGreaterThanOrEqual(widest_mm);
            expect(chosen.recovered_mm).toBeLessThanOrEqual(thinnest_mm + 1e-9);
          }
        },
      ),
      { seed: 31, numRuns: 200 },
    );
  });

  test("refusals", () => {
    expect(() => shrinkFit(tube(6, 3), 0, 0)).toThrow(RangeError);
    expect(() => shrinkFit(tube(6, 3), 2, 3)).toThrow(RangeError);
    expect(() => shrinkFit(tube(6, 3), Number.NaN, 1)).toThrow(RangeError);
  });
});

describe("coverings", () => {
  test.each([
    ["braided-sleeve", 6, "braided sleeve 4 mm"],
    ["split-loom", 8, "split loom 10 mm inside"],
    ["grommet", 8, "grommet 8 mm bore"],
    ["grommet", 8.1, "grommet 10 mm bore"],
  ] as const)("%s for %f mm: %s", (kind, bundle_mm, name) => {
    expect(chooseCovering(kind, bundle_mm)).toMatchObject({ ok: true, covering: { name } });
  });

  test("too thick and too thin are said with the size that ends there", () => {
    expect(chooseCovering("grommet", 41)).toEqual({
      ok: false,
      why: "41 mm is too thick: grommet 40 mm bore takes 40 mm",
    });
    expect(chooseCovering("braided-sleeve", 1.5)).toEqual({
      ok: false,
      why: "1.5 mm is too thin: braided sleeve 3 mm begins at 2 mm",
    });
  });

  test.each(Object.keys(COVERINGS) as CoveringKind[])(
    "%s: every bundle from the thinnest to the thickest is served",
    (kind) => {
      const stock = COVERINGS[kind];
      const least_mm = Math.max(stock[0]!.least_mm, 0.1);
      for (let bundle_mm = least_mm; bundle_mm <= stock.at(-1)!.most_mm; bundle_mm += 0.1) {
        const choice = chooseCovering(kind, bundle_mm);
        expect(choice.why, choice.why).not.toMatch(/too/);
        expect(choice.ok && choice.covering.most_mm).toBeGreaterThanOrEqual(bundle_mm - 1e-9);
      }
      expect(() => chooseCovering(kind, 0)).toThrow(RangeError);
      expect(() => chooseCovering(kind, Number.NaN)).toThrow(RangeError);
    },
  );
});

test("mass adds up over wires of unlike length", () => {
  const mass = bundleMass([
    { grams_per_m: 25, length_m: 2 },
    { grams_per_m: 8, length_m: 0.5 },
  ]);
  expect(mass).toMatchObject({ value: 54, unit: "g" });
  expect(bundleMass([]).value).toBe(0);
  expect(() => bundleMass([{ grams_per_m: Number.NaN, length_m: 1 }])).toThrow(RangeError);
});

// Source: NASA-STD-8739.4 7.3.21: 10 outside diameters for good, never under 6; FAA AC 43.13-1B, breakouts 3 (from memory).
test("bend radius by the rule that is asked", () => {
  expect(leastBendRadius(9.5).value).toBe(95);
  expect(BEND_RULES.map((rule) => leastBendRadius(10, rule).value)).toEqual([100, 60, 100, 30]);
  expect(leastBendRadius(10, BEND_RULES[3])).toMatchObject({ doubt: "from memory" });
  expect(() => leastBendRadius(0)).toThrow(RangeError);
});
