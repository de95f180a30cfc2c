import { digits } from "../../../electrical/figure.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Connector } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isCoupling, isRoadLamp, pointsOf, trailerSockets } from "../../shared/trailer.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, isOrAre, nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trailer-lamps-without-relay",
    group: "trailer",
    severity: "fault",
    summary:
      "Trailer lamps have a feed of their own where the vehicle watches its lamps, or where its fuse would not bear them.",
    source:
      "a towing-electrics maker's checklist for bypass modules; a driving article on lamp adapters (small ones die above about 3 A)",
    reads: [...CIRCUITS, ...NAMES, "housings", "settings", "sizes"],
    fixable: false,
    brings: ["watched-output-tapped", "tapped-circuit-overloaded", "lamp-outside-its-class"],
  },
  *check(context) {
    for (const socket of trailerSockets(context)) {
      const fed = fedStraight(context, socket);
      const watched = fed.filter(({ source }) => isWatched(context, source));
      const heavy = fed.filter(({ source, sum_A }) => {
        const fuse_A = source.contact.cavity?.fuse_A;
        return typeof fuse_A === "number" && sum_A > fuse_A * 1.001;
      });
      const amiss = fed.filter((one) => watched.includes(one) || heavy.includes(one));
      if (!amiss.length) continue;
      const reasons = [
        ...(watched.length
          ? [
              `${sayList(watched.map(({ source }) => nameOf(source)))} ${isOrAre(watched)} watched by the vehicle's lighting controller`,
            ]
          : []),
        ...heavy.map(
          ({ source, sum_A }) =>
            `${nameOf(source)} would have to give ${digits(sum_A, 2)} A behind a fuse of ${source.contact.cavity?.fuse_A} A`,
        ),
      ];
      yield {
        message: `${socket.designation} takes its lamps straight from the vehicle's: ${sayList(
          amiss.map(
            ({ source, takers }) => `${sayPoint(context, source)} feeds ${sayList(takers.map(nameOf))}`,
          ),
        )}. ${sayList(reasons)}.`,
        consequence: watched.length
          ? "The controller takes the second lamp for a fault: it warns, flashes fast, or turns the output off; some drivers die of it."
          : "The vehicle's own fuse blows, and its own lamps are dark as well.",
        remedy:
          "Put a bypass module, or a relay for each lamp, between: the vehicle's lamps only drive it, and a fused feed of its own from the battery lights the trailer.",
        about: [
          { part: socket.id },
          ...new Set(amiss.flatMap(({ source, takers }) => [source.at, ...takers.map((point) => point.at)])),
        ],
      };
    }
  },
});

type Fed = { readonly source: Point; readonly takers: readonly Point[]; readonly sum_A: number };

/** The vehicle's lamp leads that copper, fuses and diodes alone bring to the socket. */
function fedStraight(context: Context, socket: Connector): readonly Fed[] {
  const own = pointsOf(context, socket).filter((point) => isRoadLamp(point) && point.direction !== "gives");
  const sources = new Set(
    own.flatMap((point) => context.feeds.feeds(context.circuitOf(point)).map(({ source }) => source)),
  );
  const found: Fed[] = [];
  for (const source of sources) {
    if (!isLampOfVehicle(source)) continue;
    const zone = new Set(
      zoneFrom(
        context,
        context.circuitOf(source).circuit.id,
        (gate) => gate.kind === "fuse" || gate.kind === "through",
      ),
    );
    const takers = own.filter((point) => zone.has(context.circuitOf(point).circuit.id)).sort(byName);
    if (!takers.length) continue;
    const points = [...zone].flatMap((id) => context.points.circuits[id]!.points);
    found.push({ source, takers, sum_A: points.reduce((sum, point) => sum + drawn_A(point), 0) });
  }
  return found.sort((a, b) => byName(a.source, b.source));
}

/** A lead of the vehicle's own lamps. Its socket for a trailer is made to feed one. */
function isLampOfVehicle(point: Point): boolean {
  if (point.direction !== "gives" || !isRoadLamp(point) || point.unit !== "vehicle") return false;
  return (
    point.part.kind === "connector" && (!isCoupling(point.part) || point.contact.cavity?.gives === "watched")
  );
}

function isWatched(context: Context, source: Point): boolean {
  const gives = source.contact.cavity?.gives ?? "unknown";
  if (gives !== "unknown") return gives === "watched";
  return context.harness.settings.vehicle.lamps === "watched";
}

function drawn_A({ part, contact, direction }: Point): number {
  if (part.kind === "load") return contact.number === 1 && part.current_A !== "unknown" ? part.current_A : 0;
  const current_A = contact.cavity?.current_A;
  return direction === "takes" && typeof current_A === "number" ? current_A : 0;
}
