/**
 * What the wire router reads and writes: plain data in drawing units. x grows to the right, y downwards.
 */
export type Side = "left" | "right" | "top" | "bottom";

/** A part's rectangle. Only the last segment of its own wires may touch it. */
export type Block = {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/**
 * Where a wire leaves a block: a point on its boundary, the side it leaves from, and how far it goes
 * straight before its first bend, because its label stands there. With less room than that the straight
 * piece is shortened; it is never drawn through a neighbour.
 */
export type RouteEnd = {
  readonly block: string;
  readonly x: number;
  readonly y: number;
  readonly side: Side;
  readonly stub: number;
};

export type WireToRoute = {
  readonly id: string;
  readonly from: RouteEnd;
  readonly to: RouteEnd;
  readonly circuit: string;
  /** The wires of one twisted or shielded pair: routed side by side. */
  readonly bond?: string;
};

/** x1, y1, x2, y2, …: both ends included, every segment along an axis, no bend that bends nothing. */
export type Path = readonly number[];

export type RouteProblem = {
  readonly blocks: readonly Block[];
  readonly wires: readonly WireToRoute[];
  /** Paths to leave as they are while they still fit. */
  readonly kept: ReadonlyMap<string, Path>;
};

export type Routed = {
  readonly paths: ReadonlyMap<string, Path>;
  /** Wires with no clean way (a contact buried under another part, say). They still get a path. */
  readonly failed: readonly string[];
};

/** Parallel tracks keep this far apart where there is room. */
export const TRACK_SPACING = 8;
/** Tracks keep this far from parts where there is room. */
export const MARGIN = 8;
/** Closer than this, two parallel tracks read as one line. */
export const SAME_TRACK = 1;
