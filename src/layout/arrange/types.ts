/** Where a wire meets a block, relative to the block's top left corner. */
export type ArrangePort = {
  readonly contact: number;
  readonly x: number;
  readonly y: number;
  readonly side: "left" | "right" | "top" | "bottom";
};

/** A part as the arranger sees it: an outline with ports, in drawing units. */
export type ArrangeBlock = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly ports: readonly ArrangePort[];
  /** Vehicle stands left, new equipment right, joints and protection between them. */
  readonly column: "vehicle" | "between" | "equipment";
  /** A person put it here: it stays exactly where it is. */
  readonly pinned: { readonly x: number; readonly y: number } | null;
  /** Room that the labels of its wires need on each side. */
  readonly stub: { readonly left: number; readonly right: number };
  /** Set where the part may be mirrored so that its contacts face what they are wired to. */
  readonly mayTurn?: boolean;
};

export type ArrangeWire = {
  readonly id: string;
  readonly from: { readonly block: string; readonly contact: number };
  readonly to: { readonly block: string; readonly contact: number };
};

export type ArrangeProblem = {
  readonly blocks: readonly ArrangeBlock[];
  readonly wires: readonly ArrangeWire[];
};

export type Arranged = {
  /** Top left corner of every block, pinned ones included. */
  readonly places: ReadonlyMap<string, { readonly x: number; readonly y: number }>;
  /** ELK's own orthogonal routes, x1, y1, …, absolute; only of wires whose blocks stand where ELK put them, not in a strip. */
  readonly paths: ReadonlyMap<string, readonly number[]>;
  /** Blocks that are to be mirrored compared with how they were given. Only those that `mayTurn`. */
  readonly turned: ReadonlySet<string>;
};

/** Told after each connected piece: how many of how many are arranged. */
export type ArrangeStep = (done: number, of: number) => void;

/** Places are multiples of this. */
export const GRID = 8;
/** No two blocks come closer than this, unless a person pinned them so. */
export const MARGIN = 16;

/** Up to the next place on the grid. */
export function gridUp(value: number): number {
  return Math.ceil(value / GRID - 1e-9) * GRID;
}

/** To the nearest place on the grid. */
export function gridNear(value: number): number {
  return Math.round(value / GRID) * GRID;
}
