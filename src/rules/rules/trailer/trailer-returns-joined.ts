import type { Point, PointCircuit } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, sayPoints } from "../../words.ts";

const RETURNS: readonly string[] = ["ground-lamps", "ground-constant", "ground-switched"];

export default defineRule({
  meta: {
    id: "trailer-returns-joined",
    group: "trailer",
    severity: "weak",
    summary: "In a trailer the returns of lamps, constant feed and switched feed stay apart.",
    source:
      "ISO 11446, contact list, as published tables give it: 3, 11 and 13 are not to be joined in the trailer",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const told = new Set<PointCircuit>();
    for (const point of [...context.withFunction(...RETURNS)].sort(byName)) {
      const circuit = context.circuitOf(point);
      if (told.has(circuit)) continue;
      told.add(circuit);
      const returns = circuit.points.filter((one) => kindOf(one) !== null).sort(byName);
      if (new Set(returns.map((one) => kindOf(one))).size < 2) continue;
      // Towards the vehicle's own ground they may all come together: that is the vehicle's side.
      if (!returns.some((one) => one.direction === "gives")) continue;
      yield {
        message: `The returns ${sayPoints(context, returns)} are joined.`,
        consequence:
          "One lead carries back what three are meant for and grows hot; when it opens, lamps and refrigerator feed one another backwards.",
        remedy: "Give each of the three its own lead from what it serves to its own contact of the coupling.",
        about: returns.map((one) => one.at),
      };
    }
  },
});

/** What a return is for; the plain ground of a coupling that has the others as well is that of its lamps. */
function kindOf(point: Point): string | null {
  if (RETURNS.includes(point.means.id)) return point.means.id;
  if (point.means.id !== "ground" || point.part.kind !== "connector") return null;
  const hasOthers = point.part.cavities.some(
    (cavity) => cavity.function === "ground-constant" || cavity.function === "ground-switched",
  );
  return hasOthers ? "ground-lamps" : null;
}
