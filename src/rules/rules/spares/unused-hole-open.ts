import { nameContactOf } from "../../../catalogue/describe.ts";
import { keysOf } from "../../../graph/contacts.ts";
import { group } from "../../../graph/edits/edit.ts";
import type { Connector } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { sayList } from "../../words.ts";

const WET = new Set(["outside", "engine-bay"]);

export default defineRule({
  meta: {
    id: "unused-hole-open",
    group: "spares",
    severity: "weak",
    summary: "In a wet place, every hole of a housing holds a lead or a cavity plug.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "runs"],
    fixable: true,
  },
  *check(context) {
    if (!Object.keys(context.harness.runs).length) return;
    for (const part of context.parts) {
      if (part.kind !== "connector" || part.form !== "housing" || !isInTheWet(context, part)) continue;
      const keys = keysOf(part);
      const open = part.cavities.flatMap((cavity, index) =>
        cavity.lead === null && cavity.use !== "plugged" && !context.traced.wiresAt(keys[index]!).length
          ? [index + 1]
          : [],
      );
      if (!open.length) continue;
      const names = sayList(open.map((number) => part.cavities[number - 1]!.label));
      const several = open.length > 1;
      yield {
        message: `${part.designation} lies in the wet, and its ${several ? "cavities" : "cavity"} ${names} ${several ? "are" : "is"} empty and not plugged.`,
        consequence: "Water gets in through the hole and walks along the contacts.",
        remedy: "Put a cavity plug into each hole that holds no lead.",
        about: open.map((contact) => ({ part: part.id, contact })),
        fix: fixWith(
          `Note cavity plugs in ${sayList(open.map((number) => nameContactOf(part, undefined, number)))}`,
          () =>
            group(
              `plug cavities of ${part.designation}`,
              open.map((contact) => ({
                kind: "change-cavity",
                part: part.id,
                contact,
                changes: { use: "plugged" },
              })),
            ),
        ),
      };
    }
  },
});

/** All wires that land on it come through runs in the wet, and there is at least one. */
function isInTheWet({ traced, harness }: Context, part: Connector): boolean {
  const wires = keysOf(part).flatMap((key) => traced.wiresAt(key));
  return (
    wires.length > 0 &&
    wires.every(
      ({ runs }) => runs.length > 0 && runs.every((id) => WET.has(harness.runs[id]?.zone ?? "unknown")),
    )
  );
}
