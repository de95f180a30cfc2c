import { expect, test } from "vitest";
import { writeColour } from "../../src/catalogue/colours.ts";
import { functionOf, isGround } from "../../src/catalogue/functions.ts";
import { ISO_1724, ISO_11446, type Pinout } from "../../src/catalogue/pinouts.ts";

const at = (pinout: Pinout, cavity: string) => {
  const found = pinout.rows.find((item) => item.cavity === cavity)!;
  return [found.function, writeColour(found.colour), found.area_mm2];
};

// Source: a trailer-connector maker's standards page "ISO 11446"; a caravan operating manual of 2022, section on
// the 13-pole plug; encyclopaedia article "ISO 11446". Sizes in mm².
test.each([
  ["1", "indicator-left", "YE", 1.5],
  ["2", "fog-rear", "BU", 1.5],
  ["3", "ground-lamps", "WH", 2.5],
  ["4", "indicator-right", "GN", 1.5],
  ["5", "tail-right", "BN", 1.5],
  ["6", "stop-lamp", "RD", 1.5],
  ["7", "tail-left", "BK", 1.5],
  ["8", "reverse", "PK", 1.5],
  ["9", "constant-feed", "OG", 2.5],
  ["10", "ignition-feed", "GY", 2.5],
  ["11", "ground-switched", "WH/BK", 2.5],
  ["13", "ground-constant", "WH/RD", 2.5],
] as const)("ISO 11446 pin %s is %s, %s, %s mm²", (cavity, ...published) => {
  expect(at(ISO_11446, cavity)).toEqual(published);
});

// Source: the same maker's page "ISO 1724 type N"; a passenger vehicle owner's manual, section on towing;
// encyclopaedia article "ISO 1724".
test.each([
  ["1", "indicator-left", "YE", 1.5],
  ["2", "fog-rear", "BU", 1.5],
  ["3", "ground", "WH", 2.5],
  ["4", "indicator-right", "GN", 1.5],
  ["5", "tail-right", "BN", 1.5],
  ["6", "stop-lamp", "RD", 1.5],
  ["7", "tail-left", "BK", 1.5],
] as const)("ISO 1724 pin %s is %s, %s, %s mm²", (cavity, ...published) => {
  expect(at(ISO_1724, cavity)).toEqual(published);
});

test("the three grounds of the 13-pin socket are told apart, and every function is in the vocabulary", () => {
  const grounds = ISO_11446.rows.filter((item) => isGround(item.function));
  expect(new Set(grounds.map((item) => item.function)).size).toBe(3);
  for (const item of [...ISO_11446.rows, ...ISO_1724.rows])
    expect(functionOf(item.function).id).toBe(item.function);
});
