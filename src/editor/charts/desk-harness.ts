import { PINOUTS } from "../../catalogue/pinouts.ts";
import { type Ready, readyOfPinout } from "../../catalogue/ready.ts";
import type { Connector, Harness, PartId } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";
import type { Chart } from "../../match/chart.ts";
import { chartOfConnector } from "../../match/review/cavities.ts";
import { type Housing, readBack } from "../../match/review/read-back.ts";
import { type Decided, NOTHING_DECIDED, type Review, type SideName } from "../../match/review/review.ts";
import { readFunction } from "../../match/words/read-function.ts";
import { type ChartSide, clearedSide, type Desk } from "./desk-model.ts";

/** What the harness says already of the connectors that stand on the desk. */
export function decidedIn(harness: Harness, sides: Desk["sides"], charts: Review["charts"]): Decided {
  const housing = (side: SideName): Housing | null => {
    const { source } = sides[side];
    const part = source.kind === "connector" ? harness.parts[source.part] : undefined;
    if (part?.kind !== "connector") return null;
    return {
      part,
      names: part.cavities.map((cavity, index) => charts[side].leads[index]?.name ?? cavity.label),
    };
  };
  const [left, right] = [housing("left"), housing("right")];
  if (!left && !right) return NOTHING_DECIDED;
  const { groups, fates, elsewhere } = readBack(harness, left, right);
  return { groups, fates, elsewhere };
}

/** The ready connectors that a side may be. */
export const READY: readonly Ready[] = PINOUTS.map(readyOfPinout);

export const isEmpty = ({ parts, wires }: Harness): boolean =>
  Object.keys(parts).length === 0 && Object.keys(wires).length === 0;

/** A connector of the harness by its id. */
export function connectorOf(harness: Harness, id: PartId): Connector | null {
  const part = harness.parts[id];
  return part?.kind === "connector" ? part : null;
}

/** Its chart, with open functions read once more from the chart's own words. */
export function readConnector(part: Connector): Chart {
  return chartOfConnector(part, readFunction);
}

/** A side as it is now: its connector may have changed since; one that is gone leaves the side empty. */
export function refreshed(harness: Harness, side: ChartSide): ChartSide {
  if (side.source.kind !== "connector") return side;
  const part = connectorOf(harness, side.source.part);
  if (!part) return clearedSide(side, new Names(harness).designation("connector"));
  return { ...side, read: [readConnector(part)], designation: part.designation, name: part.name };
}
