/** How much of the voltage a circuit may lose, by who says so. */
export type DropLimit = {
  readonly id: string;
  /** For what the limit is meant. */
  readonly covers: string;
  /** Volts allowed at a nominal voltage; `null` where the source names no figure for that system. */
  readonly limit_V: (system_V: number) => number | null;
  readonly source: string;
  readonly doubt: string | null;
};

const perCent = (share: number) => (system_V: number) => (system_V * share) / 100;

/** Nominal volts → volts allowed. Nominal 12 V systems run at 14 V, 24 V systems at 28 V. */
const byRail =
  (rows: readonly (readonly [nominal_V: number, running_V: number, limit_V: number])[]) =>
  (system_V: number): number | null =>
    rows.find(([nominal_V, running_V]) => system_V === nominal_V || system_V === running_V)?.[2] ?? null;

export const DROP_LIMITS: readonly DropLimit[] = [
  {
    id: "three-per-cent",
    covers: "feeders, navigation lights, blowers, pumps, electronics: what must work",
    limit_V: perCent(3),
    source: "ABYC E-11; ISO 10133:2012 for the same circuits",
    doubt: null,
  },
  {
    id: "ten-per-cent",
    covers: "other lighting and loads that may run weak",
    limit_V: perCent(10),
    source: "ABYC E-11",
    doubt: null,
  },
  {
    id: "aircraft-continuous",
    covers: "aircraft, loads that stay on: 0.5 V at 14 V, 1 V at 28 V",
    limit_V: byRail([
      [12, 14, 0.5],
      [24, 28, 1],
      [115, 115, 4],
      [200, 200, 7],
    ]),
    source: "FAA AC 43.13-1B table 11-6",
    doubt: null,
  },
  {
    id: "aircraft-intermittent",
    covers: "aircraft, loads that run for a short time: twice the continuous figure",
    limit_V: byRail([
      [12, 14, 1],
      [24, 28, 2],
      [115, 115, 8],
      [200, 200, 14],
    ]),
    source: "FAA AC 43.13-1B table 11-6",
    doubt: "from memory",
  },
];
