import type { Point } from "../../../electrical/points.ts";
import { type CapTarget, capSpares } from "../../../graph/edits/lead.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { isOpenForBridge } from "../../shared/speakers.ts";
import { compareNames, nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "spare-not-capped",
    group: "spares",
    severity: "weak",
    summary: "Every lead that is not used ends under a cap of its own.",
    source:
      "Wiring guides of telematics makers: do not cut unused leads, coil and keep them; a cap on each: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const point of context.points.all) {
      const lead = point.contact.cavity?.lead;
      if (!point.contact.cavity || point.contact.cavity.use === "plugged") continue;
      // An airbag's or a high-voltage lead is left alone, not handled.
      if (point.means.group === "safety") continue;
      const wires = context.points.wiresAt(point);
      const drawn = wires.length ? looseSpares(context, point, wires) : [];
      if (!drawn.length && (wires.length || !lead || !hangsFree(point) || isSpokenOf(context, point)))
        continue;
      const targets: CapTarget[] = drawn.length ? drawn.map(({ id }) => ({ wire: id })) : [point.at];
      const leads = sayList(drawn.map(({ designation }) => designation));
      const gives = context.feeds.isLive(context.circuitOf(point));
      yield {
        severity: gives ? "fault" : "weak",
        message: drawn.length
          ? `${sayPoint(context, point)} is a spare; its lead ${leads} ends without a cap.`
          : `${sayPoint(context, point)} goes nowhere and has no cap.`,
        consequence: gives
          ? "The lead can be live: where its end meets the frame, a fuse blows."
          : "Its end will touch the frame or another lead one day, and nobody will know what it was.",
        remedy:
          "Put an end cap or a folded-back sleeve on this lead alone, tie it back and list it. Do not cut it off flush.",
        about: [point.at],
        fix: fixWith(`Cap ${nameOf(point)}`, () => capSpares(context.harness, targets)),
      };
    }
  },
});

/** The loose wires of a cavity that a person has marked as a spare; live ones are told by their own rule. */
function looseSpares(context: Context, point: Point, wires: readonly Wire[]): readonly Wire[] {
  if (point.contact.cavity?.use !== "spare" || context.feeds.isLive(context.circuitOf(point))) return [];
  return wires
    .filter((wire) => wire.ends.includes("loose"))
    .sort((a, b) => compareNames(a.designation, b.designation));
}

/** A lead that the chart gives hangs free unless its housing is plugged in. */
function hangsFree(point: Point): boolean {
  return (
    point.landings.length === 1 || (point.part.kind === "connector" && point.part.form === "flying-leads")
  );
}

/** Another rule asks for this lead to be joined; to cap it would be the wrong cure. */
function isSpokenOf(context: Context, point: Point): boolean {
  const { spokenOf, required, ungrounded } = context.unjoined;
  if (spokenOf.has(point) || required.has(point)) return true;
  // Of two bridged channels the inner halves stay open.
  if (isOpenForBridge(context, point)) return true;
  if (point.means.group !== "ground") return false;
  // A box without a ground wants one, and a vehicle's open ground may be the one that it gets.
  return point.direction === "gives" ? ungrounded.size > 0 : ungrounded.has(point.unit ?? "");
}
