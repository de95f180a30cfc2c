import type { PathCommand } from "../layout/drawing.ts";
import type { PlacedWire } from "../layout/scene.ts";
import { type Piece, piecesOf, pointsOf, rounded } from "./wire-path.ts";

/** One full turn of the pair: both wires cross to the other's track and back. */
const TURN = 32;
/** Turns drawn at each place. */
const TURNS = 2;
const CLEAR = 8;
/** Two wires farther apart than this are not drawn as twisted: they are not side by side there. */
const REACH = 26;
const BEND = 5;

export type Winding = {
  readonly commands: readonly PathCommand[];
  /** What stays straight: where a tracer can be drawn. */
  readonly straight: readonly Piece[];
};

type Stretch = { readonly from: number; readonly to: number };

/**
 * The route of one wire of a twisted pair, winding about its partner where the two run side by side, near both
 * ends of the longest such stretches.
 * @returns null where there is no partner or they are nowhere side by side for long enough
 */
export function twisted(placed: PlacedWire, partner: PlacedWire | null): Winding | null {
  if (!partner) return null;
  const points = pointsOf(placed.path);
  const pieces = piecesOf(points);
  const others = piecesOf(pointsOf(partner.path));
  const commands: PathCommand[] = [];
  const straight: Piece[] = [];
  let wound = false;
  for (const piece of pieces) {
    const beside = besidePiece(piece, others);
    const stretches = beside ? windings(piece, beside, [placed, partner]) : [];
    if (!beside || stretches.length === 0) {
      straight.push(piece);
      continue;
    }
    wound = true;
    straight.push(...remainder(piece, stretches));
  }
  if (!wound) return null;
  const base = rounded(points, BEND);
  // The rounded route keeps one "L" before each bend; the winding takes the place of part of that line.
  let index = 0;
  for (const command of base) {
    if (command[0] === "L") {
      const piece = pieces[index++];
      const beside = piece && besidePiece(piece, others);
      if (piece && beside) {
        for (const stretch of windings(piece, beside, [placed, partner])) {
          commands.push(...wind(piece, beside.offset, stretch));
        }
      }
    }
    commands.push(command);
  }
  return { commands, straight };
}

type Beside = { readonly low: number; readonly high: number; readonly offset: number };

/** Where a piece has a partner's piece beside it: the shared span along its axis, and how far off it lies. */
function besidePiece(piece: Piece, others: readonly Piece[]): Beside | null {
  let best: Beside | null = null;
  const [along, across] = piece.level ? (["x", "y"] as const) : (["y", "x"] as const);
  const [low, high] = [Math.min(piece.a[along], piece.b[along]), Math.max(piece.a[along], piece.b[along])];
  for (const other of others) {
    if (other.level !== piece.level) continue;
    const offset = other.a[across] - piece.a[across];
    if (offset === 0 || Math.abs(offset) > REACH) continue;
    const from = Math.max(low, Math.min(other.a[along], other.b[along]));
    const to = Math.min(high, Math.max(other.a[along], other.b[along]));
    if (to - from < TURN * TURNS + 2 * CLEAR) continue;
    if (!best || to - from > best.high - best.low) best = { low: from, high: to, offset };
  }
  return best;
}

/** The stretches of a shared span that wind, in the piece's direction: near both ends where there is room, never under a label. */
function windings(piece: Piece, beside: Beside, wires: readonly PlacedWire[]): readonly Stretch[] {
  const along = piece.level ? "x" : "y";
  const across = piece.level ? "y" : "x";
  let { low, high } = beside;
  for (const label of wires.flatMap((wire) => wire.labels)) {
    if (!piece.level || Math.abs(label[across] - piece.a[across]) > REACH) continue;
    const [from, to] = [label[along] - label.width / 2 - CLEAR, label[along] + label.width / 2 + CLEAR];
    if (to <= low || from >= high) continue;
    if (from - low > high - to) high = from;
    else low = to;
  }
  const long = TURN * TURNS;
  const room = high - low - 2 * CLEAR;
  if (room < long) return [];
  if (room < 3 * long) {
    const middle = (low + high) / 2;
    return [{ from: middle - long / 2, to: middle + long / 2 }];
  }
  const both = [
    { from: low + CLEAR, to: low + CLEAR + long },
    { from: high - CLEAR - long, to: high - CLEAR },
  ];
  return piece.b[along] > piece.a[along] ? both : both.reverse();
}

/** One stretch of winding, in the direction of the piece. */
function wind(piece: Piece, offset: number, stretch: Stretch): PathCommand[] {
  const forward = piece.level ? piece.b.x > piece.a.x : piece.b.y > piece.a.y;
  const base = piece.level ? piece.a.y : piece.a.x;
  const sign = forward ? 1 : -1;
  const half = TURN / 2;
  const put = (along: number, across: number): [number, number] =>
    piece.level ? [along, across] : [across, along];
  let at = forward ? stretch.from : stretch.to;
  const commands: PathCommand[] = [["L", ...put(at, base)]];
  for (let turn = 0; turn < TURNS * 2; turn++) {
    const [here, there] = turn % 2 === 0 ? [base, base + offset] : [base + offset, base];
    const next = at + sign * half;
    commands.push([
      "C",
      ...put(at + (sign * half) / 2, here),
      ...put(next - (sign * half) / 2, there),
      ...put(next, there),
    ]);
    at = next;
  }
  return commands;
}

function remainder(piece: Piece, stretches: readonly Stretch[]): Piece[] {
  const forward = piece.level ? piece.b.x > piece.a.x : piece.b.y > piece.a.y;
  const along = (point: Piece["a"]): number => (piece.level ? point.x : point.y);
  const marks = [
    along(piece.a),
    ...stretches.flatMap(({ from, to }) => (forward ? [from, to] : [to, from])),
    along(piece.b),
  ];
  const pieces: Piece[] = [];
  for (let i = 0; i + 1 < marks.length; i += 2) {
    const [from, to] = [marks[i]!, marks[i + 1]!];
    const [a, b] = piece.level
      ? [
          { x: from, y: piece.a.y },
          { x: to, y: piece.a.y },
        ]
      : [
          { x: piece.a.x, y: from },
          { x: piece.a.x, y: to },
        ];
    const length = Math.abs(to - from);
    if (length > 0) pieces.push({ a, b, length, level: piece.level });
  }
  return pieces;
}
