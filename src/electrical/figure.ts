/**
 * A computed number that can be asked why.
 * Every function of the electrical folders that a person may see the result of returns one.
 */
export type Figure = {
  readonly value: number;
  /** As it is printed: "Ω", "mm²", "A²s", "%". */
  readonly unit: string;
  /** The formula with the numbers put in: "R = ρ · l / A = 0.01724 × 3 / 1.5 = 0.03448 Ω". */
  readonly formula: string;
  /** The table a number was read from, in the words of its publication; `null` where the law is a formula. */
  readonly table: string | null;
  readonly source: string;
  /** Why the figure may be off, or how little its source is worth; `null` where nothing is known against it. */
  readonly doubt: string | null;
};

/** No figure can be given, and why. Never 0, never NaN. */
export type Unknown = { readonly unknown: string };

export type Answer = Figure | Unknown;

export function isKnown(answer: Answer): answer is Figure {
  return !("unknown" in answer);
}

/** A number as it stands in a formula: four significant digits, but no whole digit lost; no trailing zeros. */
export function digits(value: number, significant = 4): string {
  if (!Number.isFinite(value)) return value > 0 ? "∞" : "−∞";
  const whole = Math.abs(value) >= 10 ** (significant - 1);
  const rounded = whole ? Math.round(value) : Number(value.toPrecision(significant));
  return rounded < 0 ? `−${-rounded}` : `${rounded}`;
}

/** Joins what stands against a figure; `null` where nothing does. Repeats are said once. */
export function doubts(...parts: readonly (string | null)[]): string | null {
  const said = [...new Set(parts.filter((part) => part !== null && part !== ""))];
  return said.length === 0 ? null : said.join("; ");
}
