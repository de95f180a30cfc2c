import { sayColour } from "../../../catalogue/colours.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Colour, ColourCode, PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, colourAt, nameAndPurpose } from "../../words.ts";

export default defineRule({
  meta: {
    id: "tracers-hard-to-tell",
    group: "joints",
    severity: "tidy",
    summary: "Two leads of one plug that differ in a hard-to-tell tracer alone carry markers.",
    source: "common practice, no source",
    reads: [...NAMES, "functions", "ratings", "joints", "wiring", "labels"],
    fixable: false,
  },
  *check(context) {
    const { points } = context;
    const seen = housingsWithSuch(context);
    for (const part of context.parts) {
      if (
        part.kind !== "connector" ||
        part.cavities.length < 2 ||
        !(seen.has(part.id) || (part.matedWith && seen.has(part.matedWith)))
      )
        continue;
      const byBase = new Map<ColourCode, { point: Point; colour: Colour }[]>();
      for (const { number } of part.cavities.map((_, index) => ({ number: index + 1 }))) {
        const point = points.pointAt(part.id, number);
        if (!point || point.part !== part) continue;
        const colour = colourAt(context, point);
        if (!colour?.tracer || !isAlike(colour.tracer)) continue;
        const list = byBase.get(colour.base);
        if (list) list.push({ point, colour });
        else byBase.set(colour.base, [{ point, colour }]);
      }
      for (const leads of byBase.values()) {
        leads.sort((a, b) => byName(a.point, b.point));
        for (const [index, one] of leads.entries()) {
          for (const other of leads.slice(index + 1)) {
            if (ALIKE[one.colour.tracer!] !== other.colour.tracer) continue;
            if (one.point.means === other.point.means) continue;
            if ([one, other].every(({ point }) => isMarked(point))) continue;
            yield {
              message: `${nameAndPurpose(one.point)} is ${sayColour(one.colour)} and ${nameAndPurpose(other.point)} is ${sayColour(other.colour)}: in poor light nobody can tell them apart.`,
              consequence: "The next person takes the one for the other.",
              remedy:
                "Put a marker with words of its own on both leads, and go by the cavity, not by the colour.",
              about: [one.point.at, other.point.at],
            };
          }
        }
      }
    }

    function isMarked(point: Point): boolean {
      const wires = points.wiresAt(point);
      return wires.length > 0 && wires.every(({ label }) => label !== "");
    }
  },
});

/** Housings at which a tracer of that kind is to be seen at all; most have none. */
function housingsWithSuch({ harness, parts }: Context): ReadonlySet<PartId> {
  const found = new Set<PartId>();
  for (const { colour, ends } of Object.values(harness.wires)) {
    if (!colour?.tracer || !isAlike(colour.tracer)) continue;
    for (const end of ends) if (end !== "loose") found.add(end.part);
  }
  for (const part of parts) {
    if (part.kind !== "connector") continue;
    if (part.cavities.some(({ lead }) => lead?.colour?.tracer && isAlike(lead.colour.tracer)))
      found.add(part.id);
  }
  return found;
}

/** Tracers that look the same by the light of a torch. */
const ALIKE: Readonly<Partial<Record<ColourCode, ColourCode>>> = {
  VT: "BN",
  BN: "VT",
  GY: "WH",
  WH: "GY",
};

const isAlike = (tracer: ColourCode): boolean => ALIKE[tracer] !== undefined;
