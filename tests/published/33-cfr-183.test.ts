import { describe, expect, test } from "vitest";
import { type AwgName, awgArea_mm2 } from "../../src/catalogue/conductors.ts";
import { ambientFactor } from "../../src/electrical/conductor/ampacity-book.ts";
import {
  CFR_AS_WRITTEN,
  CFR_BUNDLED,
  CFR_ENGINE_FACTORS,
  CFR_TABLE_5,
} from "../../src/electrical/conductor/ampacity-cfr.ts";
import {
  bundleFactor,
  CFR_BUNDLE_FACTORS,
  NEC_BUNDLE_FACTORS,
} from "../../src/electrical/conductor/bundle-factors.ts";
import { isKnown } from "../../src/electrical/figure.ts";
import { BLADES } from "../../src/electrical/fuse/blade.ts";
import { mostAllowed } from "../../src/electrical/fuse/choose.ts";

const open = { insulationLimit_degC: 105, engineSpace: false, loadedInBundle: 1, system_V: 12 };

function amperes(book: typeof CFR_BUNDLED, gauge: AwgName, conditions = open): number {
  const answer = book.ampacity(awgArea_mm2(gauge), conditions);
  if (!isKnown(answer)) throw new Error(answer.unknown);
  return answer.value;
}

// Source: 33 CFR 183.425 table 5, 105 °C column, amperes up to 30 °C; seen three times.
test.each([
  ["18", 20],
  ["16", 25],
  ["14", 35],
  ["12", 45],
  ["10", 60],
  ["8", 80],
  ["6", 120],
  ["4", 160],
  ["2", 210],
  ["1", 245],
  ["1/0", 285],
  ["2/0", 330],
  ["3/0", 385],
  ["4/0", 445],
] as const)("AWG %s carries %i A", (gauge, published) => {
  expect(amperes(CFR_AS_WRITTEN, gauge)).toBe(published);
});

// Source: the same table with its note 1 (engine space) and the bundle factor of 183.435(b).
test.each([
  ["16", 25, 21.25, 17.5, 14.875],
  ["10", 60, 51, 42, 35.7],
] as const)(
  "AWG %s: %f open, %f in an engine space, %f in three, %f both",
  (gauge, alone, hot, three, both) => {
    expect(amperes(CFR_BUNDLED, gauge)).toBe(alone);
    expect(amperes(CFR_BUNDLED, gauge, { ...open, engineSpace: true })).toBeCloseTo(hot, 9);
    expect(amperes(CFR_BUNDLED, gauge, { ...open, loadedInBundle: 3 })).toBeCloseTo(three, 9);
    expect(amperes(CFR_BUNDLED, gauge, { ...open, loadedInBundle: 3, engineSpace: true })).toBeCloseTo(
      both,
      9,
    );
  },
);

// Source: 33 CFR 183.435(b): bundles count from 50 V; 3 / 4 to 6 / 7 to 24 / 25 and more conductors.
test("as written, a bundle counts from 50 V only", () => {
  const bundled = { ...open, loadedInBundle: 30 };
  expect(amperes(CFR_AS_WRITTEN, "12", bundled)).toBe(45);
  expect(amperes(CFR_AS_WRITTEN, "12", { ...bundled, system_V: 110 })).toBeCloseTo(18, 9);
  expect([1, 2, 3, 4, 6, 7, 24, 25, 400].map((n) => bundleFactor(CFR_BUNDLE_FACTORS, n))).toEqual([
    1, 1, 0.7, 0.6, 0.6, 0.5, 0.5, 0.4, 0.4,
  ]);
});

// Source: NEC table 310.15(B)(3)(a).
test("the building code's factors begin at four", () => {
  expect([3, 4, 6, 7, 9, 10, 20, 21, 30, 31, 40, 41].map((n) => bundleFactor(NEC_BUNDLE_FACTORS, n))).toEqual(
    [1, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5, 0.45, 0.45, 0.4, 0.4, 0.35],
  );
});

// Source: table 5 note 1. The factors are the balance of heat, √((limit − 50) / (limit − 30)), rounded: which also
// bears out the 0.58 of 60 °C wire, known from memory only. 200 °C wire is let off by the regulation.
test.each([60, 75, 80, 90, 105, 125])(
  "the engine-space factor of %i °C wire is the balance of heat",
  (limit) => {
    expect(Math.abs(ambientFactor(limit, 50, 30) / CFR_ENGINE_FACTORS.get(limit)! - 1)).toBeLessThan(0.008);
  },
);

test("current rises along every row and down every column: a slip of a digit would break it", () => {
  for (const [index, [, row]] of CFR_TABLE_5.entries()) {
    expect([...row].sort((a, b) => a - b)).toEqual(row);
    const next = CFR_TABLE_5[index + 1]?.[1];
    for (const [column, amps] of (next ?? []).entries()) expect(amps).toBeGreaterThan(row[column]!);
  }
});

// Source: 33 CFR 183.455(c)(1), at most 150 %; 46 CFR 183.380(d), next standard size up to 150 %. Worked on the ratings
// 15, 20, 25, 30, 35, 40, 50, 60 A and 105 °C wire.
describe("the largest fuse on a wire", () => {
  const ratings = [15, 20, 25, 30, 35, 40, 50, 60].map((rating_A) => ({ ...BLADES.regular[0]!, rating_A }));
  test.each([
    ["14", 35, 50, 35],
    ["12", 45, 60, 50],
    ["18", 20, 30, 20],
  ] as const)("AWG %s, %i A: %i A by one, %i A by the other", (gauge, ampacity_A, boats, nextSize) => {
    expect(amperes(CFR_AS_WRITTEN, gauge)).toBe(ampacity_A);
    expect(mostAllowed("150-percent", ampacity_A, ratings)).toBe(boats);
    expect(mostAllowed("next-size", ampacity_A, ratings)).toBe(nextSize);
  });
});
