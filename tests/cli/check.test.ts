import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { Build } from "../build.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

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

  test("--fail-on sets how bad a finding has to be; unless told, what is only tidy does not count", async () => {
    const file = join(folder(), "tidy.harness.json");
    writeFileSync(file, JSON.stringify(new Build().wire("loose", "loose").harness));
    const ends = await Promise.all(
      [[], ["--fail-on", "tidy"]].map((more) => pigtail(["check", file, ...more])),
    );
    expect(ends.map(({ code }) => code)).toEqual([0, 1]);
    for (const { out } of ends) expect(out).toContain("1 finding: 1 tidy");
  });

  test("reads the standard input", async () => {
    const { code, out } = await pigtail(["check", "-", "--json"], { input: readFileSync(faulty, "utf8") });
    expect([code, (JSON.parse(out) as { file: string }).file]).toEqual([1, "-"]);
  });

  test("files that cannot be read are told by line and column and give 2; the others are still checked", async () => {
    const cwd = folder();
    const bad: readonly (readonly [string, string | Uint8Array, RegExp])[] = [
      [
        "view",
        readFileSync(clean, "utf8").replace('"view": "wire-side"', '"view": "left"'),
        /^view:\d+:\d+: parts\.p:X1\.view: found "left"; expected one of .* → .* \[wrong-value\]$/,
      ],
      ["nothing", "", /^nothing: found an empty file/],
      ["no-json", '{\n  "a": }', /^no-json:2:8: found "}"; expected a value\. →/],
      ["other-json", "[]", /^other-json:1:1: found a list of 0; expected an object with "format"/],
      ["utf-16", new Uint8Array([0xff, 0xfe, 0x7b, 0]), /^utf-16: this is not UTF-8 text/],
      ["steering", '{"format": "\\u001b[2J\\u009b"}', /^steering:1:1: found "format": "[^\p{Cc}]*"/u],
      ["missing", "", /^missing: there is no such file/],
      ["folder", "", /^folder: this is a folder/],
    ];
    for (const [name, content] of bad) {
      if (name === "folder") mkdirSync(join(cwd, name));
      else if (name !== "missing") writeFileSync(join(cwd, name), content);
    }
    const { code, out, errors } = await pigtail(["check", ...bad.map(([name]) => name), faulty], { cwd });
    expect(code).toBe(2);
    expect(out).toContain("8 findings");
    const lines = errors.trimEnd().split("\n");
    expect(lines).toHaveLength(bad.length);
    for (const [index, [, , message]] of bad.entries()) {
      expect(lines[index]).toMatch(message);
      expect(lines[index]).not.toMatch(/\p{Cc}/u);
    }
  });

  test("no file, and arguments that it does not know", async () => {
    const ends = await Promise.all(
      [["check"], ["check", clean, "--fast"], ["check", clean, "--fail-on", "bad"]].map((args) =>
        pigtail(args),
      ),
    );
    expect(ends.map(({ code, out }) => [code, out])).toEqual([
      [2, ""],
      [2, ""],
      [2, ""],
    ]);
    const said = ends.map(({ errors }) => errors);
    expect(said[0]).toContain("Usage: pigtail check FILE…");
    expect(said[1]).toContain("--fast");
    expect(said[2]).toContain("--fail-on is one of danger, fault, weak, tidy");
  });
});
