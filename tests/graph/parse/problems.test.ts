import { describe, expect, test } from "vitest";
import type { Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { emptyHarness, makeCavity, makePart, makeWire } from "../../../src/graph/make.ts";
import { parse, parseValue, serialise } from "../../../src/graph/parse/parse.ts";
import { type Problem, sayProblem, showValue } from "../../../src/graph/parse/problem.ts";

const x1 = "p:1" as PartId;
const w1 = "w:1" as WireId;

function small(): Harness {
  const part = makePart("connector", x1, "X1", { cavities: [makeCavity("1"), makeCavity("2")] });
  const wire = makeWire(w1, "W1", [{ part: x1, contact: 1 }, "loose"], { area_mm2: 0.75 });
  return { ...emptyHarness(), parts: { [x1]: part }, wires: { [w1]: wire } };
}

/** The file's text with one piece of it written otherwise. */
function written(from: string, to: string): string {
  const text = serialise(small());
  expect(text.split(from)).toHaveLength(2);
  return text.replace(from, to);
}

function problemsOf(text: string): readonly Problem[] {
  const result = parse(text);
  return result.ok ? [] : result.problems;
}

/** What stands in the text where the problem points: the proof that line and column are right. */
function pointedAt(text: string, problem: Problem): string {
  const line = text.split("\n")[problem.line! - 1]!;
  return line.slice(problem.column! - 1);
}

describe("a good file", () => {
  test("is read, and written again is the same text", () => {
    const text = serialise(small());
    const result = parse(text);
    expect(result).toEqual({ ok: true, harness: small(), notes: [] });
    expect(result.ok && serialise(result.harness)).toBe(text);
  });

  test("may start with a byte order mark, end its lines the other way, or be written in one line", () => {
    const text = serialise(small());
    for (const other of [`\ufeff${text}`, text.replaceAll("\n", "\r\n"), JSON.stringify(small())])
      expect(parse(other)).toEqual({ ok: true, harness: small(), notes: [] });
  });
});

const END = '{\n          "part": "p:1",\n          "contact": 1\n        }';

describe("each kind of problem says its place, what was found, what was expected", () => {
  test.each<[string, string, Partial<Problem>, string]>([
    [
      "wrong-value, a word",
      written('"wire-side"', '"left"'),
      {
        code: "wrong-value",
        where: "parts.p:1.view",
        found: '"left"',
        expected: 'one of "mating-face", "wire-side"',
      },
      '"left"',
    ],
    [
      "wrong-value, too large",
      written('"area_mm2": 0.75', '"area_mm2": 1e300'),
      {
        code: "wrong-value",
        where: "wires.w:1.area_mm2",
        found: "1e+300",
        expected: "at most 1000",
      },
      "1e300",
    ],
    [
      "wrong-value, past every number",
      written('"area_mm2": 0.75', '"area_mm2": 1e999'),
      { code: "wrong-value", found: "Infinity" },
      "1e999",
    ],
    [
      "wrong-value, below zero",
      written('"area_mm2": 0.75', '"area_mm2": -1'),
      { code: "wrong-value", expected: "more than 0" },
      "-1",
    ],
    [
      "wrong-value, a list for an object",
      written('"wires": {', '"wires": [], "other": {'),
      { code: "wrong-value", where: "wires", found: "a list of 0", expected: "an object from id to entry" },
      "[]",
    ],
    [
      "wrong-value, an object for a list",
      written('"rows": []', '"rows": {"length": 1}'),
      { code: "wrong-value", where: "parts.p:1.rows", found: "an object", expected: "a list" },
      '{"length": 1}',
    ],
    [
      "wrong-value, an unheard-of kind",
      written('"kind": "connector"', '"kind": "plumbing"'),
      { code: "wrong-value", where: "parts.p:1.kind", found: '"plumbing"' },
      '"plumbing"',
    ],
    [
      "wrong-value, inside an end",
      written(END, '{"part": "p:1", "contact": 1.5}'),
      { code: "wrong-value", where: "wires.w:1.ends[0].contact", found: "1.5", expected: "a whole number" },
      "1.5}",
    ],
    [
      "wrong-value, an end of no form",
      written(END, "7"),
      { code: "wrong-value", where: "wires.w:1.ends[0]", expected: 'an object, or "loose"' },
      "7,",
    ],
    [
      "wrong-value, a colour",
      written('"colour": null', '"colour": {"base": "RED", "tracer": null}'),
      { code: "wrong-value", where: "wires.w:1.colour.base", found: '"RED"' },
      '"RED"',
    ],
    [
      "missing-field",
      written('      "rows": [],\n', ""),
      { code: "missing-field", where: "parts.p:1.rows", found: "nothing", expected: "a list" },
      "{",
    ],
    [
      "missing-field, a section",
      written('"runs": {},', ""),
      { code: "missing-field", where: "runs", next: 'Add "runs": {}.' },
      "{",
    ],
    [
      "repeated-key",
      written('"runs": {}', '"runs": {}, "parts": {}'),
      { code: "repeated-key", where: "parts" },
      '"parts": {}',
    ],
    [
      "forbidden-key",
      written('"runs": {}', '"runs": {"__proto__": {"id": "r:1"}}'),
      { code: "forbidden-key", where: "runs.__proto__" },
      '"__proto__"',
    ],
    [
      "wrong-id",
      written('"id": "w:1"', '"id": "w:2"'),
      { code: "wrong-id", where: "wires.w:1.id", expected: '"w:1", the key it stands under' },
      '"w:2"',
    ],
    [
      "wrong-id, a place of no part",
      written('"places": {}', '"places": {"X1": {}}'),
      { code: "wrong-id", where: "layout.places.X1" },
      "{}",
    ],
    [
      "dangling-end, no such part",
      written(END, '{"part": "p:71", "contact": 1}'),
      { code: "dangling-end", where: "wires.w:1.ends[0]", found: 'part "p:71"' },
      '{"part": "p:71"',
    ],
    [
      "dangling-end, no such contact",
      written(END, '{"part": "p:1", "contact": 3}'),
      { code: "dangling-end", found: "contact 3", expected: "1 to 2, the contacts of X1" },
      '{"part"',
    ],
    [
      "dangling-reference, a run",
      written('"runs": []', '"runs": ["r:9"]'),
      { code: "dangling-reference", where: "wires.w:1.runs[0]", found: 'run "r:9"' },
      '"r:9"',
    ],
    [
      "dangling-reference, a mate",
      written('"matedWith": null', '"matedWith": "p:1"'),
      { code: "dangling-reference", where: "parts.p:1.matedWith" },
      '"p:1"',
    ],
    [
      "dangling-reference, a module",
      written('"module": null', '"module": "p:1"'),
      { code: "dangling-reference", where: "parts.p:1.belongsTo.module" },
      '"p:1"',
    ],
    [
      "not-json",
      written('"runs": {},', '"runs": {}'),
      { code: "not-json", expected: "a comma or the closing bracket" },
      '"waivers"',
    ],
    [
      "not-a-harness",
      '{\n  "format": "recipe"\n}',
      { code: "not-a-harness", found: '"format": "recipe"' },
      "{",
    ],
    [
      "too-deep",
      written('"runs": {}', `"runs": ${"[".repeat(70)}${"]".repeat(70)}`),
      { code: "too-deep" },
      "[[[[[[[]",
    ],
  ])("%s", (_name, text, expected, place) => {
    const [problem, ...more] = problemsOf(text);
    expect(more).toEqual([]);
    expect(problem).toMatchObject(expected);
    expect(problem!.next).toMatch(/\.$/);
    expect(pointedAt(text, problem!).slice(0, place.length)).toBe(place);
  });

  test("dangling cores and shields of a cable", () => {
    const cable = {
      id: "c:1",
      designation: "C1",
      kind: "shielded",
      wires: ["w:1", "w:8"],
      shield: "w:9",
      note: "",
    };
    const problems = problemsOf(JSON.stringify({ ...small(), cables: { "c:1": cable } }));
    expect(problems.map((one) => [one.code, one.where])).toEqual([
      ["dangling-reference", "cables.c:1.wires[1]"],
      ["dangling-reference", "cables.c:1.shield"],
    ]);
  });

  test("several problems of one file each have their own place, in whatever order they were found", () => {
    const text = written('"wire-side"', '"left"')
      .replace('"gender": "unknown"', '"gender": 5')
      .replace('"status": "draft"', '"status": ""');
    const problems = problemsOf(text);
    expect(problems.map((one) => pointedAt(text, one).slice(0, 3))).toEqual(
      ['"",', "5,", '"le'].map((it) => it),
    );
  });
});

const SYMBOL = "text in double quotes, a number, true, false, null, { or [";

describe("text that is not JSON points to the place", () => {
  test.each<[string, string, string]>([
    ["{\n  'a': 1\n}", "2:3", SYMBOL],
    ['{\n  "a": 1,\n}', "3:1", "a name in double quotes"],
    ['{\n  "a": [1, 2,]\n}', "2:14", "a value"],
    ['{\n  "a" 1\n}', "2:7", "a colon"],
    ['{"a": 1}\n  extra', "2:3", SYMBOL],
    ['{\n  // a note\n  "a": 1}', "2:3", "no comment: JSON has none"],
    ['{"a": NaN}', "1:7", SYMBOL],
    ['{"a": -Infinity}', "1:7", SYMBOL],
    ['{"a": .5}', "1:7", SYMBOL],
    ['{"a": "b\n"}', "1:7", "a closing double quote on the same line"],
    ['{"a": "\\x"}', "1:7", 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u'],
    ['{"a": 1', "1:8", "a closing }"],
    ["<!doctype html>\n<p>", "1:1", SYMBOL],
    ['\ufeff{\n  "a": tru\n}', "2:8", SYMBOL],
  ])("%j", (text, place, expected) => {
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: "not-json" });
    expect(`${problem!.line}:${problem!.column}`).toBe(place);
    expect(problem!.expected).toBe(expected);
  });

  test("an empty file says so", () => {
    for (const text of ["", " \n\t", "\ufeff"])
      expect(problemsOf(text)[0]).toMatchObject({ code: "not-json", found: "an empty file" });
  });
});

