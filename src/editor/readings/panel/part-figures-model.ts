import { nameContact, nameKind } from "../../../catalogue/describe.ts";
import { digits } from "../../../electrical/figure.ts";
import { blowTime, sayBand } from "../../../electrical/fuse/blow-time.ts";
import { CONTINUOUS_SHARE } from "../../../electrical/fuse/choose.ts";
import { bladeOf } from "../../../electrical/operate/read-parts.ts";
import type { FuseReading, LoadReading, Readings } from "../../../electrical/operate/readings.ts";
import { whyVolts } from "../../../electrical/operate/why.ts";
import { contactKey, keysOf } from "../../../graph/contacts.ts";
import type { Part, PartId } from "../../../graph/harness.ts";
import { type FigureGroup, type FigureLine, sayAmps, solved } from "./figure-line.ts";

/** Everything that is reckoned of one part, in one state, but the table of its contacts. */
export function figuresOfPart(readings: Readings, id: PartId): readonly FigureGroup[] {
  const part = readings.solved.harness.parts[id];
  if (!part) return [];
  const lines = linesOf(readings, part);
  return lines.length === 0 ? [] : [{ heading: "In this state", lines }];
}

function linesOf(readings: Readings, part: Part): readonly FigureLine[] {
  switch (part.kind) {
    case "fuse":
      return fuseLines(readings, part);
    case "relay":
      return relayLines(readings, part);
    case "load": {
      const reading = readings.loads.get(contactKey(part.id, 1));
      return reading ? loadLines(reading, part) : [];
    }
    case "supply":
      return supplyLines(readings, part);
    case "module":
      return moduleLines(readings, part);
    case "speaker":
    case "switch":
    case "diode":
    case "resistor":
      return passLines(readings, part);
    case "ground":
    case "splice":
    case "connector":
    case "cap":
    case "capacitor":
      return [];
  }
}

const VERDICTS: Readonly<Record<FuseReading["verdict"], string>> = {
  holds: "holds for good",
  full: "holds, but carries more than three quarters of its rating",
  "may-open": "over its rating: it may open, sooner or later",
  opens: "opens",
  unknown: "no rating is stated",
};

function fuseLines(readings: Readings, part: Part): readonly FigureLine[] {
  const reading = readings.fuses.get(part.id);
  if (!reading || part.kind !== "fuse") return [];
  const { amps, rating_A } = reading;
  const known = bladeOf(part);
  const lines: FigureLine[] = [
    currentOf(amps),
    {
      id: "rating",
      name: "Load, of its rating",
      remark: VERDICTS[reading.verdict],
      answer:
        rating_A === null
          ? { unknown: "Its rating is not stated." }
          : {
              ...solved(
                (amps / rating_A) * 100,
                "%",
                `I / rating = ${digits(amps)} A / ${digits(rating_A)} A = ${digits((amps / rating_A) * 100, 3)} %; for good up to ${CONTINUOUS_SHARE * 100} %`,
              ),
              source: "two fuse makers' habit of three quarters at 25 °C; 65 and 80 % are in use too",
              doubt: "how much of its rating a fuse may carry for good is habit",
            },
    },
    ...acrossLines(readings, part),
  ];
  if (known && amps > known.rating_A) {
    const time = blowTime(known, amps);
    lines.push({
      id: "blow",
      name: "Opens after, at this current",
      remark: sayBand(time.promised),
      answer: {
        value: time.multiple * 100,
        unit: "% of its rating",
        formula: time.formula,
        table: time.table,
        source: time.source,
        doubt: time.doubt,
      },
    });
  }
  return lines;
}

function currentOf(amps: number, name = "Current"): FigureLine {
  const formula = `the current through it, ${digits(Math.abs(amps))} A, as the balance at its contacts asks`;
  return { id: "current", name, answer: solved(Math.abs(amps), "A", formula) };
}

/** Volts between a part's two contacts, and what it turns into heat or work. */
function acrossLines(readings: Readings, part: Part): readonly FigureLine[] {
  const [one, other] = [1, 2].map((contact) => readings.contacts.get(contactKey(part.id, contact)));
  const amps = ampsThrough(readings, part.id);
  if (typeof one !== "number" || typeof other !== "number") {
    return [{ id: "across", name: "Volts across it", answer: { unknown: "One of its contacts floats." } }];
  }
  const volts = Math.abs(one - other);
  return [
    {
      id: "across",
      name: "Volts across it",
      answer: solved(volts, "V", `U = ${digits(one)} V − ${digits(other)} V = ${digits(one - other)} V`),
    },
    powerOf(volts, amps),
  ];
}

function powerOf(volts: number, amps: number, name = "Power"): FigureLine {
  const value = volts * Math.abs(amps);
  const formula = `P = U · I = ${digits(volts)} V × ${digits(Math.abs(amps))} A = ${digits(value)} W`;
  return { id: "power", name, answer: solved(value, "W", formula) };
}

/** What flows through a part of two contacts. */
function ampsThrough(readings: Readings, id: PartId): number {
  const { built, solution } = readings.solved;
  const element = built.owners.id.indexOf(id);
  return element < 0 ? 0 : Math.abs(solution.amps[element]!);
}

function passLines(readings: Readings, part: Part): readonly FigureLine[] {
  return [currentOf(ampsThrough(readings, part.id)), ...acrossLines(readings, part)];
}

