import { isGround } from "../../../catalogue/functions.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Joint, jointsOf, madeAnew, wetPlaceOf } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "tap-joint",
    group: "joints",
    severity: "weak",
    summary: "No lead is joined by a tap that pierces its insulation.",
    source:
      "FCS 1362:2010 §2.6.1.4: as a rule not used; a chassis maker's guide for body builders: not under the bonnet nor in the maker's wires; an alarm maker's fitting guide tolerates them at low current, never on constant feed or ground",
    reads: [...CIRCUITS, ...NAMES, "runs", "settings"],
    fixable: true,
    brings: ["joint-unsealed-in-wet-place", "taped-joint", "joint-not-by-the-book"],
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      if (part.method !== "tap") continue;
      const burden = burdenOf(context, joint);
      const { choice, book } = context.profile.taps;
      if (choice === "signals-only" && burden === null) continue;
      yield {
        severity: burden === null ? "weak" : "fault",
        message: `${part.designation} is a tap that pierces the insulation of ${sayList(wires.map(sayWire))}${burden ? `, and it ${burden}` : ""} (${book}).`,
        consequence:
          "The blade nicks the strands and lets water in: the lead corrodes, and the joint opens or heats.",
        remedy: "Solder the joint and sleeve it, or use a sealed crimp of the right size.",
        about: [{ part: part.id }],
        suggestions: madeAnew(context, joint),
      };
    }
  },
});

/** Above this a tap heats. */
const MOST_A = 5;

/** What makes a tap worse than weak: "carries a constant feed". */
function burdenOf(context: Context, joint: Joint): string | null {
  const place = wetPlaceOf(context, joint);
  if (place) return `lies ${place}`;
  const circuit = context.points.circuitAt(joint.part.id, 1);
  if (circuit.points.some(({ means }) => isGround(means.id))) return "carries a ground";
  if (context.feeds.unattendedAt(circuit).includes("off")) return "carries a constant feed";
  const drawn = circuit.points.flatMap(({ part, contact, direction }) => {
    const stated = part.kind === "load" ? part.current_A : contact.cavity?.current_A;
    return typeof stated === "number" && direction === "takes" ? [stated] : [];
  });
  const most = Math.max(0, ...drawn);
  return most > MOST_A ? `carries ${most} A` : null;
}
