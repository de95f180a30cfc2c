import { nameContact } from "../../catalogue/describe.ts";
import { functionOf, partnerOf } from "../../catalogue/functions.ts";
import { contactKey, contactsOf } from "../../graph/contacts.ts";
import type { ContactRef, Harness, Module, Part, PartId, Speaker } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { digits, type Figure } from "../figure.ts";
import type { Circuit, CircuitElement } from "../solve/circuit.ts";
import { solve, voltsAcross } from "../solve/solve.ts";
import { type ChannelLoad, channelLoad, idealSinePower, USUAL_LEAST_LOAD_ohm } from "../speaker/channel.ts";
import { type SpeakerWireLoss, speakerWireLoss } from "../speaker/wire-loss.ts";
import type { Built } from "./built.ts";
import { circuitOf } from "./circuit-of.ts";

export type ChannelSpeaker = {
  readonly speaker: PartId;
  /** Its plus hangs on the channel's minus. */
  readonly reversed: boolean;
  readonly loss: SpeakerWireLoss;
  /** At the cone, with the channel at its full power. */
  readonly power: Figure;
};

export type Channel = {
  readonly plus: ContactRef;
  readonly minus: ContactRef;
  readonly name: string;
  /** From one channel's plus to another's minus. */
  readonly isPair: boolean;
  readonly speakers: readonly ChannelSpeaker[];
  /** `null` where no speaker hangs between its two leads. */
  readonly load: ChannelLoad | null;
  /** What stands against it in words; empty where nothing does. */
  readonly trouble: readonly string[];
};

/** A usual speaker, where nobody has said. @source common practice, no source */
const USUAL_IMPEDANCE_ohm = 4;

/**
 * What each speaker channel of a harness sees: the impedance with the wire in it, what the wire takes, and what arrives.
 * The network is solved as it is wired, whatever its shape; nominal impedances are taken as resistances.
 */
export function channelsOf(harness: Harness, traced: Traced): readonly Channel[] {
  const outputs = outputsOf(harness);
  if (outputs.length === 0) return [];
  const built = circuitOf(harness, traced, { key: "off", conditions: [] });
  const network = networkOf(harness, built);
  const each = outputs.map((output) => channelOf(harness, traced, built, network, output));
  const silent = outputs.filter((_, index) => each[index]!.speakers.length === 0);
  const pairs = pairsOf(silent).map((pair) => channelOf(harness, traced, built, network, pair));
  return [...each, ...pairs.filter(({ speakers }) => speakers.length > 0)];
}

/** Two channels of one box that nothing hangs on by themselves may be bridged: from the plus of one to the other's minus. */
function pairsOf(outputs: readonly Output[]): readonly Output[] {
  return outputs.flatMap((one) =>
    outputs
      .filter((other) => other !== one && other.box !== null && other.box === one.box)
      .map((other): Output => ({ plus: one.plus, minus: other.minus, box: one.box, isPair: true })),
  );
}

type Output = {
  readonly plus: ContactRef;
  readonly minus: ContactRef;
  readonly box: Module | null;
  readonly isPair: boolean;
};

/** Pairs of contacts that give speaker level. */
function outputsOf(harness: Harness): readonly Output[] {
  const found: Output[] = [];
  for (const part of Object.values(harness.parts)) {
    if (part.kind !== "connector" && part.kind !== "module") continue;
    const contacts = contactsOf(part);
    for (const contact of contacts) {
      const means = functionOf(contact.function);
      if (means.group !== "speaker" || means.polarity !== "plus" || !gives(part, contact.direction)) continue;
      const minus = contacts.find((other) => other.function === partnerOf(means.id));
      if (!minus) continue;
      found.push({
        plus: { part: part.id, contact: contact.number },
        minus: { part: part.id, contact: minus.number },
        box: boxOf(harness, part),
        isPair: false,
      });
    }
  }
  return found;
}

function gives(part: Part, direction: string): boolean {
  if (direction !== "unknown") return direction === "gives";
  return part.kind === "connector" && part.belongsTo.side === "equipment";
}

function boxOf(harness: Harness, part: Part): Module | null {
  const box =
    part.kind === "connector" && part.belongsTo.module ? harness.parts[part.belongsTo.module] : part;
  return box?.kind === "module" ? box : null;
}

