import type { Point } from "../../../electrical/points.ts";
import { type ContactKey, keyOfEnd, keysOf } from "../../../graph/contacts.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Consumer, consumersOf, isFrame } from "../../shared/grounding.ts";
import { byName, compareNames, sayList, sayPoint, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "ground-thinner-than-feed",
    group: "grounds",
    severity: "weak",
    summary: "A unit's ground is as thick as its feed.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
    brings: ["ground-drop-too-great"],
  },
  *check(context) {
    for (const consumer of consumersOf(context)) {
      const feed = thickest(context, consumer.feeds);
      if (!feed) continue;
      const ground = wayBack(context, consumer);
      if (!ground || ground.area_mm2 >= feed.area_mm2 * ALMOST) continue;
      const names = [...ground.wires].sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `${consumer.name} is fed by ${sayWire(feed.wire)}, ${feed.area_mm2} mm², at ${sayPoint(context, feed.point)}, and grounded by ${sayList(names.map(sayWire))}, ${names.length > 1 ? "together " : ""}${ground.area_mm2} mm².`,
        consequence:
          "What is lost is lost on the ground side, where nobody measures; the thin lead is also the one that gets hot.",
        remedy: `Ground it by ${feed.area_mm2} mm², the size of its feed, all the way to the stud.`,
        about: [...names.map((wire) => ({ wire: wire.id })), feed.point.at],
      };
    }
  },
});

/** AWG and metric sizes of one trade name differ by a few per cent. */
const ALMOST = 0.92;

type Feed = { readonly point: Point; readonly wire: Wire; readonly area_mm2: number };

/** The thickest lead of its feed inputs. Where the box's own chart has a thinner lead there, that is its feed. */
function thickest(context: Context, feeds: readonly Point[]): Feed | null {
  let found: Feed | null = null;
  for (const point of feeds.length > 1 ? [...feeds].sort(byName) : feeds) {
    // Where a lead goes on from its contact to others, only the thinner of the two is its own for certain.
    let own: Feed | null = null;
    for (const wire of context.points.wiresAt(point)) {
      if (wire.area_mm2 === "unknown" || wire.ends.includes("loose")) continue;
      const lead_mm2 = point.contact.cavity?.lead?.area_mm2;
      const area_mm2 = typeof lead_mm2 === "number" ? Math.min(lead_mm2, wire.area_mm2) : wire.area_mm2;
      if (!own || area_mm2 < own.area_mm2) own = { point, wire, area_mm2 };
    }
    if (own && (!found || own.area_mm2 > found.area_mm2)) found = own;
  }
  return found;
}

type Back = { readonly wires: readonly Wire[]; readonly area_mm2: number };

/**
 * The narrowest place on the way from a consumer's grounds to the frame: at the box, all its ground leads together;
 * further on, the wire that every way must pass. `null` where a size is not stated, or no ground is reached.
 */
function wayBack(context: Context, { grounds }: Consumer): Back | null {
  const own = grounds.flatMap((point) => (context.isAlone(point) ? [] : context.points.wiresAt(point)));
  if (!own.length || own.some(({ area_mm2 }) => area_mm2 === "unknown")) return null;
  let narrow: Back = {
    wires: own,
    area_mm2:
      own.length === 1
        ? (own[0]!.area_mm2 as number)
        : round(own.reduce((sum, wire) => sum + (wire.area_mm2 as number), 0)),
  };
  // Several leads may part and meet again; of one, the way is followed to the first place where it branches or lands.
  const [first] = own;
  if (own.length > 1 || !first) return narrow;
  let from = grounds.find((point) => context.points.wiresAt(point).includes(first))!.landings;
  let wire: Wire = first;
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const onward: Onward | null = onwardFrom(context, wire, from);
    if (!onward || onward.wire.area_mm2 === "unknown") break;
    if (onward.wire.area_mm2 < narrow.area_mm2)
      narrow = { wires: [onward.wire], area_mm2: onward.wire.area_mm2 };
    ({ wire, from } = onward);
  }
  return narrow;
}

type Onward = { readonly wire: Wire; readonly from: readonly ContactKey[] };

/** The one wire that goes on where this one ends; `null` where it lands, or where several go on. */
function onwardFrom(context: Context, wire: Wire, from: readonly ContactKey[]): Onward | null {
  const end = wire.ends.find((one) => one !== "loose" && !from.includes(keyOfEnd(one)!));
  if (!end || end === "loose") return null;
  const point = context.points.pointAt(end.part, end.contact);
  if (point && isFrame(point)) return null;
  const part = context.harness.parts[end.part];
  const keys =
    part?.kind === "splice" ? keysOf(part) : part?.kind === "connector" && point ? point.landings : null;
  if (!keys) return null;
  const [next, second] = keys.flatMap((key) => context.traced.wiresAt(key)).filter((other) => other !== wire);
  return next && !second ? { wire: next, from: keys } : null;
}

/** A lead with more joints than this goes round in a circle. */
const MOST_STEPS = 50;

function round(value: number): number {
  return Number(value.toPrecision(6));
}
