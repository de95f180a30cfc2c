import { boxIsFree, nextLeft, nextRight, transposed } from "./field.ts";
import { makeGrid, priceArea, priceTrack, type TrackPrices } from "./grid.ts";
import { tidy } from "./path.ts";
import type { Anchor, Scene } from "./scene.ts";
import { cheapestWay, type Scratch } from "./search.ts";
import type { Laid } from "./shared.ts";
import { MARGIN, SAME_TRACK, TRACK_SPACING } from "./types.ts";

const BEND = 40;
const FOREIGN: TrackPrices = { closed: SAME_TRACK, near: TRACK_SPACING, crowded: 2, crossing: 30 };
const KINDRED: TrackPrices = { closed: 0, near: TRACK_SPACING, crowded: 4, crossing: 20 };
/** Prices per unit of length. */
const AT_MARGIN = 3;
const IN_ZONE = 1.5;
const ON_OWN_STUB = 5;
const IN_BODY = 60;
/** A path keeps at least this far from a part it is not joined to. */
const CLEARANCE = 1;

/** Search windows: how far round the two ends, and how fine. */
const WINDOWS = [
  { pad: 96, pitch: 8 },
  { pad: 480, pitch: 8 },
  { pad: 96, pitch: 3 },
  { pad: 480, pitch: 4 },
  { pad: 4000, pitch: 8 },
  { pad: 40, pitch: 1.25 },
] as const;
const MOST_POINTS = 600_000;

export type Threaded = { readonly points: number[]; readonly clean: boolean };

/**
 * Lays one wire between parts and wires that already lie, on a fine grid. Slower than the lanes, but sees every
 * wire exactly: it never shares a track with another circuit, and crosses and crowds as little as it can.
 * @param laid  all other wires' paths, and the straight pieces that wires still to come will need
 */
export function threadWire(
  scene: Scene,
  scratch: Scratch,
  from: Anchor,
  to: Anchor,
  circuit: number,
  laid: readonly Laid[],
): Threaded {
  const start = launch(scene, from);
  const goal = launch(scene, to);
  if (start.clear && goal.clear) {
    for (const window of WINDOWS) {
      const points = tryWindow(
        scene,
        scratch,
        from,
        start,
        to,
        goal,
        circuit,
        laid,
        window,
        Number.POSITIVE_INFINITY,
      );
      if (points) return { points, clean: true };
    }
  }
  for (const window of WINDOWS) {
    const points = tryWindow(scene, scratch, from, start, to, goal, circuit, laid, window, IN_BODY);
    if (points) return { points, clean: false };
  }
  return { points: tidy([from.x, from.y, to.x, from.y, to.x, to.y]), clean: false };
}

type Launch = { readonly x: number; readonly y: number; readonly clear: boolean };

/** Where bends may begin: at the end of the stub, or sooner when a part stands in front. */
export function launch(scene: Scene, anchor: Anchor): Launch {
  const { x, y, dx, dy } = anchor;
  const wanted = Math.abs(anchor.freeX - x) + Math.abs(anchor.freeY - y);
  const turned = dx === 0;
  const field = turned ? transposed(scene.bodies) : scene.bodies;
  const along = turned ? y : x;
  const row = turned ? x : y;
  const room =
    dx + dy > 0 ? nextRight(field, along, row, row) - along : along - nextLeft(field, along, row, row);
  const step =
    room >= wanted + MARGIN / 2 ? wanted : Math.max(CLEARANCE, Math.min(wanted, room / 2 - CLEARANCE));
  const nose = { x: x + dx * CLEARANCE, y: y + dy * CLEARANCE };
  const clear = room >= 2 * CLEARANCE && boxIsFree(scene.bodies, nose.x, nose.y, nose.x, nose.y);
  return { x: x + dx * step, y: y + dy * step, clear };
}

