import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { PartId, WireId } from "../../src/graph/harness.ts";
import { emptyHarness, makePart, makeWire } from "../../src/graph/make.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

const clean = sample("wren-receiver-adapter");
const faulty = sample("wren-receiver-adapter-faults");
const full = sample("full-build");

describe("pigtail check", () => {
  test("says that nothing was found, counts what is waived, and ends with 0", async () => {
    const { code, out, errors } = await pigtail(["check", clean, full]);
    expect(out).toBe(`${clean}: nothing found\n${full}: nothing found; 1 waived\n`);
    expect([code, errors]).toEqual([0, ""]);
  });

  test("tells each finding with its consequence and remedy, and ends with 1", async () => {
    const { code, out } = await pigtail(["check", faulty]);
    expect(code).toBe(1);
    const [first, ...lines] = out.trimEnd().split("\n");
    expect(first).toBe(`${faulty}: 8 findings: 1 danger, 4 fault, 3 weak`);
    expect(lines).toHaveLength(24);
    expect(out).toMatch(
      /\n {2}danger {2}W7 \(grey with a red tracer\).*\n {10}The bare end.*\n {10}→ .*\[loose-live-lead\]\n/,
    );
  });

  test("--json prints one object a file, of exactly these fields", async () => {
    const { code, out } = await pigtail(["check", "--json", clean, faulty]);
    expect(code).toBe(1);
    const [one, two] = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as { findings: object[] });
    expect(one).toEqual({ file: clean, findings: [] });
    expect(Object.keys(two!)).toEqual(["file", "findings"]);
    expect(two!.findings).toHaveLength(8);
    for (const finding of two!.findings)
      expect(Object.keys(finding)).toEqual(["rule", "severity", "message", "at", "fixable"]);
    expect(two!.findings).toContainEqual({
      rule: "several-spares-under-one-cap",
      severity: "fault",
      message: expect.stringContaining("XC2 holds 2 leads"),
      at: expect.arrayContaining(["XC2"]),
      fixable: expect.any(Boolean),
    });
    expect(two!.findings).toContainEqual(
      expect.objectContaining({ rule: "spare-not-capped", at: ["X3.2"], fixable: true }),
    );
  });

  test("--fail-on sets how bad a finding has to be: a swapped speaker pair alone is weak", async () => {
    const file = join(folder(), "weak.harness.json");
    writeFileSync(file, JSON.stringify(tidyHarness()));
    const codes = await Promise.all(
      ["danger", "weak", "tidy"].map(
        async (severity) => (await pigtail(["check", file, "--fail-on", severity])).code,
      ),
    );
    expect(codes).toEqual([0, 0, 1]);
    expect((await pigtail(["check", file])).code).toBe(0);
    expect((await pigtail(["check", faulty, "--fail-on", "danger"])).code).toBe(1);
  });

  test("reads the standard input", async () => {
    const { code, out } = await pigtail(["check", "-", "--json"], { input: readFileSync(faulty, "utf8") });
    expect([code, (JSON.parse(out) as { file: string }).file]).toEqual([1, "-"]);
  });

  test("a file that cannot be read is told by line and column and gives 2; the others are still checked", async () => {
    const file = join(folder(), "bad.harness.json");
    writeFileSync(file, readFileSync(clean, "utf8").replace('"view": "wire-side"', '"view": "left"'));
    const { code, out, errors } = await pigtail(["check", file, faulty]);
    expect(code).toBe(2);
    expect(out).toContain("8 findings");
    expect(errors).toMatch(
      /bad\.harness\.json:\d+:\d+: parts\.p:X1\.view: found "left"; expected one of .*\[wrong-value\]\n$/,
    );
  });

  test.each<[string, string | Uint8Array, RegExp]>([
    ["nothing", "", /^bad\.json: found an empty file/],
    ["no JSON", '{\n  "a": }', /^bad\.json:2:8: found "}"; expected a value\. →/],
    ["another JSON", "[]", /^bad\.json:1:1: found a list of 0; expected an object with "format"/],
    ["no UTF-8", new Uint8Array([0xff, 0xfe, 0x7b, 0]), /^bad\.json: this is not UTF-8 text/],
    [
      "words that steer a terminal",
      '{"format": "\\u001b[2J\\u009b"}',
      /^bad\.json:1:1: found "format": "[^\p{Cc}]*"/u,
    ],
  ])("%s in a file", async (_name, content, message) => {
    const cwd = folder();
    writeFileSync(join(cwd, "bad.json"), content);
    const { code, out, errors } = await pigtail(["check", "bad.json"], { cwd });
    expect(errors).toMatch(message);
    expect(errors.trimEnd()).not.toMatch(/[^\P{Cc}\n]/u);
    expect([code, out]).toEqual([2, ""]);
  });

  test("no file, a folder, and arguments that it does not know", async () => {
    const cwd = folder();
    const ends = await Promise.all(
      [
        ["check"],
        ["check", "none.json"],
        ["check", "."],
        ["check", clean, "--fast"],
        ["check", clean, "--fail-on", "bad"],
      ].map((args) => pigtail(args, { cwd })),
    );
    expect(ends.map(({ code }) => code)).toEqual([2, 2, 2, 2, 2]);
    expect(ends.map(({ out }) => out).join("")).toBe("");
    const said = ends.map(({ errors }) => errors);
    expect(said[0]).toContain("Usage: pigtail check FILE…");
    expect(said[1]).toBe("none.json: there is no such file or folder.\n");
    expect(said[2]).toContain("this is a folder");
    expect(said[3]).toContain("--fast");
    expect(said[4]).toContain("--fail-on is one of danger, fault, weak, tidy");
  });
});

/** Two parts of one designation: tidy, and nothing else. */
function tidyHarness() {
  const ids = ["p:1", "p:2"] as PartId[];
  const [a, b] = ids as [PartId, PartId];
  const parts = Object.fromEntries(
    ids.map((id) => [id, makePart("ground", id, "XE1", { surface: "bare-metal" })]),
  );
  const id = "w:1" as WireId;
  const wire = makeWire(id, "W1", [
    { part: a, contact: 1 },
    { part: b, contact: 1 },
  ]);
  return { ...emptyHarness(), parts, wires: { [id]: wire } };
}
