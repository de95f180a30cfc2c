import { describe, expect, test } from "vitest";
import { COLOUR_NAMES, readColour, sayColour, writeColour } from "../../src/catalogue/colours.ts";
import type { ColourCode } from "../../src/graph/harness.ts";
import { COLOUR_CODES } from "../../src/graph/schema/values.ts";

describe("reading a colour", () => {
  test.each<[string, string]>([
    ["RD", "RD"],
    ["rd", "RD"],
    [" Red ", "RD"],
    ["BU/WH", "BU/WH"],
    ["bu-wh", "BU/WH"],
    ["BU WH", "BU/WH"],
    ["blue/white", "BU/WH"],
    ["blue with white", "BU/WH"],
    ["blue with a white stripe", "BU/WH"],
    ["white, black tracer", "WH/BK"],
    ["purple/black", "VT/BK"],
    ["gray", "GY"],
    ["slate", "GY"],
    ["GNYE", "GNYE"],
    ["green-and-yellow", "GNYE"],
    ["green/yellow", "GN/YE"],
    ["YE/GN", "YE/GN"],
  ])("%j is %s", (text, written) => {
    expect(writeColour(readColour(text))).toBe(written);
  });

  test.each([
    "",
    " ",
    "B",
    "G",
    "R",
    "mauve",
    "red/mauve",
    "mauve/red",
    "red/white/blue",
    "RDWH",
    "/",
    "__proto__",
  ])("%j is not read", (text) => {
    expect(readColour(text)).toBeNull();
  });

  test("every colour, alone and with every tracer, reads back as it was written and as it is said", () => {
    for (const base of COLOUR_CODES) {
      for (const tracer of [null, ...COLOUR_CODES]) {
        const colour = { base, tracer };
        expect(readColour(writeColour(colour))).toEqual(colour);
        expect(readColour(sayColour(colour)), sayColour(colour)).toEqual(colour);
      }
    }
  });
});

test("a colour nobody has stated is written as nothing and said to be so, never black", () => {
  expect(writeColour(null)).toBe("");
  expect(sayColour(null)).toBe("colour not stated");
});

test("every code has one name of its own", () => {
  const codes = Object.keys(COLOUR_NAMES) as ColourCode[];
  expect(codes).toEqual([...COLOUR_CODES]);
  expect(new Set(Object.values(COLOUR_NAMES)).size).toBe(codes.length);
});
