import type { Harness } from "../graph/harness.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { type Context, contextOf } from "./context.ts";
import type { Facet } from "./facets.ts";
import { ALL_FACETS, changedFacets } from "./facets-changed.ts";
import { rulesFor } from "./own/rules-for.ts";
import { putUnderRoots } from "./roots.ts";
import { type About, type Finding, type Found, type Rule, SEVERITIES } from "./rule.ts";
import { findingKey, waiversOf } from "./waivers.ts";
import { compareNames } from "./words.ts";

/** What a check found, kept so that the next one asks only the rules that an edit concerns. */
export type Checked = {
  readonly harness: Harness;
  readonly context: Context;
  readonly found: ReadonlyMap<Rule, readonly Found[]>;
  readonly findings: readonly Finding[];
};

/**
 * Every finding of a harness: what hurts most first, then by place; waived ones last, with their waiver.
 * Where parts stand on the drawing does not matter. Grows in step with the harness.
 * @param rules the rules to ask; all of them, and the harness's own, unless told
 */
export function check(
  harness: Harness,
  traced: Traced = trace(harness),
  rules: readonly Rule[] = rulesFor(harness),
): readonly Finding[] {
  return recheck(null, harness, traced, rules).findings;
}

/**
 * The same as `check`, for a harness that came out of one checked before: a rule that reads nothing of what the
 * edit changed is not asked again. The answer is always that of a full check.
 */
export function recheck(
  before: Checked | null,
  harness: Harness,
  traced: Traced,
  rules: readonly Rule[] = rulesFor(harness),
): Checked {
  const context = contextOf(harness, traced, before?.context ?? null);
  const changed = before ? changedFacets(before.harness, harness) : ALL_FACETS;
  const found = new Map<Rule, readonly Found[]>();
  const findings: Finding[] = [];
  const waivers = waiversOf(harness);
  const keys = new Keys();
  const take = (rule: Rule, one: Found) => {
    const key = keys.free(findingKey(rule.meta.id, one.about));
    const severity = one.severity ?? rule.meta.severity;
    const { id, group } = rule.meta;
    const waiver = waivers.of({ key, rule: id, group, severity });
    findings.push({
      fix: null,
      suggestions: [],
      ...one,
      severity,
      rule: id,
      group,
      key,
      waiver,
      under: null,
    });
  };
  for (const rule of rules) {
    const old = before?.found.get(rule);
    const list = old && holds(rule, old, changed) ? old : [...rule.check(context)];
    found.set(rule, list);
    for (const one of list) take(rule, one);
  }
  for (const rule of rules) for (const one of rule.review?.(context, [...findings]) ?? []) take(rule, one);
  return { harness, context, found, findings: inOrder(harness, putUnderRoots(context, findings)) };
}

/** Two findings of one rule about the very same things are told apart by their order. */
class Keys {
  private readonly taken = new Map<string, number>();

  free(key: string): string {
    const number = (this.taken.get(key) ?? 0) + 1;
    this.taken.set(key, number);
    return number === 1 ? key : `${key} ${number}`;
  }
}

/** A cure is made for the harness as it was: where parts or wires are others, it is made anew. */
const CURE_RESTS_ON: readonly Facet[] = [...ALL_FACETS].filter(
  (facet) => facet !== "title" && facet !== "tests",
);

function holds(rule: Rule, old: readonly Found[], changed: ReadonlySet<Facet>): boolean {
  if (rule.meta.reads.some((facet) => changed.has(facet))) return false;
  const hasCure = old.some((one) => one.fix || one.suggestions?.length);
  return !hasCure || !CURE_RESTS_ON.some((facet) => changed.has(facet));
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
