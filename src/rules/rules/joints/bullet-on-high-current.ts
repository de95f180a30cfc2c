import type { PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Joint, jointsOf } from "../../shared/joints.ts";
import { sayWhen } from "../../shared/steady.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "bullet-on-high-current",
    group: "joints",
    severity: "weak",
    summary: "What carries more than 10 A is joined by a crimp, a ring or a plug that is rated for it.",
    source: "from memory",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      if (part.method !== "bullet-pair") continue;
      const most = mostThrough(context, joint);
      if (most.amps <= MOST_A || isShorted(context, part.id)) continue;
      yield {
        message: `${part.designation} is a pair of bullets in ${sayList(wires.map(sayWire))}, and ${Number(most.amps.toPrecision(2))} A go through it ${sayWhen(most.state)}; ${MOST_A} A are the most (from memory).`,
        consequence: "The bullets heat, lose their grip and heat more, until the plastic melts.",
        remedy: "Use a crimped joint, a ring on a stud, or a plug that is rated for the current.",
        about: [{ part: part.id }],
      };
    }
  },
});

/** What a bullet of the usual 4 mm size bears for good. @source from memory */
const MOST_A = 10;

type Most = { readonly amps: number; readonly state: Context["solved"]["states"][number] };

/** What comes in on one side leaves on the other; the wires of one side may carry it together. */
function mostThrough({ solved }: Context, { part, sides }: Joint): Most {
  const [first] = solved.states;
  let most: Most = { amps: 0, state: first! };
  for (const [index, wires] of sides.entries()) {
    // No state can bring more than each wire's own most together.
    const bound_A = wires.reduce((sum, { id }) => sum + solved.mostThrough(id).amps, 0);
    if (bound_A <= MOST_A) continue;
    for (const state of solved.states) {
      const view = solved.at(state);
      let sum_A = 0;
      for (const { id, ends } of wires) {
        const [from] = ends;
        const leaves = from !== "loose" && from.part === part.id && from.contact === index + 1;
        sum_A += view.amps(id) * (leaves ? 1 : -1);
      }
      if (Math.abs(sum_A) > most.amps) most = { amps: Math.abs(sum_A), state };
    }
  }
  return most;
}

/** A dead short is told as such; what flows in it says nothing of the joint. */
function isShorted({ feeds, grounds, points }: Context, part: PartId): boolean {
  const circuit = points.circuitAt(part, 1);
  return feeds.isLive(circuit) && grounds.isLive(circuit);
}
