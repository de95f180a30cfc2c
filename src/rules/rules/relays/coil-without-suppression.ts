import type { Point, PointCircuit } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { withinFuses } from "../../shared/near.ts";
import { contactOf, isUsed, type Wired, wiredRelays } from "../../shared/relays.ts";
import { byName, sayPoint } from "../../words.ts";

/** Up to here an output is a transistor that a spike kills. @source the reference's bound for a control output; a threshold of our own */
const MOST_OUTPUT_A = 1;

export default defineRule({
  meta: {
    id: "coil-without-suppression",
    group: "relays",
    severity: "weak",
    summary: "A coil that an electronic output drives has a diode or a resistor across it.",
    source:
      "a control-training page on suppression; a relay maker's questions and answers; a small-aircraft supplier's page (spikes of 1 000 to 1 500 V)",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const wired of wiredRelays(context)) {
      const { relay, c85, c86 } = wired;
      if (relay.suppression !== "none" || c85 === c86 || !isUsed(c85) || !isUsed(c86)) continue;
      const driver = [...driversOf(context, c86), ...driversOf(context, c85)].sort(byName)[0];
      if (!driver || isSuppressed(context, wired)) continue;
      yield {
        severity: driver.side === "vehicle" ? "weak" : "fault",
        message: `${sayPoint(context, driver)} drives the coil of ${relay.designation}, and nothing takes up its spark.`,
        consequence:
          "When the coil lets go it makes hundreds of volts for a moment: the output dies of it sooner or later, and until then it clicks in the radio.",
        remedy:
          "Put a diode across the coil, its stripe at the plus end, or use a relay with a resistor inside.",
        about: [contactOf(context, relay, 3).at, contactOf(context, relay, 2).at, driver.at],
        suggestions: [
          {
            label: `${relay.designation} is one with a resistor inside`,
            edit: { kind: "change-part", part: relay.id, changes: { suppression: "resistor" } },
          },
        ],
      };
    }
  },
});

/** Electronic outputs on an end of the coil. A plain feed, a lamp's lead or a switch is none. */
function driversOf(context: Context, end: PointCircuit): readonly Point[] {
  return withinFuses(context, end)
    .flatMap(({ points }) => points)
    .filter(({ direction, means, contact, side }) => {
      if (direction !== "gives" || contact.cavity === null || means.group === "ground") return false;
      const { current_A } = contact.cavity;
      if (current_A !== "unknown" && current_A > MOST_OUTPUT_A) return false;
      if (means.active === "signal") return false;
      return side === "equipment" || means.group === "control" || means.group === "antenna";
    });
}

/** Something lies across the coil: between its two ends, or from one of them to where the other goes. */
function isSuppressed(context: Context, { c85, c86 }: Wired): boolean {
  const near = (circuit: PointCircuit, end: PointCircuit) =>
    circuit === end ||
    (context.grounds.isLive(circuit) && context.grounds.isLive(end)) ||
    withinFuses(context, end).includes(circuit);
  return context.parts.some((part) => {
    if (part.kind !== "diode" && part.kind !== "resistor") return false;
    const [p, q] = [1, 2].map((contact) => context.points.circuitAt(part.id, contact)) as [
      PointCircuit,
      PointCircuit,
    ];
    if (p === q || ![p, q].some((one) => one === c85 || one === c86)) return false;
    return (near(p, c86) && near(q, c85)) || (near(p, c85) && near(q, c86));
  });
}
