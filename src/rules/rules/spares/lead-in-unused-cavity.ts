import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "lead-in-unused-cavity",
    group: "spares",
    severity: "fault",
    summary: "No lead goes to a cavity that its chart calls not used.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const point of context.withFunction("not-used")) {
      const wires = context.points.wiresAt(point);
      const circuit = context.circuitOf(point);
      // A lead that the housing came with, under a cap or loose, joins nothing.
      if (!wires.length || circuit.points.every((other) => other.means.id === "not-used")) continue;
      const names = wires.map(({ designation }) => designation).sort(compareNames);
      const others = circuit.points.filter((other) => other.means.id !== "not-used");
      yield {
        message: `${sayList(names)} goes to ${nameOf(point)}, which the chart calls not used; it joins ${sayList(others.map(nameOf))} there.`,
        consequence: "Nothing works through it, or a contact that only the factory uses is driven.",
        remedy:
          "Check from which side the chart shows the housing: a mirrored view is the usual cause. Then move the lead to its cavity.",
        about: [point.at, ...wires.map(({ id }) => ({ wire: id }))],
      };
    }
  },
});
