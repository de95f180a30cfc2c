import type { Point } from "../../electrical/points.ts";
import type { Context } from "../context.ts";
import type { Found } from "../rule.ts";
import { byName, sayPoint } from "../words.ts";
import { isHigh, isLow, lineOf, otherHalves } from "./data-lines.ts";
import { exchangeFix } from "./swap.ts";

/** A lead of one half that is joined to the other half of a pair. */
export type Crossed = {
  readonly own: Point;
  readonly other: Point;
  /** The other two leads of the same two boxes, where these are crossed as well. */
  readonly back: { readonly own: Point; readonly other: Point } | null;
  /** Where they are not: the other leads of the two boxes that join nothing. */
  readonly open: readonly Point[];
};

/** High joined to low, told once for each two boxes; both halves of one box in one circuit are a short between them. */
export function crossedPairs(context: Context, names: readonly string[]): readonly Crossed[] {
  const found: Crossed[] = [];
  const told = new Set<Point>();
  const highs = context.withFunction(...names).filter(isHigh);
  for (const high of [...highs].sort(byName)) {
    if (told.has(high)) continue;
    const circuit = context.circuitOf(high);
    const family = lineOf(high)!.family;
    const lows = circuit.points.filter((point) => isLow(point) && lineOf(point)?.family === family);
    const other = [...lows].sort(
      (a, b) => Number(a.unit === high.unit) - Number(b.unit === high.unit) || byName(a, b),
    )[0];
    if (!other) continue;
    for (const point of circuit.points) told.add(point);
    const back = backOf(context, high, other);
    if (back) for (const point of context.circuitOf(back.own).points) told.add(point);
    // The place to look at is at the new equipment: the vehicle's own leads are as they were made.
    const isOwn = (point: Point) => point.side === "equipment";
    const open =
      back || high.unit === other.unit
        ? []
        : [...otherHalves(context, high), ...otherHalves(context, other)].filter((point) =>
            context.isAlone(point),
          );
    found.push(
      isOwn(high) || !isOwn(other)
        ? { own: high, other, back, open }
        : { own: other, other: high, back: back && { own: back.other, other: back.own }, open },
    );
  }
  return found;
}

function backOf(context: Context, high: Point, low: Point): Crossed["back"] {
  if (high.unit === low.unit) return null;
  const lows = otherHalves(context, high);
  const highs = otherHalves(context, low);
  for (const own of lows) {
    const circuit = context.circuitOf(own);
    const other = highs.find((point) => context.circuitOf(point) === circuit);
    if (other && !circuit.points.includes(high)) return { own, other };
  }
  return null;
}

export function tellCrossed(
  context: Context,
  { own, other, back, open }: Crossed,
  words: { readonly consequence: string; readonly remedy: string },
): Found {
  const isShort = own.unit === other.unit;
  return {
    message: back
      ? `${sayPoint(context, own)} is joined to ${sayPoint(context, other)}, and ${sayPoint(context, back.own)} to ${sayPoint(context, back.other)}.`
      : isShort
        ? `${sayPoint(context, own)} and ${sayPoint(context, other)} are joined to each other.`
        : `${sayPoint(context, own)} is joined to ${sayPoint(context, other)}.`,
    consequence: words.consequence,
    remedy: isShort ? "Part the two leads." : words.remedy,
    about: [own, other, ...(back ? [back.own, back.other] : []), ...open].map((point) => point.at),
    fix: back ? exchangeFix(context, own, back.own) : null,
  };
}
