import { expect, test } from "vitest";
import { BLADE_CLASSES_V, BLADES, type BladeForm, blade, bladesOfColour } from "../../src/catalogue/fuses.ts";

// Source: "Fuse colors - what do they mean?" (cites DIN 72581); a car-parts magazine, "Fuse Color Codes, by Amp".
test.each([
  [2, "grey"],
  [3, "violet"],
  [4, "pink"],
  [5, "tan"],
  [7.5, "brown"],
  [10, "red"],
  [15, "blue"],
  [20, "yellow"],
  [25, "clear"],
  [30, "green"],
])("a mini and a regular blade of %s A are %s", (rating_A, colour) => {
  expect(blade("mini", rating_A)?.colour).toBe(colour);
  expect(blade("regular", rating_A)?.colour).toBe(colour);
});

// Source: a how-to article on blade fuses, 2016.
test.each([
  [20, "yellow"],
  [30, "green"],
  [40, "orange"],
  [50, "red"],
  [60, "blue"],
  [80, "clear"],
])("a maxi blade of %s A is %s", (rating_A, colour) => {
  expect(blade("maxi", rating_A)?.colour).toBe(colour);
});

// Source: ISO 8820-3:2015, catalogue abstract, and makers' data sheets: mini 2 to 30 A, regular 1 to 40 A, maxi 20 to
// 80 A; 32 V and 58 V.
test("each form has the range it is made in", () => {
  const range = (form: BladeForm) => [BLADES[form][0]?.rating_A, BLADES[form].at(-1)?.rating_A];
  expect([range("mini"), range("regular"), range("maxi")]).toEqual([
    [2, 30],
    [1, 40],
    [20, 80],
  ]);
  expect(blade("mini", 40)).toBeNull();
  expect(BLADE_CLASSES_V).toEqual([32, 58]);
});

// Source: the colour guides against the how-to article: the maxi palette is its own.
test("red is 10 A on the small forms and 50 A on a maxi", () => {
  expect(bladesOfColour("red").map(({ form, rating_A }) => [form, rating_A])).toEqual([
    ["mini", 10],
    ["regular", 10],
    ["maxi", 50],
  ]);
});
