import { digits } from "../figure.ts";

/**
 * What is taken where a harness does not say. Every number of it can be set otherwise; what is used of it is listed
 * with each answer.
 */
export type Usual = {
  readonly length_m: number;
  readonly area_mm2: number;
  readonly insulationLimit_degC: number;
  readonly engineBay_degC: number;
  /** Of a nominal volt: at rest, with the engine running, while the starter turns. */
  readonly restPerVolt: number;
  readonly runningPerVolt: number;
  readonly crankingPerVolt: number;
  /** Of a battery, times its ampere-hours. */
  readonly battery_ohm_Ah: number;
  readonly battery_ohm: number;
  readonly feed_ohm: number;
  readonly vehicleGround_ohm: number;
  readonly stud_ohm: number;
  readonly paintedStud_ohm: number;
  readonly mate_ohm: number;
  readonly fuse_ohm: number;
  readonly switch_ohm: number;
  readonly relayContact_ohm: number;
  readonly coil_ohm: number;
  /** Of the nominal voltage. */
  readonly pullIn: number;
  readonly dropOut: number;
  /** An input or a load of which no current is stated. */
  readonly probe_ohm: number;
  readonly standby_A: number;
  readonly outputLimit_A: number;
  readonly turnOnLimit_A: number;
  readonly output_ohm: number;
  /** Of the nominal voltage: a box wakes from here up; a load that draws steady current is a resistance below. */
  readonly wakes: number;
  /** Of the nominal voltage: what a load needs to do its work. */
  readonly works: number;
};

export const USUAL: Usual = {
  length_m: 1,
  area_mm2: 0.75,
  insulationLimit_degC: 85,
  engineBay_degC: 50,
  restPerVolt: 12.6 / 12,
  runningPerVolt: 14.2 / 12,
  crankingPerVolt: 9.6 / 12,
  battery_ohm_Ah: 0.4,
  battery_ohm: 0.008,
  feed_ohm: 0.04,
  vehicleGround_ohm: 0.005,
  stud_ohm: 0.0002,
  paintedStud_ohm: 0.2,
  mate_ohm: 0.005,
  fuse_ohm: 0.005,
  switch_ohm: 0.01,
  relayContact_ohm: 0.005,
  coil_ohm: 85,
  pullIn: 0.6,
  dropOut: 0.1,
  probe_ohm: 10_000,
  standby_A: 0.005,
  outputLimit_A: 10,
  turnOnLimit_A: 0.5,
  output_ohm: 0.1,
  wakes: 0.5,
  works: 0.75,
};

const HABIT = "common practice, no source";
const MEMORY = "from memory";

type Told = {
  /** `%` stands for the number taken. */
  readonly words: string;
  readonly source: string;
};

