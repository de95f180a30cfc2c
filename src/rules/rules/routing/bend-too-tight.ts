import { bundleDiameter, ruleOfThumb } from "../../../electrical/bundle/bundle-diameter.ts";
import { outsideDiameter } from "../../../electrical/conductor/insulation.ts";
import { digits, isKnown } from "../../../electrical/figure.ts";
import { wallOf } from "../../../electrical/operate/bundles.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, type Loom, loomsWhere, sayRun, together } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "bend-too-tight",
    group: "routing",
    severity: "weak",
    summary: "The loom is bent no tighter than six times its own diameter.",
    source:
      "NASA Workmanship Standards, picture book 4.03; NASA-STD-8739.4 7.3.21 (6 diameters, 10 for long life)",
    reads: [...NAMES, "wiring", "runs", "sizes", "materials", "settings"],
    fixable: false,
  },
  *check(context) {
    const { value: factor, book } = context.profile.limits.bendFactor;
    const tight = loomsWhere(context, ({ bend_mm }) => bend_mm !== "unknown").flatMap((loom) => {
      const bundle_mm = thickerThan(loom, Number(loom.run.bend_mm) / factor);
      return bundle_mm === null ? [] : [{ ...loom, bundle_mm }];
    });
    for (const looms of together(tight)) {
      const { wires, bundle_mm } = looms[0]!;
      const places = looms.map(({ run }) => `${sayRun(run)} is bent to ${digits(Number(run.bend_mm))} mm`);
      yield {
        message: `${sayList(places)}; its bundle is ${digits(bundle_mm, 2)} mm thick and wants ${digits(bundle_mm * factor, 2)} mm, ${digits(factor)} times that (${book}).`,
        consequence: "The wires inside the bend are strained, and a coaxial cable there loses its signal.",
        remedy: `Make the bend wider: ${digits(bundle_mm * factor, 2)} mm or more at its inner side, and 10 diameters where it is to last.`,
        about: aboutWires(wires),
      };
    }
  },
});

/** How much more than by the rule of thumb a few wires can take up: two of a size lie side by side. */
const AT_MOST = 1.2;
/** More wires than this always fit into what the rule of thumb says. */
const FEW = 12;

/** The bundle's diameter, by the wires whose size is stated, where it is above a limit; `null` where it is not. */
function thickerThan({ wires }: Loom, limit_mm: number): number | null {
  const diameters_mm = wires.flatMap(({ area_mm2, insulation }) => {
    if (area_mm2 === "unknown") return [];
    const outside = outsideDiameter(Math.max(area_mm2, 0.001), wallOf(insulation));
    return isKnown(outside) ? [outside.value] : [];
  });
  // Circles are packed only where the rule of thumb leaves it open.
  if (!diameters_mm.length) return null;
  const rule = ruleOfThumb(diameters_mm);
  if (rule.value * AT_MOST <= limit_mm) return null;
  const { value } = diameters_mm.length > FEW ? rule : bundleDiameter(diameters_mm).reckoned;
  return value > limit_mm + 1e-9 ? value : null;
}
