import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { pointsWithinFuses } from "../../shared/near.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "plate-lamp-from-both-sides",
    group: "trailer",
    severity: "weak",
    summary: "A number-plate lamp hangs on the tail lamps of one side only.",
    source: "ISO 11446, note to contacts 5 and 7, as published tables give it",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["outputs-tied"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const lamp of [...context.withFunction("plate-lamp")].sort(byName)) {
      const circuit = context.circuitOf(lamp);
      if (told.has(circuit.circuit.id) || lamp.direction === "gives") continue;
      told.add(circuit.circuit.id);
      const near = pointsWithinFuses(context, circuit);
      const left = near.filter((point) => point.means.id === "tail-left");
      const right = near.filter((point) => point.means.id === "tail-right");
      if (!left.length || !right.length) continue;
      const both = [...left, ...right].sort(byName);
      const straight = both.every((point) => circuit.points.includes(point));
      const gives = both.filter((point) => point.direction === "gives");
      yield {
        // Two outputs in copper feed one another whatever hangs on them.
        severity: straight && gives.length > 1 ? "fault" : "weak",
        message: `${sayPoint(context, lamp)} hangs on both sides: ${sayPoints(context, both)}.`,
        consequence:
          "Left and right are one circuit: a side left on as a parking lamp lights all, and one fuse feeds past the other.",
        remedy: "Feed the plate lamp from one side; two lamps, one from each side.",
        about: [lamp.at, ...both.map((point) => point.at)],
      };
    }
  },
});
