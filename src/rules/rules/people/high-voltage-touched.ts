import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, compareNames, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "high-voltage-touched",
    group: "people",
    severity: "danger",
    summary: "No wire of this job is on a high-voltage circuit.",
    source:
      "Above 60 V DC: ISO 6469-3 voltage class B (from memory); the maker's instructions and licensed practice go before this",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const seen = new Set<number>();
    for (const point of [...context.withFunction("high-voltage")].sort(byName)) {
      const { circuit } = context.circuitOf(point);
      if (!circuit.wires.length || seen.has(circuit.id)) continue;
      seen.add(circuit.id);
      const wires = circuit.wires
        .flatMap((id) => context.harness.wires[id] ?? [])
        .sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `${sayList(wires.map(({ designation }) => designation))} ${wires.length === 1 ? "is" : "are"} on a high-voltage circuit: ${sayPoint(context, point)}.`,
        consequence: "It kills. There is no second try.",
        remedy:
          "Stop: take the wire off the drawing and stay out. Only licensed people, by the maker's instructions and with the system made dead and proved dead, may work there.",
        about: [point.at, ...wires.map(({ id }) => ({ wire: id }))],
      };
    }
  },
});
