import { digits } from "../../../electrical/figure.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayGuard } from "../../shared/stretches.ts";
import { byGuard, sayThin, smallerFuse, thickerWires } from "../../shared/thin-fixes.ts";
import { DANGER_percent, thinWires } from "../../shared/thin-wires.ts";
import { nameOf } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuse-bigger-than-wire",
    group: "protection",
    severity: "danger",
    summary: "The lead that leaves a fuse bears at least what the fuse lets through.",
    source:
      "33 CFR 183.455(c): at most 150 % of the wire; FCS 1362:2010 §4.6.2.1: the cable carries more than its fuse",
    reads: [...CIRCUITS, ...NAMES, "sizes", "lengths", "materials", "runs", "settings"],
    fixable: true,
  },
  *check(context: Context) {
    const straight = thinWires(context).filter(({ branch }) => branch === null);
    for (const thin of byGuard(straight)) {
      const { stretch } = thin[0]!;
      const worst = [...thin].sort((a, b) => b.share_percent - a.share_percent)[0]!;
      const limit = context.profile.limits.fuseShare_percent;
      const place = stretch.guard.kind === "fuse" ? { part: stretch.guard.fuse.id } : stretch.source.at;
      yield {
        severity: worst.share_percent > DANGER_percent ? "danger" : "weak",
        message: `${sayThin(worst)}, and ${sayGuard(stretch, nameOf)} lets through ${Math.round(worst.share_percent)} % of that; ${digits(limit.value)} % is the most (${limit.book}).${
          thin.length > 1 ? ` The same goes for ${thin.length - 1} more of its wires.` : ""
        }`,
        consequence: "The wire is the fuse now: on a short it burns before the fuse opens.",
        remedy: "Fit a smaller fuse, thicker wire, or a second fuse where the wire thins.",
        about: [place, ...thin.map(({ wire }) => ({ wire: wire.id }))],
        suggestions: [...smallerFuse(context, stretch, worst), ...thickerWires(context, thin)],
      };
    }
  },
});