/** What each kind of assumption says of the things it is about, and how much it is worth. */
const TOLD = {
  "wire-length": { words: "length not stated: % m assumed", source: HABIT },
  "wire-length-of-runs": {
    words: "length not stated: taken from its runs, with slack of %  per cent",
    source: "the runs' lengths",
  },
  "wire-size": { words: "size not stated: % mm² assumed", source: HABIT },
  "wire-size-of-lead": {
    words: "size not stated: % mm², that of the lead it stands in",
    source: "the chart",
  },
  "wire-metal": { words: "metal not stated: copper assumed", source: HABIT },
  "wire-insulation": {
    words: "insulation not stated: % °C assumed",
    source: "ISO 6722-1 class A, from memory",
  },
  "wire-in-engine-bay": {
    words: "in the engine bay: % °C assumed",
    source: "33 CFR 183.425 reckons engine spaces at 50 °C",
  },
  "crimps-left-out": { words: "crimps of terminals are left out of the sum", source: HABIT },
  joint: { words: "joint taken as % mΩ", source: MEMORY },
  mate: {
    words: "each mated contact taken as % mΩ",
    source: "most that a new vehicle contact may have is about 10 mΩ; from memory",
  },
  "fuse-cold": {
    words: "cold resistance % mΩ; a loaded fuse has a third to two thirds more",
    source: "a maker's regular and maxi blade series; most rows from memory",
  },
  "fuse-unrated": { words: "rating not stated: % mΩ, and nothing said of when it opens", source: HABIT },
  switch: { words: "contact taken as % mΩ", source: MEMORY },
  "relay-contact": { words: "contact taken as % mΩ", source: MEMORY },
  "relay-coil": {
    words: "coil not stated: % Ω assumed",
    source: "12 V mini relays have 85 to 90 Ω; from memory",
  },
  "relay-volts": {
    words: "pulls from % V, lets go under a sixth of that",
    source:
      "datasheets of mini relays: pull-in at most 60 %, release at least 10 % of the nominal volts; from memory",
  },
  "coil-resistor": { words: "suppression resistor taken as % Ω", source: MEMORY },
  diode: {
    words: "taken as a silicon junction of about 0.8 V at 1 A",
    source: "usual figures of a 1 A rectifier; from memory",
  },
  "resistor-unstated": { words: "resistance not stated: taken as open", source: HABIT },
  "load-unstated": { words: "current not stated: taken as % kΩ, which draws next to nothing", source: HABIT },
  "load-rated-at": { words: "stated current taken to flow at % V", source: HABIT },
  "load-steady": { words: "taken to draw the same current at any voltage", source: HABIT },
  "load-filament": {
    words: "taken as a filament lamp: current rises with the 0.55th power of the volts",
    source:
      "D. G. Fink and H. W. Beaty, Standard Handbook for Electrical Engineers, 11th ed. (1978), p. 22-8",
  },
  "load-resistance": { words: "taken as a plain resistance", source: HABIT },
  "speaker-dc": { words: "resistance of the coil taken as 0.8 of the impedance", source: MEMORY },
  "battery-resistance": {
    words: "internal resistance not stated: % mΩ assumed",
    source: "0.4 Ω over the ampere-hours of a 12 V lead-acid battery; from memory",
  },
  "volts-rest": { words: "battery at rest: % V assumed", source: "a charged lead-acid battery; from memory" },
  "volts-running": { words: "engine running: % V assumed", source: "usual charging voltage; from memory" },
  "volts-cranking": {
    words: "starter turning: % V assumed",
    source: "the least that a load test of a 12 V battery passes; from memory",
  },
  "feed-behind": {
    words: "what lies behind the vehicle's own contact taken as % mΩ, its fuse included",
    source: HABIT,
  },
  "vehicle-ground": {
    words: "the vehicle's ground behind the contact taken as % mΩ",
    source: "FAA AC 43.13-1B counts a ground path of up to 5 mΩ as none",
  },
  stud: { words: "ground stud taken as % mΩ", source: MEMORY },
  "stud-painted": {
    words: "ground stud on paint or trim taken as % mΩ; it may not conduct at all",
    source: HABIT,
  },
  "case-grounded": { words: "no ground contact is drawn: the case is taken as grounded", source: HABIT },
  standby: { words: "standby current not stated: % mA assumed", source: HABIT },
  "output-limit": { words: "output's limit not stated: % A assumed", source: HABIT },
  "output-unfed": {
    words: "no feed of the box is drawn: its output is taken to stand at battery volts",
    source: HABIT,
  },
  "output-inside": { words: "output taken as % mΩ inside", source: HABIT },
  "wakes-with-key": {
    words: "no lead wakes it: taken to be awake whenever the key is not off",
    source: HABIT,
  },
  "never-sleeps": {
    words: "no lead wakes it and nothing says that it sleeps: taken to be always on",
    source: HABIT,
  },
  "five-volts": { words: "a supply of % V of the box's own", source: "the name of its function" },
  "book-silent": {
    words: "the chosen book says nothing of this size: % read instead",
    source: "see the book",
  },
  "book-unheard": {
    words: "the harness names a book of ampacity that is not known here: 33 CFR 183.425 read instead",
    source: HABIT,
  },
} as const satisfies Readonly<Record<string, Told>>;

export type AssumptionCode = keyof typeof TOLD;

/** One thing taken for granted, and all that it was taken of. */
export type Assumption = {
  readonly code: AssumptionCode;
  /** The number taken, in the unit that the words print; a text where a book is named. */
  readonly value: number | string;
  /** Ids of parts and wires; empty where it is about the whole harness. */
  readonly about: readonly string[];
  readonly source: string;
};

/** Gathers assumptions while a circuit is built: one of each code and number, with all that it is about. */
export class Assumed {
  private readonly found = new Map<AssumptionCode, Map<number | string, string[]>>();

  note(code: AssumptionCode, about: string | null, value: number | string = 0): void {
    let values = this.found.get(code);
    if (!values) {
      values = new Map();
      this.found.set(code, values);
    }
    let list = values.get(value);
    if (!list) {
      list = [];
      values.set(value, list);
    }
    if (about !== null && list[list.length - 1] !== about) list.push(about);
  }

  list(): readonly Assumption[] {
    const all: Assumption[] = [];
    for (const [code, values] of this.found)
      for (const [value, about] of values) all.push({ code, value, about, source: TOLD[code].source });
    return all;
  }
}

const MOST_NAMED = 6;

/**
 * An assumption as a person reads it: "W3, W4: length not stated: 1 m assumed".
 * @param nameOf the designation of a part or wire
 */
export function sayAssumption(assumption: Assumption, nameOf: (id: string) => string): string {
  const { value, about } = assumption;
  const words = TOLD[assumption.code].words.replace(
    "%",
    typeof value === "number" ? digits(value) : String(value),
  );
  if (about.length === 0) return words;
  const named = about.slice(0, MOST_NAMED).map(nameOf).join(", ");
  const more = about.length > MOST_NAMED ? ` and ${about.length - MOST_NAMED} more` : "";
  return `${named}${more}: ${words}`;
}
