import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { ALL_DATA } from "../../shared/data-lines.ts";
import { byName, nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "module-never-sleeps",
    group: "data",
    severity: "weak",
    summary: "What hangs on a data bus and on a feed that is live with the key off goes to sleep by itself.",
    source:
      "workshop texts on battery monitoring (devices that draw over 100 mA at the diagnostic socket spoil its readings); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "module" || part.sleeps !== "no") continue;
      const points = [...(context.points.byUnit.get(part.id) ?? [])].sort(byName);
      const line = points.find((point) => isOnBus(context, point));
      const feed = points.find((point) => isLiveAtRest(context, point));
      if (!line || !feed) continue;
      yield {
        message: `${part.designation} does not sleep, has ${sayPoint(context, feed)} at all times, and stays on the bus by ${sayPoint(context, line)}.`,
        consequence:
          "With the key off it keeps the vehicle's control units awake: the battery is flat in days, although the module itself draws little.",
        remedy: `Take a module that sleeps when the bus is quiet, or feed ${nameOf(feed)} from what comes with the key; then measure the drain.`,
        about: [{ part: part.id }],
      };
    }
  },
});

function isOnBus(context: Context, point: Point): boolean {
  if (!ALL_DATA.includes(point.means.id) || point.means.id.startsWith("usb")) return false;
  return context
    .circuitOf(point)
    .points.some((other) => other.unit !== point.unit && other.unit !== null && other.means.group === "data");
}

function isLiveAtRest(context: Context, point: Point): boolean {
  if (point.means.group !== "feed" || point.direction !== "takes") return false;
  return context.feeds.unattendedAt(context.circuitOf(point)).includes("off");
}
