import { nameContact } from "../../catalogue/describe.ts";
import { type ContactKey, refOfKey } from "../../graph/contacts.ts";
import type { WireId } from "../../graph/harness.ts";
import { voltageDrop } from "../conductor/drop.ts";
import { conductorResistance } from "../conductor/resistance.ts";
import { type Answer, digits, doubts, type Figure, isKnown } from "../figure.ts";
import { nodesOf } from "../solve/circuit.ts";
import { isOpen } from "../solve/devices.ts";
import { ampacityFor, bookOf, conditionsFor } from "./ampacity-of.ts";
import { sayAssumption } from "./assumed.ts";
import { FRAME, nodeOf, type Role } from "./built.ts";
import { loadedBeside, nameIn } from "./operate.ts";
import { aroundNodes, nameOfElement } from "./path.ts";
import type { Readings } from "./readings.ts";
import { BASIS } from "./resistances.ts";

const SOLVED = "Kirchhoff's laws over the whole circuit";

/** "12.4 V", "floating": volts of a contact as a person reads them. */
export function sayVolts(readings: Pick<Readings, "contacts">, contact: ContactKey): string {
  const volts = readings.contacts.get(contact);
  if (volts === undefined) return "no such contact";
  if (volts === "floating") return "floating: nothing that gives volts reaches it";
  const size = Math.abs(volts);
  return size < 0.1 ? `${Math.round(volts * 1000)} mV` : `${volts.toFixed(size < 1 ? 2 : 1)} V`;
}

export type WhyWire = {
  readonly amps: Figure;
  readonly resistance: Figure;
  readonly drop: Figure;
  /** Of the nominal voltage. */
  readonly percent: Figure;
  readonly heat: Figure;
  readonly ampacity: Answer;
  readonly percentOfAmpacity: Answer;
};

/**
 * Each figure of a wire with its formula, table, source and what stands against it.
 * @returns `null` for a wire that the readings do not know
 */
export function whyWire(readings: Readings, id: WireId): WhyWire | null {
  const { harness, built } = readings.solved;
  const facts = built.wires.get(id);
  const reading = readings.wires.get(id);
  if (!facts || !reading) return null;
  const { area_mm2, material, temperature_degC, length_m } = facts;
  const metal = { area_mm2: Math.max(area_mm2, 0.001), material, temperature_degC, basis: BASIS };
  const size_A = Math.abs(reading.amps);
  const about = doubtsAbout(readings, [id]);
  const noted = (figure: Figure): Figure => ({ ...figure, doubt: doubts(figure.doubt, about) });
  const { drop, percent } = voltageDrop(metal, length_m, size_A, built.nominal_V);
  const { book } = bookOf(harness.settings.electrical.ampacityBook);
  const beside = loadedBeside(readings, id);
  const {
    answer,
    book: told,
    share,
  } = ampacityFor(book, facts, conditionsFor(facts, beside, built.nominal_V));
  const ampacity = isKnown(answer) ? noted(clad(answer, share, told === book ? null : book.name)) : answer;
  return {
    amps: {
      value: size_A,
      unit: "A",
      formula: `what the solved circuit sends through ${harness.wires[id]!.designation} = ${digits(size_A)} A`,
      table: null,
      source: SOLVED,
      doubt: about,
    },
    resistance: noted(conductorResistance(metal, length_m)),
    drop: noted(drop),
    percent: noted(percent),
    heat: {
      value: reading.watts,
      unit: "W",
      formula: `P = U · I = ${digits(reading.drop_V)} V × ${digits(size_A)} A = ${digits(reading.watts)} W`,
      table: null,
      source: "Joule's law",
      doubt: about,
    },
    ampacity,
    percentOfAmpacity: isKnown(ampacity)
      ? {
          ...ampacity,
          value: (size_A / ampacity.value) * 100,
          unit: "%",
          formula: `I / ampacity = ${digits(size_A)} A / ${digits(ampacity.value)} A = ${digits((size_A / ampacity.value) * 100, 3)} %`,
        }
      : ampacity,
  };
}

function clad(answer: Figure, share: number, silent: string | null): Figure {
  const value = answer.value * share;
  return {
    ...answer,
    value,
    formula:
      share === 1
        ? answer.formula
        : `${answer.formula}; × √conductivity = ${digits(share, 3)} for clad aluminium = ${digits(value)} A`,
    doubt: doubts(answer.doubt, silent === null ? null : `${silent} says nothing of this size`),
  };
}

