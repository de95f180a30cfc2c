import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { fullLoad, sayVolts, voltsAt } from "../../shared/full-load.ts";
import { type Consumer, consumersOf, isFrame, isShield } from "../../shared/grounding.ts";
import { byName, sayGrounds, sayPoint } from "../../words.ts";

/** Above this a whine is heard. @source a threshold of our own */
const HEARD_V = 0.01;

export default defineRule({
  meta: {
    id: "ground-loop",
    group: "grounds",
    severity: "weak",
    summary:
      "Two units that a sound or picture lead joins stand on one ground, or one of them keeps its signal ground apart.",
    source:
      "an audio training site's card for finding noise; a page on line output converters for what a transformer does; the 10 mV are ours",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const joined = consumersOf(context).filter(
      ({ module, grounds, shields }) => module?.signalGround === "joined" && grounds.length && shields.length,
    );
    if (joined.length < 2) return;
    const byId = new Map(joined.map((consumer) => [consumer.id, consumer]));
    const told = new Set<string>();
    for (const one of joined) {
      for (const shield of [...one.shields].sort(byName)) {
        for (const far of [...context.circuitOf(shield).points].sort(byName)) {
          const other = far.unit === null || !isShield(far) ? undefined : byId.get(far.unit);
          if (!other || other === one) continue;
          const pair = [one.id, other.id].sort().join(" ");
          if (told.has(pair)) continue;
          told.add(pair);
          const [a, b] = [groundOf(context, one), groundOf(context, other)];
          if (!a || !b || sharesGround(a.sources, b.sources)) continue;
          const view = fullLoad(context);
          const [left, right] = [voltsAt(view, a.point.key), voltsAt(view, b.point.key)];
          if (left === null || right === null || Math.abs(left - right) <= HEARD_V) continue;
          yield {
            message: `${one.name} stands on ${sayGrounds(context, a.sources)}, ${other.name} on ${sayGrounds(context, b.sources)}, ${sayVolts(left - right)} apart at full load, and the shield between ${sayPoint(context, shield)} and ${sayPoint(context, far)} joins them a second time.`,
            consequence:
              "Current of the vehicle flows in the shield, and a whine that follows the engine is heard, or bars roll over the picture.",
            remedy:
              "Bring both grounds to one point, with short and thick leads, or put a transformer into the signal lead. To make sure, unplug the lead at the far unit: if the whine stops, it was this.",
            about: [shield.at, far.at],
          };
        }
      }
    }
  },
});

type Stand = { readonly point: Point; readonly sources: readonly Point[] };

/** Where a unit's own current goes to the frame. */
function groundOf(context: Context, { grounds }: Consumer): Stand | null {
  for (const point of grounds) {
    const sources = context.grounds
      .feeds(context.circuitOf(point))
      .map(({ source }) => source)
      .filter(isFrame);
    if (sources.length) return { point, sources: sources.slice(0, 3) };
  }
  return null;
}

function sharesGround(a: readonly Point[], b: readonly Point[]): boolean {
  return a.some((point) => b.includes(point));
}
