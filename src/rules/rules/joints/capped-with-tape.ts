import { NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "capped-with-tape",
    group: "joints",
    severity: "weak",
    summary: "A spare lead ends in a cap or a folded-back sleeve, not in tape.",
    source: "an alarm maker's fitting guide (tape alone lets go); common practice otherwise, no source",
    reads: [...NAMES, "wiring", "joints"],
    fixable: true,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "cap" || part.method !== "tape") continue;
      const wires = [...context.traced.wiresAt(`${part.id}#1`)];
      if (!wires.length) continue;
      wires.sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `${part.designation} is nothing but tape round the end of ${sayList(wires.map(sayWire))}.`,
        consequence: "Tape lets go in heat, and a bare end hangs behind the trim.",
        remedy: "Shrink an end cap over the end, or fold it back under a sleeve.",
        about: [{ part: part.id }],
        fix: fixWith(`Put an end cap on ${part.designation}`, () => ({
          kind: "change-part",
          part: part.id,
          changes: { method: "end-cap" },
        })),
      };
    }
  },
});
