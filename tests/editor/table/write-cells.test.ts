import { describe, expect, test } from "vitest";
import { fromTsv, isHeadRow, rangeText, toTsv } from "../../../src/editor/table/clipboard.ts";
import { moved, moveOf, rangeOf, standAt } from "../../../src/editor/table/range-model.ts";
import { arrangeRows, COLUMNS, cellText, nextSort, sheetOf } from "../../../src/editor/table/table-model.ts";
import { readLength, writeCell, writeCells } from "../../../src/editor/table/write-cells.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import type { CableId, Harness, WireId } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";
import { build } from "../../build.ts";

const adapter = () =>
  build()
    .vehicle("X1", { A4: "constant-feed RD 1.5", A7: "switched-feed YE/RD 0.75", A8: "ground BN 1.5" })
    .unit("X2", { 1: "constant-feed YE", 2: "ground BK" })
    .path("X1.A4", "XJ1", "X2.1")
    .wire("X1.A7", "loose", "YE/RD", { area_mm2: 0.75 }).harness;

const sheet = (harness: Harness) => sheetOf(harness, trace(harness));
const id = (name: string) => `w:${name}` as WireId;
const column = (name: string) => COLUMNS.findIndex((one) => one.id === name);

function made(harness: Harness, edit: Edit | null): Harness {
  if (!edit) throw new Error("nothing would change");
  const result = apply(harness, edit);
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

describe("cells", () => {
  test("say what a wire is", () => {
    const harness = adapter();
    const texts = (name: string) =>
      COLUMNS.map((one) => cellText(sheet(harness), harness.wires[id(name)]!, one.id));
    expect(texts("W1").slice(0, 8)).toEqual(["W1", "", "X1.A4", "XJ1.1", "constant feed", "RD", "", ""]);
    expect(texts("W3").slice(2, 8)).toEqual(["X1.A7", "loose", "switched feed", "YE", "RD", "0.75"]);
  });

  test.each([
    [
      "to",
      "X2.2",
      {
        ends: [
          { part: "p:X1", contact: 2 },
          { part: "p:X2", contact: 2 },
        ],
      },
    ],
    [
      "to",
      "x2.2",
      {
        ends: [
          { part: "p:X1", contact: 2 },
          { part: "p:X2", contact: 2 },
        ],
      },
    ],
    ["from", "", { ends: ["loose", "loose"] }],
    ["base", "blue", { colour: { base: "BU", tracer: "RD" } }],
    ["base", "BU/WH", { colour: { base: "BU", tracer: "WH" } }],
    ["base", "", { colour: null }],
    ["tracer", "", { colour: { base: "YE", tracer: null } }],
    ["size", "1,5 mm2", { area_mm2: 1.5 }],
    ["size", "", { area_mm2: "unknown" }],
    ["length", "45 cm", { length_m: 0.45 }],
    ["number", "W99", { designation: "W99" }],
    ["note", "under the dash", { note: "under the dash" }],
  ] as const)("%s takes %j", (name, text, changes) => {
    const harness = adapter();
    const edit = writeCell(sheet(harness), id("W3"), name, text);
    expect(edit).toMatchObject({ kind: "group", edits: [{ kind: "change-wire", wire: "w:W3", changes }] });
    expect(made(harness, edit as Edit).wires[id("W3")]).toMatchObject(changes);
  });

  test.each([
    ["to", "X9.1", /no contact X9\.1/],
    ["to", "X1.A7", /one contact/],
    ["base", "mauve", /not a colour/],
    ["tracer", "BU/WH", /two colours/],
    ["size", "thick", /not a size/],
    ["size", "-1", /not a size/],
    ["length", "NaN", /not a length/],
    ["length", "5000 m", /not a length/],
    ["number", "W1", /Another wire/],
    ["number", " ", /needs a number/],
    ["cable", "WC9", /no cable WC9/],
    ["function", "ground", /follows/],
  ] as const)("%s refuses %j and says why", (name, text, why) => {
    const harness = adapter();
    const result =
      name === "function"
        ? { ok: false, why: "The function follows from what the wire joins." }
        : writeCell(sheet(harness), id("W3"), name, text);
    expect(result).toMatchObject({ ok: false });
    expect((result as { why: string }).why).toMatch(why);
  });

  test("a text written back as it was shown changes nothing, not even what is rounded", () => {
    const harness = adapter();
    const exact = made(harness, {
      kind: "change-wire",
      wire: id("W3"),
      changes: { area_mm2: 0.82314 },
    });
    const now = sheet(exact);
    expect(cellText(now, exact.wires[id("W3")]!, "size")).toBe("0.823");
    for (const { id: name } of COLUMNS) {
      const wire = exact.wires[id("W3")]!;
      expect(writeCell(now, wire.id, name, cellText(now, wire, name))).toBeNull();
    }
    // In a block whose other cells do change the wire as well.
    const { edit } = writeCells(now, [wire3()], 0, column("base"), [["BU", "RD", "0.823"]], "paste");
    expect(made(exact, edit).wires[wire3()]!.area_mm2).toBe(0.82314);
  });

  const wire3 = () => id("W3");

  test("a tracer needs a base", () => {
    const harness = build().vehicle("X1", { 1: "unknown" }).wire("X1.1", "loose").harness;
    expect(writeCell(sheet(harness), id("W1"), "tracer", "WH")).toMatchObject({ ok: false });
  });
});

describe("a block", () => {
  test("is one step; what is refused is handed back, the rest is taken", () => {
    const harness = adapter();
    const rows = [id("W1"), id("W2"), id("W3")];
    const block = [
      ["BU", "WH", "2.5"],
      ["zebra", "", "1"],
      ["GN", "", "fat"],
    ];
    const { edit, bad } = writeCells(sheet(harness), rows, 0, column("base"), block, "paste");
    expect(bad.map((cell) => [cell.wire, cell.column, cell.text])).toEqual([
      ["w:W2", "base", "zebra"],
      ["w:W3", "size", "fat"],
    ]);
    const next = made(harness, edit);
    expect(next.wires[id("W1")]).toMatchObject({ colour: { base: "BU", tracer: "WH" }, area_mm2: 2.5 });
    expect(next.wires[id("W2")]).toMatchObject({ area_mm2: 1 });
    expect(next.wires[id("W3")]).toMatchObject({ colour: { base: "GN", tracer: null }, area_mm2: 0.75 });
  });

  test("rows past the end become new wires", () => {
    const harness = adapter();
    const block = [
      ["W50", "", "X1.A8", "X2.2"],
      ["", "", "", ""],
    ];
    const { edit, added, bad } = writeCells(sheet(harness), [], 0, 0, block, "paste");
    expect(bad).toEqual([]);
    expect(added).toHaveLength(1);
    expect(made(harness, edit).wires[added[0]!]).toMatchObject({
      designation: "W50",
      ends: [
        { part: "p:X1", contact: 3 },
        { part: "p:X2", contact: 2 },
      ],
    });
  });

  test("two rows of one number: the second is refused", () => {
    const harness = adapter();
    const { bad } = writeCells(sheet(harness), [id("W1"), id("W2")], 0, 0, [["W77"], ["W77"]], "paste");
    expect(bad).toMatchObject([{ wire: "w:W2", text: "W77" }]);
  });

  test("two wires can exchange their numbers through a third", () => {
    const harness = adapter();
    const { bad } = writeCells(sheet(harness), [id("W1"), id("W2")], 0, 0, [["W9"], ["W1"]], "paste");
    expect(bad).toEqual([]);
  });

  test("a wire moves from one cable to another; an empty cable goes", () => {
    const harness = adapter();
    const cable = (name: string, wires: WireId[]) => ({
      kind: "put-entry" as const,
      section: "cables" as const,
      entry: {
        id: `c:${name}` as CableId,
        designation: name,
        kind: "multicore" as const,
        wires,
        shield: null,
        note: "",
      },
    });
    const two = made(made(harness, cable("WC1", [id("W1")])), cable("WC2", [id("W2"), id("W3")]));
    const edit = writeCell(sheet(two), id("W1"), "cable", "WC2") as Edit;
    const next = made(two, edit);
    expect(Object.keys(next.cables)).toEqual(["c:WC2"]);
    expect(next.cables["c:WC2" as CableId]!.wires).toEqual(["w:W2", "w:W3", "w:W1"]);
  });
});

describe("rows", () => {
  test("are filtered by every word, in any cell or colour word", () => {
    const now = sheet(adapter());
    expect(arrangeRows(now, "loose", null)).toEqual(["w:W3"]);
    expect(arrangeRows(now, "yellow switched", null)).toEqual(["w:W3"]);
    expect(arrangeRows(now, "yellow nonsense", null)).toEqual([]);
  });

  test("are sorted as numbers where they hold numbers, with empty cells last both ways", () => {
    const harness = build()
      .vehicle("X1", { 1: "unknown", 2: "unknown", 3: "unknown" })
      .wire("X1.1", "loose", null, { designation: "W10", area_mm2: 10 })
      .wire("X1.2", "loose", null, { designation: "W9", area_mm2: 1.5 })
      .wire("X1.3", "loose", null, { designation: "W1" }).harness;
    const now = sheet(harness);
    expect(arrangeRows(now, "", { column: "number", down: false })).toEqual(["w:W1", "w:W9", "w:W10"]);
    expect(arrangeRows(now, "", { column: "size", down: false })).toEqual(["w:W9", "w:W10", "w:W1"]);
    expect(arrangeRows(now, "", { column: "size", down: true })).toEqual(["w:W10", "w:W9", "w:W1"]);
  });

  test("a head pressed three times comes back to the order drawn", () => {
    const up = nextSort(null, "to");
    const down = nextSort(up, "to");
    expect([up, down, nextSort(down, "to")]).toEqual([
      { column: "to", down: false },
      { column: "to", down: true },
      null,
    ]);
  });
});

describe("the clipboard", () => {
  test("a range goes out and comes back the same", () => {
    const harness = adapter();
    const noted = made(harness, {
      kind: "change-wire",
      wire: id("W1"),
      changes: { note: 'two\nlines, a\ttab and "quotes"' },
    });
    const rows = [id("W1"), id("W2"), id("W3")];
    const range = { top: 0, bottom: 2, left: 0, right: COLUMNS.length - 1 };
    const block = rangeText(sheet(noted), rows, range);
    expect(fromTsv(toTsv(block))).toEqual(block);
    const back = writeCells(sheet(noted), rows, 0, 0, fromTsv(toTsv(block)), "paste");
    expect(back).toEqual({ edit: null, bad: [], added: [] });
  });

  test("a row of the table's own heads is known", () => {
    expect(isHeadRow(["Wire", "Label", "From"], 0)).toBe(true);
    expect(isHeadRow(["Size AWG", "Length m"], column("size"))).toBe(true);
    expect(isHeadRow(["W1", "", "X1.1"], 0)).toBe(false);
  });
});

describe("standing", () => {
  const rows = ["a", "b", "c"] as unknown as WireId[];
  const at = new Map(rows.map((row, index) => [row, index]));
  test("moves stay inside the table", () => {
    const corner = moved(standAt(rows[0]!, 0), rows, at, -5, -5, false);
    expect(corner).toEqual(standAt(rows[0]!, 0));
    expect(moved(corner, rows, at, 99, 99, false)).toEqual(standAt(rows[2]!, COLUMNS.length - 1));
  });
  test("a range grows from where it began", () => {
    const grown = moved(standAt(rows[1]!, 3), rows, at, -1, -2, true);
    expect(rangeOf(grown, at)).toEqual({ top: 0, bottom: 1, left: 1, right: 3 });
  });
  test("keys that do not move are left to others", () => {
    expect(moveOf("x", false, 10, 3)).toBeNull();
    expect(moveOf("End", true, 10, 3)).toEqual([3, COLUMNS.length]);
  });
});

test.each([
  ["0.45", 0.45],
  ["0,45 m", 0.45],
  ["45 cm", 0.45],
  ["450 mm", 0.45],
  ["18 in", 0.4572],
  [".5", 0.5],
  ["1 ft", 0.3048],
  ["-1", null],
  ["1e9", null],
  ["long", null],
])("a length of %j is %j m", (text, length_m) => {
  expect(readLength(text)).toBe(length_m);
});
