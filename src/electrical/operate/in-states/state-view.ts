import { type ContactKey, refOfKey } from "../../../graph/contacts.ts";
import type { Harness, PartId, RunId, WireId } from "../../../graph/harness.ts";
import type { KeyState } from "../key-state.ts";
import { LOADED_A } from "../operate.ts";
import type { LoadReading, ReadingWarning, SourceReading, Volts } from "../readings.ts";
import { ofWires, worstFirst } from "../warnings.ts";
import type { Answer, RelayShown } from "./answer.ts";
import type { AtState } from "./dials.ts";
import type { Groups } from "./groups.ts";
import type { Network } from "./network.ts";
import { ampereTable } from "./plan.ts";

/** One group with something opened in it. */
export type Opened = { readonly group: number; readonly network: Network };

/** What a harness shows in one state; each figure is worked out when it is asked for. */
export class StateView {
  private readonly answers: (Answer | undefined)[] = [];
  private readonly variants = new Map<Network, StateView>();
  private madeWarnings: readonly ReadingWarning[] | null = null;
  private madeLoaded: ReadonlyMap<RunId, number> | null = null;

  /** @param opened what differs from the harness as it is drawn; the rest is then read from `whole` */
  constructor(
    private readonly harness: Harness,
    private readonly groups: Groups,
    private readonly atState: AtState,
    private readonly opened: Opened | null = null,
    private readonly whole: StateView | null = null,
  ) {}

  get state(): KeyState {
    return this.atState.state;
  }

  /** At the posts of the system's batteries. */
  get battery_V(): number {
    return this.atState.battery_V;
  }

  /** Volts over the frame; "floating" where nothing that gives volts reaches, and for a contact that is not there. */
  volts(contact: ContactKey): Volts {
    const { part, contact: number } = refOfKey(contact);
    const group = this.groups.of.get(part);
    if (group === undefined) return "floating";
    const node = this.networkOf(group).plan.nodeAt(part, number);
    return node < 0 ? "floating" : this.answerOf(group).volts(node);
  }

  /** Amperes from the wire's first end to its second; 0 for one with a loose end, or that is not there. */
  amps(wire: WireId): number {
    const group = this.groupOfWire(wire);
    return group < 0 ? 0 : this.ampsIn(group, wire);
  }

  /** Volts lost along a wire, 0 or more. */
  drop_V(wire: WireId): number {
    const group = this.groupOfWire(wire);
    if (group < 0) return 0;
    return Math.abs(this.ampsIn(group, wire)) * this.networkOf(group).plan.wires.get(wire)!.resistance_ohm;
  }

  /** Every wire that carries so many amperes or more, either way. */
  *wiresFrom(least_A: number): Iterable<readonly [WireId, number]> {
    for (let group = 0; group < this.groups.all.length; group++)
      for (const [id, amps] of this.answerOf(group).wires) if (Math.abs(amps) >= least_A) yield [id, amps];
  }

  /** Every load that draws or could, as `load` tells each. */
  *loads(): Iterable<readonly [ContactKey, LoadReading]> {
    for (let group = 0; group < this.groups.all.length; group++) yield* this.answerOf(group).loads;
  }

  /** What all loads and coils draw together. */
  get drawn_A(): { readonly loads: number; readonly coils: number } {
    let [loads, coils] = [0, 0];
    for (let group = 0; group < this.groups.all.length; group++) {
      const { drawn_A } = this.answerOf(group);
      loads += drawn_A.loads;
      coils += drawn_A.coils;
    }
    return { loads, coils };
  }

  /** Loaded conductors in the fullest run of a wire, itself included: what a book's bundle factor is read by. */
  loadedBeside(wire: WireId): number {
    let most = 1;
    for (const run of this.harness.wires[wire]?.runs ?? []) most = Math.max(most, this.loaded.get(run) ?? 0);
    return most;
  }

  /** Amperes through a fuse, 0 or more; `null` for what is none. */
  fuse_A(part: PartId): number | null {
    if (this.harness.parts[part]?.kind !== "fuse") return null;
    const group = this.groups.of.get(part)!;
    return Math.abs(this.answerOf(group).amps(this.networkOf(group).plan.elementsOf.get(part)![0]!));
  }

  /** A load part by its plus, a box by a contact that draws: volts across it, amperes through it; `null` for all else. */
  load(contact: ContactKey): LoadReading | null {
    return this.answerAt(contact)?.loads.get(contact) ?? null;
  }

  /** `null` for what is no relay. */
  relay(part: PartId): RelayShown | null {
    if (this.harness.parts[part]?.kind !== "relay") return null;
    return this.answerOf(this.groups.of.get(part)!).relay(part);
  }

