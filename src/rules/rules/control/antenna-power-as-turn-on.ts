import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isInput } from "../../shared/near.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { byName, nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "antenna-power-as-turn-on",
    group: "control",
    severity: "weak",
    summary:
      "Amplifiers are woken by the amplifier turn-on, antennas by the antenna power, where a source has both.",
    source: "an audio shop's guide to turn-on leads; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const [wanted, other] of PAIRS) {
      for (const point of [...context.withFunction(wanted)].sort(byName)) {
        if (!isInput(context, point)) continue;
        const wrong = wrongOutput(context, point, wanted, other);
        if (!wrong) continue;
        const right = outputOf(context, wrong, wanted)!;
        const exchange = exchangeFix(context, wrong, right);
        const isAmplifier = wanted === "amplifier-turn-on";
        yield {
          message: `${sayPoint(context, point)} comes from ${sayPoint(context, wrong)}, although the same unit gives ${sayPoint(context, right)}.`,
          consequence: isAmplifier
            ? "Many units drop the antenna power when another source than the tuner plays: the amplifier falls asleep in the middle of a record."
            : "The mast stays up, or the antenna's amplifier stays awake, whatever source plays.",
          remedy: `Take ${nameOf(point)} to ${nameOf(right)}.`,
          about: [point.at, wrong.at],
          suggestions: exchange ? [exchange] : [],
        };
      }
    }
  },
});

const PAIRS = [
  ["amplifier-turn-on", "antenna-power"],
  ["antenna-power", "amplifier-turn-on"],
] as const;

/** The output of the other kind that alone wakes it, of a box that has the right one too. */
function wrongOutput(context: Context, point: Point, wanted: string, other: string): Point | null {
  const sources = context.feeds.feeds(context.circuitOf(point)).map(({ source }) => source);
  if (sources.some(({ means }) => means.id === wanted)) return null;
  return sources.find((source) => source.means.id === other && outputOf(context, source, wanted)) ?? null;
}

/** The output of that function that the same box gives. */
function outputOf(context: Context, point: Point, name: string): Point | null {
  const own = point.unit === null ? [] : (context.points.byUnit.get(point.unit) ?? []);
  const outputs = own.filter((one) => one.means.id === name && one.direction === "gives").sort(byName);
  return outputs[0] ?? null;
}
