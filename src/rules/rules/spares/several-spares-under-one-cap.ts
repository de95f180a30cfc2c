import type { Point } from "../../../electrical/points.ts";
import { contactKey } from "../../../graph/contacts.ts";
import { type Edit, group } from "../../../graph/edits/edit.ts";
import type { Cap, End, Harness, Wire } from "../../../graph/harness.ts";
import { makePart, Names } from "../../../graph/make.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "several-spares-under-one-cap",
    group: "spares",
    severity: "fault",
    summary: "A cap holds one lead, or leads that mean the same.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const cap of context.parts) {
      if (cap.kind !== "cap") continue;
      const wires = context.traced.wiresAt(contactKey(cap.id, 1));
      const { points } = context.points.circuitAt(cap.id, 1);
      const spares = points.filter((point) => context.isLeftOut(point));
      if (wires.length < 2) {
        // Joined before they reach the cap, they are joined all the same.
        if (purposes(spares) > 1 && spares.length === points.length) {
          yield {
            message: `Spares are joined together before they reach ${cap.designation}: ${sayPoints(context, spares)}.`,
            consequence: "An output among them feeds all the others.",
            remedy: "Part them, and give each lead a cap of its own.",
            about: [{ part: cap.id }],
          };
        }
        continue;
      }
      if (purposes(points) < 2) continue;
      yield {
        message: `${cap.designation} holds ${wires.length} leads: ${sayPoints(context, points)}.`,
        consequence: "One cap over several leads is a joint: an output among them feeds all the others.",
        remedy: "Give each lead a cap of its own.",
        about: [{ part: cap.id }],
        fix: fixWith(`Give each of the ${wires.length} leads its own cap`, () =>
          separateCaps(context.harness, cap, wires),
        ),
      };
    }
  },
});

/** How many different jobs the contacts do; one that nobody has named counts for itself. */
function purposes(points: readonly Point[]): number {
  return new Set(points.map((point) => (point.means.id === "unknown" ? point.key : point.means.id))).size;
}

function separateCaps(harness: Harness, cap: Cap, wires: readonly Wire[]): Edit {
  const names = new Names(harness);
  const edits = wires.slice(1).flatMap((wire): Edit[] => {
    const own = makePart("cap", names.part(), names.designation("cap"), { method: cap.method });
    const ends = wire.ends.map(
      (end): End => (end !== "loose" && end.part === cap.id ? { part: own.id, contact: 1 } : end),
    ) as [End, End];
    return [
      { kind: "add-part", part: own, place: null },
      { kind: "change-wire", wire: wire.id, changes: { ends } },
    ];
  });
  return group("give each spare its own cap", edits);
}
