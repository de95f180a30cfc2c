import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { ALL_DATA, heldBy } from "../../shared/data-lines.ts";
import { byName, sayGrounds, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "data-lead-grounded",
    group: "data",
    severity: "fault",
    summary: "No data lead is joined to ground.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["same-function-unjoined"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const lead of [...context.withFunction(...ALL_DATA)].sort(byName)) {
      const circuit = context.circuitOf(lead);
      if (told.has(circuit.circuit.id)) continue;
      told.add(circuit.circuit.id);
      const grounds = heldBy(context, lead, "ground");
      if (!grounds.length || context.feeds.isLive(circuit)) continue;
      const leads = circuit.points.filter((point) => ALL_DATA.includes(point.means.id)).sort(byName);
      yield {
        message: `${sayPoints(context, leads)} ${leads.length === 1 ? "is" : "are"} held at ground by ${sayGrounds(context, grounds)}.`,
        consequence:
          "Nobody on this line can send: to every box on it the line looks busy for ever, and the bus is dead.",
        remedy: "Part the two. A shield goes to ground by its own drain, never by a data lead.",
        about: [...leads, ...grounds].map((point) => point.at),
      };
    }
  },
});
