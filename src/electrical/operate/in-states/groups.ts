import type { Harness, Part, PartId, Wire, WireId } from "../../../graph/harness.ts";
import { findRoot } from "../../solve/ideal.ts";
import { boxContactsOf } from "../box-contacts.ts";
import type { Circuitry } from "../builder.ts";
import type { Readings } from "../readings.ts";
import { Network } from "./network.ts";
import { Plan } from "./plan.ts";

/** Parts that wires, mating or one box join, with their wires: nothing but the frame is between two of these. */
export class Group {
  private whole: Network | null = null;
  private readonly opened = new Map<string, Network>();
  /** Whether a wire of it lies in a run, beside others. */
  readonly isBundled: boolean;

  constructor(
    readonly parts: readonly Part[],
    readonly wires: readonly Wire[],
    private readonly circuitry: Circuitry,
  ) {
    this.isBundled = wires.some((wire) => wire.runs.length > 0);
  }

  get network(): Network {
    this.whole ??= new Network(new Plan(this.own(), []));
    return this.whole;
  }

  /** What the whole of `operate` tells of it alone; it holds for a state and what batteries have in it. */
  readonly readings = new Map<string, Readings>();

  /** The same with one part or wire of it that no current passes. */
  with(open: PartId | WireId): Network {
    let network = this.opened.get(open);
    if (!network) {
      const isGround = this.parts.some(({ id, kind }) => id === open && kind === "ground");
      network = isGround
        ? this.network.withoutGround(open as PartId)
        : new Network(new Plan(this.own(), [open]));
      this.opened.set(open, network);
    }
    return network;
  }

  own(): Circuitry {
    const { runs, settings } = this.circuitry;
    const parts = Object.fromEntries(this.parts.map((part) => [part.id, part]));
    const wires = Object.fromEntries(this.wires.map((wire) => [wire.id, wire]));
    return { parts, wires, runs, settings };
  }

  /** Whether it is what these parts and wires of another harness would be. */
  serves(parts: readonly Part[], wires: readonly Wire[], { runs, settings }: Circuitry): boolean {
    const mine = this.circuitry;
    if (!sameList(parts, this.parts) || !sameList(wires, this.wires)) return false;
    if (!this.isBundled || runs === mine.runs) return sameSettings(settings, mine.settings);
    return (
      wires.every((wire) => wire.runs.every((run) => runs[run] === mine.runs[run])) &&
      sameSettings(settings, mine.settings)
    );
  }
}

export type Groups = {
  readonly all: readonly Group[];
  /** The place in `all` of each part's group. */
  readonly of: ReadonlyMap<PartId, number>;
};

/** @param before groups of the harness before an edit: those that the edit left alone are used again */
export function groupsOf(harness: Circuitry, before: Groups | null): Groups {
  const parts = Object.values(harness.parts);
  const of = new Map<PartId, number>();
  for (let index = 0; index < parts.length; index++) of.set(parts[index]!.id, index);
  const root = new Int32Array(parts.length);
  for (let index = 0; index < parts.length; index++) root[index] = index;
  const join = (one: number, other: number | undefined) => {
    if (other === undefined) return;
    const [a, b] = [findRoot(root, one), findRoot(root, other)];
    if (a !== b) root[Math.max(a, b)] = Math.min(a, b);
  };
  const boxes = new Map<string, number>();
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index]!;
    if (part.kind === "connector" && part.matedWith !== null) join(index, of.get(part.matedWith));
    const box = boxOf(part);
    if (box === null) continue;
    const known = boxes.get(box) ?? of.get(box as PartId);
    if (known === undefined) boxes.set(box, index);
    else join(index, known);
  }
  const wires = Object.values(harness.wires);
  const home = new Int32Array(wires.length).fill(-1);
  for (let index = 0; index < wires.length; index++) {
    for (const end of wires[index]!.ends) {
      const part = end === "loose" ? undefined : of.get(end.part);
      if (part === undefined) continue;
      if (home[index]! >= 0) join(part, home[index]!);
      else home[index] = part;
    }
  }
  const number = new Int32Array(parts.length).fill(-1);
  const members: { readonly parts: Part[]; readonly wires: Wire[] }[] = [];
  for (let index = 0; index < parts.length; index++) {
    const top = findRoot(root, index);
    // The first of a group is its top.
    if (top === index) number[index] = members.push({ parts: [], wires: [] }) - 1;
    members[number[top]!]!.parts.push(parts[index]!);
    of.set(parts[index]!.id, number[top]!);
  }
  for (let index = 0; index < wires.length; index++) {
    if (home[index]! >= 0) members[number[findRoot(root, home[index]!)]!]!.wires.push(wires[index]!);
  }
  const circuitry = { parts: NO_PARTS, wires: NO_WIRES, runs: harness.runs, settings: harness.settings };
  const all = members.map((one) => {
    const known = before?.all[before.of.get(one.parts[0]!.id) ?? -1];
    return known?.serves(one.parts, one.wires, harness) ? known : new Group(one.parts, one.wires, circuitry);
  });
  return { all, of };
}

// A group keeps its own parts and wires alone, so that an old document is not held in memory by it.
const NO_PARTS: Circuitry["parts"] = {};
const NO_WIRES: Circuitry["wires"] = {};

/** The box that a part's contacts are of: a module's id, or the unit of all equipment that names none. */
function boxOf(part: Part): string | null {
  if (part.kind === "module") return part.id;
  if (part.kind !== "connector") return null;
  const { side, module } = part.belongsTo;
  if (module !== null) return module;
  return side === "equipment" && boxContactsOf(part).length > 0 ? "equipment" : null;
}

function sameList<T>(one: readonly T[], other: readonly T[]): boolean {
  if (one.length !== other.length) return false;
  for (let index = 0; index < one.length; index++) if (one[index] !== other[index]) return false;
  return true;
}

/** Whether two settings reckon alike; what batteries have is a matter of the state. */
function sameSettings(one: Harness["settings"], other: Harness["settings"]): boolean {
  if (one === other) return true;
  const [mine, theirs] = [one.electrical, other.electrical];
  return (
    one.systemVoltage_V === other.systemVoltage_V &&
    one.ambient_degC === other.ambient_degC &&
    mine.ampacityBook === theirs.ampacityBook &&
    mine.engineBay_degC === theirs.engineBay_degC &&
    mine.slack_percent === theirs.slack_percent
  );
}
