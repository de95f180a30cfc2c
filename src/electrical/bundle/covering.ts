import { digits } from "../figure.ts";
import { requirePositive } from "../require.ts";

/** What goes round a bundle without being shrunk, or what it goes through. */
export type CoveringKind = "braided-sleeve" | "split-loom" | "grommet";

export type Covering = {
  readonly kind: CoveringKind;
  readonly name: string;
  /** Bundles from this diameter on lie well in it, mm. */
  readonly least_mm: number;
  /** Bundles up to this diameter go in, mm. */
  readonly most_mm: number;
  readonly source: string;
};

const HABIT = "stocked sizes: common practice, no source";

/** Nominal diameter, and how far it opens: about half as much again. */
const SLEEVES: readonly (readonly [least_mm: number, nominal_mm: number, most_mm: number])[] = [
  [2, 3, 5],
  [3, 4, 7],
  [4, 6, 10],
  [6, 8, 13],
  [8, 10, 16],
  [9, 12, 19],
  [12, 16, 25],
  [16, 20, 32],
  [20, 25, 40],
  [25, 32, 50],
  [32, 40, 60],
];

/** Inside diameters of split conduit. */
const LOOM_INSIDE_mm = [4.5, 7.5, 8.5, 10, 12, 13, 14, 17, 19, 22, 23, 26, 29, 37, 44] as const;
/** A conduit is filled to at most this share of its width, so that it closes again. */
const LOOM_FILL = 0.9;

/** Bores of rubber grommets. */
const GROMMET_BORE_mm = [4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40] as const;
/** A bundle may be this much looser in a grommet than its bore before it rattles. */
const GROMMET_LEAST = 0.6;

/** Stocked coverings, small to large. */
export const COVERINGS: Readonly<Record<CoveringKind, readonly Covering[]>> = {
  "braided-sleeve": SLEEVES.map(([least_mm, nominal_mm, most_mm]) => ({
    kind: "braided-sleeve",
    name: `braided sleeve ${nominal_mm} mm`,
    least_mm,
    most_mm,
    source: HABIT,
  })),
  "split-loom": LOOM_INSIDE_mm.map((inside_mm) => ({
    kind: "split-loom",
    name: `split loom ${inside_mm} mm inside`,
    least_mm: 0,
    most_mm: inside_mm * LOOM_FILL,
    source: `${HABIT}; filled to 90 % of its width`,
  })),
  grommet: GROMMET_BORE_mm.map((bore_mm) => ({
    kind: "grommet",
    name: `grommet ${bore_mm} mm bore`,
    least_mm: bore_mm * GROMMET_LEAST,
    most_mm: bore_mm,
    source: HABIT,
  })),
};

export type CoveringChoice =
  | { readonly ok: true; readonly covering: Covering; readonly why: string }
  | { readonly ok: false; readonly why: string };

/**
 * The smallest stocked covering that a bundle fits.
 * @param bundle_mm outside diameter, above 0
 * @throws RangeError for NaN or a diameter not above 0
 */
export function chooseCovering(kind: CoveringKind, bundle_mm: number): CoveringChoice {
  requirePositive("bundle_mm", bundle_mm);
  const stock = COVERINGS[kind];
  const covering = stock.find(({ most_mm }) => bundle_mm <= most_mm + 1e-9);
  if (!covering) {
    const largest = stock.at(-1)!;
    return {
      ok: false,
      why: `${digits(bundle_mm)} mm is too thick: ${largest.name} takes ${digits(largest.most_mm)} mm`,
    };
  }
  if (bundle_mm < covering.least_mm - 1e-9) {
    const why = `${digits(bundle_mm)} mm is too thin: ${covering.name} begins at ${digits(covering.least_mm)} mm`;
    return { ok: false, why };
  }
  const range = `${digits(covering.least_mm)} to ${digits(covering.most_mm)} mm`;
  return {
    ok: true,
    covering,
    why: `${covering.name} takes ${range}; the bundle is ${digits(bundle_mm, 3)} mm`,
  };
}
