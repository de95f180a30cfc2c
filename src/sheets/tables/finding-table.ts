import type { Waiver } from "../../graph/harness.ts";
import { nameGroup } from "../../rules/groups.ts";
import type { Finding } from "../../rules/rule.ts";
import { cell, column, strong, type Table, type TableSource } from "./table.ts";

/** What is wrong and what to do, worst first. Waived ones are in a table of their own. */
export function findingTable(findings: readonly Finding[]): Table {
  const open = findings.filter((finding) => finding.waiver === null);
  return {
    id: "findings",
    title: "Open findings",
    remark: "",
    empty: "No open findings.",
    columns: [
      column("severity", "Severity", 10),
      column("message", "What is wrong", 60),
      column("consequence", "What will happen", 44),
      column("remedy", "What to do", 44),
    ],
    rows: open.map((finding) => [
      strong(finding.severity),
      cell(finding.message),
      cell(finding.consequence),
      cell(finding.remedy),
    ]),
  };
}

/** What a person has let stand, and why: finding by finding, and what a wider waiver covers. */
export function waiverTable({ harness }: Pick<TableSource, "harness">, findings: readonly Finding[]): Table {
  const covered = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (finding.waiver) covered.set(finding.waiver.id, [...(covered.get(finding.waiver.id) ?? []), finding]);
  }
  return {
    id: "waivers",
    title: "Waived findings",
    remark: "",
    empty: "Nothing is waived.",
    columns: [
      column("severity", "Severity", 10),
      column("message", "What is waived", 60),
      column("reason", "Reason", 50),
      column("by", "By", 16),
      column("date", "Date", 12),
    ],
    rows: Object.values(harness.waivers).flatMap((waiver) => {
      const rest = [cell(waiver.reason), cell(waiver.by), cell(waiver.date)];
      const those = covered.get(waiver.id) ?? [];
      const whole = sayCovered(waiver);
      // Each finding that a wider waiver covers is printed too: nobody should have to guess what was let stand.
      const rows = those.map((finding) => [strong(finding.severity), cell(finding.message), ...rest]);
      if (waiver.covers !== "finding") return [[strong(""), cell(whole), ...rest], ...rows];
      return rows.length ? rows : [[strong(""), cell(`${whole} (no such finding now)`), ...rest]];
    }),
  };
}

function sayCovered({ covers, rule }: Waiver): string {
  const name = rule.replaceAll("-", " ");
  if (covers === "finding") return name;
  return covers === "rule" ? `Whatever the rule “${name}” finds` : `All of “${nameGroup(rule)}” but dangers`;
}
