import type { Point } from "../../../electrical/points.ts";
import { exchange } from "../../../graph/edits/lead.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found, fixWith } from "../../rule.ts";
import { pullsToGround } from "../../shared/near.ts";
import { contactOf, feedersOf, isUsed, takersOn, type Wired, wiredRelays } from "../../shared/relays.ts";
import { byName, nameOf, sayList, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "relay-contacts-mixed",
    group: "relays",
    severity: "fault",
    summary: "What a relay is to switch on hangs on 87 and is fed by 30; 87a is live while the coil rests.",
    source:
      "a relay forum's list of questions; DIN 72552: 85 and 86 coil, 30 common, 87 open at rest, 87a closed",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const wired of wiredRelays(context)) {
      const { relay, c30, c87, fifth } = wired;
      const astray = feedAstray(context, wired);
      if (astray) {
        yield astray;
        continue;
      }
      // With both outputs in use it changes over from one thing to the other, as it was bought for.
      if (relay.poles !== "changeover" || !fifth || !isUsed(fifth) || isUsed(c87)) continue;
      const into30 = feedersOf(context, c30);
      const into87a = feedersOf(context, fifth);
      if (into87a.length && !into30.length) {
        const loads = takersOn(context, c30);
        if (!loads.length) continue;
        yield {
          message: `${sayPoints(context, into87a)} feeds 87a of ${relay.designation} instead of 30, and ${sayNames(loads)} ${loads.length === 1 ? "hangs" : "hang"} on 30: live while the coil rests, dead when it pulls.`,
          consequence:
            "What should be off is on and cannot be switched off, with the key out as well: a flat battery.",
          remedy: "Bring the feed to 30 and take the load from 87. Relays are drawn at rest.",
          about: [contactOf(context, relay, 5).at, contactOf(context, relay, 1).at],
        };
        continue;
      }
      const loads = takersOn(context, fifth);
      if (!into30.length || into87a.length || !loads.length) continue;
      const how = drivenHow(context, wired);
      const atRest = context.feeds.unattendedAt(c30).includes("off");
      if (how === "other" || (how === "by-key" && !atRest)) continue;
      yield {
        // Meant so, it would be a load for the time that the key is off.
        severity: how === "by-key" ? "weak" : "fault",
        message: `${sayNames(loads)} ${loads.length === 1 ? "hangs" : "hang"} on 87a of ${relay.designation}: on while its coil rests${
          atRest ? ", at all times," : ""
        } and off when it pulls. Its 87 is free.`,
        consequence: "What should be off is on, with the key out as well if its feed is: a flat battery.",
        remedy: "Move the load's lead from 87a to 87. Relays are drawn at rest.",
        about: [contactOf(context, relay, 5).at],
        suggestions: [
          fixWith(`Move the lead at 87a of ${relay.designation} to 87`, () =>
            exchange(context.harness, { part: relay.id, contact: 5 }, { part: relay.id, contact: 4 }),
          ),
        ],
      };
    }
  },
});

/** The feed on one output, the load on the other, and nothing on 30: they never meet. */
function feedAstray(context: Context, { relay, c30, c87, fifth }: Wired): Found | null {
  if (relay.poles !== "changeover" || !fifth || isUsed(c30) || !isUsed(c87) || !isUsed(fifth)) return null;
  const onRest = feedersOf(context, fifth);
  const onMake = feedersOf(context, c87);
  const fed = onRest.length ? onRest : onMake;
  const loads = takersOn(context, onRest.length ? c87 : fifth);
  if (onRest.length > 0 === onMake.length > 0 || !loads.length) return null;
  const [from, to] = onRest.length ? ["87a", "87"] : ["87", "87a"];
  return {
    message: `${sayPoints(context, fed)} ${fed.length === 1 ? "feeds" : "feed"} ${from} of ${relay.designation} instead of 30, which is free: it never reaches ${sayNames(loads)} on ${to}.`,
    consequence: "What the relay is to switch on never comes on.",
    remedy: `Move the feed from ${from} to 30. Relays are drawn at rest: 30 is the common of both outputs.`,
    about: [contactOf(context, relay, onRest.length ? 5 : 4).at, contactOf(context, relay, 1).at],
    // With the load on 87a it would then be on at rest, which may be meant, or be the next slip.
    fix: onRest.length
      ? fixWith(`Move the lead at 87a of ${relay.designation} to 30`, () =>
          exchange(context.harness, { part: relay.id, contact: 5 }, { part: relay.id, contact: 1 }),
        )
      : null,
  };
}

function sayNames(points: readonly Point[]): string {
  return sayList([...points].sort(byName).map(nameOf));
}

/** Who pulls the coil: a hand or an output that says "on", the key, or something else, which may mean it so. */
function drivenHow(context: Context, { c85, c86 }: Wired): "by-order" | "by-key" | "other" {
  const fed = [c86, c85].find((end) => context.feeds.isLive(end));
  if (!fed) return "other";
  const feeds = context.feeds.feeds(fed);
  const steady = context.feeds.unattendedAt(fed);
  const returned = fed === c86 ? c85 : c86;
  if (returned.points.some((point) => pullsToGround(point) && ORDERS.has(point.means.id))) return "by-order";
  if (steady.includes("off")) return "other";
  if (
    feeds.length > 0 &&
    feeds.every(({ unattended, source }) => !unattended.length || ORDERS.has(source.means.id))
  )
    return "by-order";
  return steady.every((state) => KEY.has(state)) ? "by-key" : "other";
}

const ORDERS: ReadonlySet<string> = new Set([
  "amplifier-turn-on",
  "antenna-power",
  "relay-control",
  "relay-coil-return",
  "enable",
]);
const KEY: ReadonlySet<string> = new Set(["accessory", "run", "crank", "unit-on"]);
