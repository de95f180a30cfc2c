import { nameContact } from "../../../catalogue/describe.ts";
import { outsideDiameter } from "../../../electrical/conductor/insulation.ts";
import { massPerMetre } from "../../../electrical/conductor/mass.ts";
import { conductorResistance } from "../../../electrical/conductor/resistance.ts";
import { type Answer, digits, doubts, type Figure, isKnown } from "../../../electrical/figure.ts";
import { ampacityFor, bookOf, conditionsFor } from "../../../electrical/operate/ampacity-of.ts";
import type { WireFacts } from "../../../electrical/operate/built.ts";
import { loadedBeside } from "../../../electrical/operate/operate.ts";
import type { Readings, WireReading } from "../../../electrical/operate/readings.ts";
import { BASIS } from "../../../electrical/operate/resistances.ts";
import { keyOfEnd } from "../../../graph/contacts.ts";
import type { Wire, WireId } from "../../../graph/harness.ts";
import { type FigureGroup, type FigureLine, sayAmps, sayFigure, solved } from "./figure-line.ts";

/** Everything that is reckoned of one wire, in one state. Empty where the readings do not have the wire. */
export function figuresOfWire(readings: Readings, id: WireId): readonly FigureGroup[] {
  const { harness, built } = readings.solved;
  const wire = harness.wires[id];
  const reading = readings.wires.get(id);
  const facts = built.wires.get(id);
  if (!wire || !reading || !facts) return [];
  const ampacity = ampacityOf(readings, wire, facts);
  const resistance = resistanceOf(facts);
  return [
    {
      heading: "In this state",
      lines: [
        currentLine(wire, reading, resistance),
        dropLine(facts, reading, resistance),
        percentLine(readings, reading),
        powerLine(reading),
        ...endLines(readings, wire),
      ],
    },
    {
      heading: "What it may carry",
      lines: [
        { id: "ampacity", name: "Ampacity", answer: ampacity },
        loadLine(reading, ampacity),
        temperatureLine(readings, facts),
      ],
    },
    {
      heading: "The conductor",
      lines: [
        { id: "resistance", name: "Resistance", answer: resistance },
        {
          id: "diameter",
          name: "Outside diameter",
          answer: outsideDiameter(Math.max(facts.area_mm2, 0.001), "thin"),
        },
        { id: "mass", name: "Mass", answer: massOf(facts) },
      ],
    },
  ];
}

/** What a wire may carry for good, with the book's own words; of clad aluminium its share. */
export function ampacityOf(readings: Readings, wire: Wire, facts: WireFacts): Answer {
  const { harness, built } = readings.solved;
  const { book } = bookOf(harness.settings.electrical.ampacityBook);
  const conditions = conditionsFor(facts, loadedBeside(readings, wire.id), built.nominal_V);
  const { answer, share, book: told } = ampacityFor(book, facts, conditions);
  if (!isKnown(answer)) return answer;
  const other = told === book ? null : `${book.name} says nothing of this size; read in ${told.name}`;
  const value = answer.value * share;
  return {
    ...answer,
    value,
    formula:
      share === 1
        ? answer.formula
        : `${answer.formula}; × √conductivity = ${digits(share, 3)} for clad aluminium = ${digits(value)} A`,
    doubt: doubts(other, answer.doubt),
  };
}

function resistanceOf(facts: WireFacts): Figure {
  const { area_mm2, temperature_degC, material, length_m } = facts;
  return conductorResistance(
    { area_mm2: Math.max(area_mm2, 0.001), temperature_degC, material, basis: BASIS },
    length_m,
  );
}

function currentLine(wire: Wire, reading: WireReading, resistance: Figure): FigureLine {
  if (wire.ends.includes("loose"))
    return { id: "current", name: "Current", answer: solved(0, "A", "one end hangs loose: nothing flows") };
  const amps = Math.abs(reading.amps);
  const formula =
    resistance.value === 0
      ? `what the currents at its two contacts leave for it: ${digits(amps)} A`
      : `I = ΔU / R = ${digits(reading.drop_V * 1000)} mV / ${digits(resistance.value * 1000)} mΩ = ${digits(amps)} A`;
  return { id: "current", name: "Current", answer: solved(amps, "A", formula) };
}

