import { expect } from "vitest";
import type { Path, RouteEnd, RouteProblem } from "../../../src/layout/route/types.ts";

/**
 * What must never be, found by comparing everything with everything and sharing no code with the router.
 * @returns sentences, one for each fault: a wire through a part, a track shared by two circuits, a path that is not
 *   made of right angles or does not run from contact to contact.
 */
export function faults(
  problem: RouteProblem,
  paths: ReadonlyMap<string, Path>,
  except: readonly string[] = [],
): string[] {
  const found: string[] = [];
  const pieces: { wire: string; circuit: string; ax: number; ay: number; bx: number; by: number }[] = [];
  for (const wire of problem.wires) {
    const path = paths.get(wire.id);
    if (!path) {
      found.push(`${wire.id} has no path`);
      continue;
    }
    if (!path.every(Number.isFinite)) found.push(`${wire.id} has a coordinate that is no number`);
    checkEnd(found, wire.id, wire.from, path.slice(0, 4));
    checkEnd(found, wire.id, wire.to, [...path.slice(-2), ...path.slice(-4, -2)]);
    let wasUpright: boolean | null = null;
    for (let k = 0; k + 3 < path.length; k += 2) {
      const [ax, ay, bx, by] = [path[k]!, path[k + 1]!, path[k + 2]!, path[k + 3]!];
      const upright = ax === bx;
      if (upright === (ay === by)) found.push(`${wire.id} has a slanted or empty segment`);
      if (upright === wasUpright) found.push(`${wire.id} has a bend that bends nothing`);
      wasUpright = upright;
      pieces.push({
        wire: wire.id,
        circuit: wire.circuit,
        ax: Math.min(ax, bx),
        ay: Math.min(ay, by),
        bx: Math.max(ax, bx),
        by: Math.max(ay, by),
      });
    }
  }
  const clean = pieces.filter((piece) => !except.includes(piece.wire));
  for (const p of clean) {
    for (const b of problem.blocks) {
      if (p.ax < b.x + b.width && p.bx > b.x && p.ay < b.y + b.height && p.by > b.y) {
        found.push(`${p.wire} runs through ${b.id}`);
      }
    }
  }
  for (let i = 0; i < clean.length; i++) {
    for (let j = i + 1; j < clean.length; j++) {
      const p = clean[i]!;
      const q = clean[j]!;
      if (p.circuit === q.circuit) continue;
      const bothUpright = p.ax === p.bx && q.ax === q.bx;
      const bothLevel = p.ay === p.by && q.ay === q.by;
      const upright = bothUpright && Math.abs(p.ax - q.ax) < 0.9 && p.ay < q.by && q.ay < p.by;
      const level = bothLevel && Math.abs(p.ay - q.ay) < 0.9 && p.ax < q.bx && q.ax < p.bx;
      if (upright || level) found.push(`${p.wire} and ${q.wire} share a track`);
    }
  }
  return found;
}

function checkEnd(
  found: string[],
  wire: string,
  end: RouteEnd,
  [x, y, nextX, nextY]: readonly number[],
): void {
  if (x !== end.x || y !== end.y) found.push(`${wire} does not start on its contact`);
  const dx = Math.sign(nextX! - x!);
  const dy = Math.sign(nextY! - y!);
  const outward = { left: [-1, 0], right: [1, 0], top: [0, -1], bottom: [0, 1] }[end.side];
  if (dx !== outward[0] || dy !== outward[1]) found.push(`${wire} does not leave its part outward`);
}

export function expectFaultless(
  problem: RouteProblem,
  paths: ReadonlyMap<string, Path>,
  except: readonly string[] = [],
) {
  expect(faults(problem, paths, except)).toEqual([]);
}
