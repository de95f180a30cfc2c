import { nameContact } from "../../catalogue/describe.ts";
import type { Edit } from "../../graph/edits/edit.ts";
import type { Harness, Waiver } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";
import { nameGroup } from "../../rules/groups.ts";
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
  covers: Waiver["covers"] = "finding",
): Edit | { readonly ok: false; readonly why: string } {
  if (reason.trim() === "") return { ok: false, why: "Say why this may stay as it is." };
  const id = new Names(harness).id("waivers") as Parameters<typeof waiverFor>[4];
  return { kind: "put-entry", section: "waivers", entry: waiverFor(finding, reason, by, date, id, covers) };
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

/** A finding with those that follow from it: they are shown under it, not beside it. */
export type Rooted = { readonly finding: Finding; readonly following: readonly Finding[] };

/** Findings each with what follows from it, in the order given. One whose root is not open stands by itself. */
export function withFollowing(open: readonly Finding[]): readonly Rooted[] {
  const there = new Set(open.map(({ key }) => key));
  const isRoot = ({ under }: Finding) => under === null || !there.has(under);
  return open
    .filter(isRoot)
    .map((finding) => ({ finding, following: open.filter(({ under }) => under === finding.key) }));
}

/** How many open findings are of the same rule, and how many of its group may be waived together. */
export function alike(
  findings: readonly Finding[],
  { rule, group }: Pick<Finding, "rule" | "group">,
): { readonly ofRule: number; readonly ofGroup: number } {
  const open = findings.filter(({ waiver }) => !waiver);
  return {
    ofRule: open.filter((one) => one.rule === rule).length,
    ofGroup: open.filter((one) => one.group === group && one.severity !== "danger").length,
  };
}

/** "Waived by M. Reed on 2026-03-02, with all of the rule no-fuse: the reason". */
export function sayWaived({ by, date, reason, covers, rule }: Waiver): string {
  const scope =
    covers === "rule"
      ? `, with all of the rule ${rule}`
      : covers === "group"
        ? `, with all of “${nameGroup(rule)}”`
        : "";
  return `Waived${by && ` by ${by}`}${date && ` on ${date}`}${scope}: ${reason}`;
}

/** What a cure that is shown would do to the list of findings. */
export function previewWords(before: readonly Finding[], after: readonly Finding[], finding: string): string {
  const keys = (list: readonly Finding[]) =>
    new Set(list.filter(({ waiver }) => !waiver).map(({ key }) => key));
  const [was, is] = [keys(before), keys(after)];
  const gone = [...was].filter((key) => !is.has(key)).length;
  const come = after.filter(({ key, waiver }) => !waiver && !was.has(key));
  const first = is.has(finding) ? "The finding would still be there." : `${number(gone)} gone.`;
  if (!come.length) return `${first} None new.`;
  const worst = come.map(({ severity }) => severity);
  return `${first} ${number(come.length)} new: ${[...new Set(worst)].join(", ")}.`;
}

function number(count: number): string {
  return count === 1 ? "One finding" : `${count} findings`;
}
