import type { Readings, Volts } from "../../electrical/operate/readings.ts";
import { contactKey, contactsOf, keyOfEnd } from "../../graph/contacts.ts";
import type { PartId, Path, Wire, WireId } from "../../graph/harness.ts";
import type { PlacedWire, Scene } from "../../layout/scene.ts";
import { textWidth } from "../../layout/text/measure.ts";
import type { Box } from "../canvas/hit-model.ts";
import { Crossings, freePieces, type Piece, Taken } from "./free-place.ts";
import { figureOf } from "./ink-model.ts";
import type { Overlay } from "./readings-store.ts";
import { NO_AMPS, writeVolts } from "./say-readings.ts";

export const FIGURE_SIZE = 11.5;
export const VOLTS_SIZE = 11;
/** Height of the paper that a figure stands on. */
export const BREAK = 13;
const ARROW = 11;
const PAD = 3;

/** A number in a break of a wire, and which way its current flows. */
export type WireFigure = {
  readonly wire: WireId;
  readonly text: string;
  /** Middle. */
  readonly x: number;
  readonly y: number;
  /** Along the wire, paper included. */
  readonly length: number;
  /** Written upwards, in an upright piece. */
  readonly upright: boolean;
  /** Over the wire, near its end, where no piece of it has room for a break. */
  readonly over: boolean;
  /** Towards greater x or y, or less; 0: no arrow. */
  readonly flow: 1 | -1 | 0;
  readonly strong: boolean;
  /** Times its usual size: seen from afar it is written larger. */
  readonly scale: number;
};

/** Volts beside a contact. */
export type ContactFigure = {
  readonly part: PartId;
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly align: "start" | "end";
  readonly standing: "volts" | "none" | "floating";
};

/** From the edge of a part, and above the wire: between the labels of two wires that leave a housing. */
const OFF = 4;
const ABOVE = 6;
/** The middle of a figure that stands there. */
const OVER = ABOVE + FIGURE_SIZE * 0.33;

/** Where along a piece a figure is tried, as shares of the room there is. */
const TRIES = [0.5, 0.25, 0.75, 0.1, 0.9, 0, 1];

/**
 * The figures of all wires in an overlay. Each stands in the longest piece of its wire that has room, on no other figure
 * and, where that can be had, on no crossing. Where no piece has room it stands over an end of the wire.
 */
export function wireFigures(scene: Scene, readings: Readings, overlay: Overlay): readonly WireFigure[] {
  if (overlay === "volts") return [];
  const taken = new Taken();
  const crossings = crossingsOf(scene);
  return figuresOf(scene, readings, overlay, 1, (placed, length) => {
    const pieces = freePieces(placed);
    return bestSpot(pieces, length, crossings, taken) ?? overEnd(placed.path, length, taken);
  });
}

/**
 * Figures for a view so far off that they have to be written larger than the drawing: only those for which there is clear
 * room, so that none hides another wire or a part. Volts then stand in wires, for contacts are too small.
 * @param scale how much larger than usual
 */
export function farFigures(
  scene: Scene,
  readings: Readings,
  overlay: Overlay,
  scale: number,
): readonly WireFigure[] {
  const taken = new Taken();
  for (const { x, y, shape } of scene.parts.values()) {
    taken.add({ x, y, width: shape.width, height: shape.height });
  }
  const crossings = crossingsOf(scene);
  return figuresOf(scene, readings, overlay, scale, (placed, length) =>
    clearSpot(freePieces({ path: placed.path, labels: [] }), length, BREAK * scale, crossings, taken),
  );
}

/** How much larger than usual figures are written at a zoom so that they can be read; in steps, to be kept a while. */
export function scaleAt(zoom: number): number {
  return 2 ** (Math.ceil(4 * Math.log2(11 / FIGURE_SIZE / zoom)) / 4);
}

function figuresOf(
  scene: Scene,
  readings: Readings,
  overlay: Overlay,
  scale: number,
  spotFor: (placed: PlacedWire, length: number) => Spot | null,
): readonly WireFigure[] {
  const figures: WireFigure[] = [];
  for (const placed of scene.wires.values()) {
    const { wire } = placed;
    const reading = readings.wires.get(wire.id);
    if (!reading) continue;
    const text = overlay === "volts" ? voltsOf(readings, wire) : figureOf(overlay, reading);
    if (text === "") continue;
    const strong = overlay === "load" && (reading.percentOfAmpacity ?? 0) > 100;
    const flows = overlay === "amps" && Math.abs(reading.amps) >= NO_AMPS;
    const width = Math.ceil(textWidth(text, FIGURE_SIZE, strong ? "bold" : "regular"));
    const length = scale * (width + 2 * PAD + (flows ? ARROW : 0));
    const found = spotFor(placed, length);
    if (!found) continue;
    const { piece, middle, over } = found;
    figures.push({
      wire: wire.id,
      text,
      x: piece.upright ? piece.at : middle,
      y: piece.upright ? middle : piece.at,
      length,
      upright: piece.upright,
      over,
      flow: !flows ? 0 : reading.amps > 0 === piece.onward ? 1 : -1,
      strong,
      scale,
    });
  }
  return figures;
}

