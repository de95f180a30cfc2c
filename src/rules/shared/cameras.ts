import type { Point } from "../../electrical/points.ts";
import type { Load, Module } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";

/** A camera: a box with contacts of its own, or a load with nothing but its two supply leads. */
export type Camera = {
  readonly part: Module | Load;
  /** Where its supply comes in. */
  readonly feeds: readonly Point[];
  readonly grounds: readonly Point[];
  readonly points: readonly Point[];
};

/** The cameras of a harness, whoever's they are. */
export function camerasOf(context: Context): readonly Camera[] {
  const found: Camera[] = [];
  for (const part of context.parts) {
    if (part.kind === "load" ? part.type !== "camera" : part.kind !== "module" || part.role !== "camera")
      continue;
    const own = context.points.byUnit.get(part.id) ?? [];
    // Where its plug is mated with one of the same wording, the other one stands for its contacts.
    const standIns = context.points.standIns.get(part.id) ?? [];
    const points = standIns.length ? [...own, ...standIns] : own;
    const takes = points.filter(
      (point) =>
        point.means.active === "supply" &&
        (point.direction === "takes" || standIns.includes(point)) &&
        !context.isLeftOut(point),
    );
    const plain = takes.filter(({ means }) => means.group === "feed" || means.id === "camera-power");
    // A chart may call the supply lead by what is meant to feed it: "reverse".
    const feeds = plain.length ? plain : takes.filter(({ means }) => means.id !== "camera-trigger");
    const first = points.find((point) => point.part === part && point.contact.number === 1);
    found.push({
      part: part as Module | Load,
      feeds: part.kind === "load" && first ? [first] : [...feeds].sort(byName),
      grounds: points.filter(({ means }) => means.group === "ground").sort(byName),
      points,
    });
  }
  return found;
}
