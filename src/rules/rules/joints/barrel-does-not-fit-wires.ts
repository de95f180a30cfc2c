import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { barrelsFor, RANGES_mm2, sideArea } from "../../shared/barrels.ts";
import { changed, jointsOf } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "barrel-does-not-fit-wires",
    group: "joints",
    severity: "weak",
    summary: "The colour of a crimp's barrel suits the size of the wires in it.",
    source:
      "a chassis maker's guide for body builders: red 22 to 18, blue 16 to 14, yellow 12 to 10 AWG; square millimetres from memory",
    reads: [...NAMES, "wiring", "joints", "sizes"],
    fixable: true,
    brings: ["sizes-far-apart-in-crimp"],
  },
  *check(context) {
    for (const { part, sides } of jointsOf(context)) {
      const { barrel, method } = part;
      if (barrel === "unknown" || barrel === "bare" || UNCRIMPED.has(method)) continue;
      const [least, most] = RANGES_mm2[barrel];
      const areas = sides.map(sideArea);
      const worst = areas.findIndex(({ sum_mm2, isKnown }) => sum_mm2 > most || (isKnown && sum_mm2 < least));
      if (worst < 0) continue;
      const { sum_mm2 } = areas[worst]!;
      const wires = sides[worst]!;
      const fitting = areas.every(({ isKnown }) => isKnown)
        ? barrelsFor(areas.map((one) => one.sum_mm2))
        : [];
      const names = sayList(wires.map(sayWire));
      yield {
        message: `The ${barrel} barrel of ${part.designation} is too ${sum_mm2 > most ? "small" : "large"} for ${names}, ${digits(sum_mm2)} mm²${wires.length > 1 ? " together" : ""}: it holds ${digits(least)} to ${digits(most)} mm².`,
        consequence:
          sum_mm2 > most
            ? "Strands are left outside or cut, and the joint heats."
            : "The barrel closes without gripping, and the wire slips out.",
        remedy: fitting.length
          ? `Use a ${fitting.join(" or ")} barrel, and pull at every wire by hand.`
          : "Use a barrel of the right size, and pull at every wire by hand.",
        about: [{ part: part.id }],
        suggestions: fitting.map((colour) =>
          changed(part, `Give ${part.designation} a ${colour} barrel`, { barrel: colour }),
        ),
      };
    }
  },
});

const UNCRIMPED: ReadonlySet<string> = new Set([
  "solder-and-sleeve",
  "terminal-block",
  "twisted",
  "twist-on-nut",
]);
