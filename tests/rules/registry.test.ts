import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { check } from "../../src/rules/check.ts";
import { loadExample } from "../../src/rules/examples/load.ts";
import { FACETS } from "../../src/rules/facets.ts";
import { GROUPS } from "../../src/rules/groups.ts";
import { RULES, ruleOf } from "../../src/rules/registry.ts";
import { SEVERITIES } from "../../src/rules/rule.ts";
import { facetsRead } from "./recorder.ts";
import { sentencesAreSound } from "./test-rule.ts";

const root = join(import.meta.dirname, "..", "..");
const folder = join(root, "src", "rules", "rules");
const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts") && !name.endsWith("index.ts"))
  .map((name) => name.replace(/\.ts$/, ""));

test("every file of src/rules/rules is a registered rule, in the folder of its group and named as its file", () => {
  expect(RULES.map(({ meta }) => join(meta.group, meta.id)).sort()).toEqual(files.sort());
  expect(new Set(RULES.map(({ meta }) => meta.id)).size).toBe(RULES.length);
});

describe.each(RULES.map((rule) => [rule.meta.id, rule] as const))("%s", (id, rule) => {
  const { meta } = rule;

  test("says what it holds, how bad, on whose word, and what it reads", () => {
    expect(SEVERITIES).toContain(meta.severity);
    expect(GROUPS.map((group) => group.id)).toContain(meta.group);
    expect(meta.summary).toMatch(/^[A-Z].*\.$/);
    expect(meta.source.length).toBeGreaterThan(10);
    expect(meta.reads.length).toBeGreaterThan(0);
    expect(FACETS).toEqual(expect.arrayContaining([...meta.reads]));
    for (const brought of meta.brings ?? []) expect(ruleOf(brought), brought).toBeDefined();
    expect(meta.id).not.toMatch(/^own-/);
  });

  test("has a table of harnesses that trip it and of near misses", () => {
    const file = join(root, "tests", "rules", meta.group, `${id}.test.ts`);
    expect(existsSync(file), file).toBe(true);
    const table = readFileSync(file, "utf8");
    expect(table).toMatch(/^testRule\(rule, \{/m);
    expect(table).toContain(`../../../src/rules/rules/${meta.group}/${id}.ts`);
    for (const half of ["silent", "found"]) {
      const cases = table.slice(table.indexOf(`${half}: [`)).match(/name: /g) ?? [];
      expect(cases.length).toBeGreaterThan(1);
    }
  });

  test("has a page, with a drawing that trips it alone and one that nearly does", async () => {
    const example = await loadExample(rule);
    if (!example) throw new Error(`src/rules/examples/${meta.group} has none for ${id}`);
    expect(example.page.length).toBeGreaterThan(0);
    for (const paragraph of [...example.page, example.quietBecause])
      expect(paragraph).toMatch(/^[A-Z0-9].*\.$/s);
    const found = check(example.trips());
    const own = found.filter((finding) => finding.rule === id);
    expect(own.length, "the first drawing trips it").toBeGreaterThan(0);
    for (const finding of own) sentencesAreSound(finding);
    const roots = new Set(own.map((finding) => finding.key));
    const others = found.filter(
      (finding) =>
        finding.rule !== id && finding.severity !== "tidy" && !(finding.under && roots.has(finding.under)),
    );
    expect(
      others.map((finding) => `${finding.rule}: ${finding.message}`),
      "trips it alone",
    ).toEqual([]);
    const quiet = check(example.quiet()).filter(
      (finding) => finding.severity !== "tidy" || finding.rule === id,
    );
    expect(
      quiet.map((finding) => `${finding.rule}: ${finding.message}`),
      "the second is sound",
    ).toEqual([]);
  });

  test("reads no more of the document than it says", async () => {
    const example = await loadExample(rule);
    for (const harness of [example?.trips(), example?.quiet()]) {
      if (!harness) continue;
      const unsaid = [...facetsRead(rule, harness)].filter((facet) => !meta.reads.includes(facet));
      expect(unsaid).toEqual([]);
    }
  });
});

test("a rule is found by its name, and an unheard-of name is none", () => {
  expect(ruleOf("no-fuse")?.meta.severity).toBe("danger");
  expect(ruleOf("no-such-rule")).toBeUndefined();
});
