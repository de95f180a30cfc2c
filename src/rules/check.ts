import type { Harness } from "../graph/harness.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { contextOf } from "./context.ts";
import { RULES } from "./registry.ts";
import { type About, type Finding, type Rule, SEVERITIES } from "./rule.ts";
import { findingKey, waiversByKey } from "./waivers.ts";
import { compareNames } from "./words.ts";

/**
 * Every finding of a harness: what hurts most first, then by place; waived ones last, with their waiver.
 * Where parts stand on the drawing does not matter. Grows in step with the harness.
 * @param rules the rules to ask; all of them unless told
 */
export function check(
  harness: Harness,
  traced: Traced = trace(harness),
  rules: readonly Rule[] = RULES,
): readonly Finding[] {
  const context = contextOf(harness, traced);
  const waivers = waiversByKey(harness);
  const findings: Finding[] = [];
  for (const rule of rules) {
    for (const found of rule.check(context)) {
      const key = findingKey(rule.meta.id, found.about);
      findings.push({
        severity: rule.meta.severity,
        fix: null,
        ...found,
        rule: rule.meta.id,
        key,
        waiver: waivers.get(key) ?? null,
      });
    }
  }
  return inOrder(harness, findings);
}

/** The findings that nobody has waived. */
export function openFindings(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter((finding) => finding.waiver === null);
}

function inOrder(harness: Harness, findings: readonly Finding[]): readonly Finding[] {
  if (findings.length < 2) return findings;
  const rows = findings.map((finding) => ({
    finding,
    rank: (finding.waiver ? SEVERITIES.length : 0) + SEVERITIES.indexOf(finding.severity),
    place: placeOf(harness, finding.about[0]),
  }));
  rows.sort(
    (a, b) =>
      a.rank - b.rank ||
      compareNames(a.place[0], b.place[0]) ||
      a.place[1] - b.place[1] ||
      compareNames(a.finding.rule, b.finding.rule) ||
      compareNames(a.finding.key, b.finding.key),
  );
  return rows.map((row) => row.finding);
}

/** The designation and contact number that a finding is sorted by. */
function placeOf(harness: Harness, about: About | undefined): readonly [string, number] {
  if (!about) return ["", 0];
  if ("wire" in about) return [harness.wires[about.wire]?.designation ?? about.wire, 0];
  const name = harness.parts[about.part]?.designation ?? about.part;
  return [name, "contact" in about ? about.contact : 0];
}
