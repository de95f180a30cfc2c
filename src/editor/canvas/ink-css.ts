import type { Ink } from "../../layout/drawing.ts";

/** An ink as a CSS value: a custom property, so that another theme needs no redrawing. */
export function cssInk(ink: Ink | undefined): string {
  if (ink === undefined || ink === "none") return "none";
  if (!ink.startsWith("wire:")) return `var(--${ink})`;
  const code = ink.slice("wire:".length);
  return /^[A-Z]{2,4}$/.test(code) ? `var(--wire-${code}, var(--wire-unknown))` : "var(--wire-unknown)";
}