function dropLine(facts: WireFacts, reading: WireReading, resistance: Figure): FigureLine {
  const amps = Math.abs(reading.amps);
  return {
    id: "drop",
    name: "Drop along it",
    remark: `over ${digits(facts.length_m, 3)} m`,
    answer: {
      ...resistance,
      value: reading.drop_V,
      unit: "V",
      formula: `ΔU = R · I = ${digits(resistance.value * 1000)} mΩ × ${digits(amps)} A = ${digits(reading.drop_V)} V, where ${resistance.formula}`,
    },
  };
}

function percentLine(readings: Readings, reading: WireReading): FigureLine {
  const { nominal_V } = readings.solved.built;
  const share = (reading.drop_V / nominal_V) * 100;
  return {
    id: "drop-percent",
    name: "Drop, of the system's volts",
    answer: solved(
      share,
      "%",
      `ΔU / U = ${digits(reading.drop_V)} V / ${nominal_V} V = ${digits(share, 3)} %`,
    ),
  };
}

function powerLine(reading: WireReading): FigureLine {
  const formula = `P = ΔU · I = ${digits(reading.drop_V)} V × ${digits(Math.abs(reading.amps))} A = ${digits(reading.watts)} W`;
  return { id: "power", name: "Turned into heat", answer: solved(reading.watts, "W", formula) };
}

function endLines(readings: Readings, wire: Wire): readonly FigureLine[] {
  return wire.ends.flatMap((end, index): FigureLine[] => {
    const key = keyOfEnd(end);
    if (key === null || end === "loose") return [];
    return [
      {
        id: `end-${index}`,
        name: `Volts at ${nameContact(readings.solved.harness, end)}`,
        answer: voltsAnswer(readings, readings.contacts.get(key)),
        about: [end],
      },
    ];
  });
}

/** A contact's volts as an answer that says against what they are, and why there may be none. */
export function voltsAnswer(readings: Readings, volts: number | "floating" | undefined): Answer {
  if (typeof volts !== "number")
    return { unknown: "Floating: nothing that gives volts reaches it in this state." };
  const { battery_V, circuit } = readings.solved.built;
  return solved(
    volts,
    "V",
    `U = ${digits(volts)} V over the vehicle's frame: where the currents at all ${circuit.nodeCount} contacts add up to nothing, with ${digits(battery_V)} V at the battery`,
  );
}

function loadLine(reading: WireReading, ampacity: Answer): FigureLine {
  const name = "Load, of its ampacity";
  if (!isKnown(ampacity)) return { id: "load", name, answer: ampacity };
  const amps = Math.abs(reading.amps);
  const percent = (amps / ampacity.value) * 100;
  return {
    id: "load",
    name,
    remark: `${sayAmps(amps)} of ${sayFigure(ampacity)}`,
    answer: {
      ...ampacity,
      value: percent,
      unit: "%",
      formula: `I / ampacity = ${digits(amps)} A / ${digits(ampacity.value)} A = ${digits(percent, 3)} %`,
    },
  };
}

function temperatureLine(readings: Readings, facts: WireFacts): FigureLine {
  const where = facts.engineSpace
    ? "its run lies in the engine bay"
    : "the ambient temperature of the harness";
  const asked = readings.solved.ask.ambient_degC !== undefined && !facts.engineSpace;
  return {
    id: "temperature",
    name: "Temperature reckoned with",
    answer: {
      value: facts.temperature_degC,
      unit: "°C",
      formula: `${digits(facts.temperature_degC)} °C: ${asked ? "the temperature asked for below" : where}; its insulation stands ${digits(facts.limit_degC)} °C`,
      table: null,
      source: "the harness's settings and the zones of its runs",
      doubt: "the metal of a loaded wire is warmer than the air around it; that is left out",
    },
  };
}

function massOf(facts: WireFacts): Answer {
  const perMetre = massPerMetre(Math.max(facts.area_mm2, 0.001), facts.material, "thin");
  if (!isKnown(perMetre)) return perMetre;
  const value = perMetre.value * facts.length_m;
  return {
    ...perMetre,
    value,
    unit: "g",
    formula: `${perMetre.formula}; × ${digits(facts.length_m)} m = ${digits(value, 3)} g`,
  };
}
