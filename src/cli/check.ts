import { nameContact } from "../catalogue/describe.ts";
import type { Harness } from "../graph/harness.ts";
import { check, openFindings } from "../rules/check.ts";
import { type Finding, SEVERITIES, type Severity } from "../rules/rule.ts";
import { oneOf, readArguments } from "./arguments.ts";
import { fileName, readHarness } from "./files.ts";
import { complain, count, EXIT, plain, say, Unusable } from "./unusable.ts";

/** "tidy" findings work as they are; anything worse fails a check unless told otherwise. */
const FAIL_ON: Severity = "weak";

export const usage = "pigtail check FILE… [--json] [--fail-on SEVERITY]";

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
    { json: { type: "boolean" }, "fail-on": { type: "string" } },
    { usage, least: 1, most: Number.POSITIVE_INFINITY },
  );
  const failOn =
    values["fail-on"] === undefined ? FAIL_ON : oneOf("--fail-on", values["fail-on"], SEVERITIES);
  let exit: number = EXIT.clean;
  for (const path of positionals) {
    let harness: Harness;
    try {
      harness = readHarness(path);
    } catch (error) {
      if (!(error instanceof Unusable)) throw error;
      complain(error.message);
      exit = EXIT.unusable;
      continue;
    }
    const findings = check(harness);
    const open = openFindings(findings);
    if (values.json) say(JSON.stringify(report(path, harness, open)));
    else say(inWords(path, open, findings.length - open.length));
    const fails = open.some(({ severity }) => SEVERITIES.indexOf(severity) <= SEVERITIES.indexOf(failOn));
    if (fails && exit === EXIT.clean) exit = EXIT.findings;
  }
  return exit;
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
  for (const finding of open) {
    lines.push(
      `  ${finding.severity.padEnd(6)}  ${plain(finding.message)}`,
      `          ${plain(finding.consequence)}`,
      `          → ${plain(finding.remedy)} [${finding.rule}]`,
    );
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
