import { findContact } from "../../../src/catalogue/describe.ts";
import { sameEnd } from "../../../src/graph/contacts.ts";
import type {
  Cavity,
  Connector,
  End,
  Harness,
  Part,
  PartKind,
  Run,
  Wire,
  WireId,
} from "../../../src/graph/harness.ts";
import { COLOUR_CODES } from "../../../src/graph/schema/values.ts";
import { Build, type Rows } from "../../build.ts";
import { type Random, randomFrom } from "./random.ts";

/** How a lead gets from one contact to another. */
export type Way = "direct" | "solder" | "crimp" | "bullet" | "plugs" | "block";

/** What a lead carries and how it is drawn; sizes in mm², lengths in m, currents in A. */
export type LeadPlan = {
  readonly tag: string;
  readonly current_A?: number;
  readonly fuse_A?: number;
  readonly length_m?: number;
  readonly area_mm2?: number;
  readonly colour?: string;
  readonly ways?: readonly Way[];
  readonly runs?: readonly string[];
  readonly live?: boolean;
};

/** A lead as it was drawn: its wires and joints in order, by designation. */
export type Lead = {
  readonly tag: string;
  readonly from: string;
  readonly to: string;
  readonly wires: readonly string[];
  readonly joints: readonly string[];
  readonly way: Way;
};

const AREAS_mm2 = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70] as const;
/** What a careful shop lets each of those sizes carry: well under every book. */
const CARRIES_A = [3, 5, 7.5, 10, 15, 20, 30, 40, 60, 80, 100, 125, 150] as const;

/** Builds a harness as careful people draw it: every wire sized for its fuse and its length, everything stated. */
export class Yard {
  build = new Build();
  readonly random: Random;
  readonly leads: Lead[] = [];
  readonly volts: 12 | 24;
  private readonly counts = new Map<string, number>();
  private readonly taken = new Set<string>();
  private pair: { plug: string; socket: string; next: number } | null = null;

  constructor(seed: number, volts: 12 | 24 = 12) {
    this.random = randomFrom(seed);
    this.volts = volts;
    this.build.settings({ systemVoltage_V: volts });
  }

  /** Goes on from a harness that stands already. */
  takeOver(harness: Harness): void {
    this.build = new Build(harness);
    for (const section of [harness.parts, harness.wires, harness.cables, harness.runs])
      for (const { designation } of Object.values(section) as { designation: string }[])
        this.taken.add(designation);
  }

  get harness(): Harness {
    return this.build.harness;
  }

  name(letters: string): string {
    for (;;) {
      const next = (this.counts.get(letters) ?? 0) + 1;
      this.counts.set(letters, next);
      if (!this.taken.has(`${letters}${next}`)) return `${letters}${next}`;
    }
  }

  chance(share: number): boolean {
    return this.random() < share;
  }

  pick<T>(items: readonly T[]): T {
    return items[Math.floor(this.random() * items.length)]!;
  }

  between(least: number, most: number): number {
    return Number((least + this.random() * (most - least)).toFixed(2));
  }

  range(): { least_V: number; most_V: number } {
    return this.volts === 12 ? { least_V: 8, most_V: 16 } : { least_V: 16, most_V: 32 };
  }

  colour(): string {
    const base = this.pick(COLOUR_CODES.slice(0, 12));
    const tracer = this.pick(COLOUR_CODES.slice(0, 12));
    return base === tracer || this.chance(0.5) ? base : `${base}/${tracer}`;
  }

  /** The size that a fuse of that rating and a run of that length (there and back) ask for. */
  area(fuse_A: number, current_A: number, length_m: number): number {
    const forFuse = CARRIES_A.findIndex((amperes) => amperes >= fuse_A);
    const forDrop = AREAS_mm2.findIndex(
      (area) => (2 * 0.019 * length_m * current_A) / area < 0.018 * this.volts,
    );
    const index = Math.max(forFuse, forDrop);
    if (forFuse < 0 || forDrop < 0) throw new Error(`no wire bears ${fuse_A} A over ${length_m} m`);
    return AREAS_mm2[index]!;
  }

