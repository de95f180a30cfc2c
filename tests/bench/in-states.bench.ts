import { type InStates, inStates } from "../../src/electrical/operate/in-states/in-states.ts";
import { contactKey, contactsOf } from "../../src/graph/contacts.ts";
import type { Cavity, End, Harness, Part, PartId, Wire, WireId } from "../../src/graph/harness.ts";
import { makePart, makeWire } from "../../src/graph/make.ts";
import { trace } from "../../src/graph/trace.ts";
import { generate } from "./generate.ts";

/**
 * All that rules could ask of all states: from nothing, after one edit of each kind, and with each ground opened in turn.
 * Stations as the vehicle feeds them, each by its own leads; and all of them fed by one battery, which joins them all.
 */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const [name, size, isFedByOne] of [
    ["apart", 1000, false],
    ["apart", 10_000, false],
    ["on one battery", 1000, true],
    ["on one battery", 10_000, true],
  ] as const) {
    const harness = varied(generate(size, 0), isFedByOne);
    const traced = trace(harness);
    const rounds = size > 5000 ? 3 : 12;
    const first = inStates(harness, traced);
    const cold = times(rounds, () => {
      const copy = copied(harness);
      return () => askAll(inStates(copy, traced), copy);
    });
    const wires = Object.keys(harness.wires).length;
    lines.push(`${wires} wires, ${name}, ${first.states.length} states: cold ${cold}`);
    for (const [kind, edit] of EDITS) {
      // Each from the same harness, so that edits do not add up.
      askAll(first, harness);
      const took = times(rounds, (round) => {
        const now = edit(harness, round);
        const traced = trace(now);
        return () => askAll(inStates(now, traced, first), now);
      });
      lines.push(`  after ${kind}: ${took}`);
    }
    const grounds = Object.values(harness.parts)
      .filter(({ kind }) => kind === "ground")
      .slice(0, MOST_OPENED);
    const opened = times(size > 5000 ? 2 : 6, () => {
      const states = inStates(copied(harness), traced);
      askAll(states, harness);
      return () => {
        for (const { id } of grounds)
          for (const state of states.states) {
            const view = states.withOpen({ part: id }, state);
            view.volts(contactKey(id, 1));
          }
      };
    });
    lines.push(`  ${grounds.length} grounds opened, each in turn, in all states: ${opened}`);
  }
  return lines;
}

/** Volts of every contact, amperes of every wire, fuse, relay, load and source, and all warnings, in every state. */
function askAll(states: InStates, harness: Harness): number {
  let sum = 0;
  for (const state of states.states) {
    const view = states.at(state);
    for (const id in harness.parts) {
      const part = harness.parts[id as PartId]!;
      if (part.kind === "fuse") sum += view.fuse_A(part.id)!;
      else if (part.kind === "relay") sum += view.relay(part.id)!.coil_A;
      else if (part.kind === "load") sum += view.load(contactKey(part.id, 1))!.amps;
      else if (part.kind === "module") sum += view.isAwake(part.id) ? 1 : 0;
      if (part.kind !== "connector") continue;
      for (const { number } of contactsOf(part)) {
        const volts = view.volts(contactKey(part.id, number));
        if (volts !== "floating") sum += volts;
      }
    }
    sum += view.warnings.length;
  }
  for (const id in harness.wires) sum += states.mostThrough(id as WireId).amps;
  return sum;
}

/** Lengths that differ, so that no two stations are alike; loads that draw; and one battery for all, where asked. */
function varied(harness: Harness, isFedByOne: boolean): Harness {
  const wires: Record<WireId, Wire> = {};
  let place = 0;
  for (const wire of Object.values(harness.wires))
    wires[wire.id] = { ...wire, length_m: 0.3 + ((place++ * 7) % 23) / 10 };
  const parts: Record<PartId, Part> = {};
  for (const part of Object.values(harness.parts)) parts[part.id] = drawing(part, isFedByOne);
  if (!isFedByOne) return { ...harness, parts, wires };
  const battery = makePart("supply", "p:battery" as PartId, "G1", { voltage_V: 12 });
  const stud = makePart("ground", "p:post" as PartId, "XE0", {});
  parts[battery.id] = battery;
  parts[stud.id] = stud;
  const join = (name: string, from: End, to: End, area_mm2: number) => {
    const id = `w:${name}` as WireId;
    wires[id] = makeWire(id, name, [from, to], { area_mm2, length_m: 1.5 });
  };
  join("minus", { part: battery.id, contact: 2 }, { part: stud.id, contact: 1 }, 25);
  let rail: End = { part: battery.id, contact: 1 };
  let count = 0;
  for (const part of Object.values(harness.parts)) {
    if (part.kind !== "connector" || part.belongsTo.side !== "vehicle") continue;
    const fuse = makePart("fuse", `p:feed${++count}` as PartId, `FB${count}`, { rating_A: 15 });
    parts[fuse.id] = fuse;
    join(`rail${count}`, rail, { part: fuse.id, contact: 1 }, 10);
    rail = { part: fuse.id, contact: 1 };
    join(`feed${count}`, { part: fuse.id, contact: 2 }, { part: part.id, contact: 1 }, 1.5);
  }
  return { ...harness, parts, wires };
}