  /** A battery by its plus, a feed of the vehicle or an output of a box by its contact; `null` for all else. */
  source(contact: ContactKey): SourceReading | null {
    return this.answerAt(contact)?.sources.get(contact) ?? null;
  }

  /** @param unit a module's id, or "equipment"; `null` for one that cannot sleep, or is not there */
  isAwake(unit: string): boolean | null {
    const group = this.groups.of.get(unit as PartId);
    if (group !== undefined) return this.answerOf(group).isAwake(unit);
    // A unit that is no part of its own: whichever connector belongs to it.
    for (const part of Object.values(this.harness.parts)) {
      if (part.kind !== "connector") continue;
      if ((part.belongsTo.module ?? "equipment") !== unit) continue;
      const awake = this.answerOf(this.groups.of.get(part.id)!).isAwake(unit);
      if (awake !== null) return awake;
    }
    return null;
  }

  /** What a wire carries of what it may carry for good, per cent; `null` where no book has its size. */
  percentOfAmpacity(wire: WireId): number | null {
    const group = this.groupOfWire(wire);
    return group < 0 ? null : this.percentIn(group, wire);
  }

  /** What to know before the figures are believed, what harms most first. */
  get warnings(): readonly ReadingWarning[] {
    this.madeWarnings ??= this.readWarnings();
    return this.madeWarnings;
  }

  /** Of a group, by its place among all. */
  networkOf(group: number): Network {
    return this.opened?.group === group ? this.opened.network : this.groups.all[group]!.network;
  }

  answerOf(group: number): Answer {
    if (this.whole && this.opened?.group !== group) return this.whole.answerOf(group);
    this.answers[group] ??= this.networkOf(group).at(this.atState);
    return this.answers[group];
  }

  /** The same state with a network of one group in place of its own. */
  opening(opened: Opened): StateView {
    let view = this.variants.get(opened.network);
    if (!view) {
      view = new StateView(this.harness, this.groups, this.atState, opened, this);
      this.variants.set(opened.network, view);
    }
    return view;
  }

  private answerAt(contact: ContactKey): Answer | null {
    const group = this.groups.of.get(refOfKey(contact).part);
    return group === undefined ? null : this.answerOf(group);
  }

  /** −1 for a wire that has both ends loose, or is not there. */
  groupOfWire(wire: WireId): number {
    for (const end of this.harness.wires[wire]?.ends ?? []) {
      const group = end === "loose" ? undefined : this.groups.of.get(end.part);
      if (group !== undefined) return group;
    }
    return -1;
  }

  private ampsIn(group: number, wire: WireId): number {
    const { element } = this.networkOf(group).plan.wires.get(wire)!;
    return element < 0 ? 0 : this.answerOf(group).amps(element);
  }

  private percentIn(group: number, wire: WireId): number | null {
    const { amperes } = ampereTable(this.harness.settings).find(
      this.networkOf(group).plan.wires.get(wire)!,
      this.loadedBeside(wire),
    );
    return amperes === null ? null : (Math.abs(this.ampsIn(group, wire)) / amperes) * 100;
  }

  /** How many wires of each run carry current at the same time. */
  private get loaded(): ReadonlyMap<RunId, number> {
    if (this.madeLoaded) return this.madeLoaded;
    const loaded = new Map<RunId, number>();
    this.groups.all.forEach((group, index) => {
      if (!group.isBundled) return;
      for (const { id, runs } of group.wires) {
        if (runs.length === 0 || Math.abs(this.ampsIn(index, id)) < LOADED_A) continue;
        for (const run of runs) loaded.set(run, (loaded.get(run) ?? 0) + 1);
      }
    });
    this.madeLoaded = loaded;
    return loaded;
  }

  private readWarnings(): readonly ReadingWarning[] {
    const found: ReadingWarning[] = [];
    const { harness } = this;
    this.groups.all.forEach((group, index) => {
      found.push(...this.answerOf(index).warnings);
      if (!group.isBundled) return;
      const wires = new Map<WireId, { amps: number; percentOfAmpacity: number }>();
      for (const { id } of group.wires) {
        const amps = this.ampsIn(index, id);
        const percentOfAmpacity = amps === 0 ? 0 : (this.percentIn(index, id) ?? 0);
        if (percentOfAmpacity > 100) wires.set(id, { amps, percentOfAmpacity });
      }
      found.push(...ofWires({ wires, solved: { harness } }));
    });
    return worstFirst(found);
  }
}
