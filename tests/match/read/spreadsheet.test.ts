import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { readChartFile } from "../../../src/match/read-chart-file.ts";
import { told } from "./told.ts";

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** A spreadsheet (ISO/IEC 29500) of sheets whose rows are given as XML. */
function workbook(
  sheets: Readonly<Record<string, string>>,
  more: { strings?: readonly string[]; after?: string } = {},
) {
  const names = Object.keys(sheets);
  const files: Record<string, Uint8Array> = {
    "[Content_Types].xml": strToU8(
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    ),
    "xl/workbook.xml": strToU8(
      `<workbook ${MAIN} xmlns:r="${LINKS}"><sheets>${names.map((name, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`).join("")}</sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${names.map((_, index) => `<Relationship Id="rId${index + 1}" Type="${LINKS}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`).join("")}<Relationship Id="rIdS" Type="${LINKS}/styles" Target="styles.xml"/><Relationship Id="rIdT" Type="${LINKS}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    ),
    "xl/styles.xml": strToU8(
      `<styleSheet ${MAIN}><cellXfs><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    ),
    "xl/sharedStrings.xml": strToU8(
      `<sst ${MAIN}>${(more.strings ?? []).map((text) => `<si><t>${text}</t></si>`).join("")}</sst>`,
    ),
  };
  for (const [index, name] of names.entries())
    files[`xl/worksheets/sheet${index + 1}.xml`] = strToU8(
      `<?xml version="1.0"?><worksheet ${MAIN}><sheetData>${sheets[name]}</sheetData>${more.after ?? ""}</worksheet>`,
    );
  return zipSync(files, { level: 6 });
}

/** Rows of texts and numbers, from row 1 on. */
function rows(table: readonly (readonly (string | number)[])[]): string {
  return table
    .map((cells, row) => {
      const xml = cells.map((value, column) => {
        const at = `${String.fromCharCode(65 + column)}${row + 1}`;
        if (value === "") return "";
        return typeof value === "number"
          ? `<c r="${at}"><v>${value}</v></c>`
          : `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`;
      });
      return `<row r="${row + 1}">${xml.join("")}</row>`;
    })
    .join("");
}

const leadsOf = async (file: Uint8Array) => (await readChartFile(file)).charts[0]!.leads.map(told);

describe("a spreadsheet", () => {
  test("rows, numbers as they read, rows left blank", async () => {
    const table = [
      ["Trailer socket"],
      [],
      ["Pin", "Signal", "Colour", "mm²"],
      [1, "Left indicator", "yellow", 1.5],
      [2, "Rear fog", "blue", 0.75000000000000011],
    ];
    const read = await readChartFile(workbook({ Pins: rows(table) }));
    expect(read.charts[0]!.title).toBe("Trailer socket");
    expect(read.charts[0]!.leads.map(told)).toEqual(["1 indicator-left YE 1.5mm²", "2 fog-rear BU 0.75mm²"]);
    expect(read.charts[0]!.leads.map(({ line }) => line)).toEqual([4, 5]);
    expect(read.remarks).toEqual([]);
  });

  test("a formula counts by its saved value, is never worked out, and is blank without one; errors are text", async () => {
    const sheet = `${rows([["Pin", "Signal", "Colour"]])}
<row r="2"><c r="A2"><f>1+0</f><v>1</v></c><c r="B2" t="str"><f>A9&amp;"x"</f><v>Battery</v></c><c r="C2" t="inlineStr"><is><t>red</t></is></c></row>
<row r="3"><c r="A3"><v>2</v></c><c r="B3" t="str"><f>HYPERLINK("http://x")</f></c><c r="C3" t="s"><v>0</v></c></row>
<row r="4"><c r="A4"><v>3</v></c><c r="B4" t="e"><f>1/0</f><v>#DIV/0!</v></c><c r="C4" t="s"><v>1</v></c></row>`;
    const read = await readChartFile(
      workbook({ Pins: sheet }, { strings: ["black", "white", "never taken"] }),
    );
    expect(read.charts[0]!.leads.map(({ text, colour }) => [text, colour?.base])).toEqual([
      ["Battery", "RD"],
      ["", "BK"],
      ["#DIV/0!", "WH"],
    ]);
  });

  test("a date is a date, not a number", async () => {
    const sheet = `<row r="1"><c r="A1" t="inlineStr"><is><t>Drawn</t></is></c><c r="B1" s="1"><v>45413</v></c></row>${rows([[], ["Pin", "Signal"], [1, "Battery"], [2, "Ground"]])}`;
    const read = await readChartFile(workbook({ Pins: sheet.replace('<row r="1"></row>', "") }));
    expect(read.charts[0]!.notes[0]!.text).toContain("2024-05-01");
  });

  test("cells merged over rows stand in each", async () => {
    const table = [
      ["Pin", "Signal", "Colour"],
      [1, "FL +", "white"],
      [2, "RL +", ""],
      [3, "Ground", "black"],
    ];
    const file = workbook(
      { Pins: rows(table) },
      { after: '<mergeCells count="1"><mergeCell ref="C2:C3"/></mergeCells>' },
    );
    expect(await leadsOf(file)).toEqual([
      "1 speaker-front-left-plus WH",
      "2 speaker-rear-left-plus WH",
      "3 ground BK",
    ]);
  });

  test("of several sheets the one that reads best is taken, and the others are named", async () => {
    const chart = rows([
      ["Pin", "Signal"],
      [1, "Battery"],
      [2, "Ground"],
      [3, "Horn"],
    ]);
    const file = workbook({
      Cover: rows([["Wren, all looms"]]),
      Spare: rows([
        ["Pin", "Signal"],
        [1, "Mute"],
        [2, "Speed"],
      ]),
      Main: chart,
    });
    const read = await readChartFile(file);
    expect(read.charts[0]!.leads).toHaveLength(3);
    expect(read.remarks).toEqual(['Sheet "Main" is read; not read: "Spare" (2 rows).']);
  });

  test("of a hundred thousand rows no more is unpacked than is taken", async () => {
    const table = Array.from({ length: 100_000 }, (_, index) => [index + 1, "Battery", "red"]);
    const read = await readChartFile(workbook({ Pins: rows(table) }));
    expect(read.charts[0]!.leads).toHaveLength(2000);
    expect(read.remarks[0]).toBe("Only the first 2000 rows of a sheet are read.");
  });
});