function drawing(part: Part, isFedByOne: boolean): Part {
  if (part.kind === "load") return { ...part, current_A: 1.75 };
  if (part.kind !== "connector") return part;
  const cavities = part.cavities.map((cavity): Cavity => {
    if (isFedByOne && part.belongsTo.side === "vehicle" && cavity.function === "constant-feed")
      return { ...cavity, function: "unknown", direction: "none" };
    if (cavity.direction !== "takes") return cavity;
    return cavity.function === "constant-feed"
      ? { ...cavity, current_A: 2.5 }
      : { ...cavity, current_A: 0.1 };
  });
  return { ...part, cavities };
}

/** New objects all through, of which nothing is remembered. */
function copied(harness: Harness): Harness {
  const parts = Object.fromEntries(Object.values(harness.parts).map((part) => [part.id, { ...part }]));
  const wires = Object.fromEntries(Object.values(harness.wires).map((wire) => [wire.id, { ...wire }]));
  return { ...harness, parts, wires };
}

/** What one ground costs does not hang on how many there are. */
const MOST_OPENED = 24;

type Editing = (harness: Harness, round: number) => Harness;

const wireOf = (harness: Harness, round: number): Wire => {
  const ids = Object.keys(harness.wires) as WireId[];
  return harness.wires[ids[(round * 37) % ids.length]!]!;
};

const withWire = (harness: Harness, wire: Wire): Harness => ({
  ...harness,
  wires: { ...harness.wires, [wire.id]: wire },
});

const EDITS: readonly (readonly [string, Editing])[] = [
  [
    "another size",
    (harness, round) => withWire(harness, { ...wireOf(harness, round), area_mm2: 1 + (round % 5) }),
  ],
  [
    "another length",
    (harness, round) => withWire(harness, { ...wireOf(harness, round), length_m: 1 + (round % 5) }),
  ],
  [
    "a wire's end moved",
    (harness, round) => {
      const wire = wireOf(harness, round);
      // To where a wire further on ends, which joins two stations.
      return withWire(harness, { ...wire, ends: [wire.ends[0], wireOf(harness, round + 1).ends[1]] });
    },
  ],
  [
    "a wire removed",
    (harness, round) => {
      const { [wireOf(harness, round).id]: _, ...wires } = harness.wires;
      return { ...harness, wires };
    },
  ],
  [
    "a wire added",
    (harness, round) => {
      const id = `w:new${round}` as WireId;
      return withWire(harness, makeWire(id, `N${round}`, wireOf(harness, round).ends, { area_mm2: 1.5 }));
    },
  ],
  [
    "a function changed",
    (harness, round) => {
      const housings = Object.values(harness.parts).filter((part) => part.kind === "connector");
      const part = housings[(round * 13) % housings.length]!;
      const cavities = part.cavities.map((cavity, index) =>
        index === 3 ? { ...cavity, function: round % 2 ? "reverse" : "illumination" } : cavity,
      );
      return { ...harness, parts: { ...harness.parts, [part.id]: { ...part, cavities } } };
    },
  ],
];

/** The median of some rounds and the least, ms. @param prepare makes what is then timed */
function times(rounds: number, prepare: (round: number) => () => unknown): string {
  const taken: number[] = [];
  for (let round = 0; round < rounds + 4; round++) {
    const work = prepare(round);
    const start = performance.now();
    work();
    if (round >= 4) taken.push(performance.now() - start);
  }
  taken.sort((a, b) => a - b);
  return `${taken[taken.length >> 1]!.toFixed(2)} ms (least ${taken[0]!.toFixed(2)})`;
}
