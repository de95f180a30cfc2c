/**
 * Aspects of the document that a rule can depend on. An edit changes a few of them; a rule that reads none of
 * those is not asked again. `FIELDS` says, for every field of the format, which facet it belongs to.
 */
export const FACETS = [
  /** Which parts there are, of which kind; what their contacts are called. */
  "parts",
  /** Which wires there are, and where they end; what is mated with what. */
  "wiring",
  /** What contacts are for: function, direction, use, side, what a box is. */
  "functions",
  /** Numbers on parts and cavities: amperes, ohms, watts, volts, how they behave. */
  "ratings",
  /** Faces, views, shells, keys, charts of connectors. */
  "housings",
  /** How joints, caps and grounds are made and where they lie. */
  "joints",
  "designations",
  "colours",
  "sizes",
  "lengths",
  /** Metal, strands and insulation of wires. */
  "materials",
  "labels",
  "cables",
  /** Runs, and which wires lie in them. */
  "runs",
  /** System voltage, temperature, what sums rest on, which books are followed. */
  "settings",
  "title",
  "tests",
  "notes",
] as const;

export type Facet = (typeof FACETS)[number];

/** What nearly every message names. */
export const NAMES: readonly Facet[] = ["parts", "designations", "colours"];
/** What `context.points`, `feeds`, `grounds`, `ways`, `newUnits`, `unjoined` and `driven` are made from. */
export const CIRCUITS: readonly Facet[] = ["parts", "wiring", "functions", "ratings", "joints"];
/** What the solved harness is made from. */
export const SOLVED: readonly Facet[] = [...CIRCUITS, "sizes", "lengths", "materials", "runs", "settings"];
