import type { Part, PartId, WireId } from "../../../graph/harness.ts";
import { type CircuitElement, nodesOf } from "../../solve/circuit.ts";
import { findRoot } from "../../solve/ideal.ts";
import type { Prepared } from "../../solve/prepare.ts";
import { AmpereTable, bookOf } from "../ampacity-of.ts";
import { USUAL } from "../assumed.ts";
import { addBoxes, type GatheredBoxes, gatherBoxes, type Placed } from "../boxes-of.ts";
import { Builder, type Circuitry, type Nodes, nodesOfParts, type Setting } from "../builder.ts";
import type { Owners, WireFacts } from "../built.ts";
import { addMates } from "../mates-of.ts";
import { addPart } from "../parts-of.ts";
import { addWires } from "../wires-of.ts";
import { type AtState, type Dials, dialsOf } from "./dials.ts";
import { type Reduced, reduce } from "./reduce.ts";

/** Kinds of parts that are one thing in one state and another in the next. */
const CHANGING: ReadonlySet<Part["kind"]> = new Set(["switch", "load", "supply"]);

/** What of a network is the same in every state, and with each of its grounds opened. */
export class Plan {
  /** Whether a wire of it lies in a run, beside others. */
  readonly isBundled: boolean;
  readonly reduced: Reduced;
  /** What each element was, by the numbers that it had before it was reduced. */
  readonly owners: Owners;
  readonly wires: ReadonlyMap<WireId, WireFacts>;
  /** Elements of fuses, relays and grounds, by the same numbers. */
  readonly elementsOf: ReadonlyMap<PartId, readonly number[]>;
  readonly dials: Dials;
  /** [nodes left] nodes that resistances join have one number; 0: joined to the frame. */
  readonly joined: Int32Array;
  /** Made by whoever solves first; one shape serves all states. */
  prepared: Prepared | null = null;
  private allOwners: Owners | null = null;
  private readonly broken: ReadonlySet<string>;
  private readonly nodes: Nodes;
  private readonly changing: readonly Part[];
  private readonly boxes: GatheredBoxes;

  /** @param broken parts and wires that no current passes */
  constructor(
    readonly circuitry: Circuitry,
    broken: readonly string[],
  ) {
    this.broken = new Set(broken);
    const parts = Object.values(circuitry.parts);
    this.isBundled = Object.values(circuitry.wires).some((wire) => wire.runs.length > 0);
    this.nodes = nodesOfParts(parts);
    const setting = this.settingAt({
      state: { key: "off", conditions: [] },
      battery_V: 0,
      batteryIsSet: true,
    });
    const fixed = new Builder(setting, this.nodes);
    this.wires = addWires(fixed);
    this.changing = parts.filter(({ kind }) => CHANGING.has(kind));
    for (const part of parts) if (!CHANGING.has(part.kind)) addPart(fixed, part);
    const mates = addMates(fixed);
    const gathered = gatherBoxes(fixed, mates, wired(fixed, circuitry));
    const { elements, owners } = fixed;
    this.owners = owners;
    this.elementsOf = byPart(owners);
    // In which state does not matter: which nodes the rest hangs on is the same in all.
    const rest = new Builder(setting, this.nodes);
    this.addRest(rest, gathered);
    const kept = new Uint8Array(this.nodes.keyOf.length);
    for (const element of rest.elements) for (const node of nodesOf(element)) kept[node] = 1;
    for (const box of rest.boxes) for (const node of [box.returnNode, ...box.wakeNodes]) kept[node] = 1;
    // A ground stands by itself, so that it can be opened in place.
    const single = Uint8Array.from(owners.role, (role) => (role === "ground" ? 1 : 0));
    this.reduced = reduce(elements, single, kept);
    this.joined = joinedIn(this.reduced);
    this.boxes = placed(gathered, this.reduced.place);
    this.dials = dialsOf(this.changing, gathered);
  }

