import type { Point } from "../../../electrical/points.ts";
import { join } from "../../../graph/edits/join.ts";
import type { Load } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { type About, defineRule, type Fix, fixWith } from "../../rule.ts";
import { inputsOf, returnsOf, reversedLeads } from "../../shared/reversed.ts";
import { groundsOfBox } from "../../shared/unjoined.ts";
import { byName, nameOf, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "unit-without-ground",
    group: "grounds",
    severity: "fault",
    summary: "Whatever draws current has a way back to the frame or the battery.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const freeGrounds = context.points.all.filter(
      (point) => point.means.group === "ground" && point.direction === "gives" && isFree(context, point),
    );
    for (const unit of context.newUnits) {
      if (!context.unjoined.ungrounded.has(unit.id)) continue;
      // With feed and ground exchanged, the worse rule speaks.
      const { grounded, fed } = reversedLeads(context, inputsOf(unit), returnsOf(unit));
      if (grounded.length && fed.length) continue;
      const cavities = [...groundsOfBox(unit.points)].sort(byName);
      yield {
        message: cavities.length
          ? `${sayPoints(context, cavities)} ${cavities.length === 1 ? "reaches" : "reach"} no ground.`
          : `${boxName(unit.points)} draws current and has no ground lead on its chart.`,
        consequence:
          "The unit is dead, or finds its way back through a shield or an antenna lead and burns it.",
        remedy: "Give it a lead of its own to bare metal of the body, as thick as its feed.",
        about: cavities.length ? cavities.map((point) => point.at) : partsOf(unit.points),
        fix: joinFix(context, freeGrounds, cavities),
      };
    }
    for (const part of context.parts) {
      if (part.kind !== "load" || !isFedWithoutReturn(context, part)) continue;
      const point = context.points.pointAt(part.id, 2)!;
      yield {
        message: `${nameOf(point)} of the ${part.type === "other" ? "load" : part.type} reaches no ground.`,
        consequence: "It does not work, or works through something that was not meant to carry its current.",
        remedy: "Join it to the frame, with a lead as thick as its feed.",
        about: [point.at],
        fix: joinFix(context, freeGrounds, [point]),
      };
    }
  },
});

/** Its live side is joined to something, and neither side reaches the frame. */
function isFedWithoutReturn(context: Context, load: Load): boolean {
  const [live, back] = [1, 2].map((number) => context.points.pointAt(load.id, number)!) as [Point, Point];
  if (context.isAlone(live)) return false;
  return ![live, back].some((point) => {
    const circuit = context.circuitOf(point);
    return context.grounds.isLive(circuit) || circuit.points.some(givesGround);
  });
}

/** A switch or an output to ground, as of a parking brake. */
function givesGround({ means, direction }: Point): boolean {
  return means.active === "ground" && direction === "gives";
}

/** Certain only where one lead is open and one ground is left to take it to. */
function joinFix(context: Context, freeGrounds: readonly Point[], cavities: readonly Point[]): Fix | null {
  const [own, second] = cavities.filter((point) => isFree(context, point));
  const [ground, another] = freeGrounds;
  if (!own || second || !ground || another) return null;
  return fixWith(`Join ${nameOf(own)} to ${nameOf(ground)}`, () => join(context.harness, own.at, ground.at));
}

function isFree(context: Context, point: Point): boolean {
  return context.isAlone(point) && !context.isLeftOut(point) && !context.circuitOf(point).caps.length;
}

function boxName(points: readonly Point[]): string {
  return [...points].sort(byName)[0]?.part.designation ?? "The unit";
}

function partsOf(points: readonly Point[]): About[] {
  return [...new Set(points.map((point) => point.part.id))].map((part) => ({ part }));
}
