import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { heldBy } from "../../shared/data-lines.ts";
import { byName, nameOf, sayPoints } from "../../words.ts";

/** Lines that a box reads button by button, by resistance. */
const KEY_LINES = ["steering-key-1", "steering-key-2", "remote-control"];

export default defineRule({
  meta: {
    id: "key-line-on-battery",
    group: "data",
    severity: "danger",
    summary:
      "A line of steering-wheel keys gets its few volts from the box that reads it, and from nothing else.",
    source:
      "workshop texts on steering-wheel keys: the radio gives the line 5 or 10 V and reads what each button leaves of it",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["outputs-tied", "same-function-unjoined"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const line of [...context.withFunction(...KEY_LINES)].sort(byName)) {
      const circuit = context.circuitOf(line);
      if (told.has(circuit.circuit.id)) continue;
      told.add(circuit.circuit.id);
      const sources = heldBy(context, line, "volts");
      if (!sources.length) continue;
      const lines = circuit.points.filter((point) => KEY_LINES.includes(point.means.id)).sort(byName);
      yield {
        message: `${sayPoints(context, lines)} ${lines.length === 1 ? "has" : "have"} battery volts from ${sayPoints(context, sources)}.`,
        consequence:
          "The input that reads the keys is made for a few volts and burns; a pressed button shorts the feed through its resistor, which burns as well.",
        remedy: `Take ${sayPoints(context, sources)} off the line. Where ${nameOf(line)} needs a pull-up, it is a resistor from the reading box's own few volts.`,
        about: [...lines, ...sources].map((point) => point.at),
      };
    }
  },
});
