import type { Circuit } from "./circuit.ts";
import type { Prepared } from "./prepare.ts";
import { type Settled, settle } from "./settle.ts";

/** Where the relays of a circuit came to rest, or did not. */
export type RelayRest = {
  readonly settled: Settled;
  /** [elements] 1 where a coil is pulled. */
  readonly pulled: Uint8Array;
  /** Coils that never come to rest; they are shown released. */
  readonly chattering: readonly number[];
  /** Coils of which all at once never come to rest, but one after another do: which one wins is a matter of time. */
  readonly racing: readonly number[];
};

/** Rounds in which all relays move at once. A cascade takes one for each relay in line. */
const MOST_ROUNDS = 256;
/** Rounds in which some wait: enough to part a thousand pairs that race. */
const MOST_ROUNDS_APART = 24;

/**
 * Lets relays pull and drop until none changes, all at once in each round. Where that goes round in a circle, some are
 * made to wait in each round, which ends a race; those that keep changing even so are chattering.
 * @param from [elements] 1 where a coil is pulled to begin with
 */
export function restRelays(
  prepared: Prepared,
  circuit: Circuit,
  from: Uint8Array,
  startVolts: Float64Array | null,
): RelayRest {
  const together = moveTogether(prepared, circuit, from, startVolts);
  if (together.moving.length === 0) return { ...together, chattering: [], racing: [] };
  const apart = moveApart(prepared, circuit, together);
  if (apart.moving.length === 0) return { ...apart, chattering: [], racing: together.moving };
  const pulled = apart.pulled.slice();
  for (const coil of apart.moving) pulled[coil] = 0;
  const settled = settle(prepared, circuit, pulled, apart.settled.volts);
  return { settled, pulled, chattering: apart.moving, racing: [] };
}

type Moved = {
  readonly settled: Settled;
  readonly pulled: Uint8Array;
  /** Coils that keep changing; empty at rest. */
  readonly moving: readonly number[];
};

function moveTogether(
  prepared: Prepared,
  circuit: Circuit,
  from: Uint8Array,
  startVolts: Float64Array | null,
): Moved {
  const { coils } = prepared;
  const met = new Map<string, number>();
  const path: Uint8Array[] = [];
  let pulled = from;
  let settled = settle(prepared, circuit, pulled, startVolts);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const key = coils.map((coil) => pulled[coil]).join("");
    const before = met.get(key);
    if (before !== undefined) return { settled, pulled, moving: differing(coils, path.slice(before)) };
    met.set(key, path.length);
    path.push(pulled);
    const changed = changing(prepared, circuit, pulled, settled);
    if (changed.length === 0) return { settled, pulled, moving: [] };
    pulled = turned(pulled, changed);
    settled = settle(prepared, circuit, pulled, settled.volts);
  }
  return { settled, pulled, moving: differing(coils, path.slice(path.length >> 1)) };
}

/** The same from a circle on, but each of its coils waits in every other round or so, by a fixed pattern of its own. */
function moveApart(prepared: Prepared, circuit: Circuit, circle: Moved): Moved {
  const circling = new Set(circle.moving);
  const late: Uint8Array[] = [];
  let { pulled, settled } = circle;
  for (let round = 0; round < MOST_ROUNDS_APART; round++) {
    const changed = changing(prepared, circuit, pulled, settled);
    if (changed.length === 0) return { settled, pulled, moving: [] };
    const going = changed.filter((coil) => !circling.has(coil) || !waits(coil, round));
    // Somebody has to go.
    pulled = turned(pulled, going.length ? going : changed.slice(0, 1));
    settled = settle(prepared, circuit, pulled, settled.volts);
    if (round * 2 >= MOST_ROUNDS_APART) late.push(pulled);
  }
  const moving = [
    ...new Set([...differing(prepared.coils, late), ...changing(prepared, circuit, pulled, settled)]),
  ];
  return { settled, pulled, moving: moving.sort((a, b) => a - b) };
}

/** As good as a coin, but the same each time. */
function waits(coil: number, round: number): boolean {
  const mixed = Math.imul(Math.imul(coil + 1, 0x9e3779b1) ^ Math.imul(round + 1, 0x85ebca6b), 0xc2b2ae35);
  return ((mixed ^ (mixed >>> 15)) & 0x100) !== 0;
}

const changing = (prepared: Prepared, circuit: Circuit, pulled: Uint8Array, settled: Settled) =>
  prepared.coils.filter((coil) => wants(circuit, coil, pulled, settled.volts) !== pulled[coil]);

function turned(pulled: Uint8Array, coils: readonly number[]): Uint8Array {
  const next = pulled.slice();
  for (const coil of coils) next[coil] = 1 - next[coil]!;
  return next;
}

function differing(coils: readonly number[], states: readonly Uint8Array[]): readonly number[] {
  return coils.filter((coil) => states.some((state) => state[coil] !== states[0]![coil]));
}

/** 1 if a coil would be pulled at these volts. Between drop-out and pull-in it stays as it is. */
function wants(circuit: Circuit, coil: number, pulled: Uint8Array, volts: Float64Array): number {
  const element = circuit.elements[coil]!;
  if (element.kind !== "coil") return 0;
  const across_V = Math.abs(volts[element.from]! - volts[element.to]!);
  if (across_V >= element.pullIn_V) return 1;
  return across_V < element.dropOut_V ? 0 : pulled[coil]!;
}

/** Up to this many coils times unknowns each coil is tried by itself unasked: some milliseconds of work. */
const TRIED_UNASKED = 15_000;

/**
 * Coils that would stay the other way, had they been so: those that hold themselves (or hold each other, or are held in
 * by less than would pull them). Each is turned over by itself and watched; in a large circuit, only all at once.
 * @param each whether to turn over each; "if-small" leaves it to the size of the circuit
 */
export function holdingRelays(
  prepared: Prepared,
  circuit: Circuit,
  rest: RelayRest,
  each: boolean | "if-small",
): { readonly coils: readonly number[]; readonly eachTried: boolean } {
  const { coils, ideal } = prepared;
  const found = new Set<number>();
  const watch = (state: Uint8Array) => {
    const settled = settle(prepared, circuit, state, rest.settled.volts);
    const next = turned(state, changing(prepared, circuit, state, settled));
    // Most fall back at once, and where they fall to is known.
    if (coils.every((coil) => next[coil] === rest.pulled[coil])) return;
    let other = moveTogether(prepared, circuit, next, settled.volts);
    // Two that lock each other out only circle when one of them is turned; both have to be.
    if (other.moving.length > 0)
      other = moveTogether(prepared, circuit, turned(rest.pulled, other.moving), settled.volts);
    if (other.moving.length > 0) return;
    for (const coil of coils) if (other.pulled[coil] !== rest.pulled[coil]) found.add(coil);
  };
  const eachTried = each === "if-small" ? coils.length * ideal.groupCount <= TRIED_UNASKED : each;
  if (eachTried) {
    for (const coil of coils) {
      if (!found.has(coil) && !rest.chattering.includes(coil)) watch(turned(rest.pulled, [coil]));
    }
  } else {
    for (const all of [0, 1])
      watch(
        turned(
          rest.pulled,
          coils.filter((coil) => rest.pulled[coil] !== all),
        ),
      );
  }
  return { coils: [...found].sort((a, b) => a - b), eachTried };
}
