import { functionOf } from "../../catalogue/functions.ts";
import type { Lead } from "../chart.ts";

/** How sure a proposal is, in a word; the figure is for comparing, not for reading. */
export function sayConfidence(confidence: number | null): string {
  if (confidence === null) return "likely";
  if (confidence >= 0.9) return "certain";
  if (confidence >= 0.75) return "nearly certain";
  return confidence >= 0.55 ? "likely" : "possible";
}

/** What a lead is for, as it was understood: one name, or what it may be. */
export function sayFunction({ reading, isUnused }: Pick<Lead, "reading" | "isUnused">): string {
  if (isUnused) return "not used";
  const [first, second] = reading.candidates;
  if (!first) return "function not known";
  if (reading.certain) return functionOf(first.function).name;
  return second
    ? `${functionOf(first.function).name}, or ${functionOf(second.function).name}`
    : `perhaps ${functionOf(first.function).name}`;
}

/**
 * The function that some leads share: the likeliest one that each of them may have.
 * @returns "unknown" where they share none
 */
export function sharedFunction(leads: readonly Pick<Lead, "reading">[]): string {
  let shared: Map<string, number> | null = null;
  for (const { reading } of leads) {
    if (reading.candidates.length === 0) continue;
    const own = reading.certain ? reading.candidates.slice(0, 1) : reading.candidates;
    const next = new Map<string, number>();
    for (const { function: name, share } of own) {
      const so = shared === null ? 1 : shared.get(name);
      if (so !== undefined) next.set(name, so * share);
    }
    shared = next;
  }
  let best = "unknown";
  let most = 0;
  for (const [name, share] of shared ?? []) {
    if (share <= most) continue;
    best = name;
    most = share;
  }
  return best;
}
