import { firstAbove, firstFrom, makeGrid, priceArea } from "./grid.ts";
import { tidy } from "./path.ts";
import type { Scene } from "./scene.ts";
import { cheapestWay, type Scratch } from "./search.ts";

const BEND = 60;
/** What a wire adds, per unit of length, to the stretch it was sent along, so that the next looks elsewhere too. */
const USED = 0.04;

/**
 * The way round the parts for wires that have no simple one: a search on the lines along which zones end.
 * @param wires  indices into the scene's anchors, none of them tight
 * @returns for each, the whole path from contact to contact, or null when zones enclose an end
 */
export function findDetours(scene: Scene, scratch: Scratch, wires: readonly number[]): (number[] | null)[] {
  if (wires.length === 0) return [];
  const { zones } = scene;
  const xs = new Set<number>([...zones.x1, ...zones.x2]);
  const ys = new Set<number>([...zones.y1, ...zones.y2]);
  for (const wire of wires) {
    for (const anchor of scene.anchors[wire]!) {
      xs.add(anchor.freeX);
      ys.add(anchor.freeY);
    }
  }
  const grid = makeGrid(Float64Array.from(xs).sort(), Float64Array.from(ys).sort());
  for (let i = 0; i < zones.count; i++) {
    priceArea(grid, zones.x1[i]!, zones.y1[i]!, zones.x2[i]!, zones.y2[i]!, Number.POSITIVE_INFINITY);
  }
  const nx = grid.xs.length;
  const nodeAt = (x: number, y: number) => firstFrom(grid.ys, y) * nx + firstAbove(grid.xs, x) - 1;
  return wires.map((wire) => {
    const [from, to] = scene.anchors[wire]!;
    const way = cheapestWay(
      grid,
      scratch,
      nodeAt(from.freeX, from.freeY),
      from.dx !== 0 ? 0 : 1,
      nodeAt(to.freeX, to.freeY),
      to.dx !== 0 ? 0 : 1,
      BEND,
    );
    if (!way) return null;
    for (let k = 0; k + 3 < way.length; k += 2) {
      const x1 = Math.min(way[k]!, way[k + 2]!);
      const y1 = Math.min(way[k + 1]!, way[k + 3]!);
      const x2 = Math.max(way[k]!, way[k + 2]!);
      const y2 = Math.max(way[k + 1]!, way[k + 3]!);
      priceArea(
        grid,
        x1 - (x1 === x2 ? 1e-3 : 0),
        y1 - (y1 === y2 ? 1e-3 : 0),
        x2 + (x1 === x2 ? 1e-3 : 0),
        y2 + (y1 === y2 ? 1e-3 : 0),
        USED,
      );
    }
    return tidy([from.x, from.y, ...way, to.x, to.y]);
  });
}
