import { digits } from "../../../electrical/figure.ts";
import type { ReadingWarning } from "../../../electrical/operate/readings.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { contactOf, wiredRelays } from "../../relays.ts";
import { defineRule } from "../../rule.ts";
import { HAIR, sayWhen } from "../../steady.ts";

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
    for (const { relay } of wiredRelays(context)) {
      if (relay.rating_A === "unknown") continue;
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
