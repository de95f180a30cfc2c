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

/**
 * Lets relays pull and drop until none changes, all at once in each round. Where that goes round in a circle they are
 * let to change one at a time, and where that does too, those that keep changing are chattering.
 * @param from [elements] 1 where a coil is pulled to begin with
 */
export function restRelays(
  prepared: Prepared,
  circuit: Circuit,
  from: Uint8Array,
  startVolts: Float64Array | null,
): RelayRest {
  const together = follow(prepared, circuit, from, startVolts, false);
  if (together.moving.length === 0) return { ...together, chattering: [], racing: [] };
  const single = follow(prepared, circuit, from, startVolts, true);
  if (single.moving.length === 0) return { ...single, chattering: [], racing: together.moving };
  const pulled = single.pulled.slice();
  for (const coil of single.moving) pulled[coil] = 0;
  const settled = settle(prepared, circuit, pulled, single.settled.volts);
  return { settled, pulled, chattering: single.moving, racing: [] };
}

type Followed = {
  readonly settled: Settled;
  readonly pulled: Uint8Array;
  /** Coils that differ somewhere in the circle; empty at rest. */
  readonly moving: readonly number[];
};

function follow(
  prepared: Prepared,
  circuit: Circuit,
  from: Uint8Array,
  startVolts: Float64Array | null,
  oneAtATime: boolean,
): Followed {
  const { coils } = prepared;
  const met = new Map<string, number>();
  const path: Uint8Array[] = [];
  let pulled = from;
  let settled = settle(prepared, circuit, pulled, startVolts);
  // States could be met in twice as many ways as there are relays doubled; past this many the circle is not waited for.
  const mostRounds = 4 * coils.length + 16;
  for (let round = 0; round < mostRounds; round++) {
    const key = coils.map((coil) => pulled[coil]).join("");
    const before = met.get(key);
    if (before !== undefined) return { settled, pulled, moving: differing(coils, path.slice(before)) };
    met.set(key, path.length);
    path.push(pulled);
    const changed = coils.filter((coil) => wants(circuit, coil, pulled, settled.volts) !== pulled[coil]);
    if (changed.length === 0) return { settled, pulled, moving: [] };
    pulled = pulled.slice();
    // The one that is next in line after the last, so that no relay waits for ever.
    const turn = oneAtATime ? [changed.find((coil) => coil > lastTurn(path, coils)) ?? changed[0]!] : changed;
    for (const coil of turn) pulled[coil] = 1 - pulled[coil]!;
    settled = settle(prepared, circuit, pulled, settled.volts);
  }
  return { settled, pulled, moving: differing(coils, path.slice(path.length >> 1)) };
}

/** The coil that changed last on a path on which one changes at a time. */
function lastTurn(path: readonly Uint8Array[], coils: readonly number[]): number {
  const [one, other] = [path.at(-1), path.at(-2)];
  return coils.find((coil) => one && other && one[coil] !== other[coil]) ?? -1;
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

/** Past this many coils times unknowns, each coil is no longer tried by itself. */
const MOST_TRIED = 300_000;

/**
 * Coils that would stay the other way, had they been so: those that hold themselves (or hold each other, or are held in
 * by less than would pull them). Each is turned over by itself and watched; in a circuit too large for that, only all
 * at once.
 */
export function holdingRelays(
  prepared: Prepared,
  circuit: Circuit,
  rest: RelayRest,
): { readonly coils: readonly number[]; readonly eachTried: boolean } {
  const { coils, ideal } = prepared;
  const found = new Set<number>();
  const watch = (state: Uint8Array) => {
    const other = follow(prepared, circuit, state, rest.settled.volts, false);
    if (other.moving.length > 0) return;
    for (const coil of coils) if (other.pulled[coil] !== rest.pulled[coil]) found.add(coil);
  };
  const eachTried = coils.length * ideal.groupCount <= MOST_TRIED;
  if (eachTried) {
    for (const coil of coils) {
      if (found.has(coil) || rest.chattering.includes(coil)) continue;
      const state = rest.pulled.slice();
      state[coil] = 1 - state[coil]!;
      watch(state);
    }
  } else {
    for (const all of [0, 1]) {
      const state = rest.pulled.slice();
      for (const coil of coils) state[coil] = all;
      watch(state);
    }
  }
  return { coils: [...found].sort((a, b) => a - b), eachTried };
}
