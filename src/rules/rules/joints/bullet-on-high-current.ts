import { contactKey } from "../../../graph/contacts.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { fullLoad } from "../../full-load.ts";
import { jointsOf } from "../../joints.ts";
import { defineRule } from "../../rule.ts";
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
    for (const { part, sides, wires } of jointsOf(context)) {
      if (part.method !== "bullet-pair") continue;
      const readings = fullLoad(context);
      // What comes in on one side leaves on the other; the wires of one side may carry it together.
      const through_A = Math.max(
        ...[1, 2].map((contact, index) => {
          const key = contactKey(part.id, contact);
          let sum_A = 0;
          for (const wire of sides[index]!) {
            const [from] = wire.ends;
            const leaves = from !== "loose" && contactKey(from.part, from.contact) === key;
            sum_A += (readings.wires.get(wire.id)?.amps ?? 0) * (leaves ? 1 : -1);
          }
          return Math.abs(sum_A);
        }),
      );
      if (through_A <= MOST_A) continue;
      yield {
        message: `${part.designation} is a pair of bullets in ${sayList(wires.map(sayWire))}, and ${Number(through_A.toPrecision(2))} A go through it; ${MOST_A} A are the most.`,
        consequence: "The bullets heat, lose their grip and heat more, until the plastic melts.",
        remedy: "Use a crimped joint, a ring on a stud, or a plug that is rated for the current.",
        about: [{ part: part.id }],
      };
    }
  },
});

/** What a bullet of the usual 4 mm size bears for good. @source from memory */
const MOST_A = 10;
