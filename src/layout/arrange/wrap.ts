import type { Composed } from "./compose.ts";
import { FOLD_ABOVE_WIRES } from "./fold.ts";
import type { Laid } from "./from-elk.ts";
import type { Plan } from "./plan.ts";
import { gridUp } from "./types.ts";

/** Between neighbours in a row, and between rows. */
const SPACING = 64;
/** Width to height of a sheet of A3, and near enough of a screen. */
const SHEET = Math.SQRT2;

type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** What keeps together: a piece, or a block without wires. */
type Item = { readonly blocks: readonly number[]; readonly box: Box; readonly vehicle: number | null };

/** Whether a stack of pieces is so tall that they are set side by side instead. Small drawings are read best as one stack. */
export function shouldWrap(plan: Plan, pieces: readonly Laid[], stacked: Composed): boolean {
  const wires = pieces.reduce((sum, { component }) => sum + component.wires.length, 0);
  if (wires <= FOLD_ABOVE_WIRES || stacked.x.size === 0) return false;
  const { left, top, right, bottom } = boxOf(plan, [...stacked.x.keys()], stacked);
  return bottom - top > right - left;
}

/**
 * Sets pieces side by side in rows about as wide as a sheet of this much drawing. Within a row, a piece stands
 * below another where there is room. The vehicle's edges of the first pieces of all rows are on one line, x = 0.
 * @param stacked the same pieces one below the other: each keeps the shape that it has there
 */
export function wrap(
  plan: Plan,
  pieces: readonly Laid[],
  alone: readonly number[],
  stacked: Composed,
): Composed {
  const itemOf = (blocks: readonly number[], ofLine: (place: number) => boolean): Item => {
    const edges = blocks
      .filter((block, place) => plan.blocks[block]!.column === "vehicle" && ofLine(place))
      .map((block) => stacked.x.get(block)! + plan.blocks[block]!.width);
    const vehicle = edges.length > 0 ? Math.max(...edges) : null;
    return { blocks, box: boxOf(plan, blocks, stacked), vehicle };
  };
  const items = [
    ...pieces.map(({ component, ownColumns }) =>
      itemOf(component.blocks, (place) => component.layers[place]! < ownColumns),
    ),
    ...alone.map((block) => itemOf([block], () => true)),
  ];
  const areas = items.map(({ box }) => (box.right - box.left + SPACING) * (box.bottom - box.top + SPACING));
  const ideal = Math.sqrt(SHEET * areas.reduce((sum, area) => sum + area, 0));
  const width = Math.max(ideal, ...items.map(({ box }) => box.right - box.left));
  const composed: Composed = { x: new Map(), y: new Map(), paths: new Map() };
  const shifts = new Map<number, { readonly dx: number; readonly dy: number }>();
  const start = Math.min(...items.map(({ box, vehicle }) => box.left - (vehicle ?? box.left)));
  for (const { item, x, y } of inRows(items, start, width)) {
    const dx = gridUp(x - item.box.left);
    const dy = gridUp(y - item.box.top);
    for (const block of item.blocks) {
      composed.x.set(block, stacked.x.get(block)! + dx);
      composed.y.set(block, stacked.y.get(block)! + dy);
      shifts.set(block, { dx, dy });
    }
  }
  for (const { component } of pieces) {
    const { dx, dy } = shifts.get(component.blocks[0]!)!;
    for (const { wire } of component.wires) {
      const path = stacked.paths.get(wire.id);
      if (path) {
        composed.paths.set(
          wire.id,
          path.map((value, at) => value + (at % 2 === 0 ? dx : dy)),
        );
      }
    }
  }
  return composed;
}

function inRows(
  items: readonly Item[],
  start: number,
  width: number,
): { item: Item; x: number; y: number }[] {
  const placed: { item: Item; x: number; y: number }[] = [];
  type Pile = { readonly x: number; readonly width: number; bottom: number };
  let piles: Pile[] = [];
  let top = 0;
  let bottom = 0;
  for (const item of items) {
    const { box, vehicle } = item;
    const size = { width: box.right - box.left, height: box.bottom - box.top };
    const below = piles.find(
      (pile) => pile.width >= size.width && pile.bottom + SPACING + size.height <= bottom,
    );
    if (below) {
      const y = gridUp(below.bottom + SPACING);
      placed.push({ item, x: below.x, y });
      below.bottom = y + size.height;
      continue;
    }
    const last = piles.at(-1);
    let x = last ? gridUp(last.x + last.width + SPACING) : start;
    if (last && x + size.width > start + width) {
      piles = [];
      top = gridUp(bottom + SPACING);
      x = start;
    }
    if (piles.length === 0 && vehicle !== null) x = box.left - vehicle;
    placed.push({ item, x, y: top });
    piles.push({ x, width: size.width, bottom: top + size.height });
    bottom = Math.max(piles.length === 1 ? top : bottom, top + size.height);
  }
  return placed;
}

function boxOf(plan: Plan, blocks: readonly number[], { x, y }: Composed): Box {
  const box = {
    left: Number.POSITIVE_INFINITY,
    top: Number.POSITIVE_INFINITY,
    right: Number.NEGATIVE_INFINITY,
    bottom: Number.NEGATIVE_INFINITY,
  };
  for (const block of blocks) {
    const { width, height } = plan.blocks[block]!;
    box.left = Math.min(box.left, x.get(block)!);
    box.top = Math.min(box.top, y.get(block)!);
    box.right = Math.max(box.right, x.get(block)! + width);
    box.bottom = Math.max(box.bottom, y.get(block)! + height);
  }
  return box;
}