function channelOf(
  harness: Harness,
  traced: Traced,
  built: Built,
  network: Network,
  output: Output,
): Channel {
  const { plus, minus, box, isPair } = output;
  const bridged = isPair || box?.outputs === "bridged";
  const [from, to] = [nodeAt(built, plus), nodeAt(built, minus)];
  const withWire = drive(network, built.circuit.nodeCount, from, to, true);
  const bare = drive(network, built.circuit.nodeCount, from, to, false);
  const name = nameContact(harness, plus);
  const speakers = network.speakers.filter(({ element }) => Math.abs(withWire.amps(element)) > 1e-9);
  const short = shorted(traced, plus, minus) ? [`${name}: its two leads are joined.`] : [];
  if (speakers.length === 0 || bare.seen_ohm === null || withWire.seen_ohm === null) {
    return { plus, minus, name, isPair, speakers: [], load: null, trouble: short };
  }
  const wire_ohm = Math.max(0, withWire.seen_ohm - bare.seen_ohm);
  const load = channelLoad({
    net: {
      kind: "speaker",
      name: speakers.map(({ part }) => part.designation).join(" and "),
      impedance_ohm: bare.seen_ohm,
      wire_ohm,
    },
    least_ohm: leastLoad(box, isPair),
    bridged,
  });
  const drive_V = Math.sqrt(powerOf(harness, box, withWire.seen_ohm, bridged).value * withWire.seen_ohm);
  const found = speakers.map(({ part, element, impedance_ohm }): ChannelSpeaker => {
    const share = Math.abs(withWire.amps(element)) * impedance_ohm;
    const ideal = Math.abs(bare.amps(element)) * impedance_ohm;
    const loop_ohm = share > 0 ? Math.max(0, impedance_ohm * (ideal / share - 1)) : 0;
    const volts = share * drive_V;
    const value = volts ** 2 / impedance_ohm;
    return {
      speaker: part.id,
      reversed: withWire.amps(element) < 0,
      loss: speakerWireLoss(impedance_ohm, loop_ohm),
      power: {
        value,
        unit: "W",
        formula: `P = U² / Z = (${digits(volts)} V)² / ${digits(impedance_ohm)} Ω = ${digits(value)} W`,
        table: null,
        source: "the network solved as it is wired",
        doubt: powerOf(harness, box, withWire.seen_ohm!, bridged).doubt,
      },
    };
  });
  const trouble = [
    ...short,
    ...(load.belowLeast ? [`${name}: ${load.why}.`] : []),
    ...found
      .filter(({ reversed }) => reversed)
      .map(
        ({ speaker }) => `${harness.parts[speaker]!.designation}: its plus hangs on the minus of ${name}.`,
      ),
  ];
  return { plus, minus, name, isPair, speakers: found, load, trouble };
}

function leastLoad(box: Module | null, isPair: boolean): number {
  if (box && box.leastLoad_ohm !== "unknown") return box.leastLoad_ohm;
  if (isPair) return USUAL_LEAST_LOAD_ohm.bridged;
  return box?.role === "amplifier" ? USUAL_LEAST_LOAD_ohm.amplifier : USUAL_LEAST_LOAD_ohm.headUnit;
}

/** What the channel gives at full, as stated, or as the supply lets an ideal output swing. */
function powerOf(harness: Harness, box: Module | null, load_ohm: number, bridged: boolean): Figure {
  if (!box || box.channelPower_W === "unknown") {
    return idealSinePower(harness.settings.systemVoltage_V * 1.2, load_ohm, bridged);
  }
  const value = box.channelPower_W;
  return {
    value,
    unit: "W",
    formula: `${digits(value)} W`,
    table: null,
    source: "stated of the box",
    doubt: null,
  };
}

function shorted(traced: Traced, plus: ContactRef, minus: ContactRef): boolean {
  const [one, other] = [plus, minus].map(({ part, contact }) => traced.circuitOf(contactKey(part, contact)));
  return one !== undefined && one === other;
}

function nodeAt(built: Built, { part, contact }: ContactRef): number {
  return built.firstNode.get(part)! + contact - 1;
}

type Network = {
  /** [elements] 1 where it is copper. */
  readonly isCopper: readonly boolean[];
  readonly elements: readonly CircuitElement[];
  readonly speakers: readonly {
    readonly part: Speaker;
    readonly element: number;
    readonly impedance_ohm: number;
  }[];
};

const COPPER = new Set(["wire", "mate", "joint"]);

/** Only copper and speakers, so that no sum of another circuit gets into this one. */
function networkOf(harness: Harness, built: Built): Network {
  const elements: CircuitElement[] = [];
  const isCopper: boolean[] = [];
  const speakers: { part: Speaker; element: number; impedance_ohm: number }[] = [];
  built.circuit.elements.forEach((element, index) => {
    const role = built.owners.role[index]!;
    if (COPPER.has(role)) {
      elements.push(element);
      isCopper.push(true);
    }
    if (role !== "speaker") return;
    const part = harness.parts[built.owners.id[index] as PartId] as Speaker;
    const impedance_ohm = part.impedance_ohm === "unknown" ? USUAL_IMPEDANCE_ohm : part.impedance_ohm;
    speakers.push({ part, element: elements.length, impedance_ohm });
    isCopper.push(false);
    elements.push({
      ...(element as Extract<CircuitElement, { kind: "resistance" }>),
      resistance_ohm: impedance_ohm,
    });
  });
  return { elements, isCopper, speakers };
}

/** Of copper that is left out of a sum; not 0, so that how current divides stays determined. */
const NEARLY_NONE_ohm = 1e-5;

/** One volt across two nodes. @param withCopper whether wires and joints count */
function drive(network: Network, nodeCount: number, from: number, to: number, withCopper: boolean) {
  const { elements, isCopper } = network;
  const supply: CircuitElement = { kind: "supply", plus: from, minus: to, emf_V: 1, resistance_ohm: 0 };
  const circuit: Circuit = {
    nodeCount,
    ground: to,
    elements: [
      ...elements.map((element, index) =>
        isCopper[index] && !withCopper && element.kind === "resistance"
          ? { ...element, resistance_ohm: NEARLY_NONE_ohm }
          : element,
      ),
      supply,
    ],
  };
  const solution = solve(circuit);
  const drawn = solution.amps[elements.length]!;
  const across = voltsAcross(solution, from, to) ?? 0;
  return {
    seen_ohm: drawn > 1e-9 ? across / drawn : null,
    amps: (element: number) => solution.amps[element]!,
  };
}
