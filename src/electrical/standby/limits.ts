import { requireNotNegative } from "../require.ts";

/** What a whole vehicle may draw with the key off. No standard was found: these are the trade's several opinions. */
export type StandbyLimit = {
  readonly id: string;
  readonly limit_mA: number;
  readonly covers: string;
  readonly source: string;
  readonly doubt: string | null;
};

export const STANDBY_LIMITS: readonly StandbyLimit[] = [
  {
    id: "thirty",
    limit_mA: 30,
    covers: "most that one vehicle maker recommends",
    source: "a service bulletin on battery drain",
    doubt: "from memory",
  },
  {
    id: "thirty-five",
    limit_mA: 35,
    covers: "above it the drain counts as excessive",
    source: "an automotive technician's training module on batteries",
    doubt: "seen once",
  },
  {
    id: "fifty",
    limit_mA: 50,
    covers: "the whole vehicle, everything fitted later included",
    source: "a mobile air-conditioning trade newsletter, 2017; repair guides give 25 to 50 mA",
    doubt: "habit, not a standard",
  },
  {
    id: "seventy-five",
    limit_mA: 75,
    covers: "normal below it; trouble above 150 mA",
    source: "a public-domain car battery question list, later edition",
    doubt: "its earlier edition gives 20 to 120 mA",
  },
];

/** Taken where nobody chooses. */
export const USUAL_STANDBY_LIMIT: StandbyLimit = STANDBY_LIMITS[2]!;

/**
 * Is a key-off drain acceptable?
 * @throws RangeError for NaN or a negative drain
 */
export function withinStandby(drain_mA: number, limit: StandbyLimit): boolean {
  requireNotNegative("drain_mA", drain_mA);
  return drain_mA <= limit.limit_mA;
}
