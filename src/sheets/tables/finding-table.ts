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

/** What a person has let stand, and why. A waiver whose finding is gone is told too. */
export function waiverTable({ harness }: Pick<TableSource, "harness">, findings: readonly Finding[]): Table {
  const byWaiver = new Map(findings.flatMap((one) => (one.waiver ? [[one.waiver.id, one] as const] : [])));
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
    rows: Object.values(harness.waivers).map((waiver) => {
      const finding = byWaiver.get(waiver.id);
      return [
        strong(finding?.severity ?? ""),
        cell(finding?.message ?? `${waiver.rule.replaceAll("-", " ")} (no such finding now)`),
        cell(waiver.reason),
        cell(waiver.by),
        cell(waiver.date),
      ];
    }),
  };
}
