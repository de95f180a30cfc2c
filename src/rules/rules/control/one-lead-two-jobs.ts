import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isInput } from "../../shared/near.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "one-lead-two-jobs",
    group: "control",
    severity: "weak",
    summary: "Inputs that are switched at different times have a lead each.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const told = new Set<number>();
    for (const point of context.withFunction(...JOB_OF.keys())) {
      if (!isInput(context, point)) continue;
      const { circuit, points } = context.circuitOf(point);
      if (told.has(circuit.id)) continue;
      told.add(circuit.id);
      if (points.length < 2) continue;
      const inputs = points.filter((one) => jobOf(one) !== null && isInput(context, one)).sort(byName);
      const jobs = new Set(inputs.map(jobOf));
      if (jobs.size < 2 || inputs.every(isRoadLamp)) continue;
      // What lies on ground for good does no job at all.
      if (context.grounds.unattendedAt(context.circuitOf(point)).includes("run")) continue;
      yield {
        message: `${sayPoints(context, inputs)} hang on one lead, although they are switched at different times.`,
        consequence: "Each acts whenever the other is meant, and one device may drive the other's input.",
        remedy:
          "Give each a lead of its own from what switches it; where one source serves both, a diode for each.",
        about: inputs.map((one) => one.at),
      };
    }
  },
});

/** Inputs of one job may share a lead; those of two may not. */
const JOBS: Readonly<Record<string, readonly string[]>> = {
  "parking brake": ["parking-brake"],
  mute: ["mute"],
  reversing: ["reverse", "camera-trigger"],
  lights: ["illumination", "tail-left", "tail-right", "tail-lamps", "marker-lamps", "plate-lamp"],
  "turn-on": ["amplifier-turn-on", "antenna-power"],
  stop: ["stop-lamp", "stop-lamp-high", "brake-switch"],
  left: ["indicator-left"],
  right: ["indicator-right"],
  fog: ["fog-rear"],
  speed: ["speed"],
  tachometer: ["tachometer"],
  keys: ["steering-key-1", "steering-key-2"],
  doors: ["door-switch"],
  horn: ["horn", "horn-switch"],
};
const JOB_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(JOBS).flatMap(([job, names]) => names.map((name) => [name, job] as const)),
);
/** Lamps of the road: what a trailer's socket mixes up is told there. */
function isRoadLamp({ means }: Point): boolean {
  return means.group === "lighting" && means.id !== "illumination";
}

function jobOf(point: Point): string | null {
  return JOB_OF.get(point.means.id) ?? null;
}
