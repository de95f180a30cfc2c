import { expect, test } from "vitest";
import { digits, doubts, isKnown } from "../../src/electrical/figure.ts";
import { requireBetween, requireNotNegative, requirePositive } from "../../src/electrical/require.ts";

test("numbers as they stand in a formula", () => {
  expect([0.034482758, 12, 0, 116_035.2, -0.5].map((one) => digits(one))).toEqual([
    "0.03448",
    "12",
    "0",
    "116035",
    "−0.5",
  ]);
  expect(digits(1.33405, 3)).toBe("1.33");
  expect(digits(Number.POSITIVE_INFINITY)).toBe("∞");
  expect(digits(Number.NEGATIVE_INFINITY)).toBe("−∞");
});

test("doubts are joined, said once, and null where there are none", () => {
  expect(doubts("from memory", null, "seen once", "from memory")).toBe("from memory; seen once");
  expect(doubts(null, null)).toBeNull();
});

test("a figure is told from an answer that is none", () => {
  expect(isKnown({ unknown: "the table ends at 25 mm²" })).toBe(false);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, -1])("%f is refused by name", (value) => {
  expect(() => requireNotNegative("length_m", value)).toThrow(/length_m is/);
  expect(() => requirePositive("length_m", value)).toThrow(RangeError);
  expect(() => requireBetween("length_m", value, 0, 10)).toThrow(/expected 0 to 10/);
});
