import type { Cavity, Harness, Part, PartId, Wire, WireId } from "../../src/graph/harness.ts";
import { emptyHarness, makeCavity, makePart, makeWire } from "../../src/graph/make.ts";

/**
 * A harness the size of a real job or far past it: stations of a receiver, its vehicle plug and a module,
 * joined lead, splice, lead, with fuses, relays, loads, caps, speakers, and here and there a fault.
 * The same numbers give the same harness.
 * @param wireCount about how many wires; the last station may pass it by a few
 * @param faultEvery one station in so many has faults; 0 for none
 */
export function generate(wireCount: number, faultEvery = 10, seed = 1): Harness {
  const growing: Growing = { parts: {}, wires: {}, part: 0, wire: 0, random: randomFrom(seed) };
  for (let station = 0; growing.wire < wireCount; station++) {
    addStation(growing, station, faultEvery > 0 && station % faultEvery === faultEvery - 1);
  }
  return { ...emptyHarness(), parts: growing.parts, wires: growing.wires };
}

type Growing = {
  readonly parts: Record<PartId, Part>;
  readonly wires: Record<WireId, Wire>;
  part: number;
  wire: number;
  readonly random: () => number;
};
type Row = readonly [name: string, vehicle: Cavity["direction"], colour: Wire["colour"]];

const colour = (base: NonNullable<Wire["colour"]>["base"], tracer: typeof base | null = null) => ({
  base,
  tracer,
});
const ROWS: readonly Row[] = [
  ["constant-feed", "gives", colour("RD")],
  ["switched-feed", "gives", colour("YE")],
  ["ground", "gives", colour("BN")],
  ["illumination", "gives", colour("GY")],
  ["reverse", "gives", colour("GN")],
  ["speed", "gives", colour("VT", "WH")],
  ["parking-brake", "gives", colour("BN", "WH")],
  ["antenna-power", "takes", colour("BU")],
  ["can-high", "both", colour("OG", "BK")],
  ["can-low", "both", colour("OG", "BN")],
  ["speaker-front-left-plus", "takes", colour("WH")],
  ["speaker-front-left-minus", "takes", colour("WH", "BK")],
  ["speaker-front-right-plus", "takes", colour("GY")],
  ["speaker-front-right-minus", "takes", colour("GY", "BK")],
  ["speaker-rear-left-plus", "takes", colour("GN")],
  ["speaker-rear-left-minus", "takes", colour("GN", "BK")],
  ["speaker-rear-right-plus", "takes", colour("VT")],
  ["speaker-rear-right-minus", "takes", colour("VT", "BK")],
  ["mute", "none", colour("PK")],
];

const OPPOSITE = { gives: "takes", takes: "gives", both: "both", none: "takes", unknown: "unknown" } as const;

function addStation(harness: Growing, station: number, faulty: boolean): void {
  const module = add(harness, "module", "A", { role: "receiver", outputs: "bridged" });
  const plug = add(harness, "connector", "X", {
    belongsTo: { side: "vehicle", module: null },
    shell: `shell ${station % 7}`,
    gender: "plug",
    cavities: ROWS.map((row, index) => cavityOf(row, index, row[1])),
  });
  const receptacle = add(harness, "connector", "X", {
    belongsTo: { side: "equipment", module: module.id },
    cavities: ROWS.map((row, index) => cavityOf(row, index, OPPOSITE[row[1]])),
  });
  const swap = faulty && harness.random() < 0.5 ? 0 : -1;
  ROWS.forEach((row, index) => {
    const there = index + 1;
    const here = swap >= 0 && index < 2 ? 2 - index : there;
    if (row[0] === "mute") {
      if (faulty) return;
      join(harness, receptacle.id, there, add(harness, "cap", "XC", {}).id, 1);
      return;
    }
    if (faulty && harness.random() < 0.1) return;
    const joint = index < 2 ? add(harness, "fuse", "F", { rating_A: 10 }) : add(harness, "splice", "XJ", {});
    join(harness, plug.id, there, joint.id, 1);
    join(harness, joint.id, 2, receptacle.id, here);
  });
  addLamp(harness, plug.id);
}

/** A work lamp that the station's reverse lead switches through a relay. */
function addLamp(harness: Growing, plug: PartId): void {
  const relay = add(harness, "relay", "K", { poles: "make" });
  const lamp = add(harness, "load", "E", { type: "lamp", function: "work-lamp" });
  const stud = add(harness, "ground", "XE", {});
  const fuse = add(harness, "fuse", "F", { rating_A: 15 });
  join(harness, plug, 1, fuse.id, 1);
  join(harness, fuse.id, 2, relay.id, 1);
  join(harness, plug, 5, relay.id, 3);
  join(harness, relay.id, 2, stud.id, 1);
  join(harness, relay.id, 4, lamp.id, 1);
  join(harness, lamp.id, 2, stud.id, 1);
}

function cavityOf([name, , lead]: Row, index: number, direction: Cavity["direction"]): Cavity {
  return makeCavity(String(index + 1), {
    function: name,
    direction: name === "mute" ? (direction === "takes" ? "takes" : "none") : direction,
    lead: name === "mute" && direction === "none" ? null : { colour: lead, area_mm2: 0.75 },
    fuse_A: name.endsWith("feed") ? 15 : "unknown",
  });
}

function add<K extends Part["kind"]>(
  harness: Growing,
  kind: K,
  letters: string,
  known: Parameters<typeof makePart<K>>[3],
): Part {
  const number = ++harness.part;
  const part = makePart(kind, `p:${number}` as PartId, `${letters}${number}`, known) as Part;
  harness.parts[part.id] = part;
  return part;
}

function join(harness: Growing, a: PartId, contactA: number, b: PartId, contactB: number): void {
  const number = ++harness.wire;
  const wire = makeWire(
    `w:${number}` as WireId,
    `W${number}`,
    [
      { part: a, contact: contactA },
      { part: b, contact: contactB },
    ],
    { colour: ROWS[number % ROWS.length]![2], area_mm2: 0.75, length_m: 0.4 },
  );
  harness.wires[wire.id] = wire;
}

/** Mulberry32: small, even, and the same on every machine. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
