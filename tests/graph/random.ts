import { contactsOf } from "../../src/graph/contacts.ts";
import { align, distribute, snapToGrid } from "../../src/graph/edits/align.ts";
import type { Edit, Refused } from "../../src/graph/edits/edit.ts";
import { assignReceptacle, changeView, setCavityCount } from "../../src/graph/edits/housing.ts";
import { join } from "../../src/graph/edits/join.ts";
import { capSpares, exchange, leadTo, spliceInto } from "../../src/graph/edits/lead.ts";
import { mate, unmate } from "../../src/graph/edits/mate.ts";
import { changeWires, renumberWires, turnWire } from "../../src/graph/edits/wires.ts";
import type {
  Cable,
  CableId,
  Colour,
  ContactRef,
  End,
  Harness,
  Module,
  Part,
  PartId,
  PartKind,
  Run,
  RunId,
  Waiver,
  WaiverId,
  Wire,
  WireId,
} from "../../src/graph/harness.ts";
import {
  emptyHarness,
  makeCavity,
  makePart,
  makePlace,
  makeRun,
  makeWire,
  Names,
} from "../../src/graph/make.ts";
import { hazard, zone } from "../../src/graph/schema/parts.ts";
import { LIMITS, PROFILES } from "../../src/graph/schema/rules.ts";
import { COLOUR_CODES } from "../../src/graph/schema/values.ts";

/** Numbers from a seed, the same on every machine (mulberry32). */
export class Dice {
  constructor(private state: number) {}

