import type { Location, Log, ReportingDescriptor, Result, Run } from "sarif";
import { nameContact } from "../catalogue/describe.ts";
import type { Harness } from "../graph/harness.ts";
import { nameGroup } from "./groups.ts";
import type { About, Finding, Rule, Severity } from "./rule.ts";

/** How the standard ranks what we call a severity: its levels are three. */
const LEVEL: Readonly<Record<Severity, "error" | "warning" | "note">> = {
  danger: "error",
  fault: "error",
  weak: "warning",
  tidy: "note",
};

/** 0 to 100, so that a danger still stands before a fault. */
const RANK: Readonly<Record<Severity, number>> = { danger: 95, fault: 75, weak: 50, tidy: 20 };

/** One file that was checked. */
export type SarifFile = {
  /** As the person named it. */
  readonly path: string;
  /** Its text, for the line on which a part stands. */
  readonly text: string;
  readonly harness: Harness;
  /** Open and waived. */
  readonly findings: readonly Finding[];
};

/**
 * The findings of some files in the Static Analysis Results Interchange Format, version 2.1.0.
 * A waived finding is there with its waiver as a suppression.
 * @param rules those that were asked
 * @param version of this program
 * @source OASIS Standard SARIF 2.1.0 plus Errata 01 (2023)
 */
export function toSarif(files: readonly SarifFile[], rules: readonly Rule[], version: string): Log {
  const indexOf = new Map(rules.map(({ meta }, index) => [meta.id, index]));
  const run: Run = {
    tool: {
      driver: { name: "Pigtail", semanticVersion: version, language: "en", rules: rules.map(descriptorOf) },
    },
    columnKind: "utf16CodeUnits",
    artifacts: files.map(({ path }) => ({ location: { uri: uriOf(path) }, mimeType: "application/json" })),
    results: files.flatMap((file, index) =>
      file.findings.map((finding) => resultOf(file, index, finding, indexOf.get(finding.rule) ?? -1)),
    ),
  };
  return {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [run],
  };
}

function descriptorOf({ meta }: Rule): ReportingDescriptor {
  return {
    id: meta.id,
    shortDescription: { text: meta.summary },
    help: { text: `Source: ${meta.source}.` },
    defaultConfiguration: { level: LEVEL[meta.severity], rank: RANK[meta.severity] },
    properties: {
      group: meta.group,
      groupName: nameGroup(meta.group),
      severity: meta.severity,
      fixable: meta.fixable,
      tags: [meta.group],
    },
  };
}

function resultOf(file: SarifFile, artifact: number, finding: Finding, ruleIndex: number): Result {
  const { rule, severity, message, consequence, remedy, waiver, about, key, under } = finding;
  const locations = about.map((one) => locationOf(file, artifact, one));
  return {
    ruleId: rule,
    ruleIndex,
    level: LEVEL[severity],
    rank: RANK[severity],
    kind: "fail",
    message: { text: `${message} ${consequence} ${remedy}` },
    locations: locations.slice(0, 1),
    ...(locations.length > 1
      ? { relatedLocations: locations.slice(1).map((one, id) => ({ id, ...one })) }
      : {}),
    partialFingerprints: { "pigtailFinding/v1": key },
    ...(waiver
      ? {
          suppressions: [
            { kind: "inSource" as const, status: "accepted" as const, justification: waiver.reason },
          ],
        }
      : {}),
    properties: { severity, consequence, remedy, ...(under === null ? {} : { follows: under }) },
  };
}

function locationOf({ path, text, harness }: SarifFile, index: number, about: About): Location {
  const id = "wire" in about ? about.wire : about.part;
  const name =
    "wire" in about
      ? (harness.wires[about.wire]?.designation ?? id)
      : "contact" in about
        ? nameContact(harness, about)
        : (harness.parts[about.part]?.designation ?? id);
  const startLine = lineOf(text, id);
  return {
    physicalLocation: {
      artifactLocation: { uri: uriOf(path), index },
      ...(startLine === null ? {} : { region: { startLine } }),
    },
    logicalLocations: [{ name, fullyQualifiedName: name, kind: "object" }],
  };
}

/** The line on which an entry begins: where its id stands as a key. `null` in a file without lines of its own. */
function lineOf(text: string, id: string): number | null {
  const at = text.indexOf(`"${id}": {`);
  if (at < 0) return null;
  let line = 1;
  for (let next = text.indexOf("\n"); next >= 0 && next < at; next = text.indexOf("\n", next + 1)) line++;
  return line;
}

/** A path as a relative reference (RFC 3986); one from a drive or the root is a file address. */
function uriOf(path: string): string {
  const parts = path.replaceAll("\\", "/").split("/").map(encodeURIComponent);
  const joined = parts.join("/").replace(/^([A-Za-z])%3A\//, "/$1:/");
  return joined.startsWith("/") ? `file://${joined}` : joined;
}
