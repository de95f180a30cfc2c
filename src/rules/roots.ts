import type { Context } from "./context.ts";
import { ruleOf } from "./registry.ts";
import { type About, type Finding, SEVERITIES } from "./rule.ts";

/**
 * Puts each finding under the one that it follows from: the other's rule says that it brings this one's, and the
 * two touch a circuit or a box in common. A waived finding explains nothing, and one that is worse than its root
 * stands by itself. Of several roots, the one that hurts most.
 */
export function putUnderRoots(context: Context, findings: readonly Finding[]): readonly Finding[] {
  const bringing = findings.filter(({ rule, waiver }) => !waiver && ruleOf(rule)?.meta.brings?.length);
  if (!bringing.length || findings.length < 2) return findings;
  const roots = bringing
    .map((finding) => ({
      finding,
      brings: new Set(ruleOf(finding.rule)?.meta.brings),
      places: placesOf(context, finding.about),
    }))
    .sort((a, b) => rank(a.finding) - rank(b.finding));
  const under = new Map<string, string>();
  for (const { finding, brings, places } of roots) {
    for (const other of findings) {
      if (other === finding || !brings.has(other.rule) || under.has(other.key)) continue;
      if (rank(other) < rank(finding) || leadsTo(under, finding.key, other.key)) continue;
      if ([...placesOf(context, other.about)].some((place) => places.has(place)))
        under.set(other.key, finding.key);
    }
  }
  return findings.map((finding) => {
    const root = under.get(finding.key);
    return root === undefined ? finding : { ...finding, under: topOf(under, root) };
  });
}

const rank = ({ severity }: Finding): number => SEVERITIES.indexOf(severity);

/** Whether `from` already stands under `to`, at however many removes: then `to` cannot stand under `from`. */
function leadsTo(under: ReadonlyMap<string, string>, from: string, to: string): boolean {
  for (let key: string | undefined = from; key !== undefined; key = under.get(key))
    if (key === to) return true;
  return false;
}

function topOf(under: ReadonlyMap<string, string>, key: string): string {
  let top = key;
  for (let next = under.get(top); next !== undefined; next = under.get(top)) top = next;
  return top;
}

/** The circuits and boxes that a finding touches. */
function placesOf(context: Context, about: readonly About[]): ReadonlySet<string> {
  const places = new Set<string>();
  for (const one of about) {
    if ("wire" in one) {
      for (const end of context.harness.wires[one.wire]?.ends ?? [])
        if (end !== "loose") places.add(`circuit ${context.traced.circuitAt(end.part, end.contact)?.id}`);
      places.add(one.wire);
      continue;
    }
    if ("contact" in one) {
      places.add(`circuit ${context.traced.circuitAt(one.part, one.contact)?.id}`);
      const unit = context.points.pointAt(one.part, one.contact)?.unit;
      if (unit && context.harness.parts[unit as keyof typeof context.harness.parts]) places.add(unit);
    } else places.add(one.part);
  }
  return places;
}
