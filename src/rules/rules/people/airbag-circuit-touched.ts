import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, compareNames, nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "airbag-circuit-touched",
    group: "people",
    severity: "danger",
    summary: "No wire of this job is on a circuit of an airbag or a belt tensioner.",
    source:
      "Airbag precautions of five makers' workshop manuals (never splice, never meter); the maker's own instructions go before this",
    reads: [...CIRCUITS, ...NAMES, "settings"],
    fixable: false,
  },
  *check(context) {
    const seen = new Set<number>();
    for (const point of [...context.withFunction("airbag")].sort(byName)) {
      const { circuit, points } = context.circuitOf(point);
      if (!circuit.wires.length || seen.has(circuit.id)) continue;
      seen.add(circuit.id);
      const wires = circuit.wires
        .flatMap((id) => context.harness.wires[id] ?? [])
        .sort((a, b) => compareNames(a.designation, b.designation));
      const others = points.filter((other) => other !== point).sort(byName);
      const wait = context.profile.limits.airbagWait_min;
      yield {
        message: `${sayList(wires.map(({ designation }) => designation))} ${wires.length === 1 ? "is" : "are"} on an airbag circuit: ${sayPoint(context, point)}${others.length ? `, with ${sayList(others.map(nameOf))}` : ""}.`,
        consequence: "A bag may fire at a face, or never fire when it ought to.",
        remedy: `Stop: take the wire off the drawing and leave the circuit alone. No splice, no ohmmeter, no test lamp. Only who is trained for it and has the maker's papers may go near; battery off first, then wait as the maker says, where that is not known at least ${wait.value} minutes (${wait.book}).`,
        about: [point.at, ...wires.map(({ id }) => ({ wire: id }))],
      };
    }
  },
});
