import { readColour } from "../../catalogue/colours.ts";
import { findContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { contactsOf } from "../../graph/contacts.ts";
import type {
  Cable,
  CableId,
  Cavity,
  Connector,
  ContactRef,
  End,
  Harness,
  JobSide,
  Module,
  Part,
  PartId,
  PartKind,
  Run,
  RunId,
  Waiver,
  Wire,
  WireId,
} from "../../graph/harness.ts";
import { emptyHarness, faceRows, makeCavity, makePart, makeRun, makeWire, Names } from "../../graph/make.ts";

/**
 * What stands in a cavity, in one line: the function first, then in any order a direction, a use, a lead
 * colour ("BU/WH"), a size ("0.75"), a current ("2A"), the fuse on the far side ("fuse:10", "no-fuse"), how it
 * gives ("pulsed", "watched", "plain"), what makes it act ("acts-on-ground", "acts-on-volts").
 * `"constant-feed RD 1.5 fuse:15"`. Without a direction: what is usual for that side.
 */
export type CavityLine = string;
export type Rows = Readonly<Record<string, CavityLine>>;
type Known<K extends PartKind> = Partial<Omit<Extract<Part, { kind: K }>, "id" | "kind" | "designation">>;

const USES = ["expected", "optional", "spare", "plugged"] as const;
const DIRECTIONS = ["gives", "takes", "both", "none", "unknown"] as const;
/** What a receiver gives and a vehicle takes; everything else goes the other way. */
const FROM_UNIT = new Set(["antenna-power", "amplifier-turn-on"]);
/** Parts that `path` and `wire` make on first mention, by the letters of their designation. */
const MADE_UNASKED: readonly (readonly [RegExp, PartKind])[] = [
  [/^XJ\d+$/, "splice"],
  [/^XC\d+$/, "cap"],
  [/^XE\d+$/, "ground"],
  [/^F\d+$/, "fuse"],
  [/^G\d+$/, "supply"],
  [/^K\d+$/, "relay"],
  [/^S\d+$/, "switch"],
];

function usualDirection(name: string, side: JobSide): Cavity["direction"] {
  const { group, id } = functionOf(name);
  if (group === "data") return "both";
  if (group === "none") return "none";
  const unitGives = group === "speaker" || group === "line-level" || FROM_UNIT.has(id);
  return unitGives === (side === "equipment") ? "gives" : "takes";
}

function oneOf<T extends string>(known: readonly T[], word: string): T | undefined {
  return known.find((item) => item === word);
}

function readCavity(label: string, line: CavityLine, side: JobSide): Cavity {
  const [name = "unknown", ...words] = line.split(" ").filter((word) => word !== "");
  let cavity = makeCavity(label, { function: name, direction: usualDirection(name, side) });
  for (const word of words) {
    const direction = oneOf(DIRECTIONS, word);
    const use = oneOf(USES, word);
    const lead = cavity.lead ?? { colour: null, area_mm2: "unknown" as const };
    const amperes = /^(\d+(?:\.\d+)?)A$/.exec(word)?.[1];
    if (direction) cavity = { ...cavity, direction };
    else if (use) cavity = { ...cavity, use };
    else if (amperes) cavity = { ...cavity, current_A: Number(amperes) };
    else if (word === "no-fuse") cavity = { ...cavity, fuse_A: null };
    else if (word === "pulsed" || word === "watched" || word === "plain") cavity = { ...cavity, gives: word };
    else if (word === "acts-on-ground") cavity = { ...cavity, actsOn: "ground" };
    else if (word === "acts-on-volts") cavity = { ...cavity, actsOn: "volts" };
    else if (word === "lead") cavity = { ...cavity, lead };
    else if (word.startsWith("fuse:")) cavity = { ...cavity, fuse_A: Number(word.slice(5)) };
    else if (/^\d+(\.\d+)?$/.test(word)) cavity = { ...cavity, lead: { ...lead, area_mm2: Number(word) } };
    else {
      const colour = readColour(word);
      if (!colour) throw new Error(`"${word}" in "${line}" is no direction, use, colour, size or fuse`);
      cavity = { ...cavity, lead: { ...lead, colour } };
    }
  }
  return cavity;
}

/**
 * Builds a harness by the names a person sees. Every method gives the same builder back; `harness` is the
 * document so far. Ids follow the designations (`p:X1`, `w:W1`), so that a failing test can be read.
 */
export class Build {
  private current: Harness;

  constructor(start: Harness = emptyHarness()) {
    this.current = start;
  }

  get harness(): Harness {
    return this.current;
  }

  /** A connector of the vehicle, its cavities by label. */
  vehicle(designation: string, rows: Rows, known: Known<"connector"> = {}): this {
    return this.connector(designation, "vehicle", rows, known);
  }

  /** A connector of the new equipment. */
  unit(designation: string, rows: Rows, known: Known<"connector"> = {}): this {
    return this.connector(designation, "equipment", rows, known);
  }

  /** A receptacle of a module that was added before. */
  receptacle(designation: string, module: string, rows: Rows, known: Known<"connector"> = {}): this {
    const owner = this.partNamed(module);
    if (owner.kind !== "module") throw new Error(`${module} is not a module`);
    const belongsTo: Connector["belongsTo"] = { side: owner.side, module: owner.id };
    return this.connector(designation, owner.side, rows, { belongsTo, ...known });
  }

  module(designation: string, known: Known<"module"> & { rows?: Rows } = {}): this {
    const { rows = {}, ...rest } = known;
    const side = rest.side ?? "equipment";
    const cavities = Object.entries(rows).map(([label, line]) => readCavity(label, line, side));
    return this.part("module", designation, { cavities, ...rest } as Partial<Module>);
  }

  part<K extends PartKind>(kind: K, designation: string, known: Known<K> = {}): this {
    if (this.find(designation)) throw new Error(`there is already a ${designation}`);
    return this.put(makePart(kind, `p:${designation}` as PartId, designation, known) as Part);
  }

  /** A wire between two contacts by name ("X1.A4", "XE1", "loose"); colour in letters ("BU/WH"). */
  wire(from: string, to: string, colour: string | null = null, known: Partial<Wire> = {}): this {
    const names = new Names(this.current);
    const designation = known.designation ?? names.wireDesignation();
    const ends: [End, End] = [this.end(from, 2), this.end(to, 1)];
    const read = colour === null ? null : readColour(colour);
    if (colour !== null && !read) throw new Error(`"${colour}" is not a colour`);
    const id = `w:${designation}` as WireId;
    const made = makeWire(this.current.wires[id] ? names.wire() : id, designation, ends, {
      colour: read ?? this.chartColour(ends),
      ...known,
    });
    this.current = { ...this.current, wires: { ...this.current.wires, [made.id]: made } };
    return this;
  }

  /**
   * Wires from each stop to the next: `path("X1.A4", "F1", "XJ1", "X2.12")`. A two-ended part named without
   * a contact is entered at 1 and left at 2. Splices, caps, grounds, fuses, … are made on first mention.
   */
  path(...stops: readonly string[]): this {
    for (let i = 1; i < stops.length; i++) this.wire(stops[i - 1]!, stops[i]!);
    return this;
  }

  /** Wires in one jacket or twist, by designation; the shield is one of them. */
  cable(
    designation: string,
    kind: Cable["kind"],
    wires: readonly string[],
    shield: string | null = null,
  ): this {
    const id = `c:${designation}` as CableId;
    const cable: Cable = {
      id,
      designation,
      kind,
      wires: wires.map((name) => this.wireNamed(name).id),
      shield: shield === null ? null : this.wireNamed(shield).id,
      note: "",
    };
    this.current = { ...this.current, cables: { ...this.current.cables, [id]: cable } };
    return this;
  }

  /** A stretch of the loom, and the wires, by designation, that lie in it. */
  run(designation: string, known: Partial<Omit<Run, "id" | "designation">>, wires: readonly string[]): this {
    const run = makeRun(`r:${designation}` as RunId, designation, known);
    this.current = { ...this.current, runs: { ...this.current.runs, [run.id]: run } };
    for (const name of wires) this.change(name, { runs: [...this.wireNamed(name).runs, run.id] });
    return this;
  }

  /** Changes a wire or a part that stands already, by its designation. */
  change(designation: string, changes: Partial<Wire> | Partial<Part>): this {
    const wire = Object.values(this.current.wires).find((one) => one.designation === designation);
    if (!wire) return this.put({ ...this.partNamed(designation), ...changes } as Part);
    const wires = { ...this.current.wires, [wire.id]: { ...wire, ...changes } as Wire };
    this.current = { ...this.current, wires };
    return this;
  }

  /** By which books it is checked. */
  rules(changes: Partial<Harness["settings"]["rules"]>): this {
    return this.settings({ rules: { ...this.current.settings.rules, ...changes } });
  }

  mate(a: string, b: string): this {
    const left = this.partNamed(a);
    const right = this.partNamed(b);
    if (left.kind !== "connector" || right.kind !== "connector") throw new Error("only connectors mate");
    return this.put({ ...left, matedWith: right.id }).put({ ...right, matedWith: left.id });
  }

  waive(waiver: Waiver): this {
    this.current = { ...this.current, waivers: { ...this.current.waivers, [waiver.id]: waiver } };
    return this;
  }

  settings(changes: Partial<Harness["settings"]>): this {
    this.current = { ...this.current, settings: { ...this.current.settings, ...changes } };
    return this;
  }

  /** The contact of that name, for `about` and for edits. */
  at(name: string): ContactRef {
    const found = findContact(this.current, name);
    if (!found) throw new Error(`there is no contact ${name}`);
    return found;
  }

  private connector(designation: string, side: JobSide, rows: Rows, known: Known<"connector">): this {
    const cavities = Object.entries(rows).map(([label, line]) => readCavity(label, line, side));
    return this.part("connector", designation, {
      belongsTo: { side, module: null },
      cavities,
      rows: faceRows(cavities.length, cavities.length > 6 ? 2 : 1),
      ...known,
    });
  }

  private put(part: Part): this {
    this.current = { ...this.current, parts: { ...this.current.parts, [part.id]: part } };
    return this;
  }

  private find(designation: string): Part | undefined {
    return Object.values(this.current.parts).find((part) => part.designation === designation);
  }

  private partNamed(designation: string): Part {
    const part = this.find(designation);
    if (!part) throw new Error(`there is no part ${designation}`);
    return part;
  }

  private wireNamed(designation: string): Wire {
    const wire = Object.values(this.current.wires).find((one) => one.designation === designation);
    if (!wire) throw new Error(`there is no wire ${designation}`);
    return wire;
  }

  private end(name: string, side: 1 | 2): End {
    if (name === "loose") return "loose";
    const named = findContact(this.current, name);
    if (named) return named;
    if (!this.find(name)) {
      const kind = MADE_UNASKED.find(([letters]) => letters.test(name))?.[1];
      if (!kind) throw new Error(`there is no contact ${name}`);
      this.part(kind, name);
    }
    const part = this.partNamed(name);
    return { part: part.id, contact: Math.min(side, contactsOf(part).length) };
  }

  private chartColour(ends: readonly End[]): Wire["colour"] {
    for (const end of ends) {
      const part = end === "loose" ? undefined : this.current.parts[end.part];
      const colour =
        end === "loose" || !part ? null : contactsOf(part)[end.contact - 1]?.cavity?.lead?.colour;
      if (colour) return colour;
    }
    return null;
  }
}

export function build(start?: Harness): Build {
  return new Build(start);
}
