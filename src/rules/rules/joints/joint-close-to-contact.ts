import { nameContact } from "../../../catalogue/describe.ts";
import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf } from "../../shared/joints.ts";
import { sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joint-close-to-contact",
    group: "joints",
    severity: "tidy",
    summary: "A joint leaves the lead free to move for 40 mm before its housing.",
    source:
      "vehicle makers' repair manuals ask for 40 mm, from memory; aircraft practice for 12 in (AC 43.13-1B chapter 11, from memory), which no adapter could keep",
    reads: [...NAMES, "wiring", "joints", "lengths", "functions"],
    fixable: false,
  },
  *check(context) {
    for (const { part, wires } of jointsOf(context)) {
      if (!STIFF.has(part.method)) continue;
      for (const wire of wires) {
        if (wire.length_m === "unknown" || wire.length_m >= LEAST_m - 1e-9) continue;
        const far = wire.ends.find((end) => end !== "loose" && end.part !== part.id);
        if (!far || far === "loose") continue;
        const housing = context.harness.parts[far.part];
        if (housing?.kind !== "connector" || housing.form === "terminal-strip") continue;
        yield {
          message: `${part.designation} sits ${digits(wire.length_m * 1000)} mm from ${nameContact(context.harness, far)}, on ${sayWire(wire)}; 40 mm are the least.`,
          consequence: "The stiff joint pulls the contact askew in its cavity.",
          remedy: "Make the lead longer, so that at least 40 mm of it stay free.",
          about: [{ part: part.id }, { wire: wire.id }],
        };
      }
    }
  },
});

const LEAST_m = 0.04;
/** Joints that make a lead stiff; bullets and terminal blocks are ends themselves. */
const STIFF: ReadonlySet<string> = new Set(["solder-and-sleeve", "crimped-butt", "tap"]);
