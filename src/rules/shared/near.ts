import type { Point, PointCircuit } from "../../electrical/points.ts";
import type { Context } from "../context.ts";

/** What copper and fuses alone join to a circuit, itself first. */
export function withinFuses(context: Context, start: PointCircuit): readonly PointCircuit[] {
  const ids = [start.circuit.id];
  const seen = new Set(ids);
  for (let next = 0; next < ids.length; next++) {
    for (const { to, gate } of context.ways[ids[next]!] ?? []) {
      if (gate.kind !== "fuse" || seen.has(to)) continue;
      seen.add(to);
      ids.push(to);
    }
  }
  return ids.map((id) => context.points.circuits[id]!);
}

/** The contacts with a purpose that copper and fuses alone join to a circuit, its own first. */
export function pointsWithinFuses(context: Context, start: PointCircuit): readonly Point[] {
  const circuits = withinFuses(context, start);
  return circuits.length === 1 ? start.points : circuits.flatMap(({ points }) => points);
}

/** An input of a box: a cavity that takes, not one that a person has left out. */
export function isInput(context: Context, point: Point): boolean {
  return point.direction === "takes" && point.contact.cavity !== null && !context.isLeftOut(point);
}

/** What makes an input act, as its chart says, or as is usual for its function; `null` where neither tells. */
export function actsOn(point: Point): "volts" | "ground" | null {
  const stated = point.contact.cavity?.actsOn;
  if (stated === "volts" || stated === "ground") return stated;
  const { id, group, active } = point.means;
  if (USUALLY_GROUNDED.has(id)) return "ground";
  return USUALLY_FED.has(id) || (group === "lighting" && active === "supply") ? "volts" : null;
}

/** Inputs that a contact to the frame works, and inputs that volts work, in nearly every vehicle. */
const USUALLY_GROUNDED = new Set([
  "parking-brake",
  "mute",
  "door-switch",
  "bonnet-switch",
  "boot-switch",
  "horn-switch",
]);
const USUALLY_FED = new Set(["camera-trigger", "amplifier-turn-on", "antenna-power"]);

/** Pulls its lead to ground at some time. */
export function pullsToGround(point: Point): boolean {
  return point.direction === "gives" && point.means.active === "ground" && point.means.group !== "ground";
}

/** Gives battery volts at some time. */
export function givesVolts(point: Point): boolean {
  return (
    point.direction === "gives" &&
    point.means.group !== "ground" &&
    (point.means.active === "supply" || point.means.liveIn.length > 0)
  );
}
