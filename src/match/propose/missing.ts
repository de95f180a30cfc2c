import { functionOf, isGround, partnerOf } from "../../catalogue/functions.ts";
import type { InContext } from "./context.ts";
import type { Missing } from "./proposal.ts";
import type { Sides } from "./propose.ts";
import type { Roles } from "./role.ts";

/**
 * Leads that something cannot do without and that found no partner: a unit's feed or ground, one half of a pair
 * whose other half is joined. They are capped like the rest, but said loudly.
 */
export function missingOf(
  sides: Sides,
  capped: { readonly left: readonly InContext[]; readonly right: readonly InContext[] },
  roles: Roles,
): readonly Missing[] {
  const missing: Missing[] = [];
  for (const side of ["left", "right"] as const) {
    const cappedHere = new Set(capped[side]);
    for (const one of capped[side]) {
      const [first] = one.reading.candidates;
      if (!first || !one.reading.certain) continue;
      const why = needOf(first.function, one, roles[side], sides[side], cappedHere);
      if (why) missing.push({ side, lead: one.lead.name, why });
    }
  }
  return missing;
}

function needOf(
  name: string,
  one: InContext,
  role: "vehicle" | "equipment" | null,
  all: readonly InContext[],
  capped: ReadonlySet<InContext>,
): string | null {
  const item = functionOf(name);
  const isTaker =
    one.lead.direction === "takes" || (one.lead.direction === "unknown" && role === "equipment");
  if (isTaker && item.group === "feed" && item.givenBy === "vehicle")
    return `${item.name}: the other chart has none. Find a fused feed elsewhere before the unit is powered.`;
  if (isTaker && isGround(name) && item.givenBy === "vehicle" && !hasOtherGround(all, one, capped))
    return `${item.name}: the other chart has none. Take it to a ground point on bare metal.`;
  const half = partnerOf(name);
  if (!half) return null;
  const other = all.find((each) => each.reading.candidates[0]?.function === half && !capped.has(each));
  return other
    ? `${item.name}: its other half ${other.lead.name} is joined, this one is not. Half a pair does not work.`
    : null;
}

function hasOtherGround(all: readonly InContext[], one: InContext, capped: ReadonlySet<InContext>): boolean {
  return all.some(
    (each) => each !== one && !capped.has(each) && isGround(each.reading.candidates[0]?.function ?? ""),
  );
}