function tryWindow(
  scene: Scene,
  scratch: Scratch,
  from: Anchor,
  start: Launch,
  to: Anchor,
  goal: Launch,
  circuit: number,
  laid: readonly Laid[],
  window: { readonly pad: number; readonly pitch: number },
  bodyPrice: number,
): number[] | null {
  const left = Math.min(start.x, goal.x, from.x, to.x) - window.pad;
  const right = Math.max(start.x, goal.x, from.x, to.x) + window.pad;
  const top = Math.min(start.y, goal.y, from.y, to.y) - window.pad;
  const bottom = Math.max(start.y, goal.y, from.y, to.y) + window.pad;
  let pitchX: number = window.pitch;
  let pitchY: number = window.pitch;
  while (((right - left) / pitchX) * ((bottom - top) / pitchY) > MOST_POINTS) {
    if ((right - left) / pitchX > (bottom - top) / pitchY) pitchX *= 2;
    else pitchY *= 2;
  }
  const xs = lines(left, right, pitchX, start.x, goal.x);
  const ys = lines(top, bottom, pitchY, start.y, goal.y);
  const grid = makeGrid(xs, ys);
  const { bodies, zones } = scene;
  for (let b = 0; b < bodies.count; b++) {
    const x1 = zones.x1[b]!;
    const y1 = zones.y1[b]!;
    const x2 = zones.x2[b]!;
    const y2 = zones.y2[b]!;
    if (x2 < left || x1 > right || y2 < top || y1 > bottom) continue;
    const bx1 = bodies.x1[b]!;
    const by1 = bodies.y1[b]!;
    const bx2 = bodies.x2[b]!;
    const by2 = bodies.y2[b]!;
    priceArea(grid, x1, y1, x2, y2, IN_ZONE);
    priceArea(grid, bx1 - MARGIN, by1 - MARGIN, bx2 + MARGIN, by2 + MARGIN, AT_MARGIN);
    priceArea(grid, bx1 - CLEARANCE, by1 - CLEARANCE, bx2 + CLEARANCE, by2 + CLEARANCE, bodyPrice);
  }
  for (const other of laid) {
    const { points } = other;
    const prices = other.circuit === circuit ? KINDRED : FOREIGN;
    for (let k = 0; k + 3 < points.length; k += 2) {
      const ax = points[k]!;
      const ay = points[k + 1]!;
      const bx = points[k + 2]!;
      const by = points[k + 3]!;
      if (Math.max(ax, bx) < left || Math.min(ax, bx) > right) continue;
      if (Math.max(ay, by) < top || Math.min(ay, by) > bottom) continue;
      priceTrack(grid, ax, ay, bx, by, prices);
    }
  }
  ownStub(grid, from, start);
  ownStub(grid, to, goal);
  const nx = xs.length;
  const at = (p: Launch) => ys.indexOf(p.y) * nx + xs.indexOf(p.x);
  const way = cheapestWay(
    grid,
    scratch,
    at(start),
    from.dx !== 0 ? 0 : 1,
    at(goal),
    to.dx !== 0 ? 0 : 1,
    BEND,
  );
  return way && tidy([from.x, from.y, ...way, to.x, to.y]);
}

function ownStub(grid: ReturnType<typeof makeGrid>, anchor: Anchor, tip: Launch): void {
  priceArea(
    grid,
    Math.min(anchor.x, tip.x) - Math.abs(anchor.dy),
    Math.min(anchor.y, tip.y) - Math.abs(anchor.dx),
    Math.max(anchor.x, tip.x) + Math.abs(anchor.dy),
    Math.max(anchor.y, tip.y) + Math.abs(anchor.dx),
    ON_OWN_STUB,
  );
}

/** Lines every `pitch` units on one lattice for the whole drawing, and the two that the ends stand on. */
function lines(low: number, high: number, pitch: number, one: number, two: number): Float64Array {
  const out = new Set<number>([one, two]);
  for (let v = Math.ceil(low / pitch) * pitch; v <= high; v += pitch) {
    if (Math.abs(v - one) >= 1 && Math.abs(v - two) >= 1) out.add(v);
  }
  return Float64Array.from(out).sort();
}
