import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readRows } from "../../src/match/read-rows.ts";
import { readChartColour, readFunction } from "../../src/match/read-words.ts";

describe("readFunction", () => {
  // Words of charts: common practice, no source; terminal numbers: DIN 72552.
  test.each([
    ["B+", "constant-feed"],
    ["Battery +12V (constant)", "constant-feed"],
    ["30", "constant-feed"],
    ["Kl. 30", "constant-feed"],
    ["ACC", "switched-feed"],
    ["ignition switched", "switched-feed"],
    ["Ignition", "ignition-feed"],
    ["GND", "ground"],
    ["Chassis ground", "ground"],
    ["Signal ground", "sense-ground"],
    ["Illum", "illumination"],
    ["Dash lights", "illumination"],
    ["Parking brake", "parking-brake"],
    ["AMP REMOTE", "amplifier-turn-on"],
    ["FL+", "speaker-front-left-plus"],
    ["Front left speaker (+)", "speaker-front-left-plus"],
    ["Spk RR neg", "speaker-rear-right-minus"],
    ["Speaker, right rear, −", "speaker-rear-right-minus"],
    ["LR -", "speaker-rear-left-minus"],
    ["Line out front right signal", "line-front-right-signal"],
    ["CAN-H", "can-high"],
    ["n/c", "not-used"],
  ])("%s is %s", (words, id) => {
    expect(readFunction(words)).toBe(id);
  });

  test.each([
    ["speaker"], // which one
    ["front left"], // which lead
    ["front +"],
    ["L"],
    ["blue thing"],
    [""],
  ])("%j is not guessed", (words) => {
    expect(readFunction(words)).toBeNull();
  });
});

describe("readChartColour", () => {
  test.each([
    ["BU/WH", "BU", "WH"],
    ["blue/white", "BU", "WH"],
    ["BLU-WHT", "BU", "WH"],
    ["Red", "RD", null],
    ["yel", "YE", null],
    ["GNYE", "GNYE", null],
  ])("%s", (text, base, tracer) => {
    expect(readChartColour(text)).toEqual({ base, tracer });
  });

  test.each([["B"], ["GR"], ["blue/white/red"], ["smudged"], [""]])("%j is not guessed", (text) => {
    expect(readChartColour(text)).toBeNull();
  });
});

describe("readRows", () => {
  test("reads columns by their heads, in any order", () => {
    const read = readRows("Colour\tPin\tmm²\tSignal\nRD\tA4\t1.5\tBattery\nBK\tA8\t1.5\tGround\n");
    expect(read.hasHeads).toBe(true);
    expect(read.columns).toEqual(["colour", "label", "size", "function"]);
    expect(read.rows.map((row) => row.cavity)).toEqual([
      {
        label: "A4",
        function: "constant-feed",
        text: "Battery",
        lead: { colour: { base: "RD", tracer: null }, area_mm2: 1.5 },
      },
      {
        label: "A8",
        function: "ground",
        text: "Ground",
        lead: { colour: { base: "BK", tracer: null }, area_mm2: 1.5 },
      },
    ]);
    expect(read.rows.every((row) => row.kept.length === 0)).toBe(true);
  });

  test("reads columns by what stands in them", () => {
    const read = readRows("1,ACC,YE/RD,0.75\n2,FL+,WH,0.5\n3,FL-,WH/BK,0.5\n4,GND,BK,1");
    expect(read.hasHeads).toBe(false);
    expect(read.columns).toEqual(["label", "function", "colour", "size"]);
    expect(read.rows.map((row) => row.function)).toEqual([
      "switched-feed",
      "speaker-front-left-plus",
      "speaker-front-left-minus",
      "ground",
    ]);
    expect(read.rows[0]!.colour).toEqual({ base: "YE", tracer: "RD" });
  });

  test("a bare number in a size column is a gauge in an AWG harness", () => {
    const metric = readRows("Pin\tSize\n1\t18", "metric");
    const awg = readRows("Pin\tSize\n1\t18", "awg");
    expect(metric.rows[0]!.area_mm2).toBe(18);
    expect(awg.rows[0]!.area_mm2).toBeCloseTo(0.823, 3);
  });

  test("what is not understood stays as chart text and is named", () => {
    const read = readRows("Pin\tSignal\tColour\tSize\tFuse box\n1\tWobble sense\tsmudged\tthick\tF12");
    const [row] = read.rows;
    expect(row!.cavity).toEqual({ label: "1", text: "Wobble sense; smudged; thick; F12" });
    expect(row!.kept).toEqual(["Wobble sense", "smudged", "thick", "F12"]);
  });

  test("a base and a tracer in two columns", () => {
    const read = readRows("Pin\tBase\tTracer\n1\tbrown\twhite\n2\tbrown\t");
    expect(read.rows.map((row) => row.colour)).toEqual([
      { base: "BN", tracer: "WH" },
      { base: "BN", tracer: null },
    ]);
  });

  test("a label that stands twice makes two cavities, and that is said", () => {
    const read = readRows("Pin\tSignal\n4\tACC\n4\tGND");
    expect(read.rows.map((row) => row.cavity.label)).toEqual(["4", "4 (2)"]);
    expect(read.notes).toHaveLength(1);
  });

  test("quoted cells hold line ends and separators", () => {
    const read = readRows('Pin,Signal\n1,"Battery,\nconstant"\n');
    expect(read.rows).toHaveLength(1);
    expect(read.rows[0]!.cavity).toMatchObject({ function: "constant-feed", text: "Battery, constant" });
  });

  test.each([[""], ["\n\n"], ["\t\t\n"]])("%j is no row", (text) => {
    expect(readRows(text).rows).toEqual([]);
  });

  test("no word is lost, whatever is pasted", () => {
    const cell = fc.constantFrom("1", "A2", "GND", "L/W", "RD", "mystery", "0.75", "thick", "FL+", "x y", "");
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 8 }), (table) => {
        const text = table.map((row) => row.join("\t")).join("\n");
        const read = readRows(text);
        const filled = table.filter((row) => row.some((item) => item !== ""));
        expect(read.rows.length + (read.hasHeads ? 1 : 0)).toBe(filled.length);
        for (const row of read.rows) {
          for (const [index, item] of row.source.entries()) {
            if (item === "") continue;
            const role = read.columns[index] ?? "text";
            const understood =
              (role === "label" && row.cavity.label?.startsWith(item)) ||
              (role === "colour" && row.colour !== null) ||
              (role === "tracer" && row.colour?.tracer) ||
              (role === "size" && row.area_mm2 !== null);
            if (!understood) expect(row.cavity.text).toContain(item);
          }
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
