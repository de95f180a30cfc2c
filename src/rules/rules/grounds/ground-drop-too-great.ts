import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { fullLoad, sayVolts, voltsAt } from "../../shared/full-load.ts";
import { most_ohm, treeFrom, wiresTo } from "../../shared/ground-tree.ts";
import { consumersOf, drawn_A, isFrame } from "../../shared/grounding.ts";
import { byName, sayGrounds, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "ground-drop-too-great",
    group: "grounds",
    severity: "weak",
    summary: "Between a unit's ground contact and the stud next to nothing is lost under full load.",
    source:
      "MECP, Testing Voltage Drops (measure while loaded); a workshop's training page on voltage drop: 0.1 V; the limit stands in the profile",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const consumer of consumersOf(context)) {
      // A lamp or a heater only loses a little of its light or warmth; what is lost in all is told of every load.
      if (consumer.isLoad || !((drawn_A(consumer) ?? 0) > 0)) continue;
      const ends = consumer.grounds.filter((point) => isStated(context, point));
      if (!ends.length || ends.length < consumer.grounds.length) continue;
      const { value, book } = context.profile.limits.groundDrop_V;
      let best: { readonly point: Point; readonly frame: Point; readonly drop_V: number } | null = null;
      for (const point of [...ends].sort(byName)) {
        const frames = context.circuitOf(point).points.filter(isFrame);
        if (!frames.length || mostLost_V(context, point, frames) <= value) continue;
        for (const frame of frames) {
          const view = fullLoad(context);
          const [near, far] = [voltsAt(view, point.key), voltsAt(view, frame.key)];
          if (near === null || far === null) continue;
          const drop_V = near - far;
          if (!best || drop_V < best.drop_V) best = { point, frame, drop_V };
        }
      }
      if (!best || best.drop_V <= value) continue;
      yield {
        message: `Between ${sayPoint(context, best.point)} and ${sayGrounds(context, [best.frame])} ${sayVolts(best.drop_V)} is lost at full load; at most ${sayVolts(value)} may be (${book}).`,
        consequence: `${consumer.name} works with a zero that moves with its own current: it resets, hums, or misreads its inputs.`,
        remedy: "Shorten the ground lead, make it thicker, or set a stud close to the unit.",
        about: [best.point.at],
      };
    }
  },
});

/** What all whose current takes the same wires could lose together on the way of a contact, at the most. */
function mostLost_V(context: Context, point: Point, frames: readonly Point[]): number {
  const { circuit } = context.circuitOf(point);
  const tree = treeFrom(context, frames);
  const wiresOf = (one: Point) => one.landings.flatMap((key) => wiresTo(tree.steps, key));
  const own = new Set(wiresOf(point));
  let sum_A = 0;
  for (const consumer of consumersOf(context)) {
    const shares = consumer.grounds.some(
      (one) => context.circuitOf(one).circuit === circuit && wiresOf(one).some((wire) => own.has(wire)),
    );
    if (shares) sum_A += drawn_A(consumer) ?? 0;
  }
  return most_ohm(tree, point) * sum_A;
}

/** Size and length of every wire on the way are stated, so that the sum is no guess. */
function isStated(context: Context, point: Point): boolean {
  const { wires } = context.circuitOf(point).circuit;
  return (
    wires.length > 0 &&
    wires.every((id) => {
      const wire = context.harness.wires[id]!;
      return wire.area_mm2 !== "unknown" && (wire.length_m !== "unknown" || wire.runs.length > 0);
    })
  );
}
