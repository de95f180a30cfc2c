import type { Gate } from "../../electrical/ways.ts";
import type { Context } from "../context.ts";

/**
 * The circuits, by their ids, that current reaches from one: through fuses, switches, relay contacts, diodes the way
 * they conduct, small resistors. The first is the one it starts from.
 * @param passes tells which gates may be passed; all of them, unless told
 */
export function zoneFrom(
  { ways }: Context,
  start: number,
  passes: (gate: Gate) => boolean = () => true,
): readonly number[] {
  const zone = [start];
  const seen = new Set(zone);
  for (const from of zone) {
    for (const { to, gate } of ways[from] ?? []) {
      if (seen.has(to) || !passes(gate)) continue;
      seen.add(to);
      zone.push(to);
    }
  }
  return zone;
}
