import { describe, expect, test } from "vitest";
import { trace } from "../../src/graph/trace.ts";
import { wiresCsv, writeCsv } from "../../src/sheets/csv.ts";
import { cell, column, type Table } from "../../src/sheets/tables/table.ts";
import { build } from "../build.ts";

function table(...texts: string[]): Table {
  return {
    id: "t",
    title: "t",
    remark: "",
    empty: "",
    columns: texts.map((_, index) => column(`c${index}`, "", 10)),
    rows: [texts.map(cell)],
  };
}
const fields = (...texts: string[]) => writeCsv(table(...texts)).split("\r\n")[1];

/** A reader of RFC 4180, written from its grammar. */
function read(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = text.startsWith("\ufeff") ? 1 : 0;
  while (at < text.length) {
    let value = "";
    if (text[at] === '"') {
      for (at++; at < text.length; at++) {
        if (text[at] !== '"') value += text[at];
        else if (text[at + 1] === '"') {
          value += '"';
          at++;
        } else break;
      }
      at++;
    } else while (at < text.length && text[at] !== "," && text[at] !== "\r") value += text[at++];
    row.push(value);
    if (text[at] === ",") at++;
    else {
      rows.push(row);
      row = [];
      at += 2;
    }
  }
  return rows;
}

describe("writeCsv", () => {
  // Source: RFC 4180, section 2, rules 5 to 7.
  test("quotes what holds a comma or a quote, and doubles quotes", () => {
    expect(fields("aaa", "b,bb", 'c"cc')).toBe('aaa,"b,bb","c""cc"');
  });

  test("ends every record, the last too, with CRLF, after a byte order mark", () => {
    expect(writeCsv(table("a"))).toBe("\ufeffc0\r\na\r\n");
  });

  // Common practice, no source: the first characters that spreadsheets take for a formula.
  test.each(["=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "|dir", "  =1"])(
    "a cell that begins like a formula becomes plain text: %j",
    (text) => {
      expect(read(writeCsv(table(text)))[1]![0]!.startsWith("'")).toBe(true);
    },
  );

  test("a signed number stays a number", () => {
    expect(fields("-12.5", "+3")).toBe("-12.5,+3");
  });

  test("line breaks and controls cannot part a record", () => {
    expect(read(writeCsv(table("a\r\nb\u0000c\u202e")))).toEqual([["c0"], ["a bc"]]);
  });

  test("the wire table comes back as it was", () => {
    const harness = build().vehicle("X1", { "1": "constant-feed RD" }).wire("X1.1", "loose", "RD/YE", {
      area_mm2: 1.5,
      note: 'long, with "quotes"',
      label: "=HYPERLINK(1)",
    }).harness;
    const rows = read(wiresCsv({ harness, traced: trace(harness) }));
    expect(rows[0]!.slice(0, 5)).toEqual(["wire", "from", "to", "colour", "size"]);
    expect(rows[1]).toEqual([
      "W1",
      "X1.1",
      "loose",
      "RD/YE",
      "1.5 mm²",
      "",
      "constant feed",
      "",
      "",
      "",
      "'=HYPERLINK(1)",
      'long, with "quotes"',
    ]);
  });
});
