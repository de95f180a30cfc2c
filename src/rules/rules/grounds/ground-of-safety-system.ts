import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, nameOf, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "ground-of-safety-system",
    group: "grounds",
    severity: "danger",
    summary: "Nothing of this job is grounded at a point that belongs to a safety system.",
    source:
      "workshop manuals on airbag work (five): the grounds of these systems stay clean, tight and their own",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "ground" || part.serves !== "safety-system") continue;
      const point = context.points.pointAt(part.id, 1)!;
      const strangers = context.points.partners(point).filter(isOfJob).sort(byName);
      if (!strangers.length) continue;
      yield {
        message: `${sayPoints(context, strangers)} ${strangers.length === 1 ? "goes" : "go"} to ${nameOf(point)}, which is the ground of a safety system.`,
        consequence:
          "The current of other equipment moves the zero that an airbag or brake controller measures by: its warning lamp comes on, and what it does in an accident is no longer sure.",
        remedy: `Take the leads to a stud of their own, and leave ${nameOf(point)} as the vehicle's maker made it. Where it has been loosened, have it checked as the maker's instructions ask.`,
        about: [point.at, ...strangers.map((one) => one.at)],
      };
    }
  },
});

/** What the vehicle itself has there belongs there. */
function isOfJob(point: Point): boolean {
  if (point.means.group === "safety" || point.side === "vehicle") return false;
  return point.part.kind !== "ground" && point.part.kind !== "supply";
}
