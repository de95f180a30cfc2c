import { nameContact } from "../catalogue/describe.ts";
import type { Harness } from "../graph/harness.ts";
import { trace } from "../graph/trace.ts";
import { check, openFindings } from "../rules/check.ts";
import { rulesFor } from "../rules/own/rules-for.ts";
import { type Finding, SEVERITIES, type Severity } from "../rules/rule.ts";
import { type SarifFile, toSarif } from "../rules/sarif.ts";
import { oneOf, readArguments } from "./arguments.ts";
import { explain } from "./explain.ts";
import { fileName, readHarness } from "./files.ts";
import { readProfile } from "./profile.ts";
import { complain, count, EXIT, plain, say, Unusable } from "./unusable.ts";
import { version } from "./version.ts";

/** "tidy" findings work as they are; anything worse fails a check unless told otherwise. */
const FAIL_ON: Severity = "weak";

export const usage =
  "pigtail check FILE… [--json | --sarif] [--profile PROFILE] [--fail-on SEVERITY], or: pigtail check --explain RULE";

/** What `--json` prints of a file: one such object a line. The shape is kept from version to version. */
type Report = {
  readonly file: string;
  readonly findings: readonly {
    readonly rule: string;
    readonly severity: Severity;
    readonly message: string;
    /** "X1.A4", "W7", "X1": contacts, wires, parts. The first is where to look. */
    readonly at: readonly string[];
    readonly fixable: boolean;
  }[];
};

/** Checks files; every one is looked at, also after one that cannot be read. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    {
      json: { type: "boolean" },
      sarif: { type: "boolean" },
      profile: { type: "string" },
      explain: { type: "string" },
      "fail-on": { type: "string" },
    },
    { usage, least: 0, most: Number.POSITIVE_INFINITY },
  );
  if (values.explain !== undefined) {
    await explain(values.explain);
    if (!positionals.length) return EXIT.clean;
  }
  if (!positionals.length) throw new Unusable(`Something is missing.\nUsage: ${usage}`);
  if (values.json && values.sarif) throw new Unusable("Choose one of --json and --sarif.");
  const failOn =
    values["fail-on"] === undefined ? FAIL_ON : oneOf("--fail-on", values["fail-on"], SEVERITIES);
  const rules = values.profile === undefined ? null : readProfile(values.profile);
  let exit: number = EXIT.clean;
  const sarif: SarifFile[] = [];
  for (const path of positionals) {
    let read: { readonly harness: Harness; readonly text: string };
    try {
      read = readHarness(path);
    } catch (error) {
      if (!(error instanceof Unusable)) throw error;
      complain(error.message);
      exit = EXIT.unusable;
      continue;
    }
    const harness = rules ? withRules(read.harness, rules) : read.harness;
    const findings = check(harness, trace(harness));
    const open = openFindings(findings);
    if (values.sarif) sarif.push({ path, text: read.text, harness, findings });
    else if (values.json) say(JSON.stringify(report(path, harness, open)));
    else say(inWords(path, open, findings.length - open.length));
    const fails = open.some(({ severity }) => SEVERITIES.indexOf(severity) <= SEVERITIES.indexOf(failOn));
    if (fails && exit === EXIT.clean) exit = EXIT.findings;
  }
  if (values.sarif) say(JSON.stringify(toSarif(sarif, rulesOf(sarif), version()), null, 2));
  return exit;
}

type Rules = Harness["settings"]["rules"];

function withRules(harness: Harness, rules: Rules): Harness {
  return { ...harness, settings: { ...harness.settings, rules } };
}

/** The book's rules, and each file's own; of two with one name, the first. */
function rulesOf(files: readonly SarifFile[]) {
  const byId = new Map(files.flatMap(({ harness }) => rulesFor(harness)).map((rule) => [rule.meta.id, rule]));
  return [...byId.values()];
}

function report(file: string, harness: Harness, findings: readonly Finding[]): Report {
  return {
    file,
    findings: findings.map((finding) => ({
      rule: finding.rule,
      severity: finding.severity,
      message: finding.message,
      at: placesOf(harness, finding),
      fixable: finding.fix !== null,
    })),
  };
}

function placesOf(harness: Harness, finding: Finding): readonly string[] {
  return finding.about.map((about) => {
    if ("wire" in about) return harness.wires[about.wire]?.designation ?? about.wire;
    return "contact" in about
      ? nameContact(harness, about)
      : (harness.parts[about.part]?.designation ?? about.part);
  });
}

function inWords(path: string, open: readonly Finding[], waived: number): string {
  const name = plain(fileName(path));
  const lines = [`${name}: ${summary(open)}${waived ? `; ${waived} waived` : ""}`];
  const shown = new Set(open.map(({ key }) => key));
  const follows = (finding: Finding) => finding.under !== null && shown.has(finding.under);
  for (const finding of open) {
    if (follows(finding)) continue;
    lines.push(
      `  ${finding.severity.padEnd(6)}  ${plain(finding.message)}`,
      `          ${plain(finding.consequence)}`,
      `          → ${plain(finding.remedy)} [${finding.rule}]`,
    );
    for (const other of open) {
      if (other.under === finding.key)
        lines.push(`          and with it, ${other.severity}: ${plain(other.message)} [${other.rule}]`);
    }
  }
  return lines.join("\n");
}

function summary(open: readonly Finding[]): string {
  if (!open.length) return "nothing found";
  const each = SEVERITIES.map((severity) => {
    const number = open.filter((finding) => finding.severity === severity).length;
    return number ? `${number} ${severity}` : "";
  }).filter(Boolean);
  return `${count(open.length, "finding")}: ${each.join(", ")}`;
}
