import { conditionsOf } from "../../../electrical/operate/key-state.ts";
import { operate } from "../../../electrical/operate/operate.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Feed } from "../../../electrical/reach.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { pointsWithinFuses } from "../../shared/near.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trigger-back-feeds-lamp",
    group: "control",
    severity: "danger",
    summary: "Nothing but the reverse gear lights the reversing lamp.",
    source: "common practice, no source",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["reverse-trigger-from-wrong-place", "sources-feed-one-another"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const lamp of lampLeads(context)) {
      const circuit = context.circuitOf(lamp);
      if (told.has(circuit.circuit.id)) continue;
      told.add(circuit.circuit.id);
      const feeds = context.feeds.feeds(circuit);
      // A lamp that something else feeds in earnest is no reversing lamp: another rule tells what it is joined to.
      if (!feeds.some(({ source }) => isReverse(source))) continue;
      const intruders = feeds.filter(isIntruder).map(({ source }) => source);
      if (!intruders.length) continue;
      // Which contacts of a relay are closed together, and what is left behind a resistor, the solved circuit tells.
      const near = pointsWithinFuses(context, circuit);
      if (!intruders.some((point) => near.includes(point)) && !isLit(context, lamp)) continue;
      intruders.sort(byName);
      yield {
        message: `${sayPoints(context, intruders)} also ${intruders.length === 1 ? "feeds" : "feed"} ${sayPoint(context, lamp)}, with the gear out of reverse.`,
        consequence:
          "White lamps shine behind the vehicle while it drives forward, against road law, and the gearbox and the parking sensors believe that it reverses.",
        remedy:
          "Let the reversing lead reach the trigger through a diode with its stripe to the trigger, or switch the trigger by a relay, so that nothing flows back to the lamp.",
        about: [lamp.at, ...intruders.map((point) => point.at)],
      };
    }
  },
});

/** Where the vehicle lights its reversing lamps: its own lead, and lamps drawn on it. */
function lampLeads(context: Context): readonly Point[] {
  return context
    .withFunction("reverse")
    .filter((point) => (point.part.kind === "load" ? point.contact.number === 1 : isReverse(point)))
    .sort((a, b) => Number(b.direction === "gives") - Number(a.direction === "gives") || byName(a, b));
}

/** A lamp glows from about here. @source a threshold of our own */
const GLOWS_V = 3;

/** Whether the lamp has volts while all that can be on is on, but for the reverse gear. */
function isLit({ harness, traced }: Context, lamp: Point): boolean {
  const conditions = conditionsOf(harness).filter((condition) => condition !== "reverse");
  for (const key of ["run", "off"] as const) {
    const volts = operate(harness, traced, { key, conditions }).contacts.get(lamp.key);
    if (typeof volts === "number" && volts > GLOWS_V) return true;
  }
  return false;
}

/** The vehicle's reversing circuit. */
function isReverse(point: Point): boolean {
  return point.means.id === "reverse" && point.direction === "gives" && point.side === "vehicle";
}

/** Feeds it at times when the gear is elsewhere, be it by a hand's doing. */
function isIntruder({ source, live }: Feed): boolean {
  return source.means.id !== "reverse" && live.some((state) => state !== "reverse");
}
