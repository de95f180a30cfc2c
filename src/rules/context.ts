import { type InStates, inStates } from "../electrical/operate/in-states/in-states.ts";
import type { Point, PointCircuit } from "../electrical/points.ts";
import { contactKey, keysOf } from "../graph/contacts.ts";
import type { Harness, Module, Part, PartId, Splice, Wire } from "../graph/harness.ts";
import type { Traced } from "../graph/trace.ts";
import { Look } from "./look.ts";
import { type Profile, profileOf } from "./profile/profiles.ts";
import { type Driven, drivenPairs } from "./shared/speakers.ts";
import { type Stretches, stretchesOf } from "./shared/stretches.ts";
import { type Unjoined, unjoinedOf } from "./shared/unjoined.ts";

/** One box as the charts describe it: a module, or all connectors of a side that name no module. */
export type Unit = {
  readonly id: string;
  readonly module: Module | null;
  readonly points: readonly Point[];
};

/** The one wire that a joint holds. */
export type DeadEnd = { readonly wire: Wire; readonly joint: Splice };

/** What rules share of one harness: each look-up is made once, when the first rule asks for it. */
export class Context extends Look {
  private madeUnits: readonly Unit[] | null = null;
  private madeDriven: readonly Driven[] | null = null;
  private madeDeadEnds: readonly DeadEnd[] | null = null;
  private madeUnjoined: Unjoined | null = null;
  private madeStretches: Stretches | null = null;
  private madeSolved: InStates | null = null;
  private solvedBefore: InStates | null;
  readonly parts: readonly Part[];

  /** @param before of the harness that this one came from; what still holds of it is used again */
  constructor(harness: Harness, traced: Traced, before: Context | null = null) {
    super(harness, traced);
    this.solvedBefore = before ? (before.madeSolved ?? before.solvedBefore) : null;
    this.parts = Object.values(harness.parts);
  }

  /** What each fuse protects, from the sources outwards. */
  get stretches(): Stretches {
    this.madeStretches ??= stretchesOf(this);
    return this.madeStretches;
  }

  /** The harness solved in every state that matters, each figure when it is asked for. */
  get solved(): InStates {
    if (!this.madeSolved) {
      this.madeSolved = inStates(this.harness, this.traced, this.solvedBefore);
      this.solvedBefore = null;
    }
    return this.madeSolved;
  }

  /** The boxes of the new equipment. The vehicle's own wiring is not this job's to judge. */
  get newUnits(): readonly Unit[] {
    this.madeUnits ??= [...this.points.byUnit].flatMap(([id, points]): Unit[] => {
      const part = this.harness.parts[id as PartId];
      if (part && part.kind !== "module") return [];
      const module = part?.kind === "module" ? part : null;
      const side = module ? module.side : id;
      return side === "equipment" ? [{ id, module, points }] : [];
    });
    return this.madeUnits;
  }

  /** Speakers, inputs and vehicle pairs with the outputs that drive both their leads. */
  get driven(): readonly Driven[] {
    this.madeDriven ??= drivenPairs(this);
    return this.madeDriven;
  }

  /** Joints that hold one end of one wire: it joins nothing. A wire with a loose end as well is no news. */
  get deadEnds(): readonly DeadEnd[] {
    this.madeDeadEnds ??= this.parts.flatMap((joint): DeadEnd[] => {
      if (joint.kind !== "splice") return [];
      const [left, right] = keysOf(joint);
      const [a, b] = [this.traced.wiresAt(left!), this.traced.wiresAt(right!)];
      const wire = a[0] ?? b[0];
      return wire && a.length + b.length === 1 && !wire.ends.includes("loose") ? [{ wire, joint }] : [];
    });
    return this.madeDeadEnds;
  }

  /** The limits and habits by which this harness is judged. A message names the book of each that it uses. */
  get profile(): Profile {
    return profileOf(this.harness.settings);
  }

  get unjoined(): Unjoined {
    this.madeUnjoined ??= unjoinedOf(this);
    return this.madeUnjoined;
  }

  moduleOf(point: Point): Module | null {
    const part = point.unit === null ? undefined : this.harness.parts[point.unit as PartId];
    return part?.kind === "module" ? part : null;
  }

  withFunction(...names: readonly string[]): readonly Point[] {
    return names.flatMap((name) => this.points.byFunction.get(name) ?? []);
  }

  hasLooseWire(point: Point): boolean {
    return this.circuitOf(point).circuit.loose.length > 0;
  }

  /** Nothing else with a purpose is in its circuit; a second contact of the same box for the same job is none. */
  isAlone(point: Point): boolean {
    for (const other of this.circuitOf(point).points) {
      if (other !== point && !(other.unit === point.unit && other.means === point.means)) return false;
    }
    return true;
  }

  /** Several leads end under one cap of it: a rule of its own tells that, and cures it first. */
  meetsInCap({ caps }: PointCircuit): boolean {
    return caps.some((cap) => this.traced.wiresAt(contactKey(cap, 1)).length > 1);
  }

  /** A person has said that it stays unused. */
  isLeftOut(point: Point): boolean {
    const use = point.contact.cavity?.use;
    return use === "spare" || use === "plugged";
  }
}

const remembered = new WeakMap<Traced, Context>();

/** The context of a traced harness; the same two objects give the same one. */
export function contextOf(harness: Harness, traced: Traced, before: Context | null = null): Context {
  const known = remembered.get(traced);
  if (known?.harness === harness) return known;
  const made = new Context(harness, traced, before);
  remembered.set(traced, made);
  return made;
}
