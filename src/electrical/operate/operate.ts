import { type ContactKey, keysOf } from "../../graph/contacts.ts";
import type { Harness, PartId, Wire, WireId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import type { Solution } from "../solve/solve.ts";
import { AmpereTable, bookOf } from "./ampacity-of.ts";
import { Assumed, USUAL } from "./assumed.ts";
import type { Built } from "./built.ts";
import { type Ask, circuitOf } from "./circuit-of.ts";
import type { KeyState } from "./key-state.ts";
import { readParts } from "./read-parts.ts";
import type { Readings, Volts, WireReading } from "./readings.ts";
import { rewired } from "./rewire.ts";
import { settleBoxes } from "./settle-boxes.ts";
import { VoltsAt } from "./volts-at.ts";
import { warningsOf } from "./warnings.ts";

export type OperateOptions = Ask & {
  /** Readings of the same harness before an edit, or in another state: what still holds of them is used again. */
  readonly before?: Readings | null;
};

/** A wire that carries less than this heats no neighbour. @source common practice, no source */
export const LOADED_A = 0.1;

/**
 * What every contact, wire, fuse, relay, load and source of a harness shows in one state.
 *
 * The circuit decides what works: a box sleeps until a lead wakes it, and draws what it is stated to draw; a fuse is shown
 * with what flows through it, not blown. Where the harness does not say, something usual is taken, and listed.
 * @param traced of the same harness
 * @throws RangeError for a temperature or voltage asked for that is not a number
 */
export function operate(
  harness: Harness,
  traced: Pick<Traced, "wiresAt">,
  state: KeyState,
  options: OperateOptions = {},
): Readings {
  const { before = null, ...ask } = options;
  const first =
    (before && rewired({ ...before.solved, state: before.state }, harness, state, ask)) ??
    circuitOf(harness, traced, state, ask);
  const usual = { ...USUAL, ...ask.usual };
  const settled = settleBoxes(first, usual.wakes * first.nominal_V, before?.solved ?? null);
  const { built, solution, prepared } = settled;
  const reach = new VoltsAt(built, solution);
  const assumed = new Assumed();
  const parts = readParts(harness, built, solution, reach, usual);
  const wires = readWires(harness, built, solution, assumed);
  const readings: Omit<Readings, "warnings"> = {
    state,
    contacts: readContacts(harness, reach),
    wires,
    ...parts,
    awake: new Map(built.boxes.map((box, index) => [box.key, settled.awake[index]!])),
    assumptions: [...built.assumptions, ...assumed.list()],
    solved: { harness, ask, built, solution, prepared },
  };
  return { ...readings, warnings: warningsOf(readings, settled.restless) };
}

function readContacts(harness: Harness, reach: VoltsAt): ReadonlyMap<ContactKey, Volts> {
  const contacts = new Map<ContactKey, Volts>();
  let node = 1;
  for (const part of Object.values(harness.parts)) {
    for (const key of keysOf(part)) contacts.set(key, reach.volts(node++));
  }
  return contacts;
}

function readWires(
  harness: Harness,
  built: Built,
  solution: Solution,
  assumed: Assumed,
): ReadonlyMap<WireId, WireReading> {
  const loaded = loadedInRuns(harness, built, solution);
  const { book, isHeard } = bookOf(harness.settings.electrical.ampacityBook);
  if (!isHeard) assumed.note("book-unheard", null);
  const table = new AmpereTable(book, built.nominal_V);
  const wires = new Map<WireId, WireReading>();
  for (const [id, facts] of built.wires) {
    const amps = facts.element < 0 ? 0 : solution.amps[facts.element]!;
    const drop_V = Math.abs(amps) * facts.resistance_ohm;
    const { amperes, book: told } = table.find(
      facts,
      loaded === null ? 1 : neighbours(harness.wires[id]!, loaded),
    );
    if (told !== book) assumed.note("book-silent", id, told.name);
    wires.set(id, {
      amps,
      drop_V,
      watts: drop_V * Math.abs(amps),
      percentOfAmpacity: amperes === null ? null : (Math.abs(amps) / amperes) * 100,
    });
  }
  return wires;
}

/** How many wires of each run carry current at the same time; `null` where there are no runs. */
function loadedInRuns(
  harness: Harness,
  built: Built,
  solution: Solution,
): ReadonlyMap<string, number> | null {
  if (Object.keys(harness.runs).length === 0) return null;
  const loaded = new Map<string, number>();
  for (const [id, { element }] of built.wires) {
    if (element < 0 || Math.abs(solution.amps[element]!) < LOADED_A) continue;
    for (const run of harness.wires[id]!.runs) loaded.set(run, (loaded.get(run) ?? 0) + 1);
  }
  return loaded;
}

function neighbours(wire: Wire, loaded: ReadonlyMap<string, number>): number {
  let most = 1;
  for (const run of wire.runs) most = Math.max(most, loaded.get(run) ?? 0);
  return most;
}

/** Loaded conductors in the fullest run of a wire, itself included: what a book's bundle factor is read by. */
export function loadedBeside(readings: Readings, wire: WireId): number {
  const { harness, built, solution } = readings.solved;
  const found = harness.wires[wire];
  const loaded = loadedInRuns(harness, built, solution);
  return found && loaded ? neighbours(found, loaded) : 1;
}

/** The designation of a part or wire, for words. */
export function nameIn(harness: Pick<Harness, "parts" | "wires">): (id: string) => string {
  return (id) => harness.parts[id as PartId]?.designation ?? harness.wires[id as WireId]?.designation ?? id;
}
