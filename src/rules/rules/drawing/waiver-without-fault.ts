import { type Edit, group as groupEdit } from "../../../graph/edits/edit.ts";
import type { Harness, Waiver } from "../../../graph/harness.ts";
import { nameGroup } from "../../groups.ts";
import { type About, defineRule, type Finding, fixWith } from "../../rule.ts";
import { findingKey } from "../../waivers.ts";
import { sayList } from "../../words.ts";

const ID = "waiver-without-fault";

export default defineRule({
  meta: {
    id: ID,
    group: "drawing",
    severity: "tidy",
    summary: "Every waiver still covers something that is found.",
    source: "common practice, no source",
    reads: ["parts", "wiring", "designations"],
    fixable: true,
  },
  check: () => [],
  *review(context, findings) {
    const used = new Set(findings.map(({ waiver }) => waiver?.id));
    const idle = new Map<string, { readonly about: readonly About[]; readonly waivers: Waiver[] }>();
    for (const waiver of Object.values(context.harness.waivers)) {
      if (used.has(waiver.id) || isShadowed(waiver, findings)) continue;
      const about = aboutOf(context.harness, waiver);
      if (!about.length) continue;
      const key = findingKey(ID, about);
      const known = idle.get(key);
      if (known) known.waivers.push(waiver);
      else idle.set(key, { about, waivers: [waiver] });
    }
    for (const { about, waivers } of idle.values()) {
      const names = sayList(waivers.map((waiver) => `${sayCovered(waiver)} (“${waiver.reason}”)`));
      const several = waivers.length > 1;
      yield {
        message: `The ${several ? "waivers" : "waiver"} of ${names} ${several ? "cover" : "covers"} nothing that is found any more.`,
        consequence: "Should the fault come back, nobody would be told of it.",
        remedy: `Withdraw ${several ? "them" : "it"}.`,
        about,
        fix: fixWith(`Withdraw the ${several ? "waivers" : "waiver"} of ${names}`, () => withdrawn(waivers)),
      };
    }
  },
});

function withdrawn(waivers: readonly Waiver[]): Edit {
  const edits = waivers.map(({ id }): Edit => ({ kind: "drop-entry", section: "waivers", id }));
  return edits.length === 1 ? edits[0]! : groupEdit("withdraw waivers", edits);
}

/** A wider waiver whose findings narrower ones have taken up still has its use. */
function isShadowed(waiver: Waiver, findings: readonly Finding[]): boolean {
  if (waiver.covers === "rule") return findings.some(({ rule }) => rule === waiver.rule);
  if (waiver.covers === "group")
    return findings.some(({ group, severity }) => group === waiver.rule && severity !== "danger");
  return false;
}

function sayCovered({ covers, rule }: Waiver): string {
  if (covers === "finding") return `a finding of ${rule}`;
  return covers === "rule" ? `all findings of ${rule}` : `the group ${nameGroup(rule)}`;
}

/** What it was about, as far as that is still there; else some part, for a finding has to stand somewhere. */
function aboutOf(harness: Harness, waiver: Waiver): readonly About[] {
  const left = waiver.about.filter((about) =>
    "wire" in about ? harness.wires[about.wire] : harness.parts[about.part],
  );
  const [part] = Object.values(harness.parts);
  return left.length || !part ? left : [{ part: part.id }];
}
