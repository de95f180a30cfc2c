import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ambientFactor } from "../../../src/electrical/conductor/ampacity-book.ts";
import { AMPACITY_BOOKS, ampacityBook } from "../../../src/electrical/conductor/ampacity-books.ts";
import { bundleFactor, NEC_BUNDLE_FACTORS } from "../../../src/electrical/conductor/bundle-factors.ts";
import { isKnown } from "../../../src/electrical/figure.ts";

const open = { insulationLimit_degC: 105, engineSpace: false, loadedInBundle: 1, system_V: 12 };

function amperes(id: string, area_mm2: number, conditions = open): number | string {
  const answer = ampacityBook(id).ampacity(area_mm2, conditions);
  return isKnown(answer) ? answer.value : answer.unknown;
}

// Source: the five books as restated beside their tables; the spread for one wire is real and is the reason to name one.
test("1.5 mm² carries from 7 to 25 A, by the book that is asked", () => {
  expect(amperes("33-cfr-183", 1.5)).toBe(25);
  expect(amperes("33-cfr-183-bundled", 1.5, { ...open, loadedInBundle: 3 })).toBeCloseTo(17.5, 9);
  expect(amperes("thin-wall-sheet", 1.5)).toBe(21);
  expect(amperes("ac-43-13-1b", 1.5)).toBe(7);
  expect(amperes("five-per-mm2", 1.5)).toBe(7.5);
});

// Source: a cable distributor's sheet, nominal current of thin-wall cable.
test.each([
  [0.5, 11],
  [0.75, 14],
  [1, 16.5],
  [4, 39],
  [10, 70],
])("the thin-wall sheet gives %f mm² %f A", (area_mm2, published) => {
  expect(amperes("thin-wall-sheet", area_mm2)).toBe(published);
});

test("a wire between rows counts as the thinner row, and the formula says so", () => {
  const answer = ampacityBook("33-cfr-183").ampacity(1.5, open);
  expect(answer).toMatchObject({ formula: "1.5 mm² counts as 16 AWG, 105 °C: 25 A = 25 A" });
  expect(amperes("33-cfr-183", 2)).toBe(25);
  expect(amperes("33-cfr-183", 2.081)).toBe(35);
});

describe("a book that does not say gives no number", () => {
  test.each([
    ["33-cfr-183", 0.5, open, "begins at 18 AWG"],
    ["33-cfr-183", 1.5, { ...open, insulationLimit_degC: 55 }, "begins at 60 °C wire"],
    ["ac-43-13-1b", 1.5, { ...open, insulationLimit_degC: 90 }, "begins at 105 °C wire"],
    ["thin-wall-sheet", 0.35, open, "begins at 0.5 mm²"],
    ["thin-wall-sheet", 16, open, "ends at 10 mm²"],
    ["thin-wall-sheet", 1.5, { ...open, insulationLimit_degC: 85 }, "for 100 °C cable"],
  ] as const)("%s, %f mm²", (id, area_mm2, conditions, words) => {
    expect(amperes(id, area_mm2, conditions)).toContain(words);
  });
});

test("insulation between two columns reads the cooler one", () => {
  expect(amperes("33-cfr-183", 2.081, { ...open, insulationLimit_degC: 100 })).toBe(30);
});

test("doubts are carried: a small bundle on a boat, 60 °C wire near an engine, a sheet without conditions", () => {
  const cfr = ampacityBook("33-cfr-183").ampacity(2.081, { ...open, loadedInBundle: 5 });
  expect(cfr).toMatchObject({ value: 35, doubt: expect.stringContaining("under 50 V") });
  const hot = { ...open, insulationLimit_degC: 60, engineSpace: true };
  expect(ampacityBook("33-cfr-183").ampacity(2.081, hot)).toMatchObject({
    doubt: expect.stringContaining("from memory"),
  });
  expect(ampacityBook("thin-wall-sheet").ampacity(1, open)).toMatchObject({
    doubt: expect.stringContaining("neither the air nor the bundle"),
  });
});

test("no book lets a wire carry more for lying hotter, fuller or thinner", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...AMPACITY_BOOKS),
      fc.double({ min: 0.1, max: 120, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
      fc.constantFrom(60, 75, 90, 105, 125, 150, 200),
      fc.integer({ min: 1, max: 60 }),
      (book, area_mm2, times, insulationLimit_degC, loadedInBundle) => {
        const value = (area: number, conditions = { ...open, insulationLimit_degC }) => {
          const answer = book.ampacity(area, conditions);
          return isKnown(answer) ? answer.value : null;
        };
        const plain = value(area_mm2);
        if (plain === null) return;
        const conditions = { ...open, insulationLimit_degC };
        expect(plain).toBeGreaterThan(0);
        expect(value(area_mm2, { ...conditions, engineSpace: true })).toBeLessThanOrEqual(plain);
        expect(value(area_mm2, { ...conditions, loadedInBundle })).toBeLessThanOrEqual(plain);
        const thicker = value(area_mm2 * times);
        if (thicker !== null) expect(thicker).toBeGreaterThanOrEqual(plain);
      },
    ),
    { seed: 425, numRuns: 500 },
  );
});

test.each(AMPACITY_BOOKS.map((book) => [book.id, book] as const))(
  "%s refuses nonsense and says what it covers",
  (_id, book) => {
    expect(book.covers.length).toBeGreaterThan(40);
    expect(book.source).not.toBe("");
    for (const area_mm2 of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => book.ampacity(area_mm2, open)).toThrow(RangeError);
    }
    expect(() => book.ampacity(1, { ...open, loadedInBundle: 0 })).toThrow(RangeError);
    expect(() => book.ampacity(1, { ...open, system_V: Number.NaN })).toThrow(RangeError);
    expect(() => book.ampacity(1, { ...open, insulationLimit_degC: Number.NaN })).toThrow(RangeError);
  },
);

test("refusals of the factors, and of a book that is not there", () => {
  expect(() => bundleFactor(NEC_BUNDLE_FACTORS, Number.NaN)).toThrow(RangeError);
  expect(() => bundleFactor(NEC_BUNDLE_FACTORS, 0)).toThrow(RangeError);
  expect(() => ambientFactor(30, 50, 30)).toThrow(RangeError);
  expect(ambientFactor(105, 110, 30)).toBe(0);
  expect(() => ampacityBook("guess")).toThrow(/no ampacity book "guess"/);
});
