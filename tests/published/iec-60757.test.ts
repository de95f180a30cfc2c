import { expect, test } from "vitest";
import { COLOUR_NAMES, readColour, writeColour } from "../../src/catalogue/colours.ts";
import { COLOUR_CODES } from "../../src/graph/schema/values.ts";

// Source: GOST 28763-90, the adoption of IEC 757:1983, table of letter codes, through two published copies;
// IEC 60757:2021, published extracts of clause 5.1.
const PUBLISHED = [
  ["BK", "black"],
  ["BN", "brown"],
  ["RD", "red"],
  ["OG", "orange"],
  ["YE", "yellow"],
  ["GN", "green"],
  ["BU", "blue"],
  ["VT", "violet"],
  ["GY", "grey"],
  ["WH", "white"],
  ["PK", "pink"],
  ["GD", "gold"],
  ["TQ", "turquoise"],
  ["SR", "silver"],
  ["GNYE", "green-and-yellow"],
] as const;

test("the letter codes stand in the standard's order", () => {
  expect(COLOUR_CODES).toEqual(PUBLISHED.map(([code]) => code));
});

test.each(PUBLISHED)("%s is %s, and is read from either", (code, name) => {
  expect(COLOUR_NAMES[code]).toBe(name);
  expect(readColour(code)).toEqual({ base: code, tracer: null });
  expect(readColour(name)).toEqual({ base: code, tracer: null });
});

// Source: IEC 60757:2021 clause 5.1 writes two colours in table order, so RDBU names no base.
test("base and tracer keep their order, which the standard's own writing would lose", () => {
  const [blueOnRed, redOnBlue] = ["RD/BU", "BU/RD"].map(readColour);
  expect(blueOnRed).not.toEqual(redOnBlue);
  expect(writeColour(redOnBlue!)).toBe("BU/RD");
});

// Source: IEC 60062 resistor digits 0 to 9, from memory; rows 1 to 10 of the table are these colours.
test("the first ten codes are the resistor digits in order", () => {
  const digits = ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"];
  expect(COLOUR_CODES.slice(0, 10).map((code) => COLOUR_NAMES[code])).toEqual(digits);
});
