import type { Point } from "../../electrical/points.ts";
import type { Connector } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";

/** Lamps of the road that a trailer repeats. */
export const ROAD_LAMPS: readonly string[] = [
  "indicator-left",
  "indicator-right",
  "stop-turn-left",
  "stop-turn-right",
  "stop-lamp",
  "tail-left",
  "tail-right",
  "tail-lamps",
  "marker-lamps",
  "plate-lamp",
  "fog-rear",
  "reverse",
];
const LAMPS: ReadonlySet<string> = new Set(ROAD_LAMPS);

export function isRoadLamp({ means }: Point): boolean {
  return LAMPS.has(means.id);
}

/** Shapes that only trailers have: ISO 1185, 1724, 3732, 11446, SAE J560 and J2863, the ways of North America. */
const SHELL = /\biso ?(1185|1724|3732|11446)\b|\bj(560|2863)\b|\b7-way\b|\b4-way flat\b|\btrailer\b/i;
/** Functions that lead to a trailer and nowhere else. */
const TRAILERS_OWN: ReadonlySet<string> = new Set([
  "ground-constant",
  "ground-switched",
  "trailer-charge",
  "trailer-brake",
  "trailer-present",
  "trailer-auxiliary",
  "breakaway",
]);

/** A plug or socket between a vehicle and its trailer, by its shape or by what only such a one carries. */
export function isCoupling(part: Connector): boolean {
  if (part.shell !== null && SHELL.test(part.shell)) return true;
  return part.cavities.some((cavity) => TRAILERS_OWN.has(cavity.function));
}

/** The same, or one that carries the lamps of both sides: behind it, on the far side, is a whole rear. */
function carriesBothSides({ cavities }: Connector): boolean {
  const has = (name: string) => cavities.some((cavity) => cavity.function === name);
  return ["indicator", "stop-turn", "tail"].some((lamp) => has(`${lamp}-left`) && has(`${lamp}-right`));
}

/** The connectors behind which a trailer lies: new equipment that takes the lamps of both sides, and gives none on. */
export function trailerSockets(context: Context): readonly Connector[] {
  return context.parts
    .filter((part): part is Connector => {
      if (part.kind !== "connector" || part.belongsTo.side !== "equipment") return false;
      if (!part.cavities.some((cavity) => LAMPS.has(cavity.function))) return false;
      return (isCoupling(part) || carriesBothSides(part)) && !passesLampsOn(context, part);
    })
    .sort((a, b) => compareNames(a.designation, b.designation));
}

/** A box that gives lamps of its own doing: a module with its own feed, or a converter. */
function passesLampsOn(context: Context, part: Connector): boolean {
  const { module } = part.belongsTo;
  if (module === null) return false;
  return (context.points.byUnit.get(module) ?? []).some(
    (point) => point.direction === "gives" && isRoadLamp(point),
  );
}

/** The contacts of a connector, in the order of its face; those that its mate stands for included. */
export function pointsOf(context: Context, part: Connector): readonly Point[] {
  return part.cavities.flatMap((_, index) => context.points.pointAt(part.id, index + 1) ?? []);
}
