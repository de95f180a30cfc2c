import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTable } from "../../../src/match/read-chart.ts";
import { oneChart, told } from "./told.ts";

const COLOURS = [
  "red",
  "black",
  "white/black",
  "yellow",
  "grey",
  "blue/white",
  "violet",
  "orange",
  "brown",
  "green",
];
const WORDS = [
  "battery constant",
  "ground",
  "left front speaker +",
  "left front speaker -",
  "illumination",
  "accessory",
  "power antenna",
  "reverse lamp",
  "horn",
  "CAN high",
];
const SEPARATORS = ["\t", ";", " | ", "   ", " – ", ": "];

type Cells = readonly [string, string, string];
/** Charts of up to ten leads, each function once. */
const chart = fc
  .record({
    words: fc.shuffledSubarray(WORDS, { minLength: 3 }),
    colours: fc.array(fc.constantFrom(...COLOURS), { minLength: 10, maxLength: 10 }),
    letter: fc.constantFrom("", "A", "B"),
  })
  .map(({ words, colours, letter }) =>
    words.map((text, index): Cells => [`${letter}${index + 1}`, colours[index]!, text]),
  );

const write = (rows: readonly Cells[], separator: string) =>
  rows.map((row) => row.join(separator)).join("\n");
const sorted = (text: string) => oneChart(text).leads.map(told).sort();

describe("what changes nothing but order", () => {
  test("the order of rows, another separator, letter case, empty rows", () => {
    fc.assert(
      fc.property(
        chart,
        fc.constantFrom(...SEPARATORS),
        fc.constantFrom(...SEPARATORS),
        fc.integer({ min: 0, max: 9 }),
        (rows, separator, other, turn) => {
          const first = sorted(write(rows, separator));
          expect(first).toHaveLength(rows.length);
          const turned = [...rows.slice(turn), ...rows.slice(0, turn)].reverse();
          expect(sorted(write(turned, separator))).toEqual(first);
          expect(sorted(write(rows, other))).toEqual(first);
          expect(sorted(write(rows, separator).toUpperCase()).map((row) => row.toLowerCase())).toEqual(
            first.map((row) => row.toLowerCase()),
          );
          expect(sorted(write(rows, separator).replaceAll("\n", "\r\n\r\n"))).toEqual(first);
        },
      ),
      { seed: 11, numRuns: 120 },
    );
  });
});

describe("nothing is dropped", () => {
  const piece = fc.constantFrom(
    ...[
      "1",
      "A4",
      "Pin 3",
      "red",
      "RD/WH",
      "battery",
      "12V",
      "10A",
      "0.75 mm²",
      "fuse",
      "-",
      " – ",
      ":",
      ",",
      "\t",
      "|",
    ],
    ...[
      "  ",
      "\n",
      "\n\n",
      '"',
      "not used",
      "|---|---|",
      "Page 2",
      "Note: see below.",
      "(",
      ")",
      "<td>",
      "&amp;",
      "\u0000",
      "ß",
      "→",
      "=",
    ],
  );
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 300 }),
    fc.array(piece, { maxLength: 80 }).map((pieces) => pieces.join(" ")),
    fc.array(piece, { maxLength: 80 }).map((pieces) => pieces.join("")),
  );

  test("every line that holds something has its fate, and a lead's source is in the text", () => {
    fc.assert(
      fc.property(text, (given) => {
        const { result, grids } = readTable(given);
        const lines = given.split(/\r\n|[\n\r\u2028\u2029\f\v]/);
        const told = new Set<number>();
        for (const { rows } of grids) {
          for (const { row } of rows)
            for (const [index] of row.source.split("\n").entries()) told.add(row.line + index);
        }
        if (grids.length === 0) {
          expect(lines.every((line) => line.trim() === "") || result.remarks.length > 0).toBe(true);
          return;
        }
        for (const [index, line] of lines.entries()) if (/\S/.test(line)) expect(told).toContain(index + 1);
        for (const { leads, notes, unread } of result.charts) {
          expect(new Set(leads.map(({ name }) => name)).size).toBe(leads.length);
          for (const item of [...notes, ...unread]) expect(item.text.trim()).not.toBe("");
        }
      }),
      { seed: 5, numRuns: 1500 },
    );
  });

  test("no word of a row is lost between label, words, colour, figures and what is kept", () => {
    const cell = fc.constantFrom("battery", "mystery", "L/W", "thick", "F12", "GND", "red", "x y", "");
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 2, maxLength: 8 }), (table) => {
        const rows = table.map((row, index) => [`${index + 1}`, ...row].join("\t"));
        const { leads } = oneChart(["Pin\tSignal\tColour\tRemark", ...rows].join("\n"));
        for (const [index, row] of table.entries()) {
          const { text: words, colourText, kept, source } = leads[index]!;
          const all = [words, colourText, ...kept].join(" ");
          for (const part of row) if (part !== "") expect(`${all} `).toContain(part);
          expect(source).toBe(rows[index]);
        }
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});
