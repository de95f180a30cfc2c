import type { Cable, Harness, WireId } from "../graph/harness.ts";
import type { Primitive } from "../layout/drawing.ts";
import type { PlacedWire, Scene } from "../layout/scene.ts";
import { circle, line, RULE } from "./part-drawing/pen.ts";
import { drawWire } from "./wire-drawing.ts";
import { type Piece, piecesOf, pointsOf } from "./wire-path.ts";

/** Wires of one cable are marked together where neighbours stand no farther apart than this. */
const REACH = 26;
const SHORTEST = 40;
const AROUND = 7;
const DASH = [5, 3] as const;

/**
 * What a cable adds to its wires: a shield as a dashed outline about them with its drain tied to it, coax as a
 * ring, a common jacket as a plain outline; on the longest stretch where they run side by side. Nothing where they do not.
 */
export function drawCable(cable: Cable, wires: readonly PlacedWire[]): readonly Primitive[] {
  if (cable.kind === "twisted-pair" || wires.length === 0) return [];
  const stretch = sharedStretch(wires);
  if (!stretch) return [];
  const { level, low, high, across } = stretch;
  const inset = Math.min(12, (high - low) / 6);
  const [from, to] = [low + inset, high - inset];
  const [near, far] = [Math.min(...across) - AROUND, Math.max(...across) + AROUND];
  const shielded = cable.kind !== "multicore";
  const items: Primitive[] = [
    {
      kind: "rectangle",
      ...(level
        ? { x: from, y: near, width: to - from, height: far - near }
        : { x: near, y: from, width: far - near, height: to - from }),
      radius: Math.min(AROUND, (far - near) / 2),
      stroke: { colour: "ink", width: RULE, ...(shielded ? { dash: DASH } : {}) },
    },
  ];
  if (cable.kind === "coax") {
    const [first] = across;
    for (const at of [from + 14, to - 14]) {
      items.push(level ? circle(at, first!, AROUND + 1) : circle(first!, at, AROUND + 1));
    }
  }
  const drain = wires.findIndex(({ wire }) => wire.id === cable.shield);
  if (drain >= 0) {
    const at = across[drain]!;
    const edge = Math.abs(at - near) < Math.abs(far - at) ? near : far;
    const along = from + 12;
    items.push(
      level ? line(along, at, along, edge) : line(at, along, edge, along),
      level ? circle(along, edge, 2, { fill: "ink" }) : circle(edge, along, 2, { fill: "ink" }),
    );
  }
  return items;
}

type Stretch = {
  readonly level: boolean;
  readonly low: number;
  readonly high: number;
  readonly across: readonly number[];
};

/** The longest stretch along which all wires run side by side, and where each lies across it. */
function sharedStretch(wires: readonly PlacedWire[]): Stretch | null {
  const [first, ...rest] = wires.map(({ path }) => piecesOf(pointsOf(path)));
  let best: Stretch | null = null;
  for (const piece of first ?? []) {
    const [along, acrossAxis] = piece.level ? (["x", "y"] as const) : (["y", "x"] as const);
    let low = Math.min(piece.a[along], piece.b[along]);
    let high = Math.max(piece.a[along], piece.b[along]);
    const across = [piece.a[acrossAxis]];
    for (const pieces of rest) {
      const beside = nearest(pieces, piece, low, high, wires.length * REACH);
      if (!beside) {
        high = low;
        break;
      }
      low = Math.max(low, Math.min(beside.a[along], beside.b[along]));
      high = Math.min(high, Math.max(beside.a[along], beside.b[along]));
      across.push(beside.a[acrossAxis]);
    }
    const sorted = [...across].sort((one, other) => one - other);
    const together = sorted.every((at, i) => i === 0 || at - sorted[i - 1]! <= REACH);
    if (!together || high - low < SHORTEST) continue;
    if (!best || high - low > best.high - best.low) best = { level: piece.level, low, high, across };
  }
  return best;
}

function nearest(
  pieces: readonly Piece[],
  to: Piece,
  low: number,
  high: number,
  reach: number,
): Piece | null {
  const [along, across] = to.level ? (["x", "y"] as const) : (["y", "x"] as const);
  let best: Piece | null = null;
  let least = reach;
  for (const piece of pieces) {
    if (piece.level !== to.level) continue;
    const from = Math.max(low, Math.min(piece.a[along], piece.b[along]));
    const until = Math.min(high, Math.max(piece.a[along], piece.b[along]));
    const off = Math.abs(piece.a[across] - to.a[across]);
    if (until - from < SHORTEST || off >= least) continue;
    least = off;
    best = piece;
  }
  return best;
}

/** Cables of a harness by the wires in them, the shield's own wire among them. */
export function cablesByWire(harness: Pick<Harness, "cables">): ReadonlyMap<WireId, Cable> {
  const found = new Map<WireId, Cable>();
  for (const cable of Object.values(harness.cables)) {
    for (const id of cable.wires) found.set(id, cable);
    if (cable.shield) found.set(cable.shield, cable);
  }
  return found;
}

/** The other wire of a twisted pair that this wire winds about; `null` for all other wires. */
export function partnerOf(id: WireId, cable: Cable | null, scene: Pick<Scene, "wires">): PlacedWire | null {
  if (!cable || (cable.kind !== "twisted-pair" && cable.kind !== "shielded-pair")) return null;
  if (cable.wires.length !== 2) return null;
  const other = cable.wires.find((one) => one !== id);
  return cable.wires.includes(id) && other ? (scene.wires.get(other) ?? null) : null;
}

/** Every wire of a scene with what its cable adds; labels last, so that no wire is drawn over one. */
export function drawWires(
  scene: Pick<Scene, "wires">,
  harness: Pick<Harness, "cables">,
): readonly Primitive[] {
  const cables = cablesByWire(harness);
  const under: Primitive[] = [];
  for (const cable of Object.values(harness.cables)) {
    const ids =
      cable.shield && !cable.wires.includes(cable.shield) ? [...cable.wires, cable.shield] : cable.wires;
    const wires = ids.flatMap((id) => scene.wires.get(id) ?? []);
    under.push(...drawCable(cable, wires));
  }
  const drawn: Primitive[] = [];
  const labels: Primitive[] = [];
  for (const [id, placed] of scene.wires) {
    const cable = cables.get(id) ?? null;
    const items = drawWire(placed, { cable, partner: partnerOf(id, cable, scene) });
    const own = placed.labels.length * 2;
    drawn.push(...items.slice(0, items.length - own));
    labels.push(...items.slice(items.length - own));
  }
  return [...under, ...drawn, ...labels];
}
