import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { actsOn, isInput, pullsToGround } from "../../shared/near.ts";
import { byName, nameOf, sayFeed, sayGrounds, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trigger-polarity-wrong",
    group: "grounds",
    severity: "fault",
    summary: "What an input waits for, volts or ground, is what its lead brings.",
    source:
      "common practice, no source; DIN 72552 has a terminal of its own (31b) for a lead that is switched to ground",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const wrong: { readonly point: Point; readonly wants: "volts" | "ground"; readonly found: string }[] = [];
    for (const points of context.points.byFunction.values()) {
      if (!JUDGED.has(points[0]!.means.group)) continue;
      for (const point of points) {
        if (!isInput(context, point)) continue;
        const wants = actsOn(point);
        const found =
          wants === "ground" ? volts(context, point) : wants === "volts" ? ground(context, point) : null;
        if (found && wants) wrong.push({ point, wants, found });
      }
    }
    for (const { point, wants, found } of wrong.sort((a, b) => byName(a.point, b.point))) {
      yield {
        message:
          wants === "ground"
            ? `${sayPoint(context, point)} acts when it is grounded, and gets volts: ${found}.`
            : `${sayPoint(context, point)} acts on volts, and is pulled to ground: ${found}.`,
        consequence:
          wants === "ground"
            ? "It never acts, or works the wrong way round; where something else grounds the lead, a fuse blows when the switch closes."
            : "It never acts, or works the wrong way round; where something else gives volts, a fuse blows when the switch closes.",
        remedy: `Let the lead pull a relay, with a diode across its coil, and let the relay's contact give ${nameOf(point)} what it waits for.`,
        about: [point.at],
      };
    }
  },
});

const JUDGED: ReadonlySet<string> = new Set(["control", "lighting", "antenna"]);
/** Of these, other rules tell what a wrong lead does. */
const TOLD_ELSEWHERE = new Set(["parking-brake"]);

/** What gives volts to an input that wants ground. */
function volts(context: Context, point: Point): string | null {
  const circuit = context.circuitOf(point);
  const feeds = context.feeds.feeds(circuit);
  const [feed] = feeds;
  if (!feed) return null;
  if (TOLD_ELSEWHERE.has(point.means.id) && feeds.some(({ unattended }) => unattended.length > 0))
    return null;
  // Something that pulls it as well makes it a lead with a rest at volts, which is what such inputs have.
  if (circuit.points.some(pullsToGround) || context.grounds.isLive(circuit)) return null;
  return sayFeed(context, feed);
}

/** What grounds an input that wants volts, at times: one that lies on ground for good is put to rest. */
function ground(context: Context, point: Point): string | null {
  const circuit = context.circuitOf(point);
  if (context.feeds.isLive(circuit)) return null;
  const pulling = circuit.points
    .filter((other) => pullsToGround(other) && other.unit !== point.unit)
    // The dimmer's lead at an illumination input has a rule of its own.
    .filter((other) => other.means.id !== "dimmer-return" || point.means.id !== "illumination")
    .sort(byName);
  if (pulling[0]) return `by ${sayPoint(context, pulling[0])}`;
  if (!context.grounds.isLive(circuit) || context.grounds.unattendedAt(circuit).includes("run")) return null;
  const sources = context.grounds.feeds(circuit).map(({ source }) => source);
  return sources.length ? `a switch or relay joins it to ${sayGrounds(context, sources.slice(0, 1))}` : null;
}
