/** The three common shapes of blade fuse. ISO 8820-3 calls them type F, C and E. */
export type BladeForm = "mini" | "regular" | "maxi";

/** The colour words of fuses; "clear" is the material without dye. */
export type FuseColour =
  | "black"
  | "grey"
  | "violet"
  | "pink"
  | "tan"
  | "brown"
  | "red"
  | "blue"
  | "yellow"
  | "clear"
  | "green"
  | "blue-green"
  | "orange";

export type Blade = {
  readonly form: BladeForm;
  readonly rating_A: number;
  readonly colour: FuseColour;
  readonly source: string;
  readonly doubt: string | null;
};

/** The edition that the sources follow; a newer one was still a draft in 2026. */
export const BLADE_EDITION =
  "ISO 8820-3:2015, through its catalogue abstract; the standard itself was not read";

const SMALL_SOURCE =
  "ISO 8820-3 types C and F; colours as fuse guides print them, the same in mini and regular";
const MAXI_SOURCE = "ISO 8820-3 type E; ratings from three catalogues, colours from one";

const REGULAR: readonly (readonly [rating_A: number, colour: FuseColour, doubt?: string])[] = [
  [1, "black", "the colour of this rating is printed by one guide only"],
  [2, "grey"],
  [3, "violet"],
  [4, "pink"],
  [5, "tan"],
  [7.5, "brown"],
  [10, "red"],
  [15, "blue"],
  [20, "yellow"],
  [25, "clear", "one guide says white"],
  [30, "green"],
  [35, "blue-green", "the colour of this rating is from memory"],
  [40, "orange", "the colour of this rating is printed by one guide only"],
];

/** A palette of its own: 40 A is orange here too, but 50 A is red and 60 A blue. */
const MAXI: readonly (readonly [rating_A: number, colour: FuseColour, doubt?: string])[] = [
  [20, "yellow"],
  [30, "green"],
  [40, "orange"],
  [50, "red"],
  [60, "blue"],
  [70, "tan", "the guide says tan or brown"],
  [80, "clear"],
];

function blades(
  form: BladeForm,
  source: string,
  table: typeof REGULAR,
  least_A: number,
  most_A: number,
): readonly Blade[] {
  return table
    .filter(([rating_A]) => rating_A >= least_A && rating_A <= most_A)
    .map(([rating_A, colour, doubt = null]): Blade => ({ form, rating_A, colour, source, doubt }));
}

/** Every standard rating with its colour, by form, small to large. */
export const BLADES: Readonly<Record<BladeForm, readonly Blade[]>> = {
  mini: blades("mini", SMALL_SOURCE, REGULAR, 2, 30),
  regular: blades("regular", SMALL_SOURCE, REGULAR, 1, 40),
  maxi: blades("maxi", MAXI_SOURCE, MAXI, 20, 80),
};

/** The blade of a form and rating; `null` where none is made. */
export function blade(form: BladeForm, rating_A: number): Blade | null {
  return BLADES[form].find((one) => one.rating_A === rating_A) ?? null;
}

/** The ratings that a colour may stand for: red is 10 A on a mini and 50 A on a maxi. */
export function bladesOfColour(colour: FuseColour): readonly Blade[] {
  return Object.values(BLADES).flatMap((list) => list.filter((one) => one.colour === colour));
}

/**
 * The most current that a blade can break at 32 V.
 * @source ISO 8820-3:2015, catalogue abstract; a maker's mini-blade datasheet
 */
export const BREAKING_CAPACITY_A = 1000;

/**
 * The voltage classes blades are made in: one of 32 V serves 12 and 24 V systems, not 48 V.
 * @source ISO 8820-3:2015, catalogue abstract
 */
export const BLADE_CLASSES_V = [32, 58] as const;
