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

const SMALL_SOURCE =
  "ISO 8820-3 types C and F; colours as fuse guides print them, the same in mini and regular";
const MAXI_SOURCE = "ISO 8820-3 type E; ratings from three catalogues, colours from one";

const REGULAR: readonly (readonly [rating_A: number, colour: FuseColour])[] = [
  [1, "black"],
  [2, "grey"],
  [3, "violet"],
  [4, "pink"],
  [5, "tan"],
  [7.5, "brown"],
  [10, "red"],
  [15, "blue"],
  [20, "yellow"],
  [25, "clear"],
  [30, "green"],
  [35, "blue-green"],
  [40, "orange"],
];

/** A palette of its own: 40 A is orange here too, but 50 A is red and 60 A blue. */
const MAXI: readonly (readonly [rating_A: number, colour: FuseColour])[] = [
  [20, "yellow"],
  [30, "green"],
  [40, "orange"],
  [50, "red"],
  [60, "blue"],
  [70, "tan"],
  [80, "clear"],
];

const FROM_MEMORY: ReadonlySet<number> = new Set([1, 35]);

function small(form: "mini" | "regular", least_A: number, most_A: number): readonly Blade[] {
  return REGULAR.filter(([rating_A]) => rating_A >= least_A && rating_A <= most_A).map(
    ([rating_A, colour]): Blade => ({
      form,
      rating_A,
      colour,
      source: SMALL_SOURCE,
      doubt: FROM_MEMORY.has(rating_A) ? "the colour of this rating is from memory" : null,
    }),
  );
}

/** Every standard rating with its colour, by form, small to large. */
export const BLADES: Readonly<Record<BladeForm, readonly Blade[]>> = {
  mini: small("mini", 2, 30),
  regular: small("regular", 1, 40),
  maxi: MAXI.map(
    ([rating_A, colour]): Blade => ({ form: "maxi", rating_A, colour, source: MAXI_SOURCE, doubt: null }),
  ),
};

/** The blade of a form and rating; `null` where none is made. */
export function blade(form: BladeForm, rating_A: number): Blade | null {
  return BLADES[form].find((one) => one.rating_A === rating_A) ?? null;
}

/**
 * The most current that a blade can break at 32 V.
 * @source a maker's mini-blade datasheet: 1 000 A at 32 V DC, seen once; other forms from memory
 */
export const BREAKING_CAPACITY_A = 1000;
