import { functionOf } from "../catalogue/functions.ts";
import { contactKey, keyOfEnd } from "../graph/contacts.ts";
import type { Cavity, Harness, Part, PartId, Path, Wire, WireId } from "../graph/harness.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { captionWidth, headWidth, SMALL_TEXT } from "./geometry/caption.ts";
import {
  facesLeft,
  GRID,
  LABEL_CELL,
  LEAD_CELL,
  MARK_CELL,
  type Port,
  type Shape,
  shapeOf,
  snap,
  TEXT_PAD,
} from "./geometry/shape.ts";
import { labelText, type PlacedLabel, placeLabels, stubLength } from "./label.ts";
import { route } from "./route/route.ts";
import type { Block, RouteEnd, WireToRoute } from "./route/types.ts";
import { textWidth } from "./text/measure.ts";

export type PlacedPart = {
  readonly part: Part;
  readonly shape: Shape;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  readonly pinned: boolean;
};

export type PlacedWire = {
  readonly wire: Wire;
  readonly path: Path;
  readonly labels: readonly PlacedLabel[];
  /** Where an end hangs loose. */
  readonly loose: { readonly x: number; readonly y: number } | null;
  readonly circuit: number;
};

/** Everything that stands on the drawing, and where: what the canvas shows and the sheet prints. */
export type Scene = {
  readonly parts: ReadonlyMap<PartId, PlacedPart>;
  readonly wires: ReadonlyMap<WireId, PlacedWire>;
  /** Wires for which no clean way was found; they are drawn all the same. */
  readonly failed: readonly string[];
  readonly bounds: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
};

export const CAVITY_TEXT_SIZE = 13;
const LOOSE_LENGTH = 24;
/**
 * A symbol draws nothing this near to its upper and lower edge, so the wire of the next cavity row, which runs along
 * that very edge, may go straight on.
 */
const AIR = 4;
/** Small parts need no room for a label of their own; a wire at least leaves them straight for this far. */
const SHORT_STUB = 16;

/** "constant feed", or the chart's own words where the function is not known. */
export function cavityText(cavity: { readonly function: string; readonly text: string }): string {
  if (cavity.function === "unknown") return cavity.text;
  return functionOf(cavity.function).name;
}

/** The word that stands at the far end of a row whose cavity is out of the ordinary; "" for all others. */
export function wordsOfUse(cavity: { readonly use: Cavity["use"] }): string {
  return cavity.use === "expected" ? "" : cavity.use;
}

const widths = new WeakMap<Part, number>();

function innerWidth(part: Part): number {
  if (part.kind !== "connector" && part.kind !== "module") return captionWidth(part);
  const known = widths.get(part);
  if (known !== undefined) return known;
  let widest = headWidth(part) - LABEL_CELL - LEAD_CELL - MARK_CELL - TEXT_PAD;
  for (const cavity of part.cavities) {
    const use = wordsOfUse(cavity);
    const tag = use === "" ? 0 : textWidth(use, SMALL_TEXT, "regular") + 12;
    widest = Math.max(widest, textWidth(cavityText(cavity), CAVITY_TEXT_SIZE, "regular") + tag);
  }
  widths.set(part, widest);
  return widest;
}

const ONE = 1;

/** The outlines of all parts, given how many wires land on each of their contacts. */
export function shapesOf(harness: Harness): Map<PartId, Shape> {
  const counts = new Map<string, number>();
  for (const wire of Object.values(harness.wires)) {
    for (const end of wire.ends) {
      const key = keyOfEnd(end);
      if (key) counts.set(key, (counts.get(key) ?? 0) + 1);
    }
  }
  const shapes = new Map<PartId, Shape>();
  for (const part of Object.values(harness.parts)) {
    const turned = harness.layout.places[part.id]?.turned ?? false;
    const count = (contact: number) => counts.get(contactKey(part.id, contact)) ?? ONE;
    shapes.set(part.id, shapeOf(part, turned, count, innerWidth(part)));
  }
  return shapes;
}

/**
 * Lays out a harness: where each part stands, how each wire runs, where its labels are. A pure function of the
 * harness: saved places and paths are kept as they are, what has none is placed and routed.
 */
export function makeScene(harness: Harness, traced: Traced = trace(harness)): Scene {
  const parts = placeParts(harness, shapesOf(harness));
  const ports = assignPorts(harness, parts);
  const blocks: Block[] = [...parts.values()].map(({ part, shape, x, y }) => {
    const air = part.kind === "connector" || part.kind === "module" ? 0 : AIR;
    return { id: part.id, x, y: y + air, width: shape.width, height: shape.height - 2 * air };
  });
  const bonds = new Map<string, string>();
  for (const cable of Object.values(harness.cables)) {
    if (cable.kind === "multicore") continue;
    for (const id of cable.wires) bonds.set(id, cable.id);
    if (cable.shield) bonds.set(cable.shield, cable.id);
  }
  const toRoute: WireToRoute[] = [];
  const looseAt = new Map<WireId, { x: number; y: number }>();
  const texts = new Map<WireId, string>();
  for (const wire of Object.values(harness.wires)) {
    const text = labelText(wire, harness.settings.sizes);
    texts.set(wire.id, text);
    const ends = wire.ends.map((_, index) => ports.get(`${wire.id}/${index}`) ?? null);
    const near = ends[0] ?? ends[1];
    if (!near) continue;
    const stub = stubLength(text);
    const from = routeEnd(ends[0] ?? near, stub);
    let to: RouteEnd;
    if (ends[0] && ends[1]) to = routeEnd(ends[1], stub);
    else {
      to = looseEnd(from, stub + LOOSE_LENGTH, wire.id);
      looseAt.set(wire.id, { x: to.x, y: to.y });
      blocks.push({
        id: to.block,
        x: to.side === "left" ? to.x : to.x - GRID,
        y: to.y - GRID / 2,
        width: GRID,
        height: GRID,
      });
    }
    const bond = bonds.get(wire.id);
    const circuit = String(traced.circuitOfWire(wire.id)?.id ?? wire.id);
    toRoute.push({ id: wire.id, from, to, circuit, ...(bond ? { bond } : {}) });
  }
  const routed = route({ blocks, wires: toRoute, kept: new Map(Object.entries(harness.layout.paths)) });
  const wires = new Map<WireId, PlacedWire>();
  for (const wire of Object.values(harness.wires)) {
    const path = routed.paths.get(wire.id);
    if (!path) continue;
    wires.set(wire.id, {
      wire,
      path,
      labels: placeLabels(path, texts.get(wire.id) ?? ""),
      loose: looseAt.get(wire.id) ?? null,
      circuit: traced.circuitOfWire(wire.id)?.id ?? -1,
    });
  }
  return { parts, wires, failed: routed.failed, bounds: boundsOf(parts, wires) };
}

