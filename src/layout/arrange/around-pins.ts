import type { Composed } from "./compose.ts";
import type { Laid } from "./from-elk.ts";
import type { Plan } from "./plan.ts";
import { type Gap, gapsBetween, stackInGaps } from "./stack.ts";
import { gridNear, MARGIN } from "./types.ts";

/** How much further a column of blocks may have to move for the sake of labels beside a block that is in its way. */
const LABEL_DETOUR = 160;
const ROUNDS = 32;

/** A block that stands: its index in the plan, and its corner. */
export type Standing = { readonly block: number; readonly x: number; readonly y: number };

/**
 * Arranges a piece in which some blocks are pinned. The others are moved along with the pinned ones that
 * they are wired to (a column keeps one x, in proportion between pinned columns), and then, column by column and in
 * their order, to the nearest room beside what already stands.
 * @param standing all that may not be run into; what is placed here is added to it
 */
export function placeAroundPins(plan: Plan, laid: Laid, standing: Standing[], into: Composed): void {
  const { component } = laid;
  const dx = columnShifts(plan, laid);
  const wishes = wishedTops(plan, laid);
  const columns = laid.columns.map((): number[] => []);
  for (const [index, block] of component.blocks.entries()) {
    if (!plan.blocks[block]!.pinned) columns[component.layers[index]!]!.push(index);
  }
  for (const [layer, members] of columns.entries()) {
    if (members.length === 0) continue;
    const wish = (index: number) => wishes[index]!;
    members.sort((a, b) => wish(a) - wish(b) || laid.y[a]! - laid.y[b]! || a - b);
    const xs = members.map((index) => gridNear(laid.x[index]! + dx[layer]!));
    const tops = stackBeside(
      plan,
      members.map((index) => component.blocks[index]!),
      xs,
      members.map(wish),
      standing,
    );
    for (const [at, index] of members.entries()) {
      standing.push({ block: component.blocks[index]!, x: xs[at]!, y: tops[at]! });
    }
  }
  for (const { block, x, y } of standing) {
    into.x.set(block, x);
    into.y.set(block, y);
  }
  keepPaths(laid, into);
}

/** Pinned columns move as far as the middle one of their pinned blocks; those between in proportion. */
function columnShifts(plan: Plan, laid: Laid): number[] {
  const { component } = laid;
  const pinned = laid.columns.map((): number[] => []);
  for (const [index, block] of component.blocks.entries()) {
    const pin = plan.blocks[block]!.pinned;
    if (pin) pinned[component.layers[index]!]!.push(pin.x - laid.x[index]!);
  }
  const known = pinned
    .map((shifts, layer) => ({ layer, shift: [...shifts].sort((a, b) => a - b)[shifts.length >> 1] ?? 0 }))
    .filter(({ layer }) => pinned[layer]!.length > 0);
  return laid.columns.map((_, layer) => {
    const right = known.find((one) => one.layer >= layer);
    const left = known.findLast((one) => one.layer <= layer);
    if (!left || !right || left === right) return (left ?? right)!.shift;
    const share = (layer - left.layer) / (right.layer - left.layer);
    return left.shift + (right.shift - left.shift) * share;
  });
}

/**
 * Tops that the blocks would like. If all pins moved alike, so does the piece; otherwise ELK's heights no longer fit, and a
 * free block wants its contacts level with those they are wired to, on average.
 */
function wishedTops(plan: Plan, laid: Laid): number[] {
  const { component } = laid;
  const shifts = component.blocks.map((block, index) => {
    const pin = plan.blocks[block]!.pinned;
    return pin ? pin.y - laid.y[index]! : null;
  });
  const pins = shifts.filter((shift) => shift !== null);
  const mean = pins.reduce((sum, shift) => sum + shift, 0) / pins.length;
  const tops = laid.y.map((y, index) => y + (shifts[index] ?? mean));
  if (pins.every((shift) => shift === pins[0])) return tops;

  const localOf = new Map(component.blocks.map((block, index) => [block, index]));
  const pulls: { other: number; rise: number }[][] = component.blocks.map(() => []);
  for (const { from, to } of component.wires) {
    const [a, b] = [localOf.get(from.block)!, localOf.get(to.block)!];
    pulls[a]!.push({ other: b, rise: to.port.y - from.port.y });
    pulls[b]!.push({ other: a, rise: from.port.y - to.port.y });
  }
  for (let round = 0; round < ROUNDS; round++) {
    for (const [index, list] of pulls.entries()) {
      if (shifts[index] !== null) continue;
      let sum = 0;
      for (const { other, rise } of list) sum += tops[other]! + rise;
      tops[index] = sum / list.length;
    }
  }
  return tops;
}

function stackBeside(
  plan: Plan,
  members: readonly number[],
  xs: readonly number[],
  wishes: readonly number[],
  standing: readonly Standing[],
): number[] {
  const heights = members.map((block) => plan.blocks[block]!.height);
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let stubs = { left: 0, right: 0 };
  for (const [at, block] of members.entries()) {
    const { width, stub } = plan.blocks[block]!;
    left = Math.min(left, xs[at]!);
    right = Math.max(right, xs[at]! + width);
    stubs = { left: Math.max(stubs.left, stub.left), right: Math.max(stubs.right, stub.right) };
  }
  const taken = (forLabels: boolean): Gap[] =>
    standing
      .filter(({ block, x }) => {
        const { width, stub } = plan.blocks[block]!;
        const onLeft = forLabels ? Math.max(MARGIN, stubs.left, stub.right) : MARGIN;
        const onRight = forLabels ? Math.max(MARGIN, stubs.right, stub.left) : MARGIN;
        return x < right + onRight && x + width > left - onLeft;
      })
      .map(({ block, y }) => ({ from: y, to: y + plan.blocks[block]!.height }));
  const cost = (tops: readonly number[]) =>
    tops.reduce((sum, top, at) => sum + Math.abs(top - wishes[at]!), 0) / tops.length;
  const roomy = stackInGaps(wishes, heights, gapsBetween(taken(true)));
  const tight = stackInGaps(wishes, heights, gapsBetween(taken(false)));
  return cost(roomy) <= cost(tight) + LABEL_DETOUR ? roomy : tight;
}

/** ELK's routes stay valid where the whole piece moved as one. */
function keepPaths(laid: Laid, into: Composed): void {
  const { component, x, y } = laid;
  const dx = into.x.get(component.blocks[0]!)! - x[0]!;
  const dy = into.y.get(component.blocks[0]!)! - y[0]!;
  for (const [index, block] of component.blocks.entries()) {
    if (into.x.get(block) !== x[index]! + dx || into.y.get(block) !== y[index]! + dy) return;
  }
  for (const [id, path] of laid.paths) {
    into.paths.set(
      id,
      path.map((value, at) => value + (at % 2 === 0 ? dx : dy)),
    );
  }
}
