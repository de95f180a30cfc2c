import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { textWidth } from "../../src/layout/text/measure.ts";
import { boundsOf } from "../../src/sheets/bounds.ts";
import { setSections } from "../../src/sheets/table-pages.ts";
import { cell, column, strong, type Table } from "../../src/sheets/tables/table.ts";
import { wrapText } from "../../src/sheets/wrap.ts";
import { wordsIn } from "./texts.ts";

const AREA = { x: 96, y: 56, width: 700, height: 500 };

function numbered(count: number, text: (row: number) => string): Table {
  return {
    id: "t",
    title: "Numbered",
    remark: "A remark.",
    empty: "Nothing here.",
    columns: [column("number", "Number", 12), column("text", "Text", 40), column("none", "Nothing", 20)],
    rows: Array.from({ length: count }, (_, index) => [strong(`row${index}`), cell(text(index)), cell("")]),
  };
}
const section = (table: Table, more = {}) => ({ table, group: table.title, ...more });

describe("setSections", () => {
  test("keeps every row whole and inside the page, repeats the head, loses nothing", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 120 }),
        fc.integer({ min: 100, max: 900 }),
        (lengths, height) => {
          const table = numbered(lengths.length, (row) => "word ".repeat(lengths[row]!).trim());
          const pages = setSections([section(table)], { ...AREA, height });
          const all = pages.flatMap((page) => wordsIn(page.items));
          for (let row = 0; row < lengths.length; row++) {
            expect(all.filter((text) => text === `row${row}`)).toHaveLength(1);
          }
          expect(all.filter((text) => text === "Number")).toHaveLength(pages.length);
          expect(all.filter((text) => text === "Numbered, continued")).toHaveLength(pages.length - 1);
          for (const page of pages) {
            const bounds = boundsOf(page.items)!;
            expect(bounds.y).toBeGreaterThanOrEqual(AREA.y - 1);
            expect(bounds.y + bounds.height).toBeLessThanOrEqual(AREA.y + height + 1);
            expect(bounds.x).toBeGreaterThanOrEqual(AREA.x - 1);
            expect(bounds.x + bounds.width).toBeLessThanOrEqual(AREA.x + AREA.width + 1);
          }
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  test("all words of a long text are on the page", () => {
    const said = Array.from({ length: 80 }, (_, index) => `word${index}`).join(" ");
    const pages = setSections([section(numbered(1, () => said))], AREA);
    expect(wordsIn(pages[0]!.items).join(" ")).toContain("word79");
    expect(
      wordsIn(pages[0]!.items)
        .join(" ")
        .match(/word\d+/g),
    ).toHaveLength(80);
  });

  test("a column with nothing in it is left out; a table without rows says so", () => {
    expect(wordsIn(setSections([section(numbered(2, () => "x"))], AREA)[0]!.items)).not.toContain("Nothing");
    expect(wordsIn(setSections([section(numbered(0, () => ""))], AREA)[0]!.items)).toContain("Nothing here.");
  });

  test("short tables share a page; one that would be parted near its foot starts the next", () => {
    const short = numbered(4, () => "x");
    const pages = setSections(
      [section({ ...short, title: "First" }), section({ ...short, title: "Second" })],
      AREA,
    );
    expect(pages.map((page) => page.groups)).toEqual([["First", "Second"]]);
    const filled = setSections(
      [section({ ...numbered(20, () => "x"), title: "First" }), section({ ...short, title: "Second" })],
      AREA,
    );
    expect(filled.map((page) => page.groups)).toEqual([["First"], ["Second"]]);
  });

  test("a figure stays with the first row of its table", () => {
    const figure = { width: 100, height: 300, draw: () => [] };
    const pages = setSections(
      [
        section({ ...numbered(15, () => "x"), title: "First" }),
        section({ ...numbered(3, () => "x"), title: "Second" }, { figure }),
      ],
      AREA,
    );
    expect(pages[1]!.groups).toEqual(["Second"]);
    expect(wordsIn(pages[1]!.items)).toEqual(expect.arrayContaining(["Second", "row0"]));
  });

  test("one family has one set of columns", () => {
    const wide = { ...numbered(1, () => "a very long text that asks for a wide column"), title: "Wide" };
    const narrow = { ...numbered(1, () => "x"), title: "Narrow" };
    const [page] = setSections([section(wide, { family: "f" }), section(narrow, { family: "f" })], AREA);
    const heads = page!.items.flatMap((item) =>
      item.kind === "text" && item.text === "Text" ? [item.x] : [],
    );
    expect(heads).toHaveLength(2);
    expect(heads[0]).toBe(heads[1]);
  });
});

describe("wrapText", () => {
  test("no line is wider than asked for, and the words come back in order", () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: fc.constantFrom(..."abcW1.Ωé"), minLength: 1, maxLength: 30 }), {
          maxLength: 40,
        }),
        fc.integer({ min: 30, max: 400 }),
        (list, width) => {
          const text = list.join(" ");
          const lines = wrapText(text, 10, "regular", width);
          for (const line of lines) expect(textWidth(line, 10, "regular")).toBeLessThanOrEqual(width + 1e-5);
          expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
        },
      ),
      { seed: 4, numRuns: 300 },
    );
  });

  test("ends where not even one letter fits", () => {
    expect(wrapText("WWW", 10, "bold", 1)).toEqual(["W", "W", "W"]);
    expect(wrapText("", 10, "regular", 50)).toEqual([""]);
  });
});

test("a sign stays with its word", () => {
  const width = textWidth("speaker front left", 10, "regular") + 1;
  expect(wrapText("speaker front left +", 10, "regular", width)).toEqual(["speaker front", "left +"]);
});

test("a column as wide as its widest cell breaks none of them", () => {
  const colours = ["OG/WH", "GNYE", "VT/BK"];
  for (let extra = 0; extra < 40; extra++) {
    const [page] = setSections([section(numbered(3, (row) => colours[row]!))], {
      ...AREA,
      width: 90 + extra,
    });
    expect(wordsIn(page!.items)).toEqual(expect.arrayContaining(colours));
  }
});