/** "12.4 V": the end that has more of them; "" for a wire without any. */
function voltsOf(readings: Readings, wire: Wire): string {
  let most = 0;
  for (const end of wire.ends) {
    const key = keyOfEnd(end);
    const volts = key === null ? undefined : readings.contacts.get(key);
    if (typeof volts === "number" && Math.abs(volts) > Math.abs(most)) most = volts;
  }
  return Math.abs(most) < 0.5 ? "" : `${most.toFixed(1).replace("-", "−")} V`;
}

type Spot = { readonly piece: Piece; readonly middle: number; readonly over: boolean };

function bestSpot(pieces: readonly Piece[], length: number, crossings: Crossings, taken: Taken): Spot | null {
  let best: Spot | null = null;
  let fewest = Number.POSITIVE_INFINITY;
  search: for (const piece of pieces) {
    const room = piece.to - piece.from - length;
    if (room < 0) break;
    for (const share of TRIES) {
      const start = piece.from + share * room;
      const middle = start + length / 2;
      if (!taken.isFree(boxAt(piece, middle, length))) continue;
      const hidden = crossings.across(piece, start, start + length);
      if (hidden < fewest) {
        fewest = hidden;
        best = { piece, middle, over: false };
      }
      if (hidden === 0) break search;
    }
  }
  if (best) taken.add(boxAt(best.piece, best.middle, length));
  return best;
}

/** The first place where nothing but the wire itself lies under a figure. */
function clearSpot(
  pieces: readonly Piece[],
  length: number,
  height: number,
  crossings: Crossings,
  taken: Taken,
): Spot | null {
  for (const piece of pieces) {
    // Some of the wire shows on each side, or it would be taken for two.
    const from = piece.from + height;
    const room = piece.to - height - from - length;
    if (room < 0) break;
    for (const share of TRIES) {
      const middle = from + share * room + length / 2;
      const box = boxAt(piece, middle, length, height);
      if (!taken.isFree(box) || !crossings.isClear(piece, box)) continue;
      taken.add(box);
      return { piece, middle, over: false };
    }
  }
  return null;
}

/** Over the first or last piece of a wire, where it leaves a part. */
function overEnd(path: Path, length: number, taken: Taken): Spot | null {
  const last = path.length - 2;
  const ends = [
    [0, 2, true],
    [last, last - 2, false],
  ] as const;
  for (const [end, next, first] of ends) {
    const [x, y, far, farY] = [path[end]!, path[end + 1]!, path[next]!, path[next + 1]!];
    if (y !== farY || Math.abs(far - x) < length / 2) continue;
    const rightwards = far > x;
    const middle = x + (rightwards ? 1 : -1) * (OFF + length / 2);
    const onward = rightwards === first;
    const piece: Piece = {
      upright: false,
      at: y - OVER,
      from: Math.min(x, far),
      to: Math.max(x, far),
      onward,
    };
    const box = boxAt(piece, middle, length);
    if (!taken.isFree(box)) continue;
    taken.add(box);
    return { piece, middle, over: true };
  }
  return null;
}

function boxAt({ upright, at }: Piece, middle: number, length: number, height = BREAK): Box {
  return upright
    ? { x: at - height / 2, y: middle - length / 2, width: height, height: length }
    : { x: middle - length / 2, y: at - height / 2, width: length, height };
}

const remembered = new WeakMap<Scene, Crossings>();

function crossingsOf(scene: Scene): Crossings {
  let made = remembered.get(scene);
  if (!made) {
    made = new Crossings(scene);
    remembered.set(scene, made);
  }
  return made;
}

/** Volts beside every contact that a wire lands on, or that has volts of its own. */
export function contactFigures(scene: Scene, readings: Readings): readonly ContactFigure[] {
  const figures: ContactFigure[] = [];
  const wired = wiredContacts(scene);
  for (const { part, shape, x, y } of scene.parts.values()) {
    for (const { number } of contactsOf(part)) {
      const key = contactKey(part.id, number);
      const volts = readings.contacts.get(key);
      const port = shape.ports.find((one) => one.contact === number);
      if (volts === undefined || !port) continue;
      if (!wired.has(key) && (volts === "floating" || Math.abs(volts) < 0.05)) continue;
      const left = port.side === "left";
      figures.push({
        part: part.id,
        ...sayShort(volts),
        x: x + port.x + (left ? -OFF : OFF),
        y: y + port.y - ABOVE,
        align: left ? "end" : "start",
      });
    }
  }
  return figures;
}

function sayShort(volts: Volts): Pick<ContactFigure, "text" | "standing"> {
  if (volts === "floating") return { text: "floats", standing: "floating" };
  return { text: `${writeVolts(volts)} V`, standing: Math.abs(volts) < 0.05 ? "none" : "volts" };
}

const wiredIn = new WeakMap<Scene, ReadonlySet<string>>();

function wiredContacts(scene: Scene): ReadonlySet<string> {
  let found = wiredIn.get(scene);
  if (!found) {
    const keys = new Set<string>();
    for (const { wire } of scene.wires.values())
      for (const end of wire.ends) if (end !== "loose") keys.add(contactKey(end.part, end.contact));
    found = keys;
    wiredIn.set(scene, found);
  }
  return found;
}
