import type { Laid } from "./from-elk.ts";
import type { Plan } from "./plan.ts";
import { type ArrangeBlock, GRID, gridNear, gridUp, MARGIN } from "./types.ts";
import { shouldWrap, wrap } from "./wrap.ts";

/** Between pieces of the harness that no wire joins. */
const PIECE_SPACING = 64;
/** Between blocks without wires. */
const LOOSE_SPACING = 32;
/** From the vehicle's column to the equipment's where no wire tells how far it must be. */
const EMPTY_WIDTH = 560;

export type Composed = {
  readonly x: Map<number, number>;
  readonly y: Map<number, number>;
  readonly paths: Map<string, readonly number[]>;
};

/**
 * Puts pieces and blocks without wires together: one below the other, or, where that is too tall, side by side.
 * @param alone blocks without wires
 * @returns corners by index into the plan's blocks; the top is at y = 0
 */
export function compose(plan: Plan, pieces: readonly Laid[], alone: readonly number[]): Composed {
  const stacked = stack(plan, pieces, alone);
  if (!shouldWrap(plan, pieces, stacked)) return stacked;
  // A piece among others in a row need not be stretched to the width of the widest.
  return wrap(plan, pieces, alone, stack(plan, pieces, alone, false));
}

/**
 * Stacks the pieces so that all vehicle blocks end on one line, x = 0, and all equipment begins on another; a narrower
 * piece is stretched between its columns. Blocks without wires follow below, in the column they belong to.
 * @param stretched `false` leaves each piece as wide as it is
 */
function stack(plan: Plan, pieces: readonly Laid[], alone: readonly number[], stretched = true): Composed {
  const composed: Composed = { x: new Map(), y: new Map(), paths: new Map() };
  const width = pieces.length > 0 ? Math.max(...pieces.map((laid) => spanOf(plan, laid))) : EMPTY_WIDTH;
  let top = 0;
  for (const laid of pieces) {
    addPiece(plan, laid, stretched ? width : spanOf(plan, laid), top, composed);
    top = gridUp(top + laid.height + PIECE_SPACING);
  }
  addLoose(plan, alone, width, top, composed);
  return composed;
}

/**
 * What is vehicle's and what is equipment's in a piece: right edge of the one, left edge of the other. Strips beside
 * the piece do not count.
 */
function edgesOf(
  plan: Plan,
  { component, x, ownColumns }: Laid,
): { vehicle: number | null; equipment: number | null } {
  let vehicle: number | null = null;
  let equipment: number | null = null;
  for (const [index, at] of component.blocks.entries()) {
    const { column, width } = plan.blocks[at]!;
    if (component.layers[index]! >= ownColumns) continue;
    if (column === "vehicle") vehicle = Math.max(vehicle ?? Number.NEGATIVE_INFINITY, x[index]! + width);
    if (column === "equipment") equipment = Math.min(equipment ?? Number.POSITIVE_INFINITY, x[index]!);
  }
  return { vehicle, equipment };
}

/** How far apart the vehicle's and the equipment's edge must be for this piece. */
function spanOf(plan: Plan, laid: Laid): number {
  const { vehicle, equipment } = edgesOf(plan, laid);
  const left = vehicle ?? laid.columns[0]!.left;
  const right = equipment ?? laid.columns[laid.ownColumns - 1]!.right;
  return Math.max(0, gridUp(right - left));
}

function addPiece(plan: Plan, laid: Laid, width: number, top: number, composed: Composed): void {
  const { component, columns, ownColumns } = laid;
  const { vehicle, equipment } = edgesOf(plan, laid);
  const slack = width - spanOf(plan, laid);
  const start = vehicle ?? columns[0]!.left;
  // All on one side: that side's line. Both: stretched. Neither: in the middle.
  const stretched = vehicle !== null && equipment !== null && ownColumns > 1;
  const offset = stretched || vehicle !== null ? 0 : equipment !== null ? slack : slack / 2;
  const shifts = columns.map((_, layer) => {
    const share = stretched ? Math.min(slack, (slack * layer) / (ownColumns - 1)) : 0;
    return gridNear(offset + share - start);
  });
  for (const [index, block] of component.blocks.entries()) {
    composed.x.set(block, laid.x[index]! + shifts[component.layers[index]!]!);
    composed.y.set(block, laid.y[index]! + top);
  }
  const shiftAt = (x: number): number => {
    let layer = 0;
    while (layer + 1 < columns.length && columns[layer + 1]!.left <= x) layer++;
    return shifts[layer]!;
  };
  for (const [id, path] of laid.paths) {
    composed.paths.set(
      id,
      path.map((value, at) => (at % 2 === 0 ? value + shiftAt(value) : value + top)),
    );
  }
}

/** Vehicle and equipment blocks one below the other, the rest in rows between them. */
function addLoose(
  plan: Plan,
  alone: readonly number[],
  width: number,
  top: number,
  composed: Composed,
): void {
  const put = (index: number, x: number, y: number): void => {
    composed.x.set(index, x);
    composed.y.set(index, y);
  };
  const next = { vehicle: top, equipment: top };
  const row: { index: number; block: ArrangeBlock }[] = [];
  for (const index of alone) {
    const block = plan.blocks[index]!;
    if (block.column === "between") {
      row.push({ index, block });
      continue;
    }
    put(index, block.column === "vehicle" ? -gridUp(block.width) : width, next[block.column]);
    next[block.column] = gridUp(next[block.column] + block.height + LOOSE_SPACING);
  }
  const room = Math.max(GRID, width - 2 * PIECE_SPACING);
  let y = top;
  while (row.length > 0) {
    let used = row[0]!.block.width;
    let count = 1;
    while (count < row.length && used + LOOSE_SPACING + row[count]!.block.width <= room) {
      used += LOOSE_SPACING + row[count++]!.block.width;
    }
    const line = row.splice(0, count);
    // A block wider than the room between the columns goes below them.
    if (used > width - 2 * MARGIN) y = Math.max(y, next.vehicle, next.equipment);
    let x = gridNear((width - used) / 2);
    for (const { index, block } of line) {
      put(index, x, y);
      x += gridUp(block.width + LOOSE_SPACING);
    }
    y += gridUp(Math.max(...line.map(({ block }) => block.height)) + LOOSE_SPACING);
    if (used > width - 2 * MARGIN) next.vehicle = next.equipment = y;
  }
}