  /** What a state adds to the elements that are there in all states. */
  complete(elements: readonly CircuitElement[], at: AtState): Builder {
    const { place } = this.reduced;
    const builder = new Builder(this.settingAt(at), this.nodes, { elements, place });
    this.addRest(builder, this.boxes);
    return builder;
  }

  private settingAt({ state, battery_V, batteryIsSet }: AtState): Setting {
    const { settings } = this.circuitry;
    return {
      harness: this.circuitry,
      state,
      usual: USUAL,
      nominal_V: settings.systemVoltage_V,
      battery_V,
      batteryIsSet,
      ambient_degC: settings.ambient_degC,
      coldLamps: false,
      broken: this.broken,
    };
  }

  private addRest(builder: Builder, boxes: GatheredBoxes): void {
    for (const part of this.changing) addPart(builder, part);
    addBoxes(builder, boxes);
  }

  /** The node of a contact, by the numbers before it was reduced; −1 where there is none. */
  nodeAt(part: PartId, contact: number): number {
    const count = this.nodes.contactCount.get(part);
    return count !== undefined && contact >= 1 && contact <= count
      ? this.nodes.firstNode.get(part)! + contact - 1
      : -1;
  }

  /** Of what is left and what a state adds: whose each element is. */
  ownersWith(added: Owners): Owners {
    const { wasAt } = this.reduced;
    this.allOwners ??= {
      role: [...wasAt.map((at) => this.owners.role[at]!), ...added.role],
      id: [...wasAt.map((at) => this.owners.id[at]!), ...added.id],
      contact: [...wasAt.map((at) => this.owners.contact[at]!), ...added.contact],
    };
    return this.allOwners;
  }
}

const tables = new Map<string, AmpereTable>();

/** The book of ampacity that the settings name, with what it said before. */
export function ampereTable({ electrical, systemVoltage_V }: Circuitry["settings"]): AmpereTable {
  const key = `${electrical.ampacityBook} ${systemVoltage_V}`;
  let table = tables.get(key);
  if (!table) {
    if (tables.size > 50) tables.clear();
    table = new AmpereTable(bookOf(electrical.ampacityBook).book, systemVoltage_V);
    tables.set(key, table);
  }
  return table;
}

function joinedIn({ nodeCount, elements }: Reduced): Int32Array {
  const root = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) root[node] = node;
  for (const element of elements) {
    if (element.kind !== "resistance") continue;
    const [a, b] = [findRoot(root, element.from), findRoot(root, element.to)];
    root[Math.max(a, b)] = Math.min(a, b);
  }
  return root.map((_, node) => findRoot(root, node));
}

/** [nodes] 1 where a wire lands. */
function wired(builder: Builder, { wires }: Circuitry): Uint8Array {
  const landed = new Uint8Array(builder.keyOf.length);
  for (const id in wires) {
    for (const end of wires[id as WireId]!.ends) {
      const node = builder.nodeOfEnd(end);
      if (node >= 0) landed[node] = 1;
    }
  }
  return landed;
}

function byPart({ role, id }: Owners): ReadonlyMap<PartId, readonly number[]> {
  const found = new Map<PartId, number[]>();
  for (let index = 0; index < role.length; index++) {
    const of = role[index]!;
    if (of !== "fuse" && of !== "coil" && of !== "make" && of !== "rest" && of !== "ground") continue;
    const list = found.get(id[index] as PartId);
    if (list) list.push(index);
    else found.set(id[index] as PartId, [index]);
  }
  return found;
}

/** The same contacts at the numbers that nodes have after the unchanging part was drawn together. */
function placed({ vehicle, boxes }: GatheredBoxes, place: Int32Array): GatheredBoxes {
  const at = (one: Placed): Placed => ({ ...one, node: place[one.node]! });
  return {
    vehicle: vehicle.map(at),
    boxes: boxes.map((box) => ({ ...box, contacts: box.contacts.map(at) })),
  };
}
