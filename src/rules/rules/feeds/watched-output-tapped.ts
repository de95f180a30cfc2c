import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, isOrAre, nameOf, sayList, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "watched-output-tapped",
    group: "feeds",
    severity: "fault",
    summary: "Nothing new draws its power from an output that is cut into pulses or watched by a controller.",
    source:
      'owners\' forum, "Reverse Camera powering SOLVED" (measured on one vehicle: a reversing-lamp output cut to three quarters once the engine charged)',
    reads: [...CIRCUITS, ...NAMES, "sizes", "settings"],
    fixable: false,
  },
  *check(context) {
    const allLamps = context.harness.settings.vehicle.lamps === "watched";
    for (const source of context.points.all) {
      if (source.direction !== "gives" || !source.contact.cavity) continue;
      const { gives } = source.contact.cavity;
      const lamps = allLamps && gives === "unknown" && source.side === "vehicle" && isExteriorLamp(source);
      if (gives !== "pulsed" && gives !== "watched" && !lamps) continue;
      const drawn = zoneFrom(context, context.circuitOf(source).circuit.id)
        .flatMap((id) => context.points.circuits[id]!.points)
        .filter((point) => drawsNew(point, source))
        .sort(byName);
      if (!drawn.length) continue;
      const how =
        gives === "pulsed" ? "is cut into pulses" : "is watched by the vehicle's lighting controller";
      yield {
        message: `${sayPoints(context, drawn)} ${isOrAre(drawn)} powered from ${sayPoint(context, source)}, which ${how}.`,
        consequence:
          "The new load flickers or stops while the engine charges; the controller reports a failed lamp, or turns the output off.",
        remedy: `Use ${nameOf(source)} as a signal only: let it drive the coil of a relay, with a diode and smoothing, and feed ${sayList(drawn.map(nameOf))} from a fuse.`,
        about: [source.at, ...drawn.map(({ at }) => at)],
      };
    }
  },
});

/** Lamps that a controller may count. */
function isExteriorLamp({ means }: Point): boolean {
  return means.group === "lighting" && means.active === "supply" && !INSIDE.has(means.id);
}

const INSIDE: ReadonlySet<string> = new Set(["illumination", "interior-lamp", "flasher-input", "work-lamp"]);
const POWER: ReadonlySet<string> = new Set(["camera-power", "antenna-power"]);
/** Less is a signal's. */
const SIGNAL_A = 0.1;

/** Takes power, and is not the very lamp that the output is for. */
function drawsNew(point: Point, source: Point): boolean {
  if (point.direction !== "takes" || point.side === "vehicle" || point.means === source.means) return false;
  if (point.means.group === "ground") return false;
  if (point.part.kind === "load")
    return point.part.current_A === "unknown" || point.part.current_A >= SIGNAL_A / 2;
  if (!point.contact.cavity) return false;
  const { current_A } = point.contact.cavity;
  if (current_A !== "unknown") return current_A >= SIGNAL_A;
  return point.means.group === "feed" || POWER.has(point.means.id);
}
