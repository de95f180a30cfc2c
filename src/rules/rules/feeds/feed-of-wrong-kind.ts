import type { Point } from "../../../electrical/points.ts";
import type { ReachState } from "../../../electrical/reach.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { switchedSources, wantedInputs } from "../../shared/unit-feeds.ts";
import { byName, nameOf, sayFeed, sayPoint, sayPoints, sayStates } from "../../words.ts";

export default defineRule({
  meta: {
    id: "feed-of-wrong-kind",
    group: "feeds",
    severity: "weak",
    summary: "A unit's feed is live in every position of the key in which the unit is meant to work.",
    source: "DIN 72552 (15, 15R and 30 are distinct terminals); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    for (const { point, fed } of wantedInputs(context)) {
      const circuit = context.circuitOf(point);
      const states = context.feeds.unattendedAt(circuit);
      if (fed === "constant" && point.means.id === "constant-feed") {
        if (!states.includes("crank")) yield lacking(context, point, "crank");
      } else if (fed === "switched") {
        const lacks = missing(point, states);
        if (lacks) yield lacking(context, point, lacks);
      } else if (fed === "other" && !states.includes("unit-on") && switchedSources(context).length) {
        yield onlyWith(context, point, states);
      }
    }
  },
});

/** The position of the key in which an input wants to be live, and is not. */
function missing({ means }: Point, states: readonly ReachState[]): "accessory" | "crank" | null {
  if (means.id === "switched-feed") return states.includes("accessory") ? null : "accessory";
  if (means.id === "ignition-feed") return states.includes("crank") ? null : "crank";
  return null;
}

function lacking(context: Context, point: Point, state: "accessory" | "crank"): Found {
  return {
    message: `${sayFed(context, point)}: it has nothing ${
      state === "crank" ? "while the engine cranks" : "with the key at accessory"
    }.`,
    consequence:
      state === "crank"
        ? "The unit falls out each time the engine is started, and starts anew afterwards."
        : "The unit is dead with the key at accessory; it works only with the ignition on.",
    remedy: `${choose(context, point)}, or a relay that one of them drives.`,
    about: [point.at],
  };
}

function onlyWith(context: Context, point: Point, states: readonly ReachState[]): Found {
  return {
    message: `${sayFed(context, point)}: it is live only ${sayStates(states)}.`,
    consequence: "The unit comes and goes with something that has nothing to do with it.",
    remedy: `${choose(context, point)}.`,
    about: [point.at],
  };
}

function sayFed(context: Context, point: Point): string {
  const feed = context.feeds.feeds(context.circuitOf(point))[0];
  return `${sayPoint(context, point)} is fed from ${feed ? sayFeed(context, feed) : "nothing"}`;
}

function choose(context: Context, point: Point): string {
  const right = context
    .withFunction(point.means.id)
    .filter(({ direction, unit }) => direction === "gives" && unit !== point.unit)
    .sort(byName);
  return right.length
    ? `Take ${nameOf(point)} to ${sayPoints(context, right)}`
    : `Take ${nameOf(point)} to a fused ${point.means.name}`;
}
