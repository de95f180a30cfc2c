import { expect, test } from "vitest";
import { bundleDiameter, ruleOfThumb } from "../../src/electrical/bundle/bundle-diameter.ts";
import { packCircles } from "../../src/electrical/bundle/pack/pack.ts";

// Source: best packings known of n equal circles in a circle, diameter of the whole over that of one. n = 1 to 20 from the
// encyclopaedic table (after Graham, Kravitz, Pirl, Goldberg, Reis, Melissen, Fodor), proved best for 1 to 14 and 19;
// n = 21 to 37 found again by search, and equal to E. Specht's tables as far as these are remembered.
const BEST = [
  1, 2, 2.154701, 2.414214, 2.701302, 3, 3, 3.304765, 3.613126, 3.813026, 3.923804, 4.029602, 4.236068,
  4.328429, 4.521357, 4.615426, 4.792034, 4.863703, 4.863703, 5.122321, 5.252317, 5.439719, 5.545204,
  5.651661, 5.752824, 5.828177, 5.906398, 6.014938, 6.138598, 6.197741, 6.291503, 6.429463, 6.486703,
  6.610957, 6.697171, 6.746754, 6.75877,
];

test.each(BEST.map((ratio, index) => [index + 1, ratio] as const))(
  "%i equal circles: within 3 %% of %f, never below",
  (count, best) => {
    const ratio = packCircles(Array<number>(count).fill(1)).diameter_mm;
    // The published figures are rounded to six places.
    expect(ratio).toBeGreaterThan(best - 1e-6);
    expect(ratio).toBeLessThan(best * 1.03);
  },
);

// Source: the same table's closed forms.
test.each([
  [3, 1 + 2 / Math.sqrt(3)],
  [4, 1 + Math.SQRT2],
  [5, 1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5)))],
  [7, 3],
  [8, 1 + 1 / Math.sin(Math.PI / 7)],
  [9, 1 + Math.sqrt(2 * (2 + Math.SQRT2))],
  [19, 1 + Math.SQRT2 + Math.sqrt(6)],
])("%i equal circles come to the closed form %f", (count, exact) => {
  expect(packCircles(Array<number>(count).fill(1)).diameter_mm).toBeCloseTo(exact, 4);
});

const times = (count: number, diameter_mm: number) => Array<number>(count).fill(diameter_mm);

// Source: geometry. Two beside each other; a third in the gap of a pair; the outer tangent circle of three (Descartes).
test.each([
  [[3, 2], 5],
  [[3, 2, 1], 5],
  [[3, 2, 2], 5.149545],
  [[1.9, 1.9, 2.4], 4.492962],
  [[1.4, 1.4, 1.4], 3.016581],
])("wires of %j mm need %f mm exactly, and the rule of thumb gives less", (wires, exact) => {
  expect(packCircles(wires).diameter_mm).toBeCloseTo(exact, 5);
  expect(ruleOfThumb(wires).value).toBeLessThan(exact);
  expect(bundleDiameter(wires).reckoned.value).toBeCloseTo(exact, 5);
});

// Source: best found by long repeated search for this list, mm; radii 1 to n are the known contest records (n = 4 to 8).
test.each([
  ["four 1.4, two 1.9", [...times(4, 1.4), ...times(2, 1.9)], 4.7],
  ["one 4.3, six 1.4", [4.3, ...times(6, 1.4)], 6.3957],
  ["two 3.0, four 1.9, six 1.4", [...times(2, 3), ...times(4, 1.9), ...times(6, 1.4)], 7.5485],
  ["eight 1.9, two 2.4, two 3.0", [...times(8, 1.9), ...times(2, 2.4), ...times(2, 3)], 8.7218],
  [
    "ten 1.4, six 1.6, two 2.4, two 3.7",
    [...times(10, 1.4), ...times(6, 1.6), ...times(2, 2.4), ...times(2, 3.7)],
    9.5845,
  ],
  ["radii 1 to 4", [2, 4, 6, 8], 14],
  ["radii 1 to 5", [2, 4, 6, 8, 10], 18.002796],
  ["radii 1 to 6", [2, 4, 6, 8, 10, 12], 22.11408],
  ["radii 1 to 7", [2, 4, 6, 8, 10, 12, 14], 26.924222],
  ["radii 1 to 8", [2, 4, 6, 8, 10, 12, 14, 16], 32.443494],
])("%s: within 2 %% of the best found", (_mix, wires, best) => {
  const { diameter_mm } = packCircles(wires);
  expect(diameter_mm).toBeGreaterThan(best * (1 - 1e-5));
  expect(diameter_mm).toBeLessThan(best * 1.02);
});

// Source: the same table against 1.2 √n: too small for 2 to 6, 9 and 10 equal wires, large enough for the others to 37.
test("the rule of thumb is impossible for just those numbers of wires", () => {
  const tooSmall = BEST.map((best, index) => ({ count: index + 1, best }))
    .filter(({ count, best }) => ruleOfThumb(times(count, 1)).value < best)
    .map(({ count }) => count);
  expect(tooSmall).toEqual([2, 3, 4, 5, 6, 9, 10]);
});
