import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isCoupling } from "../../shared/trailer.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trailer-feed-not-isolated",
    group: "trailer",
    severity: "danger",
    summary:
      "A trailer's battery is charged through a relay, a diode or a charger, and apart with the key off.",
    source: "common practice, no source; a fuse at the source after 33 CFR 183.455, by analogy",
    reads: [...CIRCUITS, ...NAMES, "housings"],
    fixable: false,
    brings: ["supplies-joined", "feeds-tied", "outputs-tied"],
  },
  *check(context) {
    const posts = context.points.all.filter(
      ({ part, contact }) => part.kind === "supply" && contact.number === 1,
    );
    const charged = context
      .withFunction("second-battery-feed", "trailer-charge")
      .filter((point) => isTrailers(point) && point.direction !== "gives");
    if (!posts.length && !charged.length) return;
    const told = new Set<Point>();
    for (const source of context.points.all.filter(isConstant).sort(byName)) {
      const zone = zoneFrom(context, context.circuitOf(source).circuit.id, (gate) => gate.kind === "fuse");
      const at = (point: Point) => zone.includes(context.circuitOf(point).circuit.id) && !told.has(point);
      // What leaves the vehicle by its coupling ends at the trailer's own battery.
      const own = isCouplingLead(source) ? posts.filter(at) : [];
      const batteries = [...own, ...charged.filter(at)].sort(byName);
      if (!batteries.length) continue;
      for (const point of batteries) told.add(point);
      const onlyCharge = batteries.every(({ means }) => means.id === "trailer-charge");
      yield {
        // Where no battery is drawn, one may still stand behind it, or nothing may.
        severity: onlyCharge ? "weak" : "danger",
        message: `${sayPoints(context, batteries)} ${batteries.length === 1 ? "hangs" : "hang"} on ${sayPoint(context, source)} at all times, with nothing but fuses between.`,
        consequence:
          "Parked, the trailer empties the battery that is to start the vehicle; and with one of them flat, the other pours into it as much as the lead lets through.",
        remedy:
          "Charge it through a charge relay that only closes while the engine runs, or through a charger, with a fuse at each battery.",
        about: [...batteries.map((point) => point.at), source.at],
      };
    }
  },
});

function isConstant(point: Point): boolean {
  if (point.direction !== "gives" || point.means.group !== "feed" || !point.means.liveIn.includes("off"))
    return false;
  return point.side === "vehicle" || point.part.kind === "supply";
}

function isCouplingLead({ part, side }: Point): boolean {
  return part.kind === "connector" && side === "vehicle" && isCoupling(part);
}

function isTrailers({ part, side }: Point): boolean {
  return part.kind === "connector" && side === "equipment" && isCoupling(part);
}
