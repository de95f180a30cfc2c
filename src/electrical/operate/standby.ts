import { refOfKey } from "../../graph/contacts.ts";
import type { Harness, PartId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { type Answer, digits, doubts, type Figure } from "../figure.ts";
import {
  type Drain,
  daysToCharge,
  totalDrain,
  USABLE_TO_NO_START_percent,
  USUAL_SELF_DISCHARGE_percentPerMonth,
} from "../standby/drain.ts";
import { USUAL_STANDBY_LIMIT } from "../standby/limits.ts";
import { sayAssumption } from "./assumed.ts";
import type { Ask } from "./circuit-of.ts";
import { nameLoad } from "./drop.ts";
import { nameIn, operate } from "./operate.ts";
import type { Readings } from "./readings.ts";

export type Standby = {
  readonly readings: Readings;
  /** What each load and box draws with the key off and everything else off, the largest first. */
  readonly drains: readonly (Drain & { readonly part: PartId })[];
  readonly total: Figure;
  readonly limit: Figure;
  readonly within: boolean;
  /** Until each battery of the harness is down to the chosen charge; empty where none is drawn. */
  readonly days: readonly { readonly battery: PartId; readonly days: Answer }[];
};

/** Charge that a parked battery may be run down to: what a starting battery can give and still start. */
const USUAL_FLOOR_percent = 100 - USABLE_TO_NO_START_percent;

/** What a parked vehicle loses to the harness, and how long its batteries last. */
export function standbyOf(harness: Harness, traced: Pick<Traced, "wiresAt">, ask: Ask = {}): Standby {
  const readings = operate(harness, traced, { key: "off", conditions: [] }, ask);
  const drains = [...readings.loads]
    .map(([key, { amps }]) => ({
      name: nameLoad(harness, key),
      part: refOfKey(key).part,
      drain_mA: Math.abs(amps) * 1000,
    }))
    .filter(({ drain_mA }) => drain_mA > 1e-3)
    .sort((a, b) => b.drain_mA - a.drain_mA || (a.name < b.name ? -1 : 1));
  const total = { ...totalDrain(drains), doubt: guessed(readings) };
  const limit = limitOf(harness);
  return {
    readings,
    drains,
    total,
    limit,
    within: total.value <= limit.value,
    days: batteriesOf(harness, readings),
  };
}

/** The parts whose standby current nobody has stated: the total is only as good as they are. */
function guessed(readings: Readings): string | null {
  const names = nameIn(readings.solved.harness);
  return doubts(
    ...readings.assumptions
      .filter(({ code }) => code === "standby" || code === "never-sleeps")
      .map((assumption) => sayAssumption(assumption, names)),
  );
}

function limitOf(harness: Harness): Figure {
  const stated = harness.settings.electrical.standbyLimit_mA;
  const { limit_mA, source, doubt, covers } = USUAL_STANDBY_LIMIT;
  const value = stated === "unknown" ? limit_mA : stated;
  return {
    value,
    unit: "mA",
    formula: `${digits(value)} mA for ${stated === "unknown" ? covers : "the whole vehicle"}`,
    table: null,
    source: stated === "unknown" ? source : "the harness's settings",
    doubt: stated === "unknown" ? doubt : null,
  };
}

function batteriesOf(harness: Harness, readings: Readings): Standby["days"] {
  const floor = harness.settings.electrical.chargeFloor_percent;
  const to_percent = floor === "unknown" ? USUAL_FLOOR_percent : floor;
  return Object.values(harness.parts).flatMap((part) => {
    if (part.kind !== "supply") return [];
    if (part.capacity_Ah === "unknown")
      return [
        { battery: part.id, days: { unknown: `the ampere-hours of ${part.designation} are not stated` } },
      ];
    const given_A = readings.sources.get(`${part.id}#1`)?.amps ?? 0;
    const battery = {
      capacity_Ah: part.capacity_Ah,
      from_percent: 100,
      to_percent,
      selfDischarge_percentPerMonth: USUAL_SELF_DISCHARGE_percentPerMonth,
    };
    return [{ battery: part.id, days: daysToCharge(battery, Math.max(0, given_A) * 1000) }];
  });
}
