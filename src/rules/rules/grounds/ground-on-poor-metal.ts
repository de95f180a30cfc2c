import type { Ground } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isFrame } from "../../shared/grounding.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "ground-on-poor-metal",
    group: "grounds",
    severity: "weak",
    summary: "Grounds lie on bare metal of the body itself.",
    source:
      "a touring magazine's page on grounds (clean off the paint, connect, paint again); seat-belt bolts are the popular wrong choice of many how-to pages; common practice otherwise, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["ground-drop-too-great"],
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "ground" || part.serves === "battery-post") continue;
      const words = POOR[part.surface];
      if (!words || hasSoundWay(context, part)) continue;
      const wires = context.traced.wiresAt(`${part.id}#1`);
      if (!wires.length) continue;
      const names = wires.map(({ designation }) => designation).sort(compareNames);
      yield {
        message: `${part.designation}, where ${sayList(names)} ${names.length === 1 ? "ends" : "end"}, lies on ${words.where}.`,
        consequence: words.consequence,
        remedy: words.remedy,
        about: [{ part: part.id }],
      };
    }
  },
});

type Words = { readonly where: string; readonly consequence: string; readonly remedy: string };
const RUST =
  "The contact is poor from the first day and grows worse with rust: units reset, sound hums, protection trips.";

const POOR: Readonly<Partial<Record<Ground["surface"], Words>>> = {
  painted: {
    where: "paint",
    consequence: RUST,
    remedy: "Bare the metal under the ring, use a serrated washer, tighten it, then seal it against rust.",
  },
  trim: {
    where: "trim or a bolted-on bracket",
    consequence: RUST,
    remedy: "Move it to bare metal of the body itself, with a serrated washer, and seal it against rust.",
  },
  "moving-part": {
    where: "a part that moves or is hung on hinges",
    consequence:
      "The current goes back through hinges and latches, which are greased and loose: units reset, lamps flicker.",
    remedy:
      "Move it to the body, or join the moving part to the body by a flexible strap and draw the strap.",
  },
  "seat-belt-bolt": {
    where: "a seat-belt bolt",
    consequence:
      "The bolt stands in paint and thread lock and conducts badly, and a ring under its head takes away from the hold that the belt must have.",
    remedy:
      "Move it to a stud of its own on bare metal. Have the belt's bolt checked and tightened as the vehicle's maker asks.",
  },
};

/** A strap joins it to a sound point of the body. */
function hasSoundWay(context: Context, part: Ground): boolean {
  const { points } = context.points.circuitAt(part.id, 1);
  return points.some(
    (point) =>
      point.part !== part && isFrame(point) && !(point.part.kind === "ground" && POOR[point.part.surface]),
  );
}
