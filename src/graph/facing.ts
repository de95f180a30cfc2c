import type { Direction } from "./harness.ts";

const FACING: Readonly<Record<Direction, Direction>> = {
  gives: "takes",
  takes: "gives",
  both: "both",
  none: "none",
  unknown: "unknown",
};

/** A direction as seen from the other half of the same pair of contacts: what one gives, the other takes. */
export function facing(direction: Direction): Direction {
  return FACING[direction];
}
