import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import { describe, expect, test, vi } from "vitest";
import { folder, pigtail } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

const CHART = `Step van Wren, receiver plug
A4: +12V constant (yellow) 10 A
A5: power antenna (blue), output
A8: ground (black) 1.5 mm²
A9: not used
`;

describe("pigtail chart", () => {
  test("prints the rows under one another, then what is a note", async () => {
    const { code, out, errors } = await pigtail(["chart", "-"], { input: CHART });
    expect([code, errors]).toEqual([0, ""]);
    expect(out.split("\n")).toEqual([
      'standard input: "Step van Wren, receiver plug" 4 rows',
      "  Lead  Function       Colour  mm²  A   Fuse  Way    On the chart",
      "  A4    constant feed  YE           10               +12V constant",
      "  A5    antenna power  BU                     gives  power antenna output",
      "  A8    ground         BK      1.5                   ground",
      "  A9    not used                                     not used",
      "  note, line 1: Step van Wren, receiver plug",
      "",
    ]);
  });

  test("--json prints exactly these fields", async () => {
    const file = join(folder(), "chart.txt");
    writeFileSync(file, "pin;colour;function\n1;RD;battery\n2;GN;12V\n");
    const { code, out } = await pigtail(["chart", file, "--json"]);
    expect(code).toBe(0);
    const read = JSON.parse(out) as { charts: { rows: Record<string, unknown>[] }[] };
    expect(read).toEqual({
      charts: [{ title: "", rows: expect.any(Array), notes: [], unread: [] }],
      remarks: [],
    });
    expect(read.charts[0]!.rows[0]).toEqual({
      name: "1",
      label: "1",
      function: "constant-feed",
      certain: true,
      alternatives: [],
      text: "battery",
      colour: "RD",
      size_mm2: null,
      current_A: null,
      fuse_A: null,
      direction: "unknown",
      unused: false,
      line: 2,
    });
    const doubtful = read.charts[0]!.rows[1]!;
    expect(doubtful.certain).toBe(false);
    expect((doubtful.alternatives as string[]).length).toBeGreaterThan(0);
  });

  test("what is not read is shown, and nothing of it steers the terminal", async () => {
    const { out } = await pigtail(["chart", "-"], {
      input: "1 red battery\n2 black ground\n\u001b[31m smudged\n3 white horn\n",
    });
    expect(out).toContain("3 rows, 1 not read");
    expect(out).toContain("not read, line 3: \ufffd[31m smudged");
  });

  test("a text under the name of a spreadsheet, and a packed file that is none", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "a.xlsx"), CHART);
    writeFileSync(join(cwd, "b.xlsx"), zipSync({ "a.txt": strToU8("x") }));
    const [text, packed] = await Promise.all(
      ["a.xlsx", "b.xlsx"].map((name) => pigtail(["chart", name], { cwd })),
    );
    expect(text!.out).toContain("4 rows");
    expect(packed!.out).toBe("b.xlsx: no chart\n  This is a packed file, but no spreadsheet (.xlsx).\n");
  });

  test("files and arguments that cannot be used give 2", async () => {
    const cwd = folder();
    mkdirSync(join(cwd, "sub"));
    const ends = await Promise.all(
      [["chart"], ["chart", "none.txt"], ["chart", "sub"], ["chart", "a", "b"]].map((args) =>
        pigtail(args, { cwd }),
      ),
    );
    expect(ends.map(({ code }) => code)).toEqual([2, 2, 2, 2]);
    expect(ends[1]!.errors).toMatch(/^none\.txt: there is no such file/);
  });
});
