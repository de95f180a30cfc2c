import { closest, distance } from "fastest-levenshtein";
import { check } from "../rules/check.ts";
import { loadExample } from "../rules/examples/load.ts";
import { nameGroup } from "../rules/groups.ts";
import { RULES, ruleOf } from "../rules/registry.ts";
import type { Rule } from "../rules/rule.ts";
import { say, Unusable } from "./unusable.ts";

/**
 * Prints the page of a rule: what it holds, on whose word, and an example with what is found there.
 * @throws Unusable for a name that no rule has, with the nearest one
 */
export async function explain(id: string): Promise<void> {
  const rule = ruleOf(id);
  if (!rule) throw new Unusable(unheardOf(id));
  say((await page(rule)).join("\n"));
}

async function page(rule: Rule): Promise<readonly string[]> {
  const { meta } = rule;
  const lines = [
    `${meta.id} (${meta.severity}; ${nameGroup(meta.group)})`,
    `  In a sound harness: ${meta.summary}`,
  ];
  const example = await loadExample(rule);
  if (example) {
    lines.push("", ...example.page.map((paragraph) => `  ${paragraph}`));
    const found = check(example.trips()).find((finding) => finding.rule === meta.id);
    if (found)
      lines.push(
        "",
        "  For example:",
        `    ${found.message}`,
        `    ${found.consequence}`,
        `    → ${found.remedy}`,
        "",
        `  Not found: ${example.quietBecause}`,
      );
  }
  lines.push("", `  Source: ${meta.source}.`);
  if (meta.brings?.length) lines.push(`  What follows from it stands under it: ${meta.brings.join(", ")}.`);
  return lines;
}

function unheardOf(id: string): string {
  const names = RULES.map(({ meta }) => meta.id);
  const near = closest(id, names);
  const hint = distance(id, near) <= Math.max(3, id.length / 3) ? ` Is it ${near}?` : "";
  return `There is no rule ${JSON.stringify(id)}.${hint} \`pigtail rules\` lists them all.`;
}
