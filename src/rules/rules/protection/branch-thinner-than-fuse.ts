import { digits } from "../../../electrical/figure.ts";
import { refOfKey } from "../../../graph/contacts.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayGuard } from "../../shared/stretches.ts";
import { byGuard, sayThin, thickerWires } from "../../shared/thin-fixes.ts";
import { DANGER_percent, type Thin, thinWires } from "../../shared/thin-wires.ts";
import { nameOf } from "../../words.ts";

export default defineRule({
  meta: {
    id: "branch-thinner-than-fuse",
    group: "protection",
    severity: "danger",
    summary:
      "Where a thinner wire branches off, a fuse of its own begins it, or the fuse above is small enough for it.",
    source: '33 CFR 183.455(a) and (c); fuse again where you branch: owners\' forum, "What about fuses"',
    reads: [...CIRCUITS, ...NAMES, "sizes", "lengths", "materials", "runs", "settings"],
    fixable: true,
  },
  *check(context) {
    for (const thin of byGuard(thinWires(context).filter(({ branch }) => branch !== null))) {
      for (const group of byBranch(thin)) {
        const [first] = group as [Thin, ...Thin[]];
        const worst = [...group].sort((a, b) => b.share_percent - a.share_percent)[0]!;
        const at = refOfKey(first.branch!);
        const joint = context.harness.parts[at.part]!;
        const limit = context.profile.limits.fuseShare_percent;
        yield {
          severity: worst.share_percent > DANGER_percent ? "danger" : "weak",
          message: `${sayThin(worst)} and branches off at ${joint.designation} behind ${sayGuard(first.stretch, nameOf)}, which is ${Math.round(worst.share_percent)} % of that; ${digits(limit.value)} % is the most (${limit.book}).${
            group.length > 1 ? ` The same goes for ${group.length - 1} more of the wires behind it.` : ""
          }`,
          consequence: "The thin branch is the fuse now: on a short it burns before the fuse above it opens.",
          remedy: `Put a fuse into the branch close to ${joint.designation}, no bigger than its wire bears, or make the branch of thicker wire.`,
          about: [...group.map(({ wire }) => ({ wire: wire.id })), { part: joint.id }],
          suggestions: thickerWires(context, group),
        };
      }
    }
  },
});

function byBranch(thin: readonly Thin[]): readonly (readonly Thin[])[] {
  const groups = new Map<string, Thin[]>();
  for (const one of thin) {
    const { part } = refOfKey(one.branch!);
    groups.set(part, [...(groups.get(part) ?? []), one]);
  }
  return [...groups.values()];
}
