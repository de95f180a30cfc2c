import type { ContactKey } from "../../../graph/contacts.ts";
import type { PartId, WireId } from "../../../graph/harness.ts";
import { nodesOf } from "../../solve/circuit.ts";
import { USUAL } from "../assumed.ts";
import type { Built } from "../built.ts";
import { readFuse, readLoads, readSources } from "../read-parts.ts";
import type { FuseReading, LoadReading, ReadingWarning, SourceReading, Volts } from "../readings.ts";
import type { SettledBoxes } from "../settle-boxes.ts";
import { VoltsAt } from "../volts-at.ts";
import { warningsOf } from "../warnings.ts";
import { ampereTable, type Plan } from "./plan.ts";

type Solved = SettledBoxes<Pick<Built, "circuit" | "owners" | "choices" | "boxes" | "givers" | "takers">>;

export type RelayShown = {
  readonly pulledIn: boolean;
  readonly coil_A: number;
  /** The most that flows through one of its contacts. */
  readonly contact_A: number;
};

/** What a network shows in one state. All of it is worked out when it is asked for. */
export class Answer {
  private readonly reach: VoltsAt;
  private madeLoads: ReadonlyMap<ContactKey, LoadReading> | null = null;
  private madeSources: ReadonlyMap<ContactKey, SourceReading> | null = null;
  private madeWarnings: readonly ReadingWarning[] | null = null;
  private madeWires: readonly (readonly [WireId, number])[] | null = null;
  private madeDrawn: { readonly loads: number; readonly coils: number } | null = null;

  constructor(
    private readonly plan: Plan,
    private readonly solved: Solved,
  ) {
    this.reach = new VoltsAt(solved.built, solved.solution);
  }

  /** @param node by the network's own numbers */
  volts(node: number): Volts {
    const { hangsOn, place, inside, share, elements } = this.plan.reduced;
    let at = node;
    while (hangsOn[at]! >= 0) at = hangsOn[at]!;
    if (place[at]! >= 0) return this.reach.volts(place[at]!);
    if (inside[at]! < 0) return "floating";
    const [from, to] = nodesOf(elements[inside[at]!]!).map((end) => this.reach.volts(end));
    return typeof from === "number" && typeof to === "number" ? from + (to - from) * share[at]! : "floating";
  }

  /** @param element by the network's own numbers; amperes from its first node to its second */
  amps(element: number): number {
    const { through, turn } = this.plan.reduced;
    const at = through[element] ?? -1;
    // Added to 0, so that nothing is ever −0.
    return at < 0 ? 0 : 0 + turn[element]! * this.solved.solution.amps[at]!;
  }

  /** Wires that carry anything, with their amperes from first end to second. */
  get wires(): readonly (readonly [WireId, number])[] {
    this.madeWires ??= [...this.plan.wires].flatMap(([id, { element }]) => {
      const amps = element < 0 ? 0 : this.amps(element);
      return amps === 0 ? [] : [[id, amps] as const];
    });
    return this.madeWires;
  }

  /** What its loads and coils draw together. */
  get drawn_A(): { readonly loads: number; readonly coils: number } {
    if (!this.madeDrawn) {
      let [loads, coils] = [0, 0];
      for (const { amps } of this.loads.values()) loads += Math.abs(amps);
      for (const id of this.plan.elementsOf.keys()) coils += this.relay(id)?.coil_A ?? 0;
      this.madeDrawn = { loads, coils };
    }
    return this.madeDrawn;
  }

  get loads(): ReadonlyMap<ContactKey, LoadReading> {
    this.madeLoads ??= readLoads(this.solved.built, this.solved.solution, this.reach, USUAL);
    return this.madeLoads;
  }

  get sources(): ReadonlyMap<ContactKey, SourceReading> {
    this.madeSources ??= readSources(this.solved.built, this.solved.solution, this.reach);
    return this.madeSources;
  }

  relay(part: PartId): RelayShown | null {
    const elements = this.plan.elementsOf.get(part);
    const coil = elements?.find((one) => this.plan.owners.role[one] === "coil");
    if (!elements || coil === undefined) return null;
    let contact_A = 0;
    for (const one of elements) if (one !== coil) contact_A = Math.max(contact_A, Math.abs(this.amps(one)));
    const at = this.plan.reduced.through[coil]!;
    return {
      pulledIn: this.solved.solution.pulled[at] === 1,
      coil_A: Math.abs(this.amps(coil)),
      contact_A,
    };
  }

  /** `null` for what is no box that can sleep. */
  isAwake(key: string): boolean | null {
    const index = this.solved.built.boxes.findIndex((box) => box.key === key);
    return index < 0 ? null : this.solved.awake[index]!;
  }

  /** All but those of wires in runs that carry too much, which depend on what lies beside them. */
  get warnings(): readonly ReadingWarning[] {
    this.madeWarnings ??= this.readWarnings();
    return this.madeWarnings;
  }

  private overloaded(): ReadonlyMap<WireId, { amps: number; percentOfAmpacity: number }> {
    const found = new Map<WireId, { amps: number; percentOfAmpacity: number }>();
    const table = ampereTable(this.plan.circuitry.settings);
    for (const [id, facts] of this.plan.wires) {
      const amps = this.amps(facts.element);
      if (amps === 0) continue;
      const { amperes } = table.find(facts, 1);
      if (amperes === null || Math.abs(amps) <= amperes) continue;
      found.set(id, { amps, percentOfAmpacity: (Math.abs(amps) / amperes) * 100 });
    }
    return found;
  }

  private readWarnings(): readonly ReadingWarning[] {
    const { circuitry, elementsOf, owners } = this.plan;
    const fuses = new Map<PartId, FuseReading>();
    for (const [id, [first]] of elementsOf)
      if (owners.role[first!] === "fuse")
        fuses.set(id, readFuse(circuitry.parts[id]!, Math.abs(this.amps(first!))));
    const { built, solution, restless } = this.solved;
    const nominal_V = circuitry.settings.systemVoltage_V;
    return warningsOf(
      {
        sources: this.sources,
        loads: this.loads,
        fuses,
        wires: this.plan.isBundled ? new Map() : this.overloaded(),
        solved: { harness: circuitry, built: { ...built, nominal_V }, solution },
      },
      restless,
    );
  }
}