  part<K extends PartKind>(
    kind: K,
    letters: string,
    known: Partial<Extract<Part, { kind: K }>> = {},
  ): string {
    const name = this.name(letters);
    this.build.part(kind, name, known as never);
    return name;
  }

  vehicle(rows: Rows, known: Partial<Connector> = {}): string {
    const name = this.name("X");
    const chart = { title: "chassis book", edition: "3", date: "2020-01-01", measured: true };
    this.build.vehicle(name, rows, {
      gender: "receptacle",
      shell: `vehicle ${name}`,
      chart,
      ...known,
    } as never);
    return name;
  }

  receptacle(module: string, rows: Rows, known: Partial<Connector> = {}): string {
    const name = this.name("X");
    const chart = { title: "leaflet in the box", edition: "1", date: "2025-01-01", measured: false };
    this.build.receptacle(name, module, rows, {
      gender: "plug",
      shell: `box ${name}`,
      chart,
      ...known,
    } as never);
    return name;
  }

  unit(rows: Rows, known: Partial<Connector> = {}): string {
    const name = this.name("X");
    const chart = { title: "leaflet in the box", edition: "1", date: "2025-01-01", measured: false };
    this.build.unit(name, rows, { gender: "plug", shell: `box ${name}`, chart, ...known } as never);
    return name;
  }

  ground(where = "stud in the sill, sanded and sealed"): string {
    return this.part("ground", "XE", { where, surface: "bare-metal", serves: "this-job" });
  }

  battery(known: Partial<Extract<Part, { kind: "supply" }>> = {}): {
    plus: string;
    name: string;
    stud: string;
  } {
    const name = this.part("supply", "G", {
      voltage_V: this.volts,
      capacity_Ah: 90,
      resistance_ohm: 0.005,
      cover: "boot",
      sensor: "none",
      ...known,
    });
    const stud = this.ground("body strap at the battery");
    this.wire(`${name}.−`, stud, { tag: "battery-minus", area_mm2: 50, length_m: 0.3, colour: "BK" });
    return { name, plus: `${name}.+`, stud };
  }

  /** A stretch of loom with nothing left out. */
  run(known: Partial<Omit<Run, "id" | "designation">> = {}): string {
    const name = this.name("B");
    this.build.run(
      name,
      {
        from: "connector",
        to: "breakout",
        length_m: 1,
        zone: "cabin",
        covering: "split-loom",
        hinge: "none",
        support_m: 0.3,
        bend_mm: 200,
        dripLoop: "yes",
        drilled: "no",
        ...known,
      },
      [],
    );
    return name;
  }

  wire(from: string, to: string, plan: LeadPlan): string {
    const length_m = plan.length_m ?? this.between(0.3, 1.2);
    const designation = this.name("W");
    const current = plan.current_A ?? 0.5;
    const known: Partial<Wire> = {
      designation,
      length_m,
      area_mm2: plan.area_mm2 ?? this.area(plan.fuse_A ?? current, current, length_m),
      insulation: "thin-wall-105",
      strands: "stranded",
      material: this.chance(0.2) ? "tinned-copper" : "copper",
      runs: (plan.runs ?? []).map((run) => this.runId(run)),
    };
    this.build.wire(from, to, plan.colour ?? this.colour(), known);
    return designation;
  }

