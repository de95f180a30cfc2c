import { describe, expect, test } from "vitest";
import { emptyHarness } from "../../../src/graph/make.ts";
import { parse, serialise } from "../../../src/graph/parse/parse.ts";
import type { Problem } from "../../../src/graph/parse/problem.ts";

const MEGA = 1_000_000;

function refusedBy(text: string): readonly Problem[] {
  const result = parse(text);
  expect(result.ok).toBe(false);
  const problems = result.ok ? [] : result.problems;
  expect(problems.length).toBeGreaterThan(0);
  expect(problems.length).toBeLessThanOrEqual(100);
  return problems;
}

/** An empty harness with one field's text replaced. */
function filled(field: string, text: string): string {
  return serialise(emptyHarness()).replace(`"${field}": {}`, `"${field}": ${text}`);
}

// How long these may take is the runner's limit per test; how fast they are is the bench's to say.
describe("50 million characters", () => {
  const filler = "x".repeat(50 * MEGA);

  test("of a letter", () => {
    expect(refusedBy(filler)[0]).toMatchObject({ code: "not-json", line: 1, column: 1 });
  });

  test("of line feeds", () => {
    expect(refusedBy("\n".repeat(50 * MEGA))[0]).toMatchObject({ found: "an empty file" });
  });

  test("in one text of an otherwise good file", () => {
    const [problem] = refusedBy(filled("runs", `{"r:1": "${filler}"}`));
    expect(problem).toMatchObject({ code: "wrong-value", where: "runs.r:1", expected: "an object" });
    expect(problem!.found.length).toBeLessThan(70);
  });

  test("of line feeds before the place that is wrong", () => {
    const text = `[0,${"\n".repeat(50 * MEGA)}`;
    expect(refusedBy(text)[0]).toMatchObject({ code: "not-json", line: 50 * MEGA + 1, expected: "a value" });
  });

  test("of numbers in a list", () => {
    expect(refusedBy(`[${"0,".repeat(24 * MEGA)}`)[0]).toMatchObject({ code: "too-many" });
  });

  test("of empty lists in a list", () => {
    expect(refusedBy(`[${"[],".repeat(16 * MEGA)}[]]`)[0]).toMatchObject({ code: "too-many" });
  });
});

test("more than 64 million characters are not even read", () => {
  expect(refusedBy(" ".repeat(64 * MEGA + 1))[0]).toMatchObject({ code: "too-large", line: null });
});

test("a million brackets deep, closed or not, of either kind, in a harness or alone", () => {
  const deep = "[".repeat(MEGA);
  const braces = '{"a":'.repeat(MEGA);
  for (const text of [
    deep,
    deep + "]".repeat(MEGA),
    braces,
    filled("runs", deep),
    `{"a": "\\"" , "b": ${deep}`,
  ])
    expect(refusedBy(text)[0]).toMatchObject({ code: "too-deep" });
});

test("brackets inside a text are not depth", () => {
  const harness = emptyHarness();
  const title = `${"[".repeat(200)}\\"${"{".repeat(100)}`;
  const result = parse(serialise({ ...harness, titleBlock: { ...harness.titleBlock, title } }));
  expect(result.ok && result.harness.titleBlock.title).toBe(title);
});

test("90 000 bad entries give a hundred problems, each with its place", () => {
  const entries = Array.from({ length: 90_000 }, (_, index) => `"w:${index}": {"id": "w:${index}"}`);
  const problems = refusedBy(filled("wires", `{\n${entries.join(",\n")}\n}`));
  expect(problems).toHaveLength(100);
  for (const problem of problems) expect(problem.line).toBeGreaterThan(1);
  expect(new Set(problems.map((one) => one.where)).size).toBe(100);
});

test("three million numbers where cavities should be give one complaint, not millions", () => {
  const zeros = "0,".repeat(3 * MEGA);
  const text = filled("parts", `{"p:1": {"id": "p:1", "kind": "module", "cavities": [${zeros}0]}}`);
  expect(refusedBy(text)).toMatchObject([{ code: "too-many", where: "parts.p:1" }]);
});

test("more entries than a section holds", () => {
  const entries = Array.from({ length: 100_001 }, (_, index) => `"w:${index}": 0`);
  expect(refusedBy(filled("wires", `{${entries.join()}}`))).toMatchObject([
    { code: "too-many", where: "wires", found: "100001 entries" },
  ]);
});

test("100 000 repeated keys give a hundred problems", () => {
  const problems = refusedBy(filled("runs", `{${'"r:1":{},'.repeat(100_000)}"r:2":{}}`));
  expect(problems).toHaveLength(100);
  expect(problems[0]).toMatchObject({ code: "repeated-key", where: "runs.r:1" });
});

describe("keys that reach for JavaScript's own objects", () => {
  test.each(["__proto__", "constructor", "prototype"])(
    "%s is refused anywhere and pollutes nothing",
    (key) => {
      for (const text of [
        filled("parts", `{"${key}": {"id": "p:1"}}`),
        filled("parts", `{"p:1": {"id": "p:1", "kind": "cap", "${key}": {"polluted": 1}}}`),
        `{"format": "pigtail-harness", "\\u005f_proto__": 1, "${key}": {"polluted": 1}}`,
      ])
        expect(refusedBy(text)[0]!.code).toBe("forbidden-key");
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    },
  );

  test("a method's name as an id names nothing", () => {
    const end = '{"part": "p:toString", "contact": 1}';
    const wire = `{"w:1": {"id": "w:1", "designation": "W1", "ends": [${end}, "loose"], "colour": null, "area_mm2": "unknown", "length_m": "unknown", "material": "unknown", "insulation": "unknown", "strands": "unknown", "label": "", "runs": [], "note": ""}}`;
    expect(refusedBy(filled("wires", wire))).toMatchObject([{ code: "dangling-end" }]);
  });
});

test.each([
  "null",
  "true",
  "0",
  '"pigtail-harness"',
  "[]",
  '{"format": ["pigtail-harness"]}',
  '[{"format": "pigtail-harness"}]',
])("%s is JSON and no harness", (text) => {
  expect(refusedBy(text)).toMatchObject([{ code: "not-a-harness", line: 1, column: 1 }]);
});

test("lists, numbers, texts and nothing in place of every section", () => {
  const names = Object.keys(emptyHarness());
  for (const name of names) {
    for (const value of [[], [[]], 0, "x", null, true]) {
      const result = parse(JSON.stringify({ ...emptyHarness(), [name]: value }));
      expect(result.ok, `${name}: ${JSON.stringify(value)}`).toBe(false);
    }
    const { [name]: _, ...rest } = emptyHarness() as unknown as Record<string, unknown>;
    expect(refusedBy(JSON.stringify(rest))[0]!.code).toMatch(/^(missing-field|not-a-harness)$/);
  }
});

test("half of a surrogate pair survives reading and saving", () => {
  const text = serialise(emptyHarness()).replace('"title": ""', '"title": "a\\ud800b"');
  const result = parse(text);
  expect(result.ok && result.harness.titleBlock.title).toBe("a\ud800b");
  expect(result.ok && serialise(result.harness)).toBe(text);
});
