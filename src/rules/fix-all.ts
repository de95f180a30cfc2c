import { apply } from "../graph/edits/apply.ts";
import { type Edit, group } from "../graph/edits/edit.ts";
import type { Harness } from "../graph/harness.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { type Checked, recheck } from "./check.ts";
import { type Finding, type Fix, SEVERITIES } from "./rule.ts";

/** What a cure would bring that is as bad as what it cures, or worse; why it cannot be made at all. */
export type Outcome =
  | { readonly ok: true; readonly checked: Checked; readonly worse: readonly Finding[] }
  | { readonly ok: false; readonly why: string };

/** Tries a cure: what the harness would be, and which findings it would newly have that are no better than the cured one. */
export function tryFix(before: Checked, finding: Finding, fix: Fix): Outcome {
  const result = apply(before.harness, fix.edit);
  if (!result.ok) return { ok: false, why: result.why };
  const checked = recheck(before, result.harness, trace(result.harness));
  const known = new Set(before.findings.map(({ key }) => key));
  const rank = SEVERITIES.indexOf(finding.severity);
  const worse = checked.findings.filter(
    ({ key, severity, waiver }) => !waiver && !known.has(key) && SEVERITIES.indexOf(severity) <= rank,
  );
  return { ok: true, checked, worse };
}

export type Fixed = {
  /** One edit that holds all that was certain; `null` where nothing was. */
  readonly edit: Edit | null;
  readonly harness: Harness;
  readonly fixed: readonly Finding[];
  /** Findings with a cure that was left, for it would have brought something as bad. */
  readonly left: readonly Finding[];
};

/** More steps than this in one go are not looked over by anybody; what is left can be asked for again. */
const MOST_STEPS = 500;

/**
 * Every certain cure, one after the other, the worst finding first, each checked before the next: a cure that would
 * bring something as bad as what it cures is left. Waived findings are let stand.
 */
export function fixAll(harness: Harness, traced: Traced = trace(harness)): Fixed {
  let checked = recheck(null, harness, traced);
  const edits: Edit[] = [];
  const fixed: Finding[] = [];
  const left = new Map<string, Finding>();
  while (edits.length < MOST_STEPS) {
    const next = checked.findings.find(({ fix, waiver, key }) => fix && !waiver && !left.has(key));
    if (!next?.fix) break;
    const outcome = tryFix(checked, next, next.fix);
    const cures =
      outcome.ok && !outcome.worse.length && !outcome.checked.findings.some(({ key }) => key === next.key);
    if (!cures) {
      left.set(next.key, next);
      continue;
    }
    edits.push(next.fix.edit);
    fixed.push(next);
    checked = outcome.checked;
  }
  const edit = edits.length > 1 ? group(`mend ${edits.length} findings`, edits) : (edits[0] ?? null);
  return { edit, harness: checked.harness, fixed, left: [...left.values()] };
}
