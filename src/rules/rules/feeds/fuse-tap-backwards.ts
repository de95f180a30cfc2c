import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import type { Stretch } from "../../shared/stretches.ts";
import { sayGuard } from "../../shared/stretches.ts";
import { nameOf } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuse-tap-backwards",
    group: "feeds",
    severity: "weak",
    summary: "The new fuse of a fuse tap stands beside the original one, not behind it.",
    source:
      "three how-to pages on fuse taps, which agree on the mistake; that the branch then has two fuses in a row is traced from the copper; a starter maker's fitting guide allows no taps at all",
    reads: [...CIRCUITS, ...NAMES, "sizes", "joints"],
    fixable: false,
  },
  *check(context) {
    for (const { guard, above } of context.stretches.all) {
      if (guard.kind !== "fuse" || guard.fuse.holder !== "tap" || !above || !isOriginal(above)) continue;
      const original = sayGuard(above, nameOf);
      yield {
        message: `${guard.fuse.designation} sits in a fuse tap and is fed through ${original}: the tap is in the wrong way round.`,
        consequence: "The original fuse carries its own load and the new one; when it blows, both are dead.",
        remedy: `Pull the original fuse, find with a meter which of the two contacts stays live, and turn the tap so that both fuses share that one.`,
        about: [
          { part: guard.fuse.id },
          above.guard.kind === "fuse" ? { part: above.guard.fuse.id } : above.source.at,
        ],
      };
    }
  },
});

/** The fuse of the place in the fuse box; a main fuse before the whole box is none. */
function isOriginal({ guard }: Stretch): boolean {
  return guard.kind === "behind" || (guard.kind === "fuse" && guard.fuse.holder === "fuse-box");
}
