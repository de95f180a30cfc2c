import type { WireFunction } from "../../catalogue/functions.ts";
import type { Connector, Module, PartId } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import { type BoxContact, boxContactsOf, wakes } from "./box-contacts.ts";
import { type Builder, FRAME, open } from "./builder.ts";
import { isLive, isPulled } from "./key-state.ts";
import type { Mates } from "./mates-of.ts";
import { steady } from "./parts-of.ts";

/** A contact of a box, where it stands in the circuit. */
export type Placed = BoxContact & { readonly part: Connector | Module; readonly node: number };

/** All contacts of one box: a module's own and those of its receptacles; or of the unit that has no module. */
export type Gathered = {
  readonly key: string;
  readonly module: Module | null;
  readonly contacts: readonly Placed[];
};

const FIVE_VOLTS = new Set(["usb-power", "sensor-supply"]);
const FIVE_V = 5;
/** Ground contacts of one box are joined inside it. @source from memory */
const TIE_ohm = 0.001;
const FIRST = 0;

/** The contacts that count, of the vehicle and of each box: the same in every state. */
export type GatheredBoxes = { readonly vehicle: readonly Placed[]; readonly boxes: readonly Gathered[] };

/**
 * Finds the cavities of connectors and modules behind which something stands.
 * @param hasWire [nodes] whether a wire lands there
 */
export function gatherBoxes(builder: Builder, mates: Mates, hasWire: Uint8Array): GatheredBoxes {
  const boxes = new Map<string, Growing>();
  const vehicle: Placed[] = [];
  for (const part of Object.values(builder.setting.harness.parts)) {
    if (part.kind !== "connector" && part.kind !== "module") continue;
    for (const contact of boxContactsOf(part)) {
      const node = builder.node(part.id, contact.number);
      const placed: Placed = { ...contact, part, node };
      if (isPassedThrough(placed, mates, hasWire)) continue;
      if (contact.ofVehicle) vehicle.push(placed);
      else gather(builder, boxes, placed);
    }
  }
  return { vehicle, boxes: [...boxes.values()] };
}

/**
 * Adds what stands behind the cavities: the vehicle's feeds and grounds, what boxes draw asleep and awake, their outputs.
 */
export function addBoxes(builder: Builder, { vehicle, boxes }: GatheredBoxes): void {
  addVehicle(builder, vehicle);
  for (const box of boxes) addBox(builder, box);
}

type Growing = Gathered & { readonly contacts: Placed[] };

function gather(builder: Builder, boxes: Map<string, Growing>, placed: Placed): void {
  const { part } = placed;
  const id = part.kind === "module" ? part.id : part.belongsTo.module;
  const key = id ?? "equipment";
  let box = boxes.get(key);
  if (!box) {
    const module = id === null ? undefined : builder.setting.harness.parts[id];
    box = { key, module: module?.kind === "module" ? module : null, contacts: [] };
    boxes.set(key, box);
  }
  box.contacts.push(placed);
}

/**
 * Of two mated contacts that say the same of one lead, one counts: what gives before what only passes it on to a wire,
 * else the first by designation.
 */
function isPassedThrough(own: Placed, mates: Mates, hasWire: Uint8Array): boolean {
  const mate = mates.get(own.node);
  if (!mate) return false;
  const other = boxContactsOf(mate.part).find((one) => one.number === mate.contact);
  if (!other) return false;
  if (other.role !== own.role) return own.role === "take" && other.role === "feed" && hasWire[own.node] === 1;
  if (other.means.id !== own.means.id) return false;
  if (own.role === "ground" && own.returns !== other.returns) return own.returns && hasWire[own.node] === 1;
  const stated =
    Number(typeof own.cavity.current_A === "number") - Number(typeof other.cavity.current_A === "number");
  if (stated !== 0) return stated < 0;
  if (own.ofVehicle !== other.ofVehicle) return !own.ofVehicle;
  return own.part.designation === mate.part.designation
    ? own.part.id > mate.part.id
    : own.part.designation > mate.part.designation;
}