describe("said to a person", () => {
  test("as a compiler says it", () => {
    const text = written('"wire-side"', '"left"');
    expect(sayProblem(problemsOf(text)[0]!, "van.harness.json")).toMatch(
      /^van\.harness\.json:\d+:\d+: parts\.p:1\.view: found "left"; expected one of "mating-face", "wire-side"\. → Correct the value\. \[wrong-value\]$/,
    );
  });

  test("a value of a file cannot steer a terminal or break the line", () => {
    const shown = showValue("a\u001b[2J\n\u009b31m\u202e\u2028");
    expect(shown).not.toMatch(/[\p{Cc}\p{Cf}\u2028\u2029]/u);
    expect(showValue("x".repeat(500)).length).toBeLessThan(70);
    const key = 'k\u001b]0;"\n';
    const [problem] = problemsOf(JSON.stringify({ ...small(), runs: { [key]: 1 } }));
    expect(problem!.where).not.toMatch(/\p{Cc}/u);
  });

  test("a value that never was a text has no lines", () => {
    const result = parseValue({ ...small(), runs: [] });
    expect(result).toMatchObject({ ok: false, problems: [{ where: "runs", line: null, column: null }] });
    expect(parseValue(undefined)).toMatchObject({ ok: false });
    expect(parseValue(small())).toMatchObject({ ok: true });
  });
});
