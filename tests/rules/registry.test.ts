import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { RULES, ruleOf } from "../../src/rules/registry.ts";
import { SEVERITIES } from "../../src/rules/rule.ts";

const root = join(import.meta.dirname, "..", "..");
const files = readdirSync(join(root, "src", "rules", "rules")).map((name) => name.replace(/\.ts$/, ""));

test("every file of src/rules/rules is a registered rule, named as its file", () => {
  expect(RULES.map((rule) => rule.meta.id).sort()).toEqual(files.sort());
});

test.each(files)("%s has a table of harnesses that trip it and of near misses", (name) => {
  const table = readFileSync(join(root, "tests", "rules", `${name}.test.ts`), "utf8");
  expect(table).toMatch(/^testRule\(rule, \{/m);
  expect(table).toContain(`../../src/rules/rules/${name}.ts`);
  for (const half of ["silent", "found"]) {
    const cases = table.slice(table.indexOf(`${half}: [`)).match(/name: "/g) ?? [];
    expect(cases.length).toBeGreaterThan(1);
  }
});

test.each(RULES.map((rule) => rule.meta))("$id says what it holds, how bad, and on whose word", (meta) => {
  expect(SEVERITIES).toContain(meta.severity);
  expect(meta.summary).toMatch(/^[A-Z].*\.$/);
  expect(meta.source.length).toBeGreaterThan(10);
});

test("a rule is found by its name, and an unheard-of name is none", () => {
  expect(ruleOf("no-fuse")?.meta.severity).toBe("danger");
  expect(ruleOf("no-such-rule")).toBeUndefined();
});
