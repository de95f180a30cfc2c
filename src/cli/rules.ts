import { GROUPS } from "../rules/groups.ts";
import { RULES } from "../rules/registry.ts";
import { readArguments } from "./arguments.ts";
import { inColumns } from "./columns.ts";
import { EXIT, say } from "./unusable.ts";

export const usage = "pigtail rules [--json]";

/** Lists every rule of the book, group by group. */
export async function run(given: readonly string[]): Promise<number> {
  const { values } = readArguments(given, { json: { type: "boolean" } }, { usage, least: 0, most: 0 });
  if (values.json) {
    const list = RULES.map(({ meta: { id, group, severity, summary, source, fixable } }) => ({
      id,
      group,
      severity,
      summary,
      source,
      fixable,
    }));
    say(JSON.stringify(list, null, 2));
    return EXIT.clean;
  }
  for (const group of GROUPS) {
    const rules = RULES.filter(({ meta }) => meta.group === group.id);
    if (!rules.length) continue;
    say(`${group.name} (${group.id})`);
    const rows = rules.map(({ meta }) => [meta.severity, meta.id, meta.summary]);
    for (const line of inColumns(["severity", "rule", "in a sound harness"], rows)) say(line);
    say("");
  }
  say(`${RULES.length} rules. \`pigtail check --explain RULE\` shows the page of one.`);
  return EXIT.clean;
}