/** What was taken for granted of some parts and wires, as doubts. */
function doubtsAbout(readings: Readings, ids: readonly string[]): string | null {
  const names = nameIn(readings.solved.harness);
  return doubts(
    ...readings.assumptions.flatMap((assumption) => {
      const about = assumption.about.filter((id) => ids.includes(id));
      return about.length === 0
        ? []
        : [`${sayAssumption({ ...assumption, about }, names)} (${assumption.source})`];
    }),
  );
}

/**
 * Why a contact stands at its volts: from the nearest source, or the frame, stretch by stretch to it.
 * @returns unknown for a contact that floats, or that there is none of
 */
export function whyVolts(readings: Readings, contact: ContactKey): Answer {
  const { harness, built, solution } = readings.solved;
  const { part, contact: number } = refOfKey(contact);
  const node = nodeOf(built, part, number);
  const volts = readings.contacts.get(contact);
  if (node === null || volts === undefined) return { unknown: `there is no contact ${contact}` };
  const name = nameContact(harness, contact);
  if (volts === "floating") return { unknown: `${name} floats: nothing that gives volts reaches it` };
  const way = wayTo(readings, node, false) ?? wayTo(readings, node, true);
  if (!way) return { unknown: `${name}: nothing that conducts leads to it` };
  const parts = way.steps.flatMap(({ element, from, to }) => {
    const lost_V = solution.volts[from]! - solution.volts[to]!;
    if (Math.abs(lost_V) < 5e-5) return [];
    return [`${lost_V > 0 ? "−" : "+"} ${digits(Math.abs(lost_V))} V in ${nameOfElement(readings, element)}`];
  });
  const ids = way.steps.map(({ element }) => built.owners.id[element]!);
  return {
    value: volts,
    unit: "V",
    formula:
      [`${digits(solution.volts[way.start]!, 5)} V at ${way.name}`, ...parts].join(" ") +
      ` = ${digits(volts, 5)} V`,
    table: null,
    source: SOLVED,
    doubt: doubtsAbout(readings, ids),
  };
}

type Way = {
  readonly start: number;
  readonly name: string;
  /** From the start on. */
  readonly steps: readonly { readonly element: number; readonly from: number; readonly to: number }[];
};

const LOADS: ReadonlySet<Role | undefined> = new Set<Role>([
  "load",
  "take",
  "speaker",
  "coil",
  "suppression",
]);

/**
 * The shortest way over what conducts, from a contact of a source, or from the frame where no source is met first.
 * @param throughLoads also through what draws: a lead that only a load holds at its volts
 */
function wayTo(readings: Readings, node: number, throughLoads: boolean): Way | null {
  const { built, solution, harness } = readings.solved;
  const around = aroundNodes(readings.solved);
  const cameBy = new Map<number, { readonly element: number; readonly from: number }>();
  const queue = [node];
  const seen = new Set(queue);
  const starts = new Map(
    built.givers.flatMap((giver) => {
      const element = built.circuit.elements[giver.element]!;
      const gives = element.kind === "supply" || (element.kind === "output" && element.emf_V > 0);
      return gives ? [[element.plus, nameContact(harness, giver.key)] as const] : [];
    }),
  );
  for (let at = 0; at < queue.length; at++) {
    const here = queue[at]!;
    const name = starts.get(here) ?? (here === FRAME ? "the frame" : undefined);
    if (name !== undefined) {
      const steps: { element: number; from: number; to: number }[] = [];
      for (let from = here; from !== node; ) {
        const next = cameBy.get(from)!;
        steps.push({ element: next.element, from, to: next.from });
        from = next.from;
      }
      return { start: here, name, steps };
    }
    for (let index = around.begins[here]!; index < around.begins[here + 1]!; index++) {
      const element = around.elements[index]!;
      const of = built.circuit.elements[element]!;
      if (of.kind === "supply" || isOpen(of, solution.pulled)) continue;
      if (!throughLoads && LOADS.has(built.owners.role[element])) continue;
      const [first, second] = nodesOf(of);
      const other = first === here ? second : first;
      if (seen.has(other)) continue;
      seen.add(other);
      cameBy.set(other, { element, from: here });
      queue.push(other);
    }
  }
  return null;
}
