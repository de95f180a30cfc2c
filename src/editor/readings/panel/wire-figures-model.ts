import { nameContact } from "../../../catalogue/describe.ts";
import { outsideDiameter } from "../../../electrical/conductor/insulation.ts";
import { massPerMetre } from "../../../electrical/conductor/mass.ts";
import { type Answer, digits, type Figure, isKnown } from "../../../electrical/figure.ts";
import type { WireFacts } from "../../../electrical/operate/built.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { type WhyWire, whyVolts, whyWire } from "../../../electrical/operate/why.ts";
import { keyOfEnd } from "../../../graph/contacts.ts";
import type { Wire, WireId } from "../../../graph/harness.ts";
import { type FigureGroup, type FigureLine, sayAmps, sayFigure } from "./figure-line.ts";

/** Everything that is reckoned of one wire, in one state. Empty where the readings do not have the wire. */
export function figuresOfWire(readings: Readings, id: WireId): readonly FigureGroup[] {
  const { harness, built } = readings.solved;
  const wire = harness.wires[id];
  const facts = built.wires.get(id);
  const why = whyWire(readings, id);
  if (!wire || !facts || !why) return [];
  return [
    {
      heading: "In this state",
      lines: [
        currentLine(wire, why),
        {
          id: "drop",
          name: "Drop along it",
          answer: why.drop,
          remark: `over ${digits(facts.length_m, 3)} m`,
        },
        { id: "drop-percent", name: "Drop, of the system's volts", answer: why.percent },
        { id: "power", name: "Turned into heat", answer: why.heat },
        ...endLines(readings, wire),
      ],
    },
    {
      heading: "What it may carry",
      lines: [
        { id: "ampacity", name: "Ampacity", answer: why.ampacity },
        loadLine(why),
        temperatureLine(readings, facts),
      ],
    },
    {
      heading: "The conductor",
      lines: [
        { id: "resistance", name: "Resistance", answer: why.resistance },
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

function currentLine(wire: Wire, why: WhyWire): FigureLine {
  const hangs = wire.ends.includes("loose");
  const answer: Figure = hangs ? { ...why.amps, formula: "one end hangs loose: nothing flows" } : why.amps;
  return { id: "current", name: "Current", answer };
}

function endLines(readings: Readings, wire: Wire): readonly FigureLine[] {
  return wire.ends.flatMap((end, index): FigureLine[] => {
    const key = keyOfEnd(end);
    if (key === null || end === "loose") return [];
    const name = `Volts at ${nameContact(readings.solved.harness, end)}`;
    return [{ id: `end-${index}`, name, answer: whyVolts(readings, key) }];
  });
}

function loadLine({ percentOfAmpacity, amps, ampacity }: WhyWire): FigureLine {
  return {
    id: "load",
    name: "Load, of its ampacity",
    answer: percentOfAmpacity,
    ...(isKnown(ampacity) ? { remark: `${sayAmps(amps.value)} of ${sayFigure(ampacity)}` } : {}),
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
