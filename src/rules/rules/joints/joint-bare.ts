import type { Splice } from "../../../graph/harness.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, sleeved } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joint-bare",
    group: "joints",
    severity: "weak",
    summary: "A soldered joint, or a crimp without insulation, has a sleeve that insulates and holds it.",
    source:
      "NASA-STD-8739.4 (splices are insulated and supported); a chassis maker's guide for body builders: soldered joints are sealed",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      if (part.cover !== "none" || !isBareMetal(part)) continue;
      const isLive = context.feeds.isLive(context.points.circuitAt(part.id, 1));
      const kind = part.method === "crimped-butt" ? "crimp without insulation" : "soldered joint";
      yield {
        severity: isLive ? "fault" : "weak",
        message: `${part.designation}, the ${kind} of ${sayList(wires.map(sayWire))}, has no sleeve.`,
        consequence: isLive
          ? "It is live: where the bare metal touches the body, a fuse blows or something burns."
          : "The bare metal finds its neighbour, and the strands break where the stiff part ends.",
        remedy: "Slide a sleeve over it and shrink it, so that it grips the insulation on both sides.",
        about: [{ part: part.id }],
        fix: sleeved(joint),
      };
    }
  },
});

function isBareMetal({ method, barrel }: Splice): boolean {
  return method === "solder-and-sleeve" || (method === "crimped-butt" && barrel === "bare");
}
