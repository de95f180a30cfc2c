import type { ElkExtendedEdge, ElkNode } from "elkjs/lib/elk-api.js";
import type { Component, Plan, PlannedEnd } from "./plan.ts";
import { stubsOf } from "./to-elk.ts";
import { GRID, gridUp, MARGIN } from "./types.ts";

/** One connected piece as ELK arranged it, on the grid, with its top at 0. */
export type Laid = {
  readonly component: Component;
  /** Top left corner of each block of the component, in its order. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Left and right edge of each column, room for labels included. */
  readonly columns: readonly { readonly left: number; readonly right: number }[];
  /** How many of the columns are the piece itself; those after them are strips beside it (see fold.ts). */
  readonly ownColumns: number;
  readonly height: number;
  readonly paths: ReadonlyMap<string, readonly number[]>;
};

/** Reads places and routes out of ELK's answer and snaps them to the grid. */
export function fromElk(plan: Plan, component: Component, answer: ElkNode): Laid {
  const stubs = stubsOf(plan, component);
  const nodes = new Map((answer.children ?? []).map((node) => [node.id, node]));
  const top = Math.min(...component.blocks.map((block) => nodes.get(`b${block}`)?.y ?? 0));
  const dy = -round(top);
  const x: number[] = [];
  const y: number[] = [];
  const columns = stubs.map(() => ({ left: Number.POSITIVE_INFINITY, right: Number.NEGATIVE_INFINITY }));
  for (const [index, block] of component.blocks.entries()) {
    const node = nodes.get(`b${block}`);
    const layer = component.layers[index]!;
    x.push(round((node?.x ?? 0) + stubs[layer]!.left));
    y.push(round((node?.y ?? 0) + dy));
    const column = columns[layer]!;
    column.left = Math.min(column.left, x[index]! - stubs[layer]!.left);
    column.right = Math.max(column.right, x[index]! + plan.blocks[block]!.width + stubs[layer]!.right);
  }
  const moved = keepApart(plan, component, y);
  const height = Math.max(...component.blocks.map((block, index) => y[index]! + plan.blocks[block]!.height));
  const paths = pathsOf(component, answer, x, y, dy, moved);
  return { component, x, y, columns, ownColumns: columns.length, height, paths };
}

/** Half a unit up, so that a value a rounding error below the half does not part two blocks that ELK lined up. */
function round(value: number): number {
  return Math.floor((value + 1e-6) / GRID + 0.5) * GRID;
}

/** Snapping may bring two blocks of a column too close: the lower one gives way. */
function keepApart(plan: Plan, component: Component, y: number[]): Set<number> {
  const moved = new Set<number>();
  const order = y
    .map((_, index) => index)
    .sort((a, b) => component.layers[a]! - component.layers[b]! || y[a]! - y[b]! || a - b);
  for (let i = 1; i < order.length; i++) {
    const [above, index] = [order[i - 1]!, order[i]!];
    if (component.layers[above] !== component.layers[index]) continue;
    const free = y[above]! + plan.blocks[component.blocks[above]!]!.height + MARGIN;
    if (y[index]! >= free) continue;
    y[index] = gridUp(free);
    moved.add(index);
  }
  return moved;
}

function pathsOf(
  component: Component,
  answer: ElkNode,
  x: readonly number[],
  y: readonly number[],
  dy: number,
  moved: ReadonlySet<number>,
): Map<string, readonly number[]> {
  const edges = new Map((answer.edges ?? []).map((edge) => [edge.id, edge]));
  const localOf = new Map(component.blocks.map((block, index) => [block, index]));
  const paths = new Map<string, readonly number[]>();
  for (const [index, { wire, from, to }] of component.wires.entries()) {
    const a = localOf.get(from.block)!;
    const b = localOf.get(to.block)!;
    if (moved.has(a) || moved.has(b)) continue;
    const startsAt = (edge: ElkExtendedEdge, end: PlannedEnd) =>
      edge.sources[0] === `b${end.block}:${end.port.contact}`;
    let points: number[];
    const whole = edges.get(`w${index}`);
    if (whole) {
      points = pointsOf(whole, dy);
      if (!startsAt(whole, from)) points = reversed(points);
    } else {
      const [first, second] = [edges.get(`w${index}:a`), edges.get(`w${index}:b`)];
      if (!first || !second) continue;
      const one = pointsOf(first, dy);
      const two = pointsOf(second, dy);
      points = [
        ...(startsAt(first, from) ? one : reversed(one)),
        ...(startsAt(second, to) ? reversed(two) : two),
      ];
    }
    const path = withEnds(
      points,
      [x[a]! + from.port.x, y[a]! + from.port.y],
      [x[b]! + to.port.x, y[b]! + to.port.y],
    );
    if (path) paths.set(wire.id, path);
  }
  return paths;
}

function pointsOf(edge: ElkExtendedEdge, dy: number): number[] {
  const section = edge.sections?.[0];
  if (!section) return [];
  const points = [section.startPoint, ...(section.bendPoints ?? []), section.endPoint];
  return points.flatMap((point) => [point.x, point.y + dy]);
}

function reversed(points: readonly number[]): number[] {
  const turned: number[] = [];
  for (let at = points.length - 2; at >= 0; at -= 2) turned.push(points[at]!, points[at + 1]!);
  return turned;
}

/**
 * Joins a route to the contacts where they stand after snapping: the first and last straight pieces move with them.
 * @returns `null` where that cannot be done with right angles alone
 */
function withEnds(
  points: readonly number[],
  start: readonly [number, number],
  end: readonly [number, number],
): number[] | null {
  const route = simplified(points);
  if (route.length < 4) return null;
  if (route.length === 4) return start[1] === end[1] && route[1] === route[3] ? [...start, ...end] : null;
  const last = route.length - 2;
  if (route[1] !== route[3] || route[last + 1] !== route[last - 1]) return null;
  route.splice(0, 4, start[0], start[1], route[2]!, start[1]);
  route.splice(last - 2, 4, route[last - 2]!, end[1], end[0], end[1]);
  return simplified(route);
}

/** Without points that bend nothing. */
export function simplified(points: readonly number[]): number[] {
  const route: number[] = [];
  for (let at = 0; at < points.length; at += 2) {
    const [px, py] = [points[at]!, points[at + 1]!];
    const n = route.length;
    if (n >= 2 && route[n - 2] === px && route[n - 1] === py) continue;
    if (n >= 4) {
      const sameX = route[n - 4] === route[n - 2] && route[n - 2] === px;
      const sameY = route[n - 3] === route[n - 1] && route[n - 1] === py;
      if (sameX || sameY) route.length = n - 2;
    }
    route.push(px, py);
  }
  return route;
}
