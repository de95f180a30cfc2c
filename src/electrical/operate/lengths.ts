import type { Harness, Wire, WireId } from "../../graph/harness.ts";
import { cutLength, USUAL_SLACK_percent, wireCost } from "../conductor/cut-length.ts";
import { digits, doubts, type Figure, type Unknown } from "../figure.ts";
import { runsLength_m } from "./wires-of.ts";

export type WireLength = {
  readonly wire: WireId;
  /** What to cut off the drum; unknown where neither a length nor runs with lengths are stated. */
  readonly cut: Figure | Unknown;
  /** `null` where no price of its size is given. */
  readonly cost: Figure | null;
};

export type Lengths = {
  readonly wires: readonly WireLength[];
  /** By size and colour, the order of a shopping list; cut lengths together, metres. */
  readonly bySize: readonly {
    readonly area_mm2: number | "unknown";
    readonly total_m: number;
    readonly count: number;
  }[];
  readonly total_m: number;
  readonly cost: number | null;
  /** Wires of which nothing can be said. */
  readonly unknown: readonly WireId[];
};

/** Both ends together: strip lengths, and a terminal that is fitted twice. @source common practice, no source */
const USUAL_TERMINATIONS_mm = 40;

/**
 * What to cut each wire to: its own stated length, else its runs with slack; terminations are added to both.
 */
export function lengthsOf(harness: Harness): Lengths {
  const wires = Object.values(harness.wires).map((wire) => lengthOf(harness, wire));
  const totals = new Map<number | "unknown", { total_m: number; count: number }>();
  let cost: number | null = null;
  for (const { wire, cut, cost: own } of wires) {
    if ("unknown" in cut) continue;
    const { area_mm2 } = harness.wires[wire]!;
    const known = totals.get(area_mm2) ?? { total_m: 0, count: 0 };
    totals.set(area_mm2, { total_m: known.total_m + cut.value, count: known.count + 1 });
    if (own) cost = (cost ?? 0) + own.value;
  }
  const size = (area_mm2: number | "unknown") =>
    area_mm2 === "unknown" ? Number.POSITIVE_INFINITY : area_mm2;
  const bySize = [...totals]
    .map(([area_mm2, total]) => ({ area_mm2, ...total }))
    .sort((a, b) => size(a.area_mm2) - size(b.area_mm2));
  return {
    wires,
    bySize,
    total_m: bySize.reduce((sum, { total_m }) => sum + total_m, 0),
    cost,
    unknown: wires.flatMap(({ wire, cut }) => ("unknown" in cut ? [wire] : [])),
  };
}

function lengthOf(harness: Harness, wire: Wire): WireLength {
  const { electrical } = harness.settings;
  const terminations_mm =
    electrical.terminations_mm === "unknown" ? USUAL_TERMINATIONS_mm : electrical.terminations_mm;
  const slack = electrical.slack_percent === "unknown" ? USUAL_SLACK_percent : electrical.slack_percent;
  const runs_m = runsLength_m(harness, wire.runs);
  const stated = wire.length_m !== "unknown";
  if (!stated && runs_m === null) {
    return {
      wire: wire.id,
      cut: { unknown: `neither ${wire.designation} nor all of its runs have a length` },
      cost: null,
    };
  }
  const figure = cutLength({
    runs_m: stated ? [] : [runs_m!],
    slack_percent: stated ? 0 : slack,
    extra_m: stated ? (wire.length_m as number) : 0,
    termination_mm: [terminations_mm / 2, terminations_mm / 2],
  });
  const short = stated && runs_m !== null && (wire.length_m as number) < runs_m;
  const cut: Figure = {
    ...figure,
    source: stated ? "the wire's stated length; terminations common practice, no source" : figure.source,
    doubt: doubts(
      figure.doubt,
      short ? `its stated length is less than its runs, ${digits(runs_m)} m` : null,
      electrical.terminations_mm === "unknown"
        ? `terminations not stated: ${USUAL_TERMINATIONS_mm} mm taken`
        : null,
      !stated && electrical.slack_percent === "unknown"
        ? `slack not stated: ${USUAL_SLACK_percent} % taken`
        : null,
    ),
  };
  const price = electrical.prices.find(({ area_mm2 }) => area_mm2 === wire.area_mm2)?.perMetre;
  return {
    wire: wire.id,
    cut,
    cost: price === undefined ? null : wireCost(cut.value, price, electrical.currency || "of the price"),
  };
}
