import type { Finding } from "./rule.ts";

/**
 * The findings in the order in which a person has them before them: those that were there stay where they were,
 * new ones come in where the check would put them, beside the nearest that was there. Waived ones stay last.
 * @param before the keys as they stood, in order
 * @param findings as the check gave them
 */
export function inPlace(before: readonly string[], findings: readonly Finding[]): readonly Finding[] {
  const known = new Map(before.map((key, index) => [key, index]));
  if (!findings.some(({ key }) => known.has(key))) return findings;
  const rows = findings.map((finding) => ({ finding, at: known.get(finding.key) ?? -1 }));
  // A new one follows the last one before it, in the check's order, that was there already.
  const fresh = new Map<number, Finding[]>();
  let last = -1;
  for (const { finding, at } of rows) {
    if (at >= 0) last = at;
    else fresh.set(last, [...(fresh.get(last) ?? []), finding]);
  }
  const kept = rows.filter(({ at }) => at >= 0).sort((a, b) => a.at - b.at);
  const ordered = [
    ...(fresh.get(-1) ?? []),
    ...kept.flatMap(({ finding, at }) => [finding, ...(fresh.get(at) ?? [])]),
  ];
  return [...ordered.filter(({ waiver }) => !waiver), ...ordered.filter(({ waiver }) => waiver)];
}
