import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test, vi } from "vitest";
import { parse } from "../../src/graph/parse/parse.ts";
import { pigtail } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), "match-"));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const van = file(
  "van.txt",
  "Van Wren, radio socket\nA4: +12 V constant (red)\nA7: 12V (yellow)\nA8: ground (brown)\nB5: front left + (white)\nB6: front left - (white/black)\nA2: mute (green)\n",
);
const receiver = file(
  "receiver.csv",
  "colour,use\nyellow,battery\nred,accessory\nblack,earth\nwhite,FL spk +\nwhite/black,FL spk -\nzz,,\n",
);

describe("pigtail match", () => {
  test("prints joins, questions and caps as data, leads by label or by IEC letters", async () => {
    const { code, out } = await pigtail(["match", van, receiver, "--json"]);
    expect(code).toBe(0);
    const said = JSON.parse(out);
    const joins = said.joins.map((join: { left: string; right: string }) => `${join.left}=${join.right}`);
    expect(joins).toEqual(["A4=YE", "A8=BK", "B5=WH", "B6=WH/BK"]);
    for (const join of said.joins) {
      expect(join.confidence).toBeGreaterThan(0.9);
      expect(join.why).toMatch(/^both are the /);
      expect(typeof join.function).toBe("string");
    }
    expect(said.joins[0].traps.join(" ")).toContain("Join by label, not by colour");
    expect(said.ask).toEqual([
      { left: ["A7"], right: ["RD"], why: expect.stringContaining("“12V” (A7) may be") },
    ]);
    expect(said.capLeft).toEqual(["A2"]);
    expect(said.capRight).toEqual([]);
    expect(Array.isArray(said.unread)).toBe(true);
  });

  test("says the same in words", async () => {
    const { out } = await pigtail(["match", van, receiver]);
    expect(out).toContain("4 joins, 1 question");
    expect(out).toContain("A4 = YE");
    expect(out).toContain("ask: A7 with RD?");
    expect(out).toContain("cap left: A2");
  });

  test("writes a harness of what is certain, and not over one that is there", async () => {
    const path = join(folder, "out.harness.json");
    const first = await pigtail(["match", van, receiver, "-o", path]);
    expect(first.code).toBe(0);
    expect(first.errors).toContain("from which side it sees the cavities");
    const result = parse(readFileSync(path, "utf8"));
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    const { parts, layout } = result.harness;
    const kinds = Object.values(parts).map((part) => part.kind);
    expect(kinds.filter((kind) => kind === "connector")).toHaveLength(2);
    expect(kinds.filter((kind) => kind === "splice")).toHaveLength(4);
    expect(kinds.filter((kind) => kind === "cap")).toHaveLength(1);
    expect(Object.keys(layout.places)).toHaveLength(Object.keys(parts).length);
    expect((await pigtail(["match", van, receiver, "-o", path])).code).toBe(2);
    expect((await pigtail(["match", van, receiver, "-o", path, "--force"])).code).toBe(0);
  });

  test("one file with two charts side by side is both", async () => {
    const both = file(
      "both.tsv",
      "pin\tuse\tpin\tuse\n1\tground\t7\tearth\n2\tCAN H\t8\tCAN high\n3\tCAN L\t9\tCAN low\n",
    );
    const said = JSON.parse((await pigtail(["match", both, "--json"])).out);
    expect(said.joins.map((join: { left: string; right: string }) => `${join.left}=${join.right}`)).toEqual([
      "1=7",
      "2=8",
      "3=9",
    ]);
  });

  test.each([
    ["nothing named", ["match"]],
    ["a file that is not there", ["match", join(folder, "none.txt"), join(folder, "none.txt")]],
    ["one chart only", ["match", van]],
  ])("%s cannot be used", async (_name, given) => {
    const { code, errors } = await pigtail(given);
    expect(code).toBe(2);
    expect(errors.length).toBeGreaterThan(10);
  });
});
