import type { Readings, ReadingWarning, WarningCode } from "../../electrical/operate/readings.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import type { About, Finding } from "../../rules/rule.ts";
import { freePieces } from "./free-place.ts";

/** Beside a part or on a wire: what is wrong with it in this state, by shape and word. */
export type WarningTag = {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly about: About;
  readonly severity: Finding["severity"];
  readonly word: string;
  /** All that there is to say, in sentences. */
  readonly words: string;
};

/** Beside a part: how it stands, quietly. */
export type StateTag = {
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly align: "start" | "end";
  readonly word: string;
  readonly on: boolean;
};

const SHOWN: Readonly<Record<WarningCode, readonly [Finding["severity"], string]>> = {
  "dead-short": ["danger", "short"],
  "conflicting-supplies": ["danger", "feeds fight"],
  "fuse-opens": ["danger", "opens"],
  "wire-overloaded": ["danger", "overloaded"],
  "source-overloaded": ["fault", "overdrawn"],
  "back-fed": ["fault", "fed from behind"],
  "load-reversed": ["fault", "reversed"],
  "output-at-limit": ["weak", "at its limit"],
  "load-starved": ["fault", "too few volts"],
  "relay-chatters": ["fault", "chatters"],
  "relays-race": ["weak", "races"],
  "relay-holds": ["weak", "holds itself"],
  "fuse-full": ["weak", "full"],
  "box-restless": ["fault", "never rests"],
  "not-settled": ["weak", "not settled"],
};

/** The lower left corner of a part, and below it. */
const BELOW = 3;
/** From the middle of a wire. */
const BESIDE = 8;

/** One tag for each thing that is warned of, by the first and worst warning; the words hold all of them. */
export function warningTags(scene: Scene, warnings: readonly ReadingWarning[]): readonly WarningTag[] {
  const tags = new Map<string, WarningTag>();
  for (const { code, words, about } of warnings) {
    const [first] = about;
    if (first === undefined) continue;
    const known = tags.get(first);
    if (known) {
      tags.set(first, { ...known, words: `${known.words} ${words}` });
      continue;
    }
    const spot = spotOf(scene, first);
    const [severity, word] = SHOWN[code];
    if (spot) tags.set(first, { key: first, ...spot, severity, word, words });
  }
  return [...tags.values()];
}

function spotOf(scene: Scene, id: PartId | WireId): Pick<WarningTag, "x" | "y" | "about"> | null {
  const placed = scene.parts.get(id as PartId);
  if (placed) {
    return { x: placed.x, y: placed.y + placed.shape.height + BELOW, about: { part: placed.part.id } };
  }
  const wire = scene.wires.get(id as WireId);
  if (!wire) return null;
  const about = { wire: wire.wire.id };
  const [piece] = freePieces(wire);
  if (!piece) return { x: wire.path[0]!, y: wire.path[1]!, about };
  const near = piece.from + 0.25 * (piece.to - piece.from);
  return piece.upright ? { x: piece.at + BESIDE, y: near, about } : { x: near, y: piece.at + BESIDE, about };
}

/**
 * Relays pulled and released, boxes awake and asleep: over the upper right corner. Loads on and off: on the side that no
 * wire leaves from.
 */
export function stateTags(scene: Scene, readings: Readings): readonly StateTag[] {
  const tags: StateTag[] = [];
  for (const { part, shape, x, y } of scene.parts.values()) {
    const at = { x: x + shape.width, y: y - 4, align: "end" } as const;
    const relay = readings.relays.get(part.id);
    if (relay) tags.push({ ...at, word: relay.pulled ? "pulled" : "released", on: relay.pulled });
    const awake = part.kind === "module" ? readings.awake.get(part.id) : undefined;
    if (awake !== undefined) tags.push({ ...at, word: awake ? "awake" : "asleep", on: awake });
    if (part.kind !== "load") continue;
    const load = readings.loads.get(`${part.id}#1`);
    if (!load) continue;
    const rightwards = shape.ports[0]?.side === "left";
    tags.push({
      x: rightwards ? x + shape.width + BELOW : x - BELOW,
      y: y + shape.height / 2 + 4,
      align: rightwards ? "start" : "end",
      word: load.works ? "on" : "off",
      on: load.works,
    });
  }
  return tags;
}
