import type { Cavity, Direction } from "./harness.ts";

const FACING: Readonly<Record<Direction, Direction>> = {
  gives: "takes",
  takes: "gives",
  both: "both",
  none: "none",
  unknown: "unknown",
};

/**
 * Cavities as they are on the other side of the job: what one side gives, the other takes. A lead's colour, the fuse
 * behind it, how it gives and what makes it act are of the side that stated them, and are not known of the other.
 */
export function facing(cavities: readonly Cavity[]): readonly Cavity[] {
  return cavities.map((cavity) => ({
    ...cavity,
    direction: FACING[cavity.direction],
    lead: null,
    fuse_A: "unknown",
    gives: "unknown",
    actsOn: "unknown",
  }));
}