type Ported = { readonly placed: PlacedPart; readonly port: Port };

function routeEnd({ placed, port }: Ported, labelStub: number): RouteEnd {
  const { kind } = placed.part;
  const stub = kind === "connector" || kind === "module" ? labelStub : Math.max(SHORT_STUB, labelStub);
  return { block: placed.part.id, x: placed.x + port.x, y: placed.y + port.y, side: port.side, stub };
}

function looseEnd(from: RouteEnd, length: number, wire: string): RouteEnd {
  const sign = from.side === "left" ? -1 : 1;
  return {
    block: `loose:${wire}`,
    x: from.x + sign * length,
    y: from.y,
    side: sign > 0 ? "left" : "right",
    stub: 0,
  };
}

/** Saved places first; what has none is stacked beside them: vehicle left, equipment right, joints between. */
function placeParts(harness: Harness, shapes: ReadonlyMap<PartId, Shape>): Map<PartId, PlacedPart> {
  const placed = new Map<PartId, PlacedPart>();
  const waiting: Part[] = [];
  let bottom = 0;
  for (const part of Object.values(harness.parts)) {
    const place = harness.layout.places[part.id];
    const shape = shapes.get(part.id)!;
    if (!place) {
      waiting.push(part);
      continue;
    }
    placed.set(part.id, { part, shape, x: place.x, y: place.y, turned: place.turned, pinned: place.pinned });
    bottom = Math.max(bottom, place.y + shape.height + 6 * GRID);
  }
  const next = new Map<string, number>();
  for (const part of waiting) {
    const shape = shapes.get(part.id)!;
    const column = columnOf(part);
    const y = snap(next.get(column) ?? bottom);
    next.set(column, y + shape.height + 3 * GRID);
    const x = column === "vehicle" ? 0 : column === "between" ? 560 : 960;
    placed.set(part.id, { part, shape, x, y, turned: false, pinned: false });
  }
  return placed;
}

/** Which column of the drawing a part belongs to. */
export function columnOf(part: Part): "vehicle" | "between" | "equipment" {
  if (part.kind === "connector") return part.belongsTo.side;
  if (part.kind === "module") return part.role === "interface" ? "between" : part.side;
  if (part.kind === "supply") return "vehicle";
  if (part.kind === "load" || part.kind === "speaker") return "equipment";
  return "between";
}

/**
 * Gives each wire end a port. Wires that share a contact are ordered by how high their other ends stand, so
 * that they do not cross on leaving.
 */
function assignPorts(harness: Harness, parts: ReadonlyMap<PartId, PlacedPart>): Map<string, Ported> {
  type Waiting = { key: string; far: number };
  const byContact = new Map<string, Waiting[]>();
  const heightOf = (end: Wire["ends"][number]): number => {
    if (end === "loose") return Number.POSITIVE_INFINITY;
    const placed = parts.get(end.part);
    const port = placed?.shape.ports.find((one) => one.contact === end.contact);
    return placed && port ? placed.y + port.y : 0;
  };
  for (const wire of Object.values(harness.wires)) {
    for (const [index, end] of wire.ends.entries()) {
      const key = keyOfEnd(end);
      if (!key) continue;
      const list = byContact.get(key) ?? [];
      list.push({ key: `${wire.id}/${index}`, far: heightOf(wire.ends[1 - index]!) });
      byContact.set(key, list);
    }
  }
  const ports = new Map<string, Ported>();
  for (const placed of parts.values()) {
    for (const port of placed.shape.ports) {
      const list = byContact.get(contactKey(placed.part.id, port.contact));
      if (!list) continue;
      if (port.slot === 0 && list.length > 1) list.sort((a, b) => a.far - b.far);
      const waiting = list[port.slot];
      if (waiting) ports.set(waiting.key, { placed, port });
    }
  }
  return ports;
}

function boundsOf(
  parts: ReadonlyMap<PartId, PlacedPart>,
  wires: ReadonlyMap<WireId, PlacedWire>,
): Scene["bounds"] {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  const take = (x: number, y: number) => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  };
  for (const { shape, x, y } of parts.values()) {
    take(x, y);
    take(x + shape.width, y + shape.height);
  }
  for (const { path } of wires.values()) {
    for (let i = 0; i + 1 < path.length; i += 2) take(path[i]!, path[i + 1]!);
  }
  if (left > right) return { x: 0, y: 0, width: 0, height: 0 };
  return { x: left, y: top, width: right - left, height: bottom - top };
}

export { facesLeft };