describe("what is no spreadsheet", () => {
  const bomb = zipSync(
    { "xl/workbook.xml": strToU8("<workbook/>"), "xl/worksheets/sheet1.xml": new Uint8Array(300_000_000) },
    { level: 6 },
  );
  const good = workbook({
    Pins: rows([
      ["Pin", "Signal"],
      [1, "Battery"],
      [2, "Ground"],
    ]),
  });
  test.each([
    ["a bomb", bomb],
    ["cut off", good.subarray(0, good.length - 40)],
    [
      "damaged inside",
      good.map((byte, index) => (index > 60 && index < good.length - 700 ? byte ^ 0x55 : byte)),
    ],
    ["another packed file", zipSync({ "a.txt": strToU8("battery") })],
    ["an older kind", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Array(600).fill(0)])],
    [
      "a row number without end",
      workbook({ Pins: '<row r="999999999"><c r="A999999999"><v>1</v></c></row>' }),
    ],
    ["a column without end", workbook({ Pins: '<row r="1"><c r="ZZZZZZZ1"><v>1</v></c></row>' })],
  ])("%s: no chart, and one clear remark", async (_name, file) => {
    const read = await readChartFile(file);
    expect(read.charts).toEqual([]);
    expect(read.remarks.at(-1)).toMatch(/spreadsheet|damaged/);
  });

  test("a text that is named like one is read as what it is", async () => {
    const [chart] = (await readChartFile(strToU8("1;red;battery\n2;black;ground"))).charts;
    expect(chart!.leads.map(told)).toEqual(["1 constant-feed RD", "2 ground BK"]);
  });
});
