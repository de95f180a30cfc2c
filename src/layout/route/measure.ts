import { meetsBox } from "./path.ts";
import { type Path, type RouteProblem, SAME_TRACK, TRACK_SPACING } from "./types.ts";

export type Measured = {
  /** Places where two wires cross or touch. */
  readonly crossings: number;
  readonly bends: number;
  readonly length: number;
  /** Pairs of segments of different circuits on one track. */
  readonly overlaps: number;
  /** Pairs of a wire and a part it passes through. */
  readonly throughBlocks: number;
  /** Pairs of parallel segments of different circuits side by side, nearer than the spacing but not on one track. */
  readonly tooClose: number;
};

type Lines = { at: number[]; from: number[]; to: number[]; wire: number[] };

/** Counts what makes routes good or bad, one pair at a time. Wires without a path count for nothing. */
export function measure(problem: RouteProblem, paths: ReadonlyMap<string, Path>): Measured {
  const upright: Lines = { at: [], from: [], to: [], wire: [] };
  const level: Lines = { at: [], from: [], to: [], wire: [] };
  let bends = 0;
  let length = 0;
  let throughBlocks = 0;
  problem.wires.forEach((wire, w) => {
    const path = paths.get(wire.id) ?? [];
    bends += Math.max(0, path.length / 2 - 2);
    for (let k = 0; k + 3 < path.length; k += 2) {
      const isUpright = path[k] === path[k + 2];
      const lines = isUpright ? upright : level;
      const a = path[isUpright ? k + 1 : k]!;
      const b = path[isUpright ? k + 3 : k + 2]!;
      lines.at.push(path[isUpright ? k : k + 1]!);
      lines.from.push(Math.min(a, b));
      lines.to.push(Math.max(a, b));
      lines.wire.push(w);
      length += Math.abs(a - b);
    }
    for (const block of problem.blocks) {
      if (meetsBox(path, block.x, block.y, block.x + block.width, block.y + block.height)) throughBlocks++;
    }
  });
  const circuits = problem.wires.map((wire) => wire.circuit);
  const a = countParallel(upright, circuits);
  const b = countParallel(level, circuits);
  return {
    crossings: countCrossings(upright, level),
    bends,
    length,
    overlaps: a.overlaps + b.overlaps,
    throughBlocks,
    tooClose: a.tooClose + b.tooClose,
  };
}

function countCrossings(upright: Lines, level: Lines): number {
  let crossings = 0;
  for (let i = 0; i < upright.at.length; i++) {
    const x = upright.at[i]!;
    const top = upright.from[i]!;
    const bottom = upright.to[i]!;
    for (let j = 0; j < level.at.length; j++) {
      const y = level.at[j]!;
      if (y < top || y > bottom || x < level.from[j]! || x > level.to[j]!) continue;
      const inner = y > top && y < bottom && x > level.from[j]! && x < level.to[j]!;
      if (inner && upright.wire[i] !== level.wire[j]) crossings++;
    }
  }
  return crossings;
}

function countParallel(lines: Lines, circuits: readonly string[]): { overlaps: number; tooClose: number } {
  const order = [...lines.at.keys()].sort((i, j) => lines.at[i]! - lines.at[j]!);
  let overlaps = 0;
  let tooClose = 0;
  for (let n = 0; n < order.length; n++) {
    const i = order[n]!;
    for (let m = n + 1; m < order.length; m++) {
      const j = order[m]!;
      const apart = lines.at[j]! - lines.at[i]!;
      if (apart >= TRACK_SPACING - 1e-6) break;
      if (lines.from[i]! >= lines.to[j]! || lines.from[j]! >= lines.to[i]!) continue;
      if (circuits[lines.wire[i]!] === circuits[lines.wire[j]!]) continue;
      if (apart < SAME_TRACK) overlaps++;
      else tooClose++;
    }
  }
  return { overlaps, tooClose };
}
