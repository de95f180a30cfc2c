import { type Answer, digits, type Figure, isKnown } from "../../../electrical/figure.ts";
import type { About } from "../../../rules/rule.ts";

/** One figure of the panel: what it is called, the answer, and what stands beside it in words. */
export type FigureLine = {
  /** The same for the same figure whatever its value is: an opened "why" stays open while a slider moves. */
  readonly id: string;
  readonly name: string;
  readonly answer: Answer;
  /** "of 35 A", "holds": read after the value. */
  readonly remark?: string;
  /** What it is about, where that is not the selection itself. */
  readonly about?: readonly About[];
};

/** Figures under a heading of their own. */
export type FigureGroup = { readonly heading: string; readonly lines: readonly FigureLine[] };

const SMALL: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  V: ["mV", 1000],
  A: ["mA", 1000],
  W: ["mW", 1000],
  Ω: ["mΩ", 1000],
  m: ["cm", 100],
};

/** "0.31 V", "5.2 mV", "25 %": three digits and the unit, the smaller unit where the value is small. */
export function sayFigure(figure: Pick<Figure, "value" | "unit">): string {
  const { value, unit } = figure;
  const small = SMALL[unit];
  if (small && value !== 0 && Math.abs(value) < 0.1) {
    return `${tidy(value * small[1])} ${small[0]}`;
  }
  // A meter shows volts to two places; "12 V" would hide the tenths that matter here.
  return unit === "V" ? sayVolts(value) : `${tidy(value)} ${unit}`;
}

function tidy(value: number): string {
  // What is left of a rounding error is nothing.
  return Math.abs(value) < 1e-6 ? "0" : digits(value, 3);
}

/** "12.40 EUR": to the hundredth. */
export function sayMoney({ value, unit }: Pick<Figure, "value" | "unit">): string {
  return `${value.toFixed(2)} ${unit}`;
}

/** The answer in words: the figure, or that it is not known. */
export function sayAnswer(answer: Answer): string {
  return isKnown(answer) ? sayFigure(answer) : "not known";
}

/** Volts as a meter shows them: two places after the point. */
export function sayVolts(volts: number | "floating"): string {
  if (volts === "floating") return "floating";
  const shown = volts.toFixed(2);
  return `${shown === "-0.00" ? "0.00" : shown.replace("-", "−")} V`;
}

/** Amperes with three digits, without a direction. */
export function sayAmps(amps: number): string {
  return sayFigure({ value: Math.abs(amps), unit: "A" });
}

export const KIRCHHOFF = "Kirchhoff's and Ohm's laws, solved for the whole harness at once";

/** A figure that the solution of the circuit gave, or that follows from it by a law. */
export function solved(value: number, unit: string, formula: string, doubt: string | null = null): Figure {
  return { value, unit, formula, table: null, source: KIRCHHOFF, doubt };
}
