import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  AWG_NAMES,
  awgArea_mm2,
  METRIC_SIZES_mm2,
  nearestAwg,
  readSize,
  writeSize,
} from "../../src/catalogue/conductors.ts";

describe("reading a size", () => {
  test.each<[string, "metric" | "awg", number]>([
    ["0.75", "metric", 0.75],
    ["0,75", "metric", 0.75],
    [".5", "metric", 0.5],
    ["2.5 mm²", "metric", 2.5],
    ["2.5mm2", "awg", 2.5],
    ["1.5 sq mm", "awg", 1.5],
    ["1.5 sq. mm", "metric", 1.5],
    ["1.5 qmm", "metric", 1.5],
    ["18", "metric", 18],
    ["18", "awg", awgArea_mm2("18")],
    ["18 AWG", "metric", awgArea_mm2("18")],
    ["AWG 18", "metric", awgArea_mm2("18")],
    ["#16", "metric", awgArea_mm2("16")],
    ["12 ga", "metric", awgArea_mm2("12")],
    ["12 gauge", "metric", awgArea_mm2("12")],
    ["2/0", "metric", awgArea_mm2("2/0")],
    ["4/0 awg", "metric", awgArea_mm2("4/0")],
    ["0.75", "awg", 0.75],
  ])("%j in a harness written in %s", (text, sizes, area_mm2) => {
    expect(readSize(text, sizes)).toBe(area_mm2);
  });

  test.each([
    "",
    "x",
    "0",
    "-1",
    "1e3",
    "NaN",
    "Infinity",
    "1001",
    "5/0",
    "17 AWG",
    "1.5.5",
    "1 2",
    "mm²",
    "#",
  ])("%j is not read in either", (text) => {
    expect(readSize(text, "metric")).toBeNull();
    expect(readSize(text, "awg")).toBeNull();
  });

  test("a gauge that nobody stocks is not read as mm² in a harness written in AWG", () => {
    expect(readSize("13", "awg")).toBeNull();
    expect(readSize("13", "metric")).toBe(13);
  });
});

describe("writing a size", () => {
  test("reads back to within its three figures", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 999, noNaN: true }), (area_mm2) => {
        const read = readSize(writeSize(area_mm2, "metric"), "metric");
        expect(Math.abs(read! / area_mm2 - 1)).toBeLessThan(0.006);
      }),
      { numRuns: 300, seed: 258 },
    );
  });

  test("every stocked size reads back exactly, in either way of writing", () => {
    for (const area_mm2 of METRIC_SIZES_mm2)
      expect(readSize(writeSize(area_mm2, "metric"), "awg")).toBe(area_mm2);
    for (const name of AWG_NAMES) {
      expect(nearestAwg(awgArea_mm2(name))).toBe(name);
      expect(readSize(writeSize(awgArea_mm2(name), "awg"), "metric")).toBe(awgArea_mm2(name));
    }
  });

  test("what is not known is written as nothing", () => {
    expect(writeSize("unknown", "metric")).toBe("");
    expect(writeSize("unknown", "awg")).toBe("");
  });

  test("the nearest gauge is by ratio: 1.5 mm² lies between 16 (1.31) and 15, 2.5 mm² between 14 (2.08) and 13", () => {
    expect(writeSize(1.5, "awg")).toBe("16 AWG");
    expect(writeSize(2.5, "awg")).toBe("14 AWG");
    expect(writeSize(0.75, "awg")).toBe("18 AWG");
  });
});