function relayLines(readings: Readings, part: Part): readonly FigureLine[] {
  const reading = readings.relays.get(part.id);
  if (!reading) return [];
  const state = reading.chatters
    ? "chatters: pulled, it takes away what pulls it"
    : reading.holds
      ? `${reading.pulled ? "pulled" : "released"}, and would stay the other way if it had been so`
      : reading.pulled
        ? "pulled"
        : "released";
  return [
    {
      id: "coil-volts",
      name: "Volts across the coil",
      remark: state,
      answer: solved(reading.coil_V, "V", `U(85) − U(86) = ${digits(reading.coil_V)} V`),
    },
    currentOf(reading.coil_A, "Current of the coil"),
    powerOf(reading.coil_V, reading.coil_A, "Power of the coil"),
  ];
}

function loadLines(reading: LoadReading, part: Part): readonly FigureLine[] {
  const verdict = reading.reversed
    ? "the wrong way round"
    : reading.works
      ? "enough to work"
      : reading.volts === 0
        ? "off in this state"
        : "too little to work";
  return [
    {
      id: "across",
      name: "Volts across it",
      remark: verdict,
      answer: solved(reading.volts, "V", `U(+) − U(−) = ${digits(reading.volts)} V`),
    },
    {
      id: "current",
      name: "Current",
      remark:
        reading.stated_A === null ? "what it draws is not stated" : `stated: ${sayAmps(reading.stated_A)}`,
      answer:
        part.kind === "load" && part.current_A === "unknown"
          ? {
              unknown: `State what ${part.designation} draws: until then it is taken to draw next to nothing.`,
            }
          : currentOf(reading.amps).answer,
    },
    powerOf(Math.abs(reading.volts), reading.amps),
  ];
}

function supplyLines(readings: Readings, part: Part): readonly FigureLine[] {
  const reading = readings.sources.get(contactKey(part.id, 1));
  if (!reading || part.kind !== "supply") return [];
  const { assumptions } = readings;
  const assumedHere = assumptions.find(
    (one) => one.code === "battery-resistance" && one.about.includes(part.id),
  );
  const milliohms =
    part.resistance_ohm === "unknown" ? Number(assumedHere?.value ?? 0) : part.resistance_ohm * 1000;
  return [
    { id: "volts", name: "Volts at its posts", answer: whyVolts(readings, contactKey(part.id, 1)) },
    {
      ...currentOf(reading.amps, "Current it gives"),
      remark: reading.amps < -0.001 ? "it is being charged" : "",
    },
    {
      id: "inside",
      name: "Resistance inside it",
      answer: {
        value: milliohms / 1000,
        unit: "Ω",
        formula: assumedHere
          ? `0.4 Ω over its ampere-hours = ${digits(milliohms)} mΩ`
          : `stated: ${digits(milliohms)} mΩ`,
        table: null,
        source: assumedHere ? assumedHere.source : "the harness",
        doubt: assumedHere ? "not stated; a cold or old battery has several times as much" : null,
      },
    },
  ];
}

function moduleLines(readings: Readings, part: Part): readonly FigureLine[] {
  const awake = readings.awake.get(part.id);
  const taken = [...readings.loads].filter(([, load]) => ownerOf(readings, load.part) === part.id);
  const amps = taken.reduce((sum, [, load]) => sum + load.amps, 0);
  const formula = taken
    .filter(([, load]) => Math.abs(load.amps) > 1e-6)
    .map(([key, load]) => `${digits(load.amps)} A at ${nameContact(readings.solved.harness, key)}`)
    .join(" + ");
  return [
    {
      id: "current",
      name: "Current it draws",
      remark: awake === undefined ? "" : awake ? "awake" : "asleep",
      answer: solved(amps, "A", `${formula || "nothing flows"} = ${digits(amps)} A`),
    },
  ];
}

/** The box that a contact's part stands for: a receptacle is its module's. */
function ownerOf(readings: Readings, id: PartId): PartId {
  const part = readings.solved.harness.parts[id];
  return part?.kind === "connector" && part.belongsTo.module ? part.belongsTo.module : id;
}

/** One row of the table of a part's contacts. */
export type ContactRow = {
  readonly part: PartId;
  readonly contact: number;
  readonly name: string;
  readonly volts: number | "floating";
  /** The most that passes it, amperes: what its wires bring, or what they take away. */
  readonly carries_A: number;
  readonly wires: readonly string[];
};

/** A part's contacts with their volts, and the current that its wires carry there. */
export function contactRows(readings: Readings, part: Part): readonly ContactRow[] {
  const { harness } = readings.solved;
  type Landing = { into_A: number; outOf_A: number; wires: string[] };
  const landings = new Map<string, Landing>();
  for (const wire of Object.values(harness.wires)) {
    wire.ends.forEach((end, index) => {
      if (end === "loose" || end.part !== part.id) return;
      const key = contactKey(end.part, end.contact);
      const here = landings.get(key) ?? { into_A: 0, outOf_A: 0, wires: [] };
      const amps = readings.wires.get(wire.id)?.amps ?? 0;
      const arrives = index === 1 ? amps : -amps;
      here.into_A += Math.max(0, arrives);
      here.outOf_A += Math.max(0, -arrives);
      here.wires.push(wire.designation);
      landings.set(key, here);
    });
  }
  return keysOf(part).map((key, index): ContactRow => {
    const here = landings.get(key);
    return {
      part: part.id,
      contact: index + 1,
      name: nameContact(harness, key),
      volts: readings.contacts.get(key) ?? "floating",
      // What leaves by wires and did not arrive by wires came from behind the contact.
      carries_A: Math.max(here?.into_A ?? 0, here?.outOf_A ?? 0),
      wires: here?.wires ?? [],
    };
  });
}

/** "F1 fuse" */
export function titleOf(part: Part): string {
  return `${part.designation} ${nameKind(part.kind)}`;
}
