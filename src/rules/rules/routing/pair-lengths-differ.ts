import { functionOf, partnerOf } from "../../../catalogue/functions.ts";
import { digits } from "../../../electrical/figure.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "pair-lengths-differ",
    group: "routing",
    severity: "weak",
    summary: "The two wires of a pair are of one length.",
    source: "common practice, no source; five per cent is a threshold of our own",
    reads: [...CIRCUITS, ...NAMES, "lengths", "cables"],
    fixable: false,
  },
  *check(context) {
    const told = new Set<string>();
    for (const [one, other] of pairsOf(context)) {
      if (one.length_m === "unknown" || other.length_m === "unknown") continue;
      const [short, long] = one.length_m <= other.length_m ? [one, other] : [other, one];
      const over_m = Number(long.length_m) - Number(short.length_m);
      if (over_m <= Number(long.length_m) * MOST_SHARE + 1e-9 || over_m <= NO_MATTER_m + 1e-9) continue;
      const key = [one.id, other.id].sort().join(" ");
      if (told.has(key)) continue;
      told.add(key);
      yield {
        message: `${sayWire(long)} and ${sayWire(short)} are a pair, and the first is ${digits(over_m * 1000)} mm longer: ${digits(Number(long.length_m))} m to ${digits(Number(short.length_m))} m.`,
        consequence:
          "The one is pulled tight and the other bulges out of the pair, which no longer keeps noise out.",
        remedy: "Cut both to one length.",
        about: [one, other]
          .sort((a, b) => compareNames(a.designation, b.designation))
          .map(({ id }) => ({ wire: id })),
      };
    }
  },
});

const MOST_SHARE = 0.05;
/** So much is trimmed off an end without a thought. */
const NO_MATTER_m = 0.02;
const PAIRS: ReadonlySet<string> = new Set(["twisted-pair", "shielded-pair"]);
const SIGNALS: ReadonlySet<string> = new Set(["data", "line-level", "video"]);

function* pairsOf(context: Context): Iterable<readonly [Wire, Wire]> {
  const { harness, points } = context;
  for (const { kind, wires, shield } of Object.values(harness.cables)) {
    if (!PAIRS.has(kind)) continue;
    const cores = wires.filter((id) => id !== shield).flatMap((id) => harness.wires[id] ?? []);
    if (cores.length === 2) yield [cores[0]!, cores[1]!];
  }
  for (const [id, list] of points.byFunction) {
    const { group, polarity } = functionOf(id);
    const minus = SIGNALS.has(group) && polarity === "plus" ? partnerOf(id) : null;
    if (minus === null) continue;
    const partners = new Map((points.byFunction.get(minus) ?? []).map((point) => [point.part.id, point]));
    for (const point of list) {
      const other = partners.get(point.part.id);
      const [one, two] = [onlyWire(context, point), other ? onlyWire(context, other) : null];
      if (one && two && goTogether(one, two)) yield [one, two];
    }
  }
}

function onlyWire({ points }: Context, point: Point): Wire | null {
  const wires = points.wiresAt(point);
  return wires.length === 1 ? wires[0]! : null;
}

/** From the same two housings to one another. */
function goTogether(one: Wire, other: Wire): boolean {
  const places = (wire: Wire) =>
    wire.ends
      .map((end) => (end === "loose" ? "" : end.part))
      .sort()
      .join(" ");
  return !one.ends.includes("loose") && places(one) === places(other);
}