  /** From 0 up to but not including 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  pick<T>(items: readonly T[]): T {
    if (!items.length) throw new RangeError("nothing to pick from");
    return items[this.below(items.length)]!;
  }

  some<T>(items: readonly T[], share: number): T[] {
    return items.filter(() => this.chance(share));
  }
}

export const PART_KINDS: readonly PartKind[] = [
  "connector",
  "splice",
  "cap",
  "ground",
  "supply",
  "fuse",
  "relay",
  "switch",
  "diode",
  "resistor",
  "capacitor",
  "load",
  "speaker",
  "module",
];

function colour(dice: Dice): Colour | null {
  if (dice.chance(0.2)) return null;
  return { base: dice.pick(COLOUR_CODES), tracer: dice.chance(0.5) ? dice.pick(COLOUR_CODES) : null };
}

function cavities(dice: Dice) {
  return Array.from({ length: dice.below(7) }, (_, index) =>
    makeCavity(String(index + 1), {
      lead: dice.chance(0.5) ? { colour: colour(dice), area_mm2: dice.chance(0.5) ? 0.75 : "unknown" } : null,
      use: dice.pick(["expected", "optional", "spare", "plugged"]),
      gives: dice.pick(["plain", "pulsed", "watched", "unknown"]),
      actsOn: dice.pick(["volts", "ground", "unknown"]),
    }),
  );
}

/** What may be said of a part besides; nothing of the kinds of which there is no more to say. */
function more(dice: Dice, kind: PartKind): Partial<Part> {
  const volts = dice.pick(["unknown", { least_V: 9, most_V: 16 }] as const);
  const video = dice.pick(["ntsc", "several", "none", "unknown"] as const);
  switch (kind) {
    case "splice":
      return {
        zone: dice.pick(zone.options),
        liveHalf: dice.pick(["shrouded", "bare", "unknown"]),
        barrel: dice.pick(["red", "yellow", "unknown"]),
        cover: dice.pick(["cloth-over-tape", "unknown"]),
      };
    case "ground":
      return {
        serves: dice.pick(["this-job", "safety-system", "battery-post"]),
        surface: dice.pick(["moving-part", "bare-metal"]),
      };
    case "supply":
      return { cover: dice.pick(["boot", "none"]), sensor: dice.pick(["on-minus", "unknown"]) };
    case "fuse":
      return { holder: dice.pick(["own", "fuse-box", "tap"]) };
    case "switch":
      return { operatedBy: dice.pick(["isolator", "hand"]) };
    case "load":
      return { voltage_V: volts, video };
    case "module":
      return {
        sleeps: dice.pick(["yes", "no"]),
        voltage_V: volts,
        video,
        signalGround: dice.pick(["joined", "isolated"]),
        near: dice.some(hazard.options, 0.2),
      };
    default:
      return {};
  }
}

function part(dice: Dice, names: Names, kind: PartKind): Part {
  const id = names.part();
  const designation = names.designation(kind);
  if (kind === "connector") {
    const made = cavities(dice);
    const rows = [made.map((_, index) => index + 1)];
    return makePart(kind, id, designation, { cavities: made, rows, shell: dice.pick([null, "A", "B"]) });
  }
  if (kind === "module")
    return makePart(kind, id, designation, {
      cavities: cavities(dice),
      ...more(dice, kind),
    } as Partial<Module>);
  if (kind === "relay")
    return makePart(kind, id, designation, {
      poles: dice.pick(["make", "changeover", "double-make"] as const),
    });
  return makePart(kind, id, designation, dice.chance(0.5) ? more(dice, kind) : {}) as Part;
}

/** Every contact of the harness. */
export function allContacts(harness: Pick<Harness, "parts">): ContactRef[] {
  return Object.values(harness.parts).flatMap((one) =>
    contactsOf(one).map((contact) => ({ part: one.id, contact: contact.number })),
  );
}

function anyEnd(dice: Dice, contacts: readonly ContactRef[]): End {
  return contacts.length === 0 || dice.chance(0.15) ? "loose" : dice.pick(contacts);
}

/** A harness of any shape that the schema allows, with some unknown fields as a newer version may write them. */
export function randomHarness(dice: Dice, size = 12): Harness {
  const names = new Names(emptyHarness());
  const made = Array.from({ length: dice.below(size) }, () =>
    part(dice, names, dice.chance(0.4) ? "connector" : dice.pick(PART_KINDS)),
  );
  const parts = Object.fromEntries(made.map((one) => [one.id, one])) as Record<PartId, Part>;
  const connectors = made.filter((one) => one.kind === "connector");
  const modules = made.filter((one) => one.kind === "module");
  for (const one of connectors) {
    const others = connectors.filter((other) => other.id !== one.id);
    const matedWith = others.length && dice.chance(0.3) ? dice.pick(others).id : null;
    const module = modules.length && dice.chance(0.3) ? dice.pick(modules).id : null;
    parts[one.id] = { ...one, matedWith, belongsTo: { ...one.belongsTo, module } };
  }
  const contacts = allContacts({ parts });
  const runs: Record<RunId, Run> = {};
  for (let i = dice.below(3); i > 0; i--) {
    const id = names.id("runs") as RunId;
    runs[id] = makeRun(id, `R${i}`, {
      zone: dice.pick(zone.options),
      near: dice.some(hazard.options, 0.2),
      hinge: dice.pick(["none", "bends-across", "unknown"]),
      support_m: dice.pick(["unknown", 0, 0.3]),
      bend_mm: dice.pick(["unknown", 25]),
      dripLoop: dice.pick(["yes", "unknown"]),
      drilled: dice.pick(["blind", "no"]),
    });
  }
  const wires: Record<WireId, Wire> = {};
  for (let i = dice.below(size * 1.5); i > 0; i--) {
    const id = names.wire();
    const ends: [End, End] = [anyEnd(dice, contacts), anyEnd(dice, contacts)];
    if (JSON.stringify(ends[0]) === JSON.stringify(ends[1])) ends[1] = "loose";
    wires[id] = makeWire(id, names.wireDesignation(), ends, {
      colour: colour(dice),
      length_m: dice.pick(["unknown", 0, 0.4, 12]),
      runs: dice.some(Object.keys(runs) as RunId[], 0.4),
      strands: dice.pick(["stranded", "solid", "unknown"]),
      ...(dice.chance(0.1) ? { fromTheFuture: { kept: true } } : {}),
    });
  }
  const wireIds = Object.keys(wires) as WireId[];
  const cables: Record<CableId, Cable> = {};
  for (let i = wireIds.length ? dice.below(3) : 0; i > 0; i--) {
    const id = names.id("cables") as CableId;
    const shield = dice.chance(0.5) ? dice.pick(wireIds) : null;
    cables[id] = {
      id,
      designation: `C${i}`,
      kind: "multicore",
      wires: dice.some(wireIds, 0.3),
      shield,
      note: "",
    };
  }
  const waivers: Record<WaiverId, Waiver> = {};
  for (let i = contacts.length ? dice.below(3) : 0; i > 0; i--) {
    const id = names.id("waivers") as WaiverId;
    waivers[id] = {
      id,
      ...dice.pick([
        { covers: "finding", rule: "loose-lead", about: [dice.pick(contacts)] },
        { covers: "group", rule: "feeds", about: [] },
      ] as const),
      reason: "because",
      by: "",
      date: "",
    };
  }
  const places = Object.fromEntries(
    dice.some(made, 0.7).map((one) => [one.id, makePlace(dice.below(900), dice.below(900))]),
  ) as Harness["layout"]["places"];
  const paths = Object.fromEntries(
    dice.some(wireIds, 0.3).map((id) => [id, [0, 0, 8, 0, 8, 8]]),
  ) as Harness["layout"]["paths"];
  const empty = emptyHarness();
  const settings: Harness["settings"] = {
    ...empty.settings,
    rules: {
      ...empty.settings.rules,
      profile: dice.pick(PROFILES),
      limits: dice.some(LIMITS, 0.1).map((name) => ({ name, value: dice.below(50) })),
    },
    vehicle: { highVoltage: dice.pick(["yes", "unknown"]), lamps: dice.pick(["watched", "unknown"]) },
  };
  return { ...empty, settings, parts, wires, runs, cables, waivers, layout: { places, paths } };
}

/** Edits of every kind and family, most of them possible in this harness, some of them not. */
export function randomEdit(dice: Dice, harness: Harness): Edit | Refused {
  const names = new Names(harness);
  const parts = Object.keys(harness.parts) as PartId[];
  const wires = Object.keys(harness.wires) as WireId[];
  const contacts = allContacts(harness);
  const aPart = () => (parts.length && dice.chance(0.95) ? dice.pick(parts) : ("p:none" as PartId));
  const housings = parts.filter((id) => harness.parts[id]?.kind === "connector");
  const aHousing = () => (housings.length && dice.chance(0.9) ? dice.pick(housings) : aPart());
  const aWire = () => (wires.length && dice.chance(0.95) ? dice.pick(wires) : ("w:none" as WireId));
  const aContact = (): ContactRef =>
    contacts.length && dice.chance(0.95) ? dice.pick(contacts) : { part: "p:none" as PartId, contact: 1 };
  const spot = { x: dice.below(900), y: dice.below(900) };
  const place = makePlace(spot.x, spot.y);
  const boxes = () =>
    dice
      .some(parts, 0.4)
      .map((id) => ({ part: id, x: dice.below(500), y: dice.below(500), width: 96, height: 40 }));
  const makers: readonly (() => Edit | Refused)[] = [
    () => ({
      kind: "add-part",
      part:
        parts.length && dice.chance(0.1)
          ? harness.parts[dice.pick(parts)]!
          : part(dice, names, dice.pick(PART_KINDS)),
      place: dice.pick([null, place]),
    }),
    () => ({
      kind: "change-part",
      part: aPart(),
      changes: dice.pick([
        { name: "n" },
        { designation: "" },
        { id: "p:9" },
        { cavities: [] },
        { matedWith: aPart() },
      ]),
    }),
    () => ({
      kind: "change-cavity",
      part: aHousing(),
      contact: 1 + dice.below(6),
      changes: dice.pick([{ text: "t" }, { label: "" }]),
    }),
    () => ({ kind: "remove", parts: dice.some(parts, 0.15), wires: dice.some(wires, 0.1) }),
    () => ({
      kind: "add-wire",
      wire: makeWire(names.wire(), names.wireDesignation(), [aContact(), anyEnd(dice, contacts)], {
        colour: colour(dice),
      }),
    }),
    () => ({
      kind: "change-wire",
      wire: aWire(),
      changes: dice.pick([
        { area_mm2: 1.5 },
        { area_mm2: -1 },
        { length_m: Number.NaN },
        { ends: [aContact(), "loose"] as const },
        { runs: ["r:1" as RunId] },
      ]),
    }),
    () => ({
      kind: "put-entry",
      section: "cables",
      entry: {
        id: names.id("cables") as CableId,
        designation: "C",
        kind: "twisted-pair",
        wires: [aWire()],
        shield: null,
        note: "",
      },
    }),
    () => ({
      kind: "put-entry",
      section: "waivers",
      entry: {
        id: names.id("waivers") as WaiverId,
        covers: "finding",
        rule: "x",
        about: [aContact()],
        reason: dice.pick(["", "on purpose"]),
        by: "",
        date: "",
      },
    }),
    () => ({ kind: "drop-entry", section: "runs", id: dice.pick(["r:1", "r:2", "r:none"]) as RunId }),
    () => ({ kind: "drop-entry", section: "cables", id: "c:1" as CableId }),
    () => ({
      kind: "change-settings",
      changes: dice.pick([
        { sizes: "awg" },
        { ambient_degC: 1e9 },
        { vehicle: { highVoltage: "yes", lamps: "watched" } },
      ] as const),
    }),
    () => ({ kind: "change-title-block", changes: { title: dice.pick(["a", "b", "x".repeat(999)]) } }),
    () => ({
      kind: "lay-out",
      places: { [aPart()]: dice.chance(0.9) ? place : makePlace(Number.NaN, 0) },
      paths: { [aWire()]: dice.pick([null, [0, 0, 8, 8], [0]]) },
    }),
    () => join(harness, aContact(), aContact(), dice.pick([null, spot])),
    () => capSpares(harness, [aContact(), { wire: aWire() }], [spot]),
    () => capSpares(harness, [aContact()]),
    () => leadTo(harness, aContact(), dice.pick([...PART_KINDS, "loose" as const]), spot),
    () => spliceInto(harness, aWire(), dice.pick([null, aContact()]), spot),
    () => exchange(harness, aContact(), aContact()),
    () => turnWire(harness, aWire()),
    () => changeWires(harness, dice.some(wires, 0.4), { colour: colour(dice) }),
    () => renumberWires(harness, dice.some(wires, 0.6), dice.below(4)),
    () => align(harness, boxes(), dice.pick(["left", "centre", "right", "top", "middle", "bottom"] as const)),
    () => distribute(harness, boxes(), dice.pick(["horizontally", "vertically"] as const)),
    () => snapToGrid(harness, boxes()),
    () => mate(harness, aHousing(), aHousing()),
    () => unmate(harness, aHousing()),
    () => changeView(harness, aHousing()),
    () => setCavityCount(harness, aHousing(), dice.below(9)),
    () => assignReceptacle(harness, aHousing(), dice.pick([null, aPart()])),
  ];
  return dice.pick(makers)();
}
