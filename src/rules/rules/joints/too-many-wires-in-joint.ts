import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { changed, type Joint, jointsOf } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "too-many-wires-in-joint",
    group: "joints",
    severity: "weak",
    summary: "A joint holds no more wires than it can grip.",
    source:
      "connector makers' crimp sheets (only stated combinations of wires fit); the counts are common practice, no source",
    reads: [...NAMES, "wiring", "joints", "settings"],
    fixable: true,
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      const over = overfull(context, joint);
      if (!over) continue;
      yield {
        message: `${part.designation} joins ${wires.length} wires: ${sayList(wires.map(sayWire))}; ${over}.`,
        consequence: "Some strands are not held: the joint heats, or a lead drops out.",
        remedy: "Use a terminal block, or make two joints one after the other.",
        about: [{ part: part.id }],
        suggestions: [
          changed(part, `Make ${part.designation} a terminal block in a housing`, {
            method: "terminal-block",
            cover: "housing",
          }),
        ],
      };
    }
  },
});

/** A lump of solder beyond this no longer heats through; a threshold of our own. */
const MOST_SOLDERED = 4;

function overfull({ profile }: Context, { part, sides, wires }: Joint): string | null {
  const { value, book } = profile.limits.wiresInCrimp;
  switch (part.method) {
    case "crimped-butt":
      return wires.length > value ? `a crimp holds ${value} at most (${book})` : null;
    case "solder-and-sleeve":
      return wires.length > MOST_SOLDERED
        ? `${MOST_SOLDERED} are the most that one soldered joint takes (a threshold of our own)`
        : null;
    case "bullet-pair":
      return sides.some((side) => side.length > 1)
        ? "a bullet holds one on each side (common practice, no source)"
        : null;
    default:
      return null;
  }
}
