import type { Connector, Harness } from "../graph/harness.ts";
import type { Traced } from "../graph/trace.ts";
import { belongsWords, viewWords } from "../layout/geometry/caption.ts";
import type { Finding } from "../rules/rule.ts";
import { type Figure, faceFigure } from "./connector-face.ts";
import { legendEntries, setLegend } from "./legend.ts";
import type { Section } from "./table-pages.ts";
import { connectorTable, switchTable } from "./tables/connector-table.ts";
import { findingTable, waiverTable } from "./tables/finding-table.ts";
import { jointTable } from "./tables/joint-table.ts";
import { partTable } from "./tables/part-table.ts";
import { spareTable } from "./tables/spare-table.ts";
import { partsInOrder, Whither } from "./tables/whither.ts";
import { wireTable } from "./tables/wire-table.ts";

export type PaperKind = "diagram" | "findings" | "connectors" | "wires" | "joints" | "spares" | "parts";

export type SectionSource = {
  readonly harness: Harness;
  readonly traced: Traced;
  readonly findings: readonly Finding[];
};

/** The sections of one kind of paper. */
export function sectionsOf(
  kind: Exclude<PaperKind, "diagram">,
  source: SectionSource,
  width: number,
): readonly Section[] {
  switch (kind) {
    case "findings":
      return findingSections(source, width);
    case "connectors":
      return connectorSections(source, width);
    case "wires":
      return [{ table: wireTable(source), group: "Wire table" }];
    case "joints":
      return [{ table: jointTable(source), group: "Joint table" }];
    case "spares":
      return [{ table: spareTable(source), group: "Spares" }];
    case "parts":
      return [{ table: partTable(source), group: "Parts list" }];
  }
}

const FINDINGS = "Findings and legend";
const CONNECTORS = "Connectors and modules";

function findingSections({ harness, findings }: SectionSource, width: number): Section[] {
  const sections: Section[] = [{ table: findingTable(findings), group: FINDINGS }];
  const waivers = waiverTable({ harness }, findings);
  if (waivers.rows.length > 0) sections.push({ table: waivers, group: FINDINGS });
  const figure = legendFigure(harness, width);
  if (figure) {
    sections.push({
      table: {
        id: "legend",
        title: "Legend",
        remark: "All other symbols are those of IEC 60617.",
        columns: [],
        rows: [],
        empty: "",
      },
      figure,
      group: FINDINGS,
    });
  }
  return sections;
}

function legendFigure(harness: Harness, width: number): Figure | null {
  const entries = legendEntries(harness);
  if (entries.length === 0) return null;
  const set = (x: number, y: number) => setLegend(entries, { x, y, width, height: 10_000 });
  return { width, height: set(0, 0).height, draw: (x, y) => set(x, y).items };
}

function connectorSections(source: SectionSource, width: number): Section[] {
  const { harness } = source;
  const whither = new Whither(source);
  const sections: Section[] = [];
  for (const part of partsInOrder(harness.parts)) {
    if (part.kind !== "connector" && part.kind !== "module") continue;
    const table = connectorTable(source, part, whither);
    if (part.kind === "connector") {
      sections.push({
        table,
        figure: faceFigure(part, width),
        lines: connectorLines(part, harness),
        group: CONNECTORS,
        family: "cavities",
        whole: 1,
      });
      continue;
    }
    const about = `${part.role === "other" ? "module" : part.role}, ${part.side}`;
    if (part.cavities.length > 0)
      sections.push({ table, lines: [about], group: CONNECTORS, family: "cavities", whole: 1 });
    if (part.switches.length > 0)
      sections.push({ table: switchTable(part), lines: [part.name], group: CONNECTORS });
  }
  return sections;
}

/** What is said of a connector above its cavities. */
function connectorLines(part: Connector, harness: Harness): string[] {
  const module = part.belongsTo.module && (harness.parts[part.belongsTo.module]?.designation ?? null);
  const mate = part.matedWith && harness.parts[part.matedWith]?.designation;
  const what = [
    belongsWords(part, module),
    part.shell && `shell ${part.shell}`,
    part.keying && `keying ${part.keying}`,
    mate && `mated with ${mate}`,
  ];
  const { chart } = part;
  const from = chart
    ? [
        `Chart: ${chart.title || "untitled"}`,
        chart.edition && `edition ${chart.edition}`,
        chart.date,
        chart.measured ? "measured on the vehicle" : "not yet measured",
      ]
    : ["No chart stated"];
  const said = (list: readonly (string | null | undefined)[]): string => list.filter(Boolean).join(", ");
  const face =
    part.rows.length > 0 ? `Face ${viewWords(part.view)}` : `Face not stated; ${viewWords(part.view)}`;
  return [`${face}. ${capital(said(what))}.`, `${said(from)}.`];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
