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

/** The waivers of a harness by the key of the finding that each one covers. */
export function waiversByKey(harness: Pick<Harness, "waivers">): ReadonlyMap<string, Waiver> {
  const found = new Map<string, Waiver>();
  for (const waiver of Object.values(harness.waivers))
    found.set(findingKey(waiver.rule, waiver.about), waiver);
  return found;
}

/**
 * The waiver that covers a finding; put it into the harness with a `put-entry` edit of section "waivers".
 * @param date as the person writes dates, ISO 8601 by preference
 * @throws RangeError without a reason: a waiver that does not say why is no waiver
 */
export function waiverFor(finding: Finding, reason: string, by: string, date: string, id: WaiverId): Waiver {
  if (reason.trim() === "") throw new RangeError("a waiver needs a reason");
  return { id, rule: finding.rule, about: [...finding.about], reason: reason.trim(), by, date };
}
