import { sameEnd } from "../../graph/contacts.ts";
import type { Fragment } from "../../graph/edits/copy.ts";
import type { Part, WireId } from "../../graph/harness.ts";
import { captionWidth } from "../../layout/geometry/caption.ts";
import { ROW, type Shape, shapeOf, snap, snapUp, type WireCount } from "../../layout/geometry/shape.ts";
import type { Scene } from "../../layout/scene.ts";
import type { Box } from "./hit-model.ts";

type Spot = { readonly x: number; readonly y: number };

const ONE_EACH: WireCount = () => 1;

/** The outline of a part that no wire lands on yet, or that is going to have some. */
export function freshShape(part: Part, turned: boolean, wires: WireCount = ONE_EACH): Shape {
  return shapeOf(part, turned, wires, captionWidth(part));
}

const ROOM = 8;
/** Half the height of what is written in a wire. */
const HALF_LABEL = 7;

/** What a new part must leave free besides other parts, and what it needs itself. */
export type Needs = {
  /** Wires that are about to run elsewhere: what is written in them goes with them. */
  readonly moving?: ReadonlySet<WireId>;
  /** The lead on either side needs so much room for its label, straight out of each port. */
  readonly lead?: number;
  /** Columns to try first, left edges. */
  readonly columns?: readonly number[];
};

/**
 * The nearest place to the one wanted where a part of this shape stands clear of all others and of what is
 * written in wires. Columns to either side are tried before rows: a joint stays on the row of the lead it joins.
 */
export function freeSpot(scene: Scene, shape: Shape, x: number, y: number, needs: Needs = {}): Spot {
  const wantX = snap(x);
  const wantY = Math.round(y / 4) * 4;
  const parts: Box[] = [...scene.parts.values()].map((one) => ({
    x: one.x,
    y: one.y,
    width: one.shape.width,
    height: one.shape.height,
  }));
  const written = labelBoxes(scene, needs.moving);
  const lead = needs.lead ?? 0;
  const clear = (left: number, top: number) => {
    const own = { x: left, y: top, width: shape.width, height: shape.height };
    if (parts.some((other) => meets(own, other, ROOM)) || written.some((one) => meets(own, one, 0)))
      return false;
    if (lead === 0) return true;
    return shape.ports.every((port) => {
      const across = port.side === "left" ? left - lead : left + shape.width;
      const label = { x: across, y: top + port.y - HALF_LABEL, width: lead, height: 2 * HALF_LABEL };
      return !parts.some((other) => meets(label, other, 0));
    });
  };
  for (const column of needs.columns ?? []) {
    if (clear(snap(column), wantY)) return { x: snap(column), y: wantY };
  }
  const column = shape.width + 2 * ROOM;
  for (let row = 0; row < 12; row++) {
    for (const down of row === 0 ? [0] : [row * ROW, -row * ROW]) {
      for (const across of [0, 1, -1, 2, -2]) {
        const left = wantX + snap(across * column);
        if (clear(left, wantY + down)) return { x: left, y: wantY + down };
      }
    }
  }
  return { x: wantX, y: wantY };
}

/**
 * How far further down a copied piece has to go, in drawing units, until none of its parts lies on one that is there.
 * @param dx where the piece is wanted, from where it was copied
 */
export function clearDrop(scene: Scene, piece: Fragment, dx: number, dy: number): number {
  const placed = piece.parts.flatMap((part): Box[] => {
    const place = piece.places[part.id];
    if (!place) return [];
    const landed = (contact: number) =>
      piece.wires
        .flatMap(({ ends }) => ends)
        .filter((end) => end !== "loose" && sameEnd(end, { part: part.id, contact })).length;
    const { width, height } = scene.parts.get(part.id)?.shape ?? freshShape(part, place.turned, landed);
    return [{ x: place.x + dx, y: place.y + dy, width, height }];
  });
  const there = [...scene.parts.values()].map((one) => ({ ...one.shape, x: one.x, y: one.y }));
  let down = 0;
  // Each round lands below one more of the parts that are there, so there are no more rounds than parts.
  for (let round = 0; round <= there.length; round++) {
    let further = 0;
    for (const own of placed) {
      for (const other of there) {
        if (!meets({ ...own, y: own.y + down }, other, ROOM)) continue;
        further = Math.max(further, other.y + other.height + ROW - (own.y + down));
      }
    }
    if (further === 0) break;
    down = snapUp(down + further);
  }
  return down;
}

function meets(a: Box, b: Box, room: number): boolean {
  return (
    a.x < b.x + b.width + room &&
    b.x < a.x + a.width + room &&
    a.y < b.y + b.height + room &&
    b.y < a.y + a.height + room
  );
}

function labelBoxes(scene: Scene, except?: ReadonlySet<WireId>): Box[] {
  const boxes: Box[] = [];
  for (const [id, { labels }] of scene.wires) {
    if (except?.has(id)) continue;
    for (const { x, y, width } of labels) {
      boxes.push({ x: x - width / 2, y: y - HALF_LABEL, width, height: 2 * HALF_LABEL });
    }
  }
  return boxes;
}

/** Room for a label with a tracer's letters in it, "W12 BU/WH 0.75", drawing units. */
const USUAL_LEAD = 96;

/**
 * Where a joint stands best between two contacts: on the row of the first, in one of two columns by turns, so
 * that the joint of the next row has its name where this row's leads carry no label.
 * @param lead room that the longer label of the two leads needs
 * @returns left edges, the best first
 */
export function jointColumns(from: Spot, to: Spot, width: number, lead: number): readonly number[] {
  const middle = (from.x + to.x) / 2 - width / 2;
  const gap = Math.abs(to.x - from.x);
  // With room to spare, leads with long and with short labels have their joints in the same columns.
  const room = gap >= 2 * (width + USUAL_LEAD) + USUAL_LEAD ? Math.max(lead, USUAL_LEAD) : lead;
  const apart = (width + room) / 2;
  const near = from.x <= to.x ? middle - apart : middle + apart;
  const far = 2 * middle - near;
  // A lead that has to bend towards the second contact needs the room there.
  const nearFirst = Math.abs(from.y - to.y) > 1 || Math.round(from.y / ROW) % 2 === 0;
  const halves = gap / 2 < apart + width / 2 + lead ? [middle] : [];
  return nearFirst ? [...halves, near, far] : [...halves, far, near];
}