  /** A whole lead, drawn in one of the ways that suit it. */
  lead(from: string, to: string, plan: LeadPlan): Lead {
    const current = plan.fuse_A ?? plan.current_A ?? 0.5;
    const length_m = plan.length_m ?? this.between(0.4, 1.4);
    const area_mm2 =
      plan.area_mm2 ?? this.area(plan.fuse_A ?? current, plan.current_A ?? current * 0.7, length_m);
    const fits = (way: Way) =>
      way === "bullet"
        ? current <= 5
        : way === "crimp"
          ? area_mm2 >= 0.5 && area_mm2 <= 6
          : way !== "plugs" || current <= 10;
    const ways = (plan.ways ?? ["direct", "direct", "solder", "crimp", "bullet", "plugs", "block"]).filter(
      fits,
    );
    const way = ways.length ? this.pick(ways) : "direct";
    const colour = plan.colour ?? this.colour();
    const made: LeadPlan = { ...plan, area_mm2, colour };
    const done = (wires: readonly string[], joints: readonly string[]): Lead => {
      const lead = { tag: plan.tag, from, to, wires, joints, way };
      this.leads.push(lead);
      return lead;
    };
    if (way === "direct") return done([this.wire(from, to, { ...made, length_m })], []);
    const first = { ...made, length_m: Number((length_m * 0.4).toFixed(3)) };
    const second = { ...made, length_m: Number((length_m * 0.6).toFixed(3)) };
    if (way === "plugs") {
      const { plug, socket, label } = this.throughPlugs();
      const wires = [this.wire(from, `${plug}.${label}`, first), this.wire(`${socket}.${label}`, to, second)];
      return done(wires, []);
    }
    const joint = this.joint(way, area_mm2);
    const wires = [this.wire(from, `${joint}.1`, first), this.wire(`${joint}.2`, to, second)];
    return done(wires, [joint]);
  }

  joint(
    way: Exclude<Way, "direct" | "plugs">,
    area_mm2: number,
    zone: "cabin" | "outside" | "engine-bay" = "cabin",
  ): string {
    const barrel = area_mm2 <= 1.5 ? "red" : area_mm2 <= 2.5 ? "blue" : "yellow";
    if (way === "solder")
      return this.part("splice", "XJ", { method: "solder-and-sleeve", cover: "adhesive-sleeve", zone });
    if (way === "crimp")
      return this.part("splice", "XJ", { method: "crimped-butt", cover: "adhesive-sleeve", barrel, zone });
    if (way === "bullet")
      return this.part("splice", "XJ", {
        method: "bullet-pair",
        cover: "housing",
        liveHalf: "shrouded",
        zone,
      });
    return this.part("splice", "XJ", { method: "terminal-block", cover: "housing", zone });
  }

  /** The next free way through a pair of plugs of the loom's own. */
  private throughPlugs(): { plug: string; socket: string; label: string } {
    if (!this.pair || this.pair.next > 6) {
      const rows = Object.fromEntries([1, 2, 3, 4, 5, 6].map((label) => [String(label), "unknown none"]));
      const plug = this.name("X");
      const socket = this.name("X");
      this.build.unit(plug, rows, { gender: "plug", shell: `pair ${plug}`, view: "wire-side" });
      this.build.unit(socket, rows, { gender: "receptacle", shell: `pair ${plug}`, view: "mating-face" });
      this.build.mate(plug, socket);
      this.pair = { plug, socket, next: 1 };
    }
    return { plug: this.pair.plug, socket: this.pair.socket, label: String(this.pair.next++) };
  }

  cap(contact: string, plan: Partial<LeadPlan> = {}): string {
    const cap = this.part("cap", "XC", { method: this.pick(["end-cap", "sleeve-folded-back", "crimp-cap"]) });
    this.build.change(cap, { name: "spare, kept" });
    this.wire(contact, cap, { tag: "spare", length_m: 0.15, area_mm2: 0.5, ...plan });
    return cap;
  }

  runId(designation: string): Run["id"] {
    return Object.values(this.harness.runs).find((run) => run.designation === designation)!.id;
  }

  // What a bad day does.

  /** The wires with an end on that contact. */
  wiresAt(contact: string): readonly Wire[] {
    const at = this.build.at(contact);
    return Object.values(this.harness.wires).filter((wire) => wire.ends.some((end) => sameEnd(end, at)));
  }

