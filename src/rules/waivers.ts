import { contactKey } from "../graph/contacts.ts";
import type { Harness, Waiver, WaiverId } from "../graph/harness.ts";
import type { About, Finding } from "./rule.ts";

/** One thing a finding is about, as text that can be compared. */
export function aboutKey(about: About): string {
  if ("wire" in about) return about.wire;
  return "contact" in about ? contactKey(about.part, about.contact) : about.part;
}

/** What makes two findings the same trouble: the rule, and the set of things that it is about. */
export function findingKey(rule: string, about: readonly About[]): string {
  return [rule, ...new Set(about.map(aboutKey))]
    .sort((a, b) => (a === rule ? -1 : b === rule ? 1 : a < b ? -1 : 1))
    .join(" ");
}

type Asked = Pick<Finding, "key" | "rule" | "group" | "severity">;

export type Waivers = {
  /** The waiver that covers a finding; the narrowest of them. */
  of(finding: Asked): Waiver | null;
};

/**
 * The waivers of a harness. One of a whole group does not reach a danger: that is let stand one by one, or by
 * naming its rule.
 */
export function waiversOf(harness: Pick<Harness, "waivers">): Waivers {
  const byKey = new Map<string, Waiver>();
  const byRule = new Map<string, Waiver>();
  const byGroup = new Map<string, Waiver>();
  for (const waiver of Object.values(harness.waivers)) {
    if (waiver.covers === "finding") byKey.set(findingKey(waiver.rule, waiver.about), waiver);
    else if (waiver.covers === "rule") byRule.set(waiver.rule, waiver);
    else byGroup.set(waiver.rule, waiver);
  }
  return {
    of: ({ key, rule, group, severity }) =>
      byKey.get(key) ?? byRule.get(rule) ?? (severity === "danger" ? null : (byGroup.get(group) ?? null)),
  };
}

/**
 * The waiver that covers a finding, or all of its rule or group; put it into the harness with a `put-entry` edit
 * of section "waivers".
 * @param date as the person writes dates, ISO 8601 by preference
 * @throws RangeError without a reason: a waiver that does not say why is no waiver
 */
export function waiverFor(
  finding: Pick<Finding, "rule" | "group" | "about">,
  reason: string,
  by: string,
  date: string,
  id: WaiverId,
  covers: Waiver["covers"] = "finding",
): Waiver {
  if (reason.trim() === "") throw new RangeError("a waiver needs a reason");
  return {
    id,
    covers,
    rule: covers === "group" ? finding.group : finding.rule,
    about: covers === "finding" ? [...finding.about] : [],
    reason: reason.trim(),
    by,
    date,
  };
}
