import { nameContact } from "../../catalogue/describe.ts";
import type { Edit } from "../../graph/edits/edit.ts";
import type { Harness } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";
import type { About, Finding, Severity } from "../../rules/rule.ts";
import { waiverFor } from "../../rules/waivers.ts";

/** How many open findings there are of each severity. */
export function countBySeverity(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const counts: Record<Severity, number> = { danger: 0, fault: 0, weak: 0, tidy: 0 };
  for (const { severity, waiver } of findings) if (!waiver) counts[severity]++;
  return counts;
}

export type Parted = { readonly open: readonly Finding[]; readonly waived: readonly Finding[] };

/** Open and waived findings apart, each in the order the check gave. */
export function partFindings(findings: readonly Finding[]): Parted {
  return {
    open: findings.filter((finding) => !finding.waiver),
    waived: findings.filter((finding) => finding.waiver),
  };
}

/** Where a finding is, in names a person finds on the drawing: "X1.A4, W12". At most three. */
export function placeOfFinding(harness: Harness, about: readonly About[]): string {
  const names = about.slice(0, 3).map((item) => nameAbout(harness, item));
  const more = about.length - names.length;
  return more > 0 ? `${names.join(", ")} and ${more} more` : names.join(", ");
}

function nameAbout(harness: Harness, about: About): string {
  if ("wire" in about) return harness.wires[about.wire]?.designation ?? "a wire that is gone";
  if ("contact" in about) return nameContact(harness, about);
  return harness.parts[about.part]?.designation ?? "a part that is gone";
}

/** The edit that waives a finding; a reason is needed. */
export function waiveEdit(
  harness: Harness,
  finding: Finding,
  reason: string,
  by: string,
  date: string,
): Edit | { readonly ok: false; readonly why: string } {
  if (reason.trim() === "") return { ok: false, why: "Say why this may stay as it is." };
  const id = new Names(harness).id("waivers") as Parameters<typeof waiverFor>[4];
  return { kind: "put-entry", section: "waivers", entry: waiverFor(finding, reason, by, date, id) };
}

/**
 * What to say when the list of open findings has changed; "" where it has not. One new or one gone is said in
 * its own words, more are counted.
 */
export function sayChange(before: readonly Finding[], after: readonly Finding[]): string {
  const open = (list: readonly Finding[]) =>
    new Map(list.filter(({ waiver }) => !waiver).map((finding) => [finding.key, finding]));
  const old = open(before);
  const now = open(after);
  const come = [...now.values()].filter(({ key }) => !old.has(key));
  const gone = [...old.values()].filter(({ key }) => !now.has(key));
  const words: string[] = [];
  const [onlyNew] = come;
  if (come.length === 1 && onlyNew) words.push(`Found, ${onlyNew.severity}: ${onlyNew.message}`);
  else if (come.length > 1) words.push(`${come.length} new findings.`);
  if (gone.length === 1) words.push("One finding gone.");
  else if (gone.length > 1) words.push(`${gone.length} findings gone.`);
  if (words.length > 0 && now.size === 0) words.push("Nothing more is found.");
  return words.join(" ");
}
