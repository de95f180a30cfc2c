import type { Point } from "../../../electrical/points.ts";
import type { PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isSpeaker } from "../../shared/speakers.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "tweeter-without-capacitor",
    group: "speakers",
    severity: "fault",
    summary: "A tweeter has a capacitor or a crossover between it and its output.",
    source: "from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const speaker of context.parts) {
      if (speaker.kind !== "speaker" || speaker.type !== "tweeter") continue;
      const plus = outputsReached(context, speaker.id, 1);
      const minus = plus.length ? outputsReached(context, speaker.id, 2) : [];
      if (!minus.length) continue;
      const outputs = [...new Set([...plus, ...minus])].sort(byName);
      yield {
        message: `${speaker.designation} is a tweeter and hangs on ${sayPoints(context, outputs)} with no capacitor on the way.`,
        consequence: "The first bass note burns its coil.",
        remedy: `Put the capacitor that its maker names, or a crossover, into one lead of ${speaker.designation}.`,
        about: [{ part: speaker.id }, ...outputs.map((point) => point.at)],
      };
    }
  },
});

/** Boxes that may have a crossover of their own, of which a drawing does not tell. */
const PLAIN = new Set(["receiver", "amplifier", "interface"]);
/** A way of more stages than this is no speaker lead. */
const MOST_CIRCUITS = 12;

/** Outputs that a contact of a speaker reaches through copper, fuses and resistors. */
function outputsReached(context: Context, speaker: PartId, contact: number): readonly Point[] {
  const ids = [context.points.circuitAt(speaker, contact).circuit.id];
  for (let next = 0; next < ids.length && ids.length < MOST_CIRCUITS; next++) {
    for (const { to, gate } of context.ways[ids[next]!] ?? [])
      if ((gate.kind === "through" || gate.kind === "fuse") && !ids.includes(to)) ids.push(to);
  }
  return ids.flatMap((id) =>
    context.points.circuits[id]!.points.filter((point) => {
      const role = context.moduleOf(point)?.role;
      return isSpeaker(point) && point.direction === "gives" && (role === undefined || PLAIN.has(role));
    }),
  );
}
