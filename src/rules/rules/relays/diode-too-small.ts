import { digits } from "../../../electrical/figure.ts";
import { contactKey } from "../../../graph/contacts.ts";
import type { Diode } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { HAIR, sayWhen } from "../../shared/steady.ts";
import { compareNames } from "../../words.ts";

export default defineRule({
  meta: {
    id: "diode-too-small",
    group: "relays",
    severity: "fault",
    summary: "Through a diode flows no more than it is rated for.",
    source: "common practice, no source: a diode is chosen at twice its current",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["suppressed-coil-reversed"],
  },
  *check(context) {
    const diodes = context.parts
      .filter((part): part is Diode => part.kind === "diode" && part.rating_A !== "unknown")
      .sort((a, b) => compareNames(a.designation, b.designation));
    for (const diode of diodes) {
      const rating_A = Number(diode.rating_A);
      let most = { amps: 0, state: context.solved.states[0]! };
      for (const state of context.solved.states) {
        const amps = ampsThrough(context, diode, state);
        if (amps > most.amps) most = { amps, state };
      }
      // A short through it is told as such.
      if (most.amps <= rating_A * HAIR || context.grounds.isLive(context.points.circuitAt(diode.id, 2)))
        continue;
      yield {
        message: `${diode.designation} carries ${digits(most.amps, 3)} A ${sayWhen(most.state)}; it is rated ${digits(rating_A)} A.`,
        consequence:
          "It grows too hot, melts its sleeve, and fails: open, so that nothing works, or shorted, so that feeds meet that should not.",
        remedy: `Use a diode for at least ${digits(Math.ceil(most.amps * 2))} A, where its heat can go, or a relay.`,
        about: [{ part: diode.id }],
      };
    }
  },
});

type State = Context["solved"]["states"][number];

/** What its wires bring to the anode, in balance: wires may go on from there to something else. */
function ampsThrough(context: Context, diode: Diode, state: State): number {
  const view = context.solved.at(state);
  let sum_A = 0;
  for (const wire of context.traced.wiresAt(contactKey(diode.id, 1))) {
    const [first] = wire.ends;
    const leaves = first !== "loose" && first.part === diode.id && first.contact === 1;
    sum_A += view.amps(wire.id) * (leaves ? -1 : 1);
  }
  return sum_A;
}
