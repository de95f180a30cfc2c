import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, alwaysLiveIn, loomsWhere, sayRun, together, unfusedIn } from "../../shared/looms.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "hole-without-grommet",
    group: "routing",
    severity: "weak",
    summary: "Where the loom passes through metal, a grommet, a gaiter or a clamp keeps it off the edge.",
    source:
      "33 CFR 183.445(a); FAA AC 43.13-1B §11-96 and §11-115 (grommet, or clamped 3/8 in clear all round); FCS 1362:2010 §4.6.2.1",
    reads: [...CIRCUITS, ...NAMES, "runs"],
    fixable: false,
  },
  *check(context) {
    const bare = loomsWhere(context, ({ passes }) => passes.some(({ protection }) => protection === "none"));
    for (const looms of together(bare)) {
      const { wires } = looms[0]!;
      const unfused = unfusedIn(context, wires);
      const live = unfused.length ? unfused : alwaysLiveIn(context, wires);
      const places = looms.map(
        ({ run }) =>
          `${sayRun(run)} passes ${sayList(run.passes.flatMap(({ what, protection }) => (protection === "none" ? [what || "a hole"] : [])))}`,
      );
      const worst = live.length
        ? ` ${sayList(live.map(sayWire))} in it ${live.length === 1 ? "is" : "are"} live ${unfused.length ? "with no fuse" : "at all times"}.`
        : "";
      yield {
        severity: live.length ? "danger" : "weak",
        message: `${sayList(places)} without a grommet.${worst}`,
        consequence: unfused.length
          ? "The edge saws through the insulation, and nothing stops the current: the wire glows and sets fire to what is near."
          : "The edge saws through the insulation: a short, at a place where nobody looks.",
        remedy: "Put a grommet into the hole, or clamp the loom at least 10 mm clear of the edge all round.",
        about: aboutWires(wires, live),
      };
    }
  },
});