/** The vehicle behind its own connectors: feeds from its battery, its ground, what it takes. */
function addVehicle(builder: Builder, contacts: readonly Placed[]): void {
  const { usual, state } = builder.setting;
  for (const one of contacts) {
    switch (one.role) {
      case "ground": {
        if (one.returns) break;
        builder.note("vehicle-ground", one.part.id, usual.vehicleGround_ohm * 1000);
        const resistance_ohm = usual.vehicleGround_ohm;
        builder.add(
          one.part.id,
          "ground",
          { kind: "resistance", from: one.node, to: FRAME, resistance_ohm },
          one.number,
        );
        break;
      }
      case "feed":
        addFeed(builder, one, isLive(one.means, state, true));
        break;
      case "sink":
        addSink(builder, one, FRAME);
        break;
      case "take": {
        const own = contacts.find((other) => other.part === one.part && other.returns);
        addTake(builder, one, own?.node ?? FRAME, null);
        break;
      }
    }
  }
}

function addFeed(builder: Builder, one: Placed, live: boolean): void {
  const { usual, battery_V } = builder.setting;
  const five = FIVE_VOLTS.has(one.means.id);
  if (five) builder.note("five-volts", one.part.id, FIVE_V);
  builder.note("feed-behind", one.part.id, usual.feed_ohm * 1000);
  const supply: CircuitElement = {
    kind: "supply",
    plus: one.node,
    minus: FRAME,
    emf_V: five ? FIVE_V : battery_V,
    resistance_ohm: usual.feed_ohm,
  };
  const element = builder.add(one.part.id, "feed", live ? supply : open(supply), one.number);
  const { current_A, fuse_A } = one.cavity;
  builder.givers.push({
    element,
    key: `${one.part.id}#${one.number}`,
    limit_A: typeof fuse_A === "number" ? fuse_A : typeof current_A === "number" ? current_A : null,
    limitedBy: typeof fuse_A === "number" ? "fuse" : fuse_A === null ? "none" : "unknown",
  });
}

function addSink(builder: Builder, one: Placed, to: number): void {
  const closed = isPulled(one.means, builder.setting.state);
  const { switch_ohm } = builder.setting.usual;
  builder.add(
    one.part.id,
    "sink",
    { kind: "switch", from: one.node, to, closed, resistance_ohm: switch_ohm },
    one.number,
  );
}

function addBox(builder: Builder, box: Gathered): void {
  const returnNode = addReturn(builder, box);
  const at = addSleep(builder, box, returnNode);
  const { state } = builder.setting;
  const { isOn } = at;
  const constants = box.contacts.filter((one) => one.role === "take" && one.means.liveIn.includes("off"));
  let asleep_A: number | null =
    box.module && box.module.standby_A !== "unknown" ? box.module.standby_A : null;
  if (constants.length > 0 && asleep_A === null && at.sleeps) {
    asleep_A = builder.setting.usual.standby_A;
    builder.note("standby", box.module?.id ?? constants[0]!.part.id, asleep_A * 1000);
  }
  for (const one of box.contacts) {
    if (one.role === "sink") addSink(builder, one, returnNode);
    if (one.role !== "take") continue;
    // What it draws asleep comes by its first constant feed alone.
    const isConstant = constants.includes(one);
    const sleeping = { isOn, box: at.index, asleep_A: one === constants[FIRST] ? (asleep_A ?? 0) : 0 };
    addTake(builder, one, returnNode, isConstant && at.sleeps ? sleeping : null);
  }
  const feedNode = (constants[FIRST] ?? box.contacts.find((one) => one.role === "take" && wakes(one.means)))
    ?.node;
  for (const one of box.contacts) {
    if (one.role !== "feed") continue;
    const live = one.means.liveIn.includes("off") || isLive(one.means, state, false);
    addOutput(builder, one, feedNode ?? null, returnNode, {
      live,
      isOn,
      box: one.means.liveIn.includes("off") ? -2 : at.index,
    });
  }
}

/** Where the box's currents come together to go back. */
function addReturn(builder: Builder, box: Gathered): number {
  const grounds = box.contacts.filter((one) => one.role === "ground");
  const [first, ...others] = grounds;
  if (!first) {
    const about = box.module?.id ?? box.contacts[0]!.part.id;
    if (box.contacts.some((one) => one.role === "take")) builder.note("case-grounded", about);
    return FRAME;
  }
  for (const other of others) {
    const element = {
      kind: "resistance",
      from: other.node,
      to: first.node,
      resistance_ohm: TIE_ohm,
    } as const;
    builder.add(other.part.id, "tie", element, other.number);
  }
  return first.node;
}

