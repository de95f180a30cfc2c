import type { Point, PointCircuit } from "../../../electrical/points.ts";
import { exchange } from "../../../graph/edits/lead.ts";
import type { Diode } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { actsOn } from "../../shared/near.ts";
import { isGroundSide, isUsed, wantsVolts } from "../../shared/relays.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, compareNames, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "diode-blocks-its-circuit",
    group: "relays",
    severity: "fault",
    summary: "A diode conducts towards what it is to feed, or from what it is to ground.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["same-function-unjoined", "required-lead-missing", "unit-without-ground"],
  },
  *check(context) {
    const diodes = context.parts
      .filter((part): part is Diode => part.kind === "diode")
      .sort((a, b) => compareNames(a.designation, b.designation));
    for (const diode of diodes) {
      const anode = context.points.circuitAt(diode.id, 1);
      const cathode = context.points.circuitAt(diode.id, 2);
      if (anode === cathode || !isUsed(anode) || !isUsed(cathode)) continue;
      const starved = starvedBehind(context, anode, cathode);
      const cutOff = starved.length ? [] : cutOffBehind(context, anode, cathode);
      const blocked = [...starved, ...cutOff].sort(byName);
      if (!blocked.length) continue;
      yield {
        message: `${diode.designation} blocks the way ${starved.length ? "of the feed to" : "to ground from"} ${sayList(blocked.map(nameOf))}: its stripe looks the wrong way.`,
        consequence: "What hangs behind it never works.",
        remedy: `Turn ${diode.designation} round: current leaves it at the stripe.`,
        about: [{ part: diode.id }, ...blocked.map((point) => point.at)],
        fix: fixWith(`Turn ${diode.designation} round`, () =>
          exchange(context.harness, { part: diode.id, contact: 1 }, { part: diode.id, contact: 2 }),
        ),
      };
    }
  },
});

/** What wants volts at the anode's side, and gets none, while the cathode has them. */
function starvedBehind(context: Context, anode: PointCircuit, cathode: PointCircuit): readonly Point[] {
  if (!context.feeds.isLive(cathode) || context.feeds.isLive(anode) || isGroundSide(context, anode))
    return [];
  return zoneFrom(context, anode.circuit.id)
    .map((id) => context.points.circuits[id]!)
    .filter((circuit) => circuit !== cathode && !context.feeds.isLive(circuit))
    .flatMap(({ points }) => points)
    .filter((point) => wantsVolts(point) || isCoilWith(context, point, "ground"));
}

/** What wants a ground at the cathode's side, and gets none, while the anode has one. */
function cutOffBehind(context: Context, anode: PointCircuit, cathode: PointCircuit): readonly Point[] {
  if (!isGroundSide(context, anode) || isGroundSide(context, cathode) || context.feeds.isLive(cathode))
    return [];
  return cathode.points.filter((point) => wantsGround(context, point) || isCoilWith(context, point, "volts"));
}

function wantsGround(context: Context, point: Point): boolean {
  const { part, contact, direction, means } = point;
  if (part.kind === "load")
    return contact.number === 2 && context.feeds.isLive(context.points.circuitAt(part.id, 1));
  if (direction !== "takes" || contact.cavity === null) return false;
  return means.group === "ground" ? means.id === "ground" : actsOn(point) === "ground";
}

/** One end of a coil whose other end is on ground, or has volts. */
function isCoilWith(context: Context, { part, contact }: Point, other: "ground" | "volts"): boolean {
  if (part.kind !== "relay" || (contact.number !== 2 && contact.number !== 3)) return false;
  const far = context.points.circuitAt(part.id, 5 - contact.number);
  return other === "ground" ? isGroundSide(context, far) : context.feeds.isLive(far);
}
