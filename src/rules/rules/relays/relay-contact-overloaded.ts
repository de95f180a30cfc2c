import { digits } from "../../../electrical/figure.ts";
import type { ReadingWarning } from "../../../electrical/operate/readings.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { contactOf, feedersOf, type Wired, wiredRelays } from "../../shared/relays.ts";
import { HAIR, sayWhen } from "../../shared/steady.ts";
import { zoneFrom } from "../../shared/zone.ts";

export default defineRule({
  meta: {
    id: "relay-contact-overloaded",
    group: "relays",
    severity: "danger",
    summary: "Through a relay's contact flows no more than it is rated for.",
    source: "a relay maker's questions and answers (contacts of mini relays: 40 A)",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const wired of wiredRelays(context)) {
      const { relay } = wired;
      if (relay.rating_A === "unknown" || mostDrawn_A(context, wired) <= relay.rating_A) continue;
      let most = { amps: 0, state: context.solved.states[0]! };
      for (const state of context.solved.states) {
        const view = context.solved.at(state);
        const amps = view.relay(relay.id)?.contact_A ?? 0;
        if (amps <= Math.max(most.amps, relay.rating_A * HAIR) || isShorted(view.warnings)) continue;
        most = { amps, state };
      }
      if (!most.amps) continue;
      yield {
        message: `The contact of ${relay.designation} carries ${digits(most.amps, 3)} A ${sayWhen(most.state)}; it is rated ${relay.rating_A} A.`,
        consequence:
          "The contact welds together: the load stays on whatever the switch does, and socket and leads grow hot enough to burn.",
        remedy: "Use a relay of a higher rating, or split the load over two, each behind a fuse before 30.",
        about: [contactOf(context, relay, 1).at],
      };
    }
  },
});

/** A dead short is another rule's, and no bigger relay cures it. */
function isShorted(warnings: readonly ReadingWarning[]): boolean {
  return warnings.some(({ code }) => code === "dead-short" || code === "conflicting-supplies");
}

/** Of what is stated: at more volts than nominal, or at fewer, a load may draw this much more. */
const MORE = 1.4;

/** What could flow through the contact at the very most: what is stated of all that hangs behind it. */
function mostDrawn_A(context: Context, { c30, c87, fifth }: Wired): number {
  const outputs = fifth ? [c87, fifth] : [c87];
  const fedBehind = outputs.some((circuit) => feedersOf(context, circuit).length > 0);
  const ends = fedBehind ? [c30, ...outputs] : outputs;
  const seen = new Set<Point>();
  let sum_A = 0;
  for (const end of ends) {
    for (const id of zoneFrom(context, end.circuit.id)) {
      for (const point of context.points.circuits[id]!.points) {
        if (seen.has(point)) continue;
        seen.add(point);
        sum_A += stated_A(context, point);
      }
    }
  }
  return sum_A * MORE;
}

function stated_A(context: Context, { part, contact, direction }: Point): number {
  if (part.kind === "load") return contact.number === 1 && part.current_A !== "unknown" ? part.current_A : 0;
  // A coil of unknown resistance draws no more than this, at either end of it; a speaker is no matter of direct current.
  if (part.kind === "relay" && (contact.number === 2 || contact.number === 3))
    return part.coil_ohm === "unknown" ? 0.5 : context.harness.settings.systemVoltage_V / part.coil_ohm;
  const current_A = contact.cavity?.current_A;
  return direction !== "gives" && typeof current_A === "number" ? current_A : 0;
}