  wireNamed(designation: string): Wire {
    return Object.values(this.harness.wires).find((wire) => wire.designation === designation)!;
  }

  partNamed(designation: string): Part {
    return Object.values(this.harness.parts).find((part) => part.designation === designation)!;
  }

  /** The designation of what a wire's end stands on; "loose" for none. */
  nameOfEnd(end: End): string {
    return end === "loose" ? "loose" : this.harness.parts[end.part]!.designation;
  }

  /** Leaves one end of a wire hanging. */
  loosen(wire: string, side: 0 | 1): void {
    const { ends } = this.wireNamed(wire);
    this.build.change(wire, { ends: side ? [ends[0], "loose"] : ["loose", ends[1]] });
  }

  /** Every wire end that stands on one contact goes to the other, and the other way round. */
  exchange(a: string, b: string): void {
    const [left, right] = [this.build.at(a), this.build.at(b)];
    const moved = (end: End): End => (sameEnd(end, left) ? right : sameEnd(end, right) ? left : end);
    for (const wire of Object.values(this.harness.wires)) {
      const ends: [End, End] = [moved(wire.ends[0]), moved(wire.ends[1])];
      if (ends[0] !== wire.ends[0] || ends[1] !== wire.ends[1]) this.build.change(wire.designation, { ends });
    }
  }

  /** Moves the end of a wire that stands on `from` to `to`. */
  move(wire: string, from: string, to: string): void {
    const at = this.build.at(from);
    if (!findContact(this.harness, to)) throw new Error(`there is no ${to}`);
    const target = this.build.at(to);
    const { ends } = this.wireNamed(wire);
    this.build.change(wire, {
      ends: [sameEnd(ends[0], at) ? target : ends[0], sameEnd(ends[1], at) ? target : ends[1]],
    });
  }

  /** Takes a wire or a part away, and the wires on the part. */
  remove(designation: string): void {
    const wires: Record<WireId, Wire> = {};
    const part = this.partNamed(designation);
    for (const wire of Object.values(this.harness.wires)) {
      const onPart = part && wire.ends.some((end) => end !== "loose" && end.part === part.id);
      if (wire.designation !== designation && !onPart) wires[wire.id] = wire;
    }
    const parts = Object.fromEntries(Object.entries(this.harness.parts).filter(([, one]) => one !== part));
    const cables = Object.fromEntries(
      Object.entries(this.harness.cables)
        .map(([id, cable]) => [id, { ...cable, wires: cable.wires.filter((wire) => wires[wire]) }] as const)
        .filter(([, cable]) => cable.wires.length > 0),
    );
    this.build = new Build({ ...this.harness, wires, parts, cables });
  }

  dropCables(): void {
    this.build = new Build({ ...this.harness, cables: {} });
  }

  cavity(contact: string, changes: Partial<Cavity>): void {
    const at = this.build.at(contact);
    const part = this.harness.parts[at.part]!;
    if (part.kind !== "connector" && part.kind !== "module") throw new Error(`${contact} is no cavity`);
    const cavities = part.cavities.map((one, index) =>
      index === at.contact - 1 ? { ...one, ...changes } : one,
    );
    this.build.change(part.designation, { cavities });
  }

  changeRun(designation: string, changes: Partial<Run>): void {
    const run = Object.values(this.harness.runs).find((one) => one.designation === designation)!;
    this.build = new Build({
      ...this.harness,
      runs: { ...this.harness.runs, [run.id]: { ...run, ...changes } },
    });
  }

  tagged(tag: string): Lead {
    const found = this.leads.filter((lead) => lead.tag === tag);
    if (found.length === 0) throw new Error(`no lead is tagged ${tag}`);
    return this.pick(found);
  }

  all(tag: string): readonly Lead[] {
    return this.leads.filter((lead) => lead.tag === tag);
  }
}
