import { digits, type Figure } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";

/** What hangs on a turn-on lead: an amplifier's control input, a relay coil, an aerial's amplifier. */
export type TurnOnLoad = { readonly name: string; readonly load_mA: number };

export type TurnOnCheck = {
  readonly total: Figure;
  /** Of the lead's rating, per cent. */
  readonly percentOfRating: Figure;
  readonly within: boolean;
  readonly why: string;
};

/**
 * A turn-on lead's load against what its output may give.
 * @param rating_mA of the output, above 0
 * @throws RangeError for a negative load or a rating not above 0
 */
export function turnOnCheck(loads: readonly TurnOnLoad[], rating_mA: number): TurnOnCheck {
  requirePositive("rating_mA", rating_mA);
  for (const { name, load_mA } of loads) requireNotNegative(`load of ${name}`, load_mA);
  const value = loads.reduce((sum, { load_mA }) => sum + load_mA, 0);
  const share = (value / rating_mA) * 100;
  const parts = loads.map(({ name, load_mA }) => `${digits(load_mA)} mA ${name}`);
  const common = { table: null, source: "sum of the loads against the output's rating", doubt: null };
  const within = value <= rating_mA;
  return {
    total: {
      ...common,
      value,
      unit: "mA",
      formula: `${parts.length === 0 ? "nothing hangs on it" : parts.join(" + ")} = ${digits(value)} mA`,
    },
    percentOfRating: {
      ...common,
      value: share,
      unit: "%",
      formula: `${digits(value)} mA / ${digits(rating_mA)} mA = ${digits(share, 3)} %`,
    },
    within,
    why: within
      ? `${digits(value)} mA of ${digits(rating_mA)} mA`
      : `${digits(value)} mA where the output gives ${digits(rating_mA)} mA: let it pull a relay, and feed the loads from that`,
  };
}