/** Whether and by what the box sleeps and wakes, and a first guess, which the voltages put right. */
function addSleep(
  builder: Builder,
  box: Gathered,
  returnNode: number,
): { readonly index: number; readonly sleeps: boolean; readonly isOn: boolean } {
  const { state } = builder.setting;
  const about = box.module?.id ?? box.contacts[0]!.part.id;
  const leads = box.contacts.filter((one) => one.role === "take" && wakes(one.means));
  const by = box.module?.wakes ?? "unknown";
  const hasConstant = box.contacts.some((one) => one.role === "take" && one.means.liveIn.includes("off"));
  const hasOutput = box.contacts.some((one) => one.role === "feed");
  if (!hasConstant && !hasOutput) return { index: -1, sleeps: false, isOn: true };
  let fixed: boolean | null = null;
  if (by === "by-signal") {
    builder.note("wakes-with-key", about);
    fixed = state.key !== "off";
  } else if (leads.length === 0) {
    builder.note("never-sleeps", about);
    fixed = true;
  }
  const parts = [...new Set<PartId>(box.contacts.map((one) => one.part.id))];
  const wakeNodes = fixed === null ? leads.map((one) => one.node) : [];
  const index = builder.boxes.push({ key: box.key, parts, wakeNodes, returnNode, fixed }) - 1;
  const guess = leads.some((one) => isLive(one.means, state, true));
  return { index, sleeps: fixed === null || by === "by-signal", isOn: fixed ?? guess };
}

type Sleeping = { readonly isOn: boolean; readonly box: number; readonly asleep_A: number };

function addTake(builder: Builder, one: Placed, minus: number, sleeping: Sleeping | null): void {
  const { usual, nominal_V } = builder.setting;
  const { current_A } = one.cavity;
  const plus = one.node;
  if (current_A === "unknown") builder.note("load-unstated", one.part.id, usual.probe_ohm / 1000);
  const on: CircuitElement =
    current_A === "unknown" || current_A === 0
      ? { kind: "resistance", from: plus, to: minus, resistance_ohm: usual.probe_ohm }
      : steady(builder, plus, minus, current_A);
  const element = sleeping
    ? builder.choose(
        one.part.id,
        "take",
        { on, off: steady(builder, plus, minus, sleeping.asleep_A), box: sleeping.box, isOn: sleeping.isOn },
        one.number,
      )
    : builder.add(one.part.id, "take", on, one.number);
  builder.takers.push({
    element,
    key: `${one.part.id}#${one.number}`,
    plus,
    minus,
    part: one.part.id,
    stated_A: current_A === "unknown" ? null : current_A,
    nominal_V,
    polarised: false,
  });
}

type Switched = { readonly live: boolean; readonly isOn: boolean; readonly box: number };

/** An output joins the box's own feed to the lead, and lets no more through than its limit. */
function addOutput(
  builder: Builder,
  one: Placed,
  feedNode: number | null,
  returnNode: number,
  { live, isOn, box }: Switched,
): void {
  const { usual, battery_V } = builder.setting;
  const about = one.part.id;
  const five = FIVE_VOLTS.has(one.means.id);
  const unfed = feedNode === null || five;
  if (five) builder.note("five-volts", about, FIVE_V);
  else if (unfed) builder.note("output-unfed", about);
  builder.note("output-inside", about, usual.output_ohm * 1000);
  const limit_A = limitOf(builder, one);
  const on: CircuitElement = {
    kind: "output",
    plus: one.node,
    minus: unfed ? returnNode : feedNode,
    emf_V: five ? FIVE_V : unfed ? battery_V : 0,
    resistance_ohm: usual.output_ohm,
    limit_A,
  };
  const element =
    live && box !== -2
      ? builder.choose(one.part.id, "output", { on, off: open(on), box, isOn }, one.number)
      : builder.add(one.part.id, "output", live ? on : open(on), one.number);
  builder.givers.push({ element, key: `${one.part.id}#${one.number}`, limit_A, limitedBy: "output" });
}

function limitOf(builder: Builder, one: Placed): number {
  const { usual } = builder.setting;
  const { current_A, fuse_A } = one.cavity;
  if (typeof current_A === "number" && current_A > 0) return current_A;
  if (typeof fuse_A === "number" && fuse_A > 0) return fuse_A;
  const limit_A = isTurnOn(one.means) ? usual.turnOnLimit_A : usual.outputLimit_A;
  builder.note("output-limit", one.part.id, limit_A);
  return limit_A;
}

/** Leads that only say "on": what gives them is made for a relay's coil at most. */
export function isTurnOn(means: WireFunction): boolean {
  return means.id === "amplifier-turn-on" || means.id === "antenna-power";
}
