import { type KeyState, sayState } from "../../electrical/operate/key-state.ts";
import type { Context } from "../context.ts";
import type { View } from "./full-load.ts";
import type { Stretch } from "./stretches.ts";

/** A battery at rest has a twentieth more than its nominal volts; what that adds to a stated current is not over a limit. */
export const HAIR = 1.06;

/**
 * What of the current in a stretch, and behind the fuses below it, only an amplifier draws: its plate states what it
 * takes at full power, and music is far below that on the average.
 */
export function amplifiers_A(context: Context, stretch: Stretch, view: View): number {
  let sum_A = 0;
  for (const one of context.stretches.all) {
    if (!isBelow(one, stretch)) continue;
    for (const id of one.circuits) {
      for (const point of context.points.circuits[id]!.points) {
        if (point.direction !== "takes" || context.moduleOf(point)?.role !== "amplifier") continue;
        sum_A += Math.abs(view.load(point.key)?.amps ?? 0);
      }
    }
  }
  return sum_A;
}

function isBelow(one: Stretch, top: Stretch): boolean {
  for (let at: Stretch | null = one; at; at = at.above) if (at === top) return true;
  return false;
}

/** The names of what draws most in a state behind a stretch, the hungriest first. */
export function drawnBehind(context: Context, stretch: Stretch, view: View): readonly string[] {
  const found = new Map<string, number>();
  for (const one of context.stretches.all) {
    if (!isBelow(one, stretch)) continue;
    for (const id of one.circuits)
      for (const point of context.points.circuits[id]!.points) {
        const amps = Math.abs(view.load(point.key)?.amps ?? 0);
        const name = context.moduleOf(point)?.designation ?? point.part.designation;
        if (amps > 0.05) found.set(name, (found.get(name) ?? 0) + amps);
      }
  }
  return [...found].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([name]) => name);
}

/** "with the key at run and all on that can be on": a state as a person sets it up. */
export function sayWhen(state: KeyState): string {
  const all = state.conditions.length > 3;
  return all
    ? `with the key at ${state.key} and all on that can be on`
    : `with the key at ${sayState(state)}`;
}
