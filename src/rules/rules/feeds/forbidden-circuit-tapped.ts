import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, isOrAre, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "forbidden-circuit-tapped",
    group: "feeds",
    severity: "danger",
    summary: "Nothing new hangs on circuits of the brakes, the engine's control or the fuel.",
    source:
      "FCS 1362:2010 §2 (the fitter answers for the vehicle's safety); makers' workshop manuals (never splice into circuits of a safety system)",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    const told = new Set<number>();
    for (const own of context
      .withFunction(...FORBIDDEN)
      .filter(isVehicles)
      .sort(byName)) {
      const start = context.circuitOf(own).circuit.id;
      if (told.has(start)) continue;
      told.add(start);
      const added = zoneFrom(context, start)
        .flatMap((id) => context.points.circuits[id]!.points)
        .filter((point) => isAdded(point, own))
        .sort(byName);
      if (!added.length) continue;
      yield {
        message: `${sayPoints(context, added)} ${isOrAre(added)} tapped into ${sayPoint(context, own)} of the vehicle.`,
        consequence:
          "A fault of the new part, or of the joint, can take out brakes, steering or the engine, or light their warning lamps; whoever fitted it answers for it.",
        remedy:
          "Leave that circuit as its maker made it, and take the feed or signal from another source, as the maker's instructions for fitting equipment and the local code allow.",
        about: [own.at, ...added.map(({ at }) => at)],
      };
    }
  },
});

/** Airbags and high voltage have rules of their own, data buses too. */
const FORBIDDEN = [
  "wheel-speed",
  "anti-lock-feed",
  "anti-lock-warning",
  "brake-switch",
  "trailer-brake",
  "breakaway",
  "fuel-pump",
  "injector",
  "ignition-coil",
  "crankshaft-sensor",
  "camshaft-sensor",
  "oxygen-sensor",
  "knock-sensor",
  "throttle-position",
  "manifold-pressure",
  "intake-air-temperature",
];

function isVehicles({ side }: Point): boolean {
  return side === "vehicle";
}

/** Something of this job. What asks for the very lead, by its own chart, is made for it. */
function isAdded(point: Point, own: Point): boolean {
  if (point.side === "vehicle" || point.means === own.means || point.means.group === "ground") return false;
  if (point.part.kind === "relay") return point.contact.number === 2 || point.contact.number === 3;
  if (point.part.kind === "load") return point.contact.number === 1;
  return point.side === "equipment" && point.means.group !== "none" && point.direction !== "none";
}
