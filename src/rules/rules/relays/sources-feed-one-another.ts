import { functionOf } from "../../../catalogue/functions.ts";
import { digits } from "../../../electrical/figure.ts";
import {
  conditionsOf,
  isLive,
  KEY_POSITIONS,
  type KeyState,
  sayState,
} from "../../../electrical/operate/key-state.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Feed } from "../../../electrical/reach.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { givesVolts } from "../../shared/near.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "sources-feed-one-another",
    group: "relays",
    severity: "fault",
    summary: "What feeds a lead at one time does not feed back into what feeds it at another.",
    source: "common practice, no source; from how many volts on is the profile's limit for dead leads",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["tapped-circuit-overloaded", "illumination-on-steady-feed"],
  },
  *check(context) {
    const told = new Set<string>();
    for (const source of context.points.all.filter(isOffAtTimes).sort(byName)) {
      const circuit = context.circuitOf(source);
      const intruders = context.feeds
        .feeds(circuit)
        .filter((feed) => intrudes(context, feed, source))
        .map((feed) => feed.source);
      if (!intruders.length) continue;
      const key = [source, ...intruders]
        .map((point) => point.key)
        .sort()
        .join();
      if (told.has(key)) continue;
      const back = backFed(context, source);
      if (!back) continue;
      told.add(key);
      const { value, book } = context.profile.limits.backFeed_V;
      yield {
        message: `${sayPoints(context, intruders)} ${intruders.length === 1 ? "feeds" : "feed"} back into ${sayPoint(context, source)}: with the key at ${sayState(back.state, context.harness)} it is off and stands at ${digits(back.volts, 3)} V; ${digits(value)} V is allowed (${book}).`,
        consequence:
          "What the one should leave dark goes on, and stays on; the weaker of the two outputs works into the other and may die of it.",
        remedy: `Put a diode into the lead of each source, its stripe to what they feed together, or let ${nameOf(source)} pull a relay.`,
        about: [source.at, ...[...intruders].sort(byName).map((point) => point.at)],
      };
    }
  },
});

/** A lead that somebody else's wiring or a box gives, and that is dead at some time. */
function isOffAtTimes(point: Point): boolean {
  return givesVolts(point) && point.contact.cavity !== null && !point.means.liveIn.includes("off");
}

/** Comes at times when the source is off, and no other rule tells of the two. */
function intrudes(context: Context, { source, live, unattended }: Feed, own: Point): boolean {
  if (source === own || (source.unit === own.unit && source.means === own.means)) return false;
  const circuit = context.circuitOf(own);
  const isFeed = source.means.group === "feed" && own.means.group === "feed";
  // Tied in copper, two outputs are told as such, and a constant feed on a switched one.
  if (circuit.points.includes(source) && !isFeed) return false;
  if (isFeed && source.means.id === "constant-feed" && unattended.includes("off")) return false;
  // Lamps for reversing, for the plate, and those that stop and turn in one have rules of their own.
  if (own.means.id === "reverse" && own.side === "vehicle") return false;
  if (circuit.points.some(({ means }) => means.id === "plate-lamp")) return false;
  if ([own, source].some(({ means }) => means.id.startsWith("stop-turn-"))) return false;
  const states: readonly string[] = own.means.liveIn;
  return states.length === 0 ? source.means !== own.means : live.some((state) => !states.includes(state));
}

/** The most that a lead has while it gives nothing, with all else on that can be on. */
function backFed(
  context: Context,
  source: Point,
): { readonly volts: number; readonly state: KeyState } | null {
  const { value } = context.profile.limits.backFeed_V;
  const own = new Set<string>([source.means.id, ...source.means.liveIn, "engine-running"]);
  const conditions = conditionsOf(context.harness).filter((condition) => !own.has(condition));
  let worst: { volts: number; state: KeyState } | null = null;
  for (const key of KEY_POSITIONS) {
    const state = { key, conditions };
    if (isLive(functionOf(source.means.id), state, source.unit === "vehicle")) continue;
    const volts = context.solved.at(state).volts(source.key);
    if (typeof volts === "number" && volts > Math.max(value, worst?.volts ?? 0)) worst = { volts, state };
  }
  return worst;
}
