import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { camerasOf } from "../../shared/cameras.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "camera-on-pulsed-feed",
    group: "camera",
    severity: "fault",
    summary: "A camera is fed with steady volts, not by a lamp output that is pulsed or watched.",
    source:
      "owners' measurements of a lamp controller (reversing lead steady at 12 V, cut to three quarters at 14.2 V); a camera-monitor maker's manual ships a filter",
    reads: [...CIRCUITS, ...NAMES, "settings"],
    fixable: false,
    brings: ["watched-output-tapped"],
  },
  *check(context) {
    for (const { part, feeds } of camerasOf(context)) {
      for (const feed of feeds) {
        const sources = context.feeds
          .feeds(context.circuitOf(feed))
          .map(({ source }) => source)
          .filter((source) => howItGives(context, source) !== null)
          .sort(byName);
        const [first] = sources;
        if (!first) continue;
        const pulsed = howItGives(context, first) === "pulsed";
        yield {
          message: `${part.designation} is fed from ${sayPoints(context, sources)}, which is ${pulsed ? "cut into pulses" : "watched by a lamp controller"}, at ${sayPoint(context, feed)}.`,
          consequence: pulsed
            ? "The picture flickers, or is there with the engine stopped and gone with it running."
            : "The controller counts a lamp too many and reports a fault, or tests its lamps with pulses that make the picture flicker.",
          remedy:
            "Put a smoothing filter between; or let the lamp's lead only drive a relay, behind a filter, and feed the camera from a fuse; or feed the camera with the key on and take only the trigger from the lamp.",
          about: [feed.at, ...sources.map((source) => source.at)],
        };
      }
    }
  },
});

/** What its chart says, or what is known of the vehicle's lamps as a whole. */
function howItGives(context: Context, source: Point): "pulsed" | "watched" | null {
  const { cavity } = source.contact;
  if (!cavity) return null;
  if (cavity.gives === "pulsed" || cavity.gives === "watched") return cavity.gives;
  if (cavity.gives === "plain" || source.side !== "vehicle" || !isExteriorLamp(source)) return null;
  return context.harness.settings.vehicle.lamps === "watched" ? "watched" : null;
}

const INSIDE: ReadonlySet<string> = new Set(["illumination", "interior-lamp", "work-lamp"]);

function isExteriorLamp({ means }: Point): boolean {
  return means.group === "lighting" && means.active === "supply" && !INSIDE.has(means.id);
}
