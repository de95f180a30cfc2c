import type { Harness, Settings } from "../../graph/harness.ts";
import type { PaperKind } from "../../sheets/papers.ts";
import type { Plan } from "../../sheets/tiling.ts";

export type Sheet = Settings["sheet"];

export const KIND_NAMES: Readonly<Record<PaperKind, string>> = {
  diagram: "the diagram",
  findings: "findings and waivers",
  connectors: "connector pages",
  wires: "wire table",
  joints: "joint table",
  spares: "spares",
  parts: "parts list",
};

/** How the diagram comes out, in words: the size of its smallest text is what decides whether it can be read. */
export function sayPlan(plan: Plan): string {
  const text = `Smallest text ${plan.text_pt.toFixed(1)} pt, scale ${Math.round(plan.scale * 100)} %.`;
  const { length } = plan.tiles;
  if (plan.tooSmall) {
    return `On one page the smallest text would be ${plan.onePage_pt.toFixed(1)} pt: too small to read, so it goes over ${length} pages. ${text}`;
  }
  return length > 1
    ? `The diagram goes over ${length} pages, ${plan.columns} across and ${plan.rows} down. ${text}`
    : text;
}

/** A name for a file of this harness, without what a file system refuses. */
export function fileStem(harness: Harness, documentName: string): string {
  const { documentNumber, revision } = harness.titleBlock;
  const words = [documentNumber, documentName, documentNumber && revision ? `rev ${revision}` : ""];
  const plain = words
    .filter(Boolean)
    .join(" ")
    .normalize("NFC")
    .replace(/[\p{Cc}<>:"/\\|?*.]+/gu, " ")
    .trim()
    .replace(/\s+/g, "-")
    .slice(0, 80);
  return plain || "harness";
}
