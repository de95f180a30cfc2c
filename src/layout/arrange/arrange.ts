import type { ElkNode } from "elkjs/lib/elk-api.js";
import { placeAroundPins, type Standing } from "./around-pins.ts";
import { type Composed, compose } from "./compose.ts";
import { layPiece } from "./fold.ts";
import type { Laid } from "./from-elk.ts";
import { type Plan, planOf } from "./plan.ts";
import { type Arranged, type ArrangeProblem, type ArrangeStep, gridUp } from "./types.ts";

/** Between what stands around pinned parts and the rest of the drawing below it. */
const BELOW = 64;

/**
 * Arranges a harness with a given ELK: the one way through, in a worker as in Node.
 * @param layout lays one graph out
 * @param step told after each connected piece
 */
export async function arrangeWith(
  layout: (graph: ElkNode) => Promise<ElkNode>,
  problem: ArrangeProblem,
  step?: ArrangeStep,
): Promise<Arranged> {
  const plan = planOf(problem);
  const pieces: Laid[] = [];
  step?.(0, plan.components.length);
  for (const component of plan.components) {
    pieces.push(await layPiece(layout, plan, component));
    step?.(pieces.length, plan.components.length);
  }
  const composed = composeAll(plan, pieces);
  return {
    places: new Map(
      plan.blocks.map(({ id }, index) => [id, { x: composed.x.get(index)!, y: composed.y.get(index)! }]),
    ),
    paths: composed.paths,
    turned: plan.turned,
  };
}

function composeAll(plan: Plan, pieces: readonly Laid[]): Composed {
  const isPinned = (block: number) => plan.blocks[block]!.pinned !== null;
  const standing: Standing[] = [];
  for (const [block, { pinned }] of plan.blocks.entries()) if (pinned) standing.push({ block, ...pinned });
  const free = pieces.filter(({ component }) => !component.blocks.some(isPinned));
  const rest = compose(
    plan,
    free,
    plan.unwired.filter((block) => !isPinned(block)),
  );
  if (standing.length === 0) return rest;

  const composed: Composed = { x: new Map(), y: new Map(), paths: new Map() };
  for (const { block, x, y } of standing) {
    composed.x.set(block, x);
    composed.y.set(block, y);
  }
  for (const laid of pieces) {
    if (!free.includes(laid)) placeAroundPins(plan, laid, standing, composed);
  }
  addBelow(plan, standing, rest, composed);
  return composed;
}

/** What has nothing to do with the pinned parts stands below them, its vehicle column in line with theirs. */
function addBelow(plan: Plan, standing: readonly Standing[], rest: Composed, composed: Composed): void {
  if (rest.x.size === 0) return;
  const tops = [...rest.y.values()];
  const bottom = Math.max(...standing.map(({ block, y }) => y + plan.blocks[block]!.height));
  const dy = gridUp(bottom + BELOW - Math.min(...tops));
  const vehicle = standing.find(({ block }) => plan.blocks[block]!.column === "vehicle");
  const dx = vehicle
    ? gridUp(vehicle.x + plan.blocks[vehicle.block]!.width)
    : gridUp(Math.min(...standing.map(({ x }) => x)) - Math.min(...rest.x.values()));
  for (const [block, x] of rest.x) composed.x.set(block, x + dx);
  for (const [block, y] of rest.y) composed.y.set(block, y + dy);
  for (const [id, path] of rest.paths) {
    composed.paths.set(
      id,
      path.map((value, at) => value + (at % 2 === 0 ? dx : dy)),
    );
  }
}
