import type { Point } from "../../../electrical/points.ts";
import type { Module } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { type Camera, camerasOf } from "../../shared/cameras.ts";
import { fullLoad, sayVolts, voltsAt } from "../../shared/full-load.ts";
import { byName, sayGrounds } from "../../words.ts";

export default defineRule({
  meta: {
    id: "camera-ground-apart-from-display",
    group: "camera",
    severity: "weak",
    summary:
      "A camera comes back to the ground of its display, or one of the two keeps its picture's ground apart.",
    source: "how-to pages on bars in a camera's picture; for the volts, the limit of the rule profile",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["ground-loop"],
  },
  *check(context) {
    for (const camera of camerasOf(context)) {
      if (camera.part.kind !== "module" || camera.part.signalGround === "isolated") continue;
      const own = standOf(context, camera.grounds);
      if (!own) continue;
      for (const display of displaysOf(context, camera)) {
        if (display.signalGround === "isolated") continue;
        const other = standOf(context, groundsOf(context, display));
        if (!other || own.sources.some((source) => other.sources.includes(source))) continue;
        const found = judge(context, camera.part, own, display, other);
        if (found) yield found;
      }
    }
  },
});

/** Where a box's current goes to the frame. */
type Stand = { readonly point: Point; readonly sources: readonly Point[] };

function standOf(context: Context, grounds: readonly Point[]): Stand | null {
  for (const point of grounds) {
    const sources = context.grounds.feeds(context.circuitOf(point)).map(({ source }) => source);
    if (sources.length && point.means.id !== "shield-drain") return { point, sources };
  }
  return null;
}

function groundsOf(context: Context, box: Module): readonly Point[] {
  const points = [
    ...(context.points.byUnit.get(box.id) ?? []),
    ...(context.points.standIns.get(box.id) ?? []),
  ];
  return points.filter(({ means }) => means.group === "ground").sort(byName);
}

/** Boxes whose picture return is one with the camera's: a second way from ground to ground. */
function displaysOf(context: Context, camera: Camera): readonly Module[] {
  const found = new Set<Module>();
  for (const shield of camera.points) {
    if (shield.means.id !== "video-shield") continue;
    for (const far of context.points.partners(shield)) {
      const box = context.moduleOf(far);
      if (box && box !== camera.part && far.means.id === "video-shield") found.add(box);
    }
  }
  return [...found].sort((a, b) => (a.designation < b.designation ? -1 : 1));
}

/** Two boxes that are known to join their grounds are enough; of others, the volts between their grounds tell. */
function judge(context: Context, camera: Module, own: Stand, display: Module, other: Stand): Found | null {
  const areJoined = camera.signalGround === "joined" && display.signalGround === "joined";
  const limit = context.profile.limits.groundDrop_V;
  const view = fullLoad(context);
  const [here, there] = [voltsAt(view, own.point.key), voltsAt(view, other.point.key)];
  const apart = here === null || there === null ? 0 : Math.abs(here - there);
  if (!areJoined && apart <= limit.value) return null;
  const volts = areJoined
    ? "both join their picture's ground to it"
    : `${sayVolts(apart)} apart at full load, where ${limit.value} V is the most (${limit.book})`;
  return {
    message: `${camera.designation} stands on ${sayGrounds(context, own.sources)}, its display ${display.designation} on ${sayGrounds(context, other.sources)}; ${volts}.`,
    consequence:
      "Current of the vehicle flows in the shield of the picture lead: bars and lines that move with engine speed.",
    remedy: `Bring the ground of ${camera.designation} back to that of ${display.designation}, or put an isolator into the picture lead.`,
    about: [{ part: camera.id }, { part: display.id }],
  };
}
