import { digits } from "../../../electrical/figure.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { type Bridge, type Bus, bridgesOf, canBuses, isCan } from "../../shared/data-lines.ts";
import { byName, compareNames, sayList, sayPoints } from "../../words.ts";

/** What one terminator may have. @source ISO 11898-2, 100 to 130 Ω about 120 Ω; from memory */
const LEAST_ohm = 100;
const MOST_ohm = 130;
/** Both of them together, as a meter shows them with the power off. @source a workshop page on CAN terminators */
const TOGETHER_ohm = 60;
/** From here up a bridge is no terminator: fault-tolerant buses of low speed have such, and other customs. */
const NO_TERMINATOR_ohm = 500;
/** Under this a bus is as good as shorted. @source a threshold of our own */
const SHORTED_ohm = 25;

export default defineRule({
  meta: {
    id: "can-termination-wrong",
    group: "data",
    severity: "weak",
    summary: "A CAN bus has one terminator of 120 Ω at each of its two ends.",
    source:
      "a workshop page on CAN terminal resistors (60 Ω good, 120 Ω one missing, about 0 Ω shorted); the range of one: ISO 11898-2, from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const told = new Set<number>();
    for (const bus of canBuses(context)) {
      if (told.has(bus.high.circuit.id)) continue;
      const bridges = bridgesOf(context, bus);
      // What the drawing does not show may stand inside the boxes, or at the ends of the vehicle's own bus.
      if (!bridges.length || bridges.every(({ ohm }) => ohm !== null && ohm >= NO_TERMINATOR_ohm)) continue;
      told.add(bus.high.circuit.id);
      const found = judge(context, bus, bridges);
      if (found) yield found;
    }
  },
});

function judge(context: Context, bus: Bus, bridges: readonly Bridge[]): Found | null {
  const known = bridges.flatMap(({ ohm }) => (ohm === null ? [] : [ohm]));
  const total_ohm =
    known.length === bridges.length ? 1 / known.reduce((sum, ohm) => sum + 1 / Math.max(ohm, 1e-3), 0) : null;
  const off = bridges.filter(({ ohm }) => ohm !== null && (ohm < LEAST_ohm || ohm > MOST_ohm));
  if (bridges.length === 2 && !off.length) return null;
  const parts = bridges
    .flatMap(({ resistors }) => resistors)
    .sort((a, b) => compareNames(a.designation, b.designation));
  const names = sayList(
    bridges
      .map(
        ({ resistors, ohm }) =>
          `${sayList(resistors.map((one) => one.designation).sort(compareNames))}${ohm === null ? "" : ` (${digits(ohm)} Ω)`}`,
      )
      .sort(compareNames),
  );
  const leads = [...bus.high.points, ...bus.low.points].filter(isCan).sort(byName);
  const total =
    total_ohm === null ? "" : ` A meter would show ${digits(total_ohm, 3)} Ω instead of ${TOGETHER_ohm} Ω.`;
  const shorted = total_ohm !== null && total_ohm < SHORTED_ohm;
  return {
    severity: shorted ? "fault" : "weak",
    message: `${bridges.length === 1 ? "One resistor lies" : `${bridges.length} resistors lie`} across ${sayPoints(context, leads)}: ${names}.${total}`,
    consequence: shorted
      ? "The drivers cannot move the bus any more: nothing on it works."
      : "Echoes at the open end, or drivers with too much to do: messages are lost now and then, or all of them.",
    remedy:
      bridges.length === 1 && !off.length
        ? "Put a second one of 120 Ω at the other end of the bus. Where a box has one inside, or the vehicle's bus has its own, this one is the second or one too many: measure with the power off."
        : "Leave exactly one of 120 Ω at each end of the bus, and count those inside the boxes as well; measure 60 Ω with the power off.",
    about: parts.map((part) => ({ part: part.id })),
  };
}
