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

/**
 * Where the search may lay the wire: on lines every `step` units up to `near` from either end, then at distances
 * that grow by `growth` until `pad` beyond them. Tried in turn: first what nearly always does, then wider, then finer.
 */
type Window = { readonly step: number; readonly near: number; readonly growth: number; readonly pad: number };
const WINDOWS: readonly Window[] = [
  { step: 8, near: 64, growth: 1.5, pad: 480 },
  { step: 8, near: 160, growth: 1.25, pad: 4000 },
  { step: 3, near: 60, growth: 1.4, pad: 480 },
  { step: 1.25, near: 20, growth: 1.4, pad: 480 },
];
/** Parts this close to an end bring lines along their own edges. */
const CLOSE_BY = 160;

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
  for (const window of WINDOWS.slice(0, 2)) {
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
  const lower = row - CLEARANCE;
  const upper = row + CLEARANCE;
  const ahead = dx + dy > 0;
  const room = ahead
    ? nextRight(field, along, lower, upper) - along
    : along - nextLeft(field, along, lower, upper);
  // Half of a short room is left to whatever faces this contact from the other side.
  const step = room >= 2 * wanted ? wanted : Math.max(CLEARANCE, Math.min(wanted, room / 2 - CLEARANCE));
  const noseX = x + dx * CLEARANCE;
  const noseY = y + dy * CLEARANCE;
  const out = boxIsFree(
    scene.bodies,
    Math.min(x, noseX),
    Math.min(y, noseY),
    Math.max(x, noseX),
    Math.max(y, noseY),
  );
  const clear = out && room >= 2 * CLEARANCE;
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
  window: Window,
  bodyPrice: number,
): number[] | null {
  const left = Math.min(start.x, goal.x, from.x, to.x) - window.pad;
  const right = Math.max(start.x, goal.x, from.x, to.x) + window.pad;
  const top = Math.min(start.y, goal.y, from.y, to.y) - window.pad;
  const bottom = Math.max(start.y, goal.y, from.y, to.y) + window.pad;
  const { bodies, zones } = scene;
  const edgesX: number[] = [];
  const edgesY: number[] = [];
  for (let b = 0; b < bodies.count; b++) {
    if (!standsNear(scene, b, start) && !standsNear(scene, b, goal)) continue;
    edgesX.push(zones.x1[b]!, zones.x2[b]!, bodies.x1[b]! - MARGIN / 2, bodies.x2[b]! + MARGIN / 2);
    edgesY.push(zones.y1[b]!, zones.y2[b]!, bodies.y1[b]! - MARGIN / 2, bodies.y2[b]! + MARGIN / 2);
  }
  const xs = lines(left, right, window, start.x, goal.x, edgesX);
  const ys = lines(top, bottom, window, start.y, goal.y, edgesY);
  const grid = makeGrid(xs, ys);
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

function standsNear(scene: Scene, body: number, tip: Launch): boolean {
  const { x1, y1, x2, y2 } = scene.bodies;
  return (
    x1[body]! < tip.x + CLOSE_BY &&
    x2[body]! > tip.x - CLOSE_BY &&
    y1[body]! < tip.y + CLOSE_BY &&
    y2[body]! > tip.y - CLOSE_BY
  );
}

/** The window's lines in one direction: the two that the ends stand on, a lattice round them, and the given edges. */
function lines(
  low: number,
  high: number,
  window: Window,
  one: number,
  two: number,
  edges: readonly number[],
): Float64Array {
  const { step, near, growth } = window;
  const out = new Set<number>([one, two]);
  const add = (value: number) => {
    if (value < low || value > high) return;
    if (Math.abs(value - one) >= 1 && Math.abs(value - two) >= 1) out.add(value);
  };
  for (const centre of [one, two]) {
    let offset = step;
    while (centre - offset >= low || centre + offset <= high) {
      add(Math.round((centre - offset) / step) * step);
      add(Math.round((centre + offset) / step) * step);
      offset = offset < near ? offset + step : offset * growth;
    }
  }
  edges.forEach(add);
  return Float64Array.from(out).sort();
}
