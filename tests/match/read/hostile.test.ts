import { describe, expect, test } from "vitest";
import { readCharts } from "../../../src/match/read-chart.ts";
import { readChartFile } from "../../../src/match/read-chart-file.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

describe("what is no chart gets one clear remark", () => {
  test.each([
    ["nothing", ""],
    ["blanks", " \n\t\n  "],
  ])("%s: no chart and no remark", (_name, text) => {
    expect(readCharts(text)).toEqual({ charts: [], remarks: [] });
  });

  test("the contents of other files", () => {
    const junk = String.fromCharCode(
      ...Array.from({ length: 4000 }, (_, index) => (index * 7919 + index ** 2) % 256),
    );
    for (const text of [junk, `PK\u0003\u0004${junk}`, `%PDF-1.7\n${junk}`, "{\\rtf1 x}"]) {
      const read = readCharts(text);
      expect(read.charts).toEqual([]);
      expect(read.remarks).toHaveLength(1);
    }
  });
});

describe("large input ends", () => {
  test("after 2000 rows, and says where", () => {
    const text = Array.from({ length: 200_000 }, (_, index) => `${index + 1};red;battery`).join("\n");
    const read = readCharts(text);
    expect(read.charts[0]!.leads).toHaveLength(2000);
    expect(read.remarks).toEqual(["Only the first 2000 rows are read; from line 2001 on nothing is taken."]);
  });

  test.each([
    ["one line of ten million letters", "x".repeat(1e7)],
    ["ten million blanks", " ".repeat(1e7)],
    ["a million unclosed tags", "<tr><td>".repeat(1e6)],
    ["brackets and separators without end", `${"(1) - , ; | : = ".repeat(300)}\n`.repeat(200)],
    ["quotes that nothing closes", '"\n'.repeat(100_000)],
    ["rows of hundreds of cells", `${"1;".repeat(700)}\n`.repeat(200)],
  ])("%s: something is said, or nothing was there", (_name, text) => {
    const read = readCharts(text);
    const lines = read.charts.flatMap(({ leads, notes, unread }) => [...leads, ...notes, ...unread]).length;
    expect(lines + read.remarks.length).toBeGreaterThan(0);
    for (const { notes, unread } of read.charts)
      for (const { text: line } of [...notes, ...unread]) expect(line.length).toBeLessThanOrEqual(5000);
  });
});

test("markup and formulas in cells are plain text", () => {
  const [chart] = readCharts(
    'Pin;Signal;Colour\n1;<img src=x onerror=alert(1)> ground;BK\n2;"=HYPERLINK(""x"")";RD',
  ).charts;
  expect(chart!.leads.map(({ text }) => text)).toEqual([
    "<img src=x onerror=alert(1)> ground",
    '=HYPERLINK("x")',
  ]);
});

describe("the encoding of a file", () => {
  const text = "Broche;Couleur;Désignation\n1;noir;masse\n2;vert/blanc;feu arrière";
  const utf16 = (isLittle: boolean, withMark: boolean) => {
    const units = [...(withMark ? "\ufeff" : ""), ...text].map((unit) => unit.charCodeAt(0));
    return new Uint8Array(
      units.flatMap((unit) => (isLittle ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])),
    );
  };
  test.each([
    ["UTF-8", bytes(text)],
    ["UTF-8 with a mark", bytes(`\ufeff${text}`)],
    ["UTF-16 little-endian", utf16(true, true)],
    ["UTF-16 big-endian", utf16(false, true)],
    ["UTF-16 without a mark", utf16(true, false)],
    ["Windows-1252", new Uint8Array([...text].map((unit) => unit.charCodeAt(0)))],
  ])("%s", async (_name, file) => {
    const [chart] = (await readChartFile(file)).charts;
    expect(chart!.leads.map((lead) => lead.text)).toEqual(["masse", "feu arrière"]);
  });
});
