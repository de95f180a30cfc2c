import { sayColour, writeColour } from "../../../catalogue/colours.ts";
import type { Point } from "../../../electrical/points.ts";
import type { PartId, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { jointsOf } from "../../shared/joints.ts";
import { byName, nameAndPurpose, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "colours-collide",
    group: "joints",
    severity: "tidy",
    summary:
      "Where both charts use one colour for different things, and one of them is a feed or a ground, the leads carry markers at their joints.",
    source:
      "common practice, no source; of the usual colours of two charts only one side's follow the vehicle",
    reads: [...CIRCUITS, ...NAMES, "labels"],
    fixable: false,
  },
  *check(context) {
    const pairs = joinedHousings(context);
    for (const [vehicle, own] of pairs) {
      const byColour = new Map<string, Lead[]>();
      for (const lead of own) {
        const key = writeColour(lead.wire.colour);
        const list = byColour.get(key);
        if (list) list.push(lead);
        else byColour.set(key, [lead]);
      }
      const traps = vehicle.flatMap((lead) =>
        (byColour.get(writeColour(lead.wire.colour)) ?? [])
          .filter((other) => isTrap(lead, other))
          .map((other) => [lead, other] as const),
      );
      if (traps.length)
        yield tell(traps.sort(([a, b], [c, d]) => byName(a.point, c.point) || byName(b.point, d.point)));
    }
  },
});

/** A lead that goes from a cavity to a joint. */
type Lead = { readonly point: Point; readonly wire: Wire; readonly circuit: number };

/** The leads of each two housings of which a person joins one to the other, the vehicle's first. */
function joinedHousings(context: Context): readonly (readonly [readonly Lead[], readonly Lead[]])[] {
  const byHousing = new Map<PartId, Lead[]>();
  const pairs = new Map<string, readonly [PartId, PartId]>();
  for (const { part: joint, wires } of jointsOf(context)) {
    const here: Lead[] = [];
    for (const wire of wires) {
      if (!wire.colour) continue;
      const far = wire.ends.find((end) => end !== "loose" && end.part !== joint.id);
      if (!far || far === "loose") continue;
      const point = context.points.pointAt(far.part, far.contact);
      if (!point || point.means.group === "none" || point.side === null) continue;
      here.push({ point, wire, circuit: context.traced.circuitAt(joint.id, 1)!.id });
    }
    for (const lead of here) {
      const { id } = lead.point.part;
      const list = byHousing.get(id);
      if (list) list.push(lead);
      else byHousing.set(id, [lead]);
      if (lead.point.side !== "vehicle") continue;
      for (const { point } of here)
        if (point.side === "equipment") pairs.set(`${id} ${point.part.id}`, [id, point.part.id]);
    }
  }
  return [...pairs.values()].map(([vehicle, own]) => [byHousing.get(vehicle)!, byHousing.get(own)!]);
}

const POWER: ReadonlySet<string> = new Set(["feed", "ground"]);

/** Somebody who matches by colour would join the two, and something would burn or stay dead for it. */
function isTrap(one: Lead, other: Lead): boolean {
  if (one.circuit === other.circuit || one.point.means === other.point.means) return false;
  if (one.wire.label !== "" && other.wire.label !== "") return false;
  return POWER.has(one.point.means.group) || POWER.has(other.point.means.group);
}

/** One finding for each pair of housings: the colours are one thing to know of them. */
function tell(traps: readonly (readonly [Lead, Lead])[]): Found {
  const said = traps.map(
    ([vehicle, own]) =>
      `${sayColour(vehicle.wire.colour)} is ${nameAndPurpose(vehicle.point)}, but also ${nameAndPurpose(own.point)}`,
  );
  return {
    message: `One colour stands for different things on the two charts: ${sayList(said)}.`,
    consequence: "Whoever joins by colour joins a feed to what is none of its business.",
    remedy:
      "Join by cavity and function, tick each row, and put a marker with words of its own on both leads of each such pair.",
    about: traps.flatMap(([vehicle, own]) => [vehicle.point.at, own.point.at]),
  };
}
