import { describe, expect, test } from "vitest";
import { nameContact } from "../../src/catalogue/describe.ts";
import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { check } from "../../src/rules/check.ts";
import { type About, type Finding, type Rule, SEVERITIES, type Severity } from "../../src/rules/rule.ts";
import type { Build } from "../build.ts";

type Case = { readonly name: string; readonly build: Build };
type Expected = {
  /** What it is about, by the names a person sees, in any order: "X1.A4", "W3", "XC1". */
  readonly at: readonly string[];
  /** Unless told, the rule's own. */
  readonly severity?: Severity;
  /** Words that the message must hold. */
  readonly says?: string;
  /** The label of the fix; `null` says that none is offered. */
  readonly fix: string | null;
};
type Tripped = Case & { readonly findings: readonly Expected[] };

/** "X1.A4", "W3", "XC1": one thing that a finding is about. */
export function nameAbout(harness: Harness, about: About): string {
  if ("wire" in about) return harness.wires[about.wire]!.designation;
  if ("contact" in about) return nameContact(harness, about);
  return harness.parts[about.part]!.designation;
}

export function namesOf(harness: Harness, finding: Finding): string[] {
  return finding.about.map((about) => nameAbout(harness, about));
}

/**
 * One table for each rule: harnesses that must not trip it, and harnesses that must, with what is found.
 * Every fix is applied: its finding must be gone, and nothing as bad as it may have come instead.
 */
export function testRule(
  rule: Rule,
  table: { readonly silent: readonly Case[]; readonly found: readonly Tripped[] },
): void {
  const of = (harness: Harness) => check(harness).filter((finding) => finding.rule === rule.meta.id);

  describe(`${rule.meta.id} stays silent`, () => {
    test.each(table.silent)("$name", ({ build }) => {
      expect(of(build.harness).map((finding) => finding.message)).toEqual([]);
    });
  });

  describe(`${rule.meta.id} speaks`, () => {
    test.each(table.found)("$name", ({ build, findings }) => {
      const { harness } = build;
      const found = of(harness);
      expect(found.map((finding) => namesOf(harness, finding).sort())).toEqual(
        findings.map(({ at }) => [...at].sort()),
      );
      for (const [index, expected] of findings.entries()) {
        const finding = found[index]!;
        expect(finding.severity).toBe(expected.severity ?? rule.meta.severity);
        expect(finding.message).toContain(expected.says ?? "");
        expect(finding.fix?.label ?? null).toBe(expected.fix);
        sentencesAreSound(finding);
        if (finding.fix) expectCured(harness, finding);
      }
    });
  });
}

/** Applies a finding's fix and holds that it cures without harm. */
export function expectCured(harness: Harness, finding: Finding): Harness {
  const result = apply(harness, finding.fix!.edit);
  if (!result.ok) throw new Error(`${finding.fix!.label}: ${result.why}`);
  const before = new Set(check(harness).map(({ key }) => key));
  const after = check(result.harness, trace(result.harness));
  expect(after.map(({ key }) => key)).not.toContain(finding.key);
  const rank = SEVERITIES.indexOf(finding.severity);
  const worse = after.filter(({ key, severity }) => !before.has(key) && SEVERITIES.indexOf(severity) <= rank);
  expect(worse.map(({ message }) => message)).toEqual([]);
  return result.harness;
}

export function sentencesAreSound(finding: Finding): void {
  for (const text of [finding.message, finding.consequence, finding.remedy]) {
    expect(text).toMatch(/^[A-Z0-9].*\.$/s);
    expect(text).not.toMatch(/undefined|null|NaN|\[object| {2}|\.\.|,\.|, ,|!/);
  }
}
