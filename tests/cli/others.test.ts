import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { SAMPLE_LIST } from "../../samples/list.ts";
import { emptyHarness } from "../../src/graph/make.ts";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

const clean = sample("wren-receiver-adapter");

describe("pigtail", () => {
  test("--help and --version answer on the standard output; no or an unknown command on the other", async () => {
    const [help, version, none, unknown] = await Promise.all([
      pigtail(["--help"], { asInstalled: true }),
      pigtail(["--version"], { asInstalled: true }),
      pigtail([], { asInstalled: true }),
      pigtail(["chekc"], { asInstalled: true }),
    ]);
    expect(help).toMatchObject({ code: 0, errors: "", out: expect.stringContaining("pigtail check FILE…") });
    const file = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
    expect(version).toEqual({
      code: 0,
      errors: "",
      out: `${(JSON.parse(file) as { version: string }).version}\n`,
    });
    expect(none).toMatchObject({ code: 2, out: "", errors: help.out });
    expect(unknown).toMatchObject({
      code: 2,
      out: "",
      errors: expect.stringContaining('no command "chekc"'),
    });
  });
});

describe("pigtail trace", () => {
  test("says what a contact joins and lists its wires", async () => {
    const { code, out } = await pigtail(["trace", clean, "X1.A4"]);
    expect(code).toBe(0);
    expect(out).toBe(
      "X1.A4 constant feed, red, is joined to X3.12 constant feed, yellow, through splice XJ2.\n2 wires: W3 (red), W4 (yellow)\n",
    );
  });

  test("a contact that is not there, and a part that is not there, are answered with those that are", async () => {
    const [contact, part] = await Promise.all([
      pigtail(["trace", clean, "X1.A9"]),
      pigtail(["trace", clean, "X9.1"]),
    ]);
    expect(contact).toMatchObject({ code: 2, out: "" });
    expect(contact.errors).toBe(
      "There is no contact X1.A9. → Its contacts are X1.A1, X1.A2, X1.A3, X1.A4, X1.A5, X1.A6, X1.A7, X1.A8; name one like X1.A4.\n",
    );
    expect(part.errors).toMatch(/The parts are X1, X2, X3, .* and 7 more/);
  });
});

describe("pigtail new", () => {
  test("writes an empty harness to a file, not over one that is there, and to the standard output", async () => {
    const cwd = folder();
    const [made, printed] = await Promise.all([
      pigtail(["new", "a.harness.json"], { cwd }),
      pigtail(["new"]),
    ]);
    expect(made).toEqual({ code: 0, out: "", errors: "" });
    expect(readFileSync(join(cwd, "a.harness.json"), "utf8")).toBe(serialise(emptyHarness()));
    expect(printed).toEqual({ code: 0, out: serialise(emptyHarness()), errors: "" });
    writeFileSync(join(cwd, "a.harness.json"), "mine");
    const again = await pigtail(["new", "a.harness.json"], { cwd });
    expect(again).toMatchObject({ code: 2, errors: expect.stringContaining("is there already") });
    expect(readFileSync(join(cwd, "a.harness.json"), "utf8")).toBe("mine");
    expect((await pigtail(["new", "a.harness.json", "--force"], { cwd })).code).toBe(0);
    expect(readFileSync(join(cwd, "a.harness.json"), "utf8")).toBe(serialise(emptyHarness()));
    expect(readdirSync(cwd)).toEqual(["a.harness.json"]);
  });
});

