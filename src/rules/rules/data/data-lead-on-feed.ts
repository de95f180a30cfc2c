import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { ALL_DATA, heldBy } from "../../shared/data-lines.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "data-lead-on-feed",
    group: "data",
    severity: "danger",
    summary: "No data lead is joined to what gives battery volts.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["outputs-tied", "same-function-unjoined"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const lead of [...context.withFunction(...ALL_DATA)].sort(byName)) {
      const circuit = context.circuitOf(lead);
      if (told.has(circuit.circuit.id)) continue;
      told.add(circuit.circuit.id);
      const sources = heldBy(context, lead, "volts");
      if (!sources.length) continue;
      const leads = circuit.points.filter((point) => ALL_DATA.includes(point.means.id)).sort(byName);
      yield {
        message: `${sayPoints(context, leads)} ${leads.length === 1 ? "has" : "have"} battery volts from ${sayPoints(context, sources)}.`,
        consequence:
          "Data leads carry a few volts through small transistors: these burn, here and in every control unit on the same bus.",
        remedy: `Part ${sayPoint(context, sources[0]!)} from ${nameOf(lead)}; then have each box on the bus tested before it is trusted again.`,
        about: [...leads, ...sources].map((point) => point.at),
      };
    }
  },
});