describe("pigtail samples", () => {
  test("lists them all, prints one, copies one, and does not know another", async () => {
    const cwd = folder();
    const [list, printed, copied, unknown] = await Promise.all([
      pigtail(["samples"]),
      pigtail(["samples", "work-lamp-relay"]),
      pigtail(["samples", "work-lamp-relay", "-o", "copy.harness.json"], { cwd }),
      pigtail(["samples", "../package"]),
    ]);
    expect(
      list.out
        .trimEnd()
        .split("\n")
        .map((line) => line.split(" ")[0]),
    ).toEqual(SAMPLE_LIST.map(({ id }) => id));
    const text = readFileSync(sample("work-lamp-relay"), "utf8");
    expect(printed).toEqual({ code: 0, out: text, errors: "" });
    expect(copied).toEqual({ code: 0, out: "", errors: "" });
    expect(readFileSync(join(cwd, "copy.harness.json"), "utf8")).toBe(text);
    expect(unknown).toMatchObject({
      code: 2,
      out: "",
      errors: expect.stringContaining("There is no sample ../package"),
    });
  });
});

describe("pigtail draw", () => {
  test("writes PDF, SVG and PNG of an arranged and of an unplaced harness", async () => {
    const cwd = folder();
    const source = sample("work-lamp-relay");
    const before = readFileSync(source, "utf8");
    const ends = await Promise.all(
      [
        ["draw", clean, "-o", "a.pdf", "--size", "A3"],
        ["draw", source, "-o", "b.svg", "--grey"],
        ["draw", source, "-o", "c.PNG"],
      ].map((args) => pigtail(args, { cwd })),
    );
    for (const end of ends) expect(end).toEqual({ code: 0, out: "", errors: "" });
    const [pdf, svg, png] = ["a.pdf", "b.svg", "c.PNG"].map((name) => readFileSync(join(cwd, name)));
    expect(pdf!.subarray(0, 5).toString()).toBe("%PDF-");
    expect(svg!.toString()).toMatch(/^(<\?xml[^>]*>\s*)?<svg[\s\S]*K1[\s\S]*<\/svg>\s*$/);
    expect([...png!.subarray(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
    expect(readFileSync(source, "utf8")).toBe(before);
    expect(readdirSync(cwd).sort()).toEqual(["a.pdf", "b.svg", "c.PNG"]);
  });

  test("refuses to guess, and an empty harness, before anything is written", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "empty.json"), serialise(emptyHarness()));
    const ends = await Promise.all(
      [
        ["draw", clean],
        ["draw", clean, "-o", "a.bmp"],
        ["draw", clean, "-o", "a.pdf", "--size", "A9"],
        ["draw", "empty.json", "-o", "a.pdf"],
        ["draw", clean, "-o", "no/such/a.svg"],
      ].map((args) => pigtail(args, { cwd })),
    );
    expect(ends.map(({ code }) => code)).toEqual([2, 2, 2, 2, 2]);
    expect(ends[1]!.errors).toContain(".pdf, .svg or .png");
    expect(ends[2]!.errors).toContain("A4, A3, Letter, Tabloid");
    expect(ends[3]!.errors).toContain("nothing to draw");
    expect(ends[4]!.errors).toContain("no/such/a.svg could not be written: there is no such file or folder.");
    expect(readdirSync(cwd)).toEqual(["empty.json"]);
  });
});

describe("writing", () => {
  test("keeps a link a link and a file's permissions, and leaves nothing beside it", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "real.json"), "old");
    chmodSync(join(cwd, "real.json"), 0o600);
    symlinkSync("real.json", join(cwd, "link.json"));
    expect((await pigtail(["new", "link.json", "--force"], { cwd })).code).toBe(0);
    expect(parse(readFileSync(join(cwd, "real.json"), "utf8")).ok).toBe(true);
    expect(statSync(join(cwd, "real.json")).mode & 0o777).toBe(0o600);
    expect(readdirSync(cwd).sort()).toEqual(["link.json", "real.json"]);
  });

  test("does not write over a folder", async () => {
    const cwd = folder();
    mkdirSync(join(cwd, "a"));
    expect(await pigtail(["new", "a", "--force"], { cwd })).toMatchObject({
      code: 2,
      errors: expect.stringContaining("a is not a file"),
    });
    expect(existsSync(join(cwd, "a"))).toBe(true);
  });
});
