import { type Assumption, type AssumptionCode, sayAssumption } from "../../../electrical/operate/assumed.ts";
import { nameIn } from "../../../electrical/operate/operate.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import type { Harness, PartId, WireId } from "../../../graph/harness.ts";
import type { Stater } from "./basis-model.ts";

/** The field that would state what was assumed; codes without one rest on nothing a harness can say. */
const FIELD: Readonly<Partial<Record<AssumptionCode, string>>> = {
  "wire-length": "length_m",
  "wire-length-of-runs": "length_m",
  "wire-size": "area_mm2",
  "wire-size-of-lead": "area_mm2",
  "wire-metal": "material",
  "wire-insulation": "insulation",
  "wire-in-engine-bay": "engineBay_degC",
  "fuse-unrated": "rating_A",
  "relay-coil": "coil_ohm",
  "resistor-unstated": "resistance_ohm",
  "load-unstated": "current_A",
  "load-steady": "behaviour",
  "load-filament": "behaviour",
  "load-resistance": "behaviour",
  "battery-resistance": "resistance_ohm",
  "volts-rest": "rest_V",
  "volts-running": "running_V",
  "volts-cranking": "cranking_V",
  standby: "standby_A",
  "wakes-with-key": "wakes",
  "never-sleeps": "wakes",
  "book-silent": "ampacityBook",
  "book-unheard": "ampacityBook",
};

const OF_HARNESS = new Set(["engineBay_degC", "rest_V", "running_V", "cranking_V", "ampacityBook"]);

/** The words of a field in "State its …". */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  length_m: "length",
  area_mm2: "size",
  material: "metal",
  insulation: "insulation",
  engineBay_degC: "the engine bay's temperature",
  rating_A: "rating",
  coil_ohm: "coil",
  resistance_ohm: "resistance",
  current_A: "current",
  behaviour: "behaviour",
  rest_V: "the volts at rest",
  running_V: "the volts with the engine running",
  cranking_V: "the volts while the starter turns",
  standby_A: "current asleep",
  wakes: "what wakes it",
  ampacityBook: "the book of ampacity",
};

export type AssumptionRow = {
  readonly id: string;
  readonly words: string;
  readonly source: string;
  /** What it is about, each with what states it; the panel links to the first few. */
  readonly state: readonly {
    readonly of: Stater;
    readonly field: string;
    /** "State the length of W3" */
    readonly label: string;
  }[];
  /** How many more things it is about than are linked. */
  readonly more: number;
};

const MOST_LINKS = 3;

/**
 * What was taken for granted: of the whole harness, or of what is selected and of the whole.
 * @param about ids of the selected wires and parts; empty: everything
 */
export function assumptionRows(readings: Readings, about: ReadonlySet<string>): readonly AssumptionRow[] {
  const { harness } = readings.solved;
  const nameOf = nameIn(harness);
  return readings.assumptions.flatMap((assumption): readonly AssumptionRow[] => {
    const ids =
      about.size === 0 || assumption.about.length === 0
        ? assumption.about
        : assumption.about.filter((id) => about.has(id));
    if (ids.length === 0 && assumption.about.length > 0) return [];
    const asked: Assumption = { ...assumption, about: ids };
    const links = linksOf(harness, asked, nameOf);
    return [
      {
        id: `${assumption.code} ${assumption.value}`,
        words: sayAssumption(asked, nameOf),
        source: assumption.source,
        state: links.slice(0, MOST_LINKS),
        more: Math.max(0, links.length - MOST_LINKS),
      },
    ];
  });
}

function linksOf(
  harness: Harness,
  { code, about }: Assumption,
  nameOf: (id: string) => string,
): AssumptionRow["state"] {
  const field = FIELD[code];
  if (!field) return [];
  const what = FIELD_WORDS[field]!;
  if (OF_HARNESS.has(field)) return [{ of: "harness", field, label: `State ${what}` }];
  return about.flatMap((id) => {
    const of: Stater | null =
      id in harness.wires ? { wire: id as WireId } : id in harness.parts ? { part: id as PartId } : null;
    if (!of || ("part" in of && !states(harness, of.part, field))) return [];
    const article = what.startsWith("what ") ? what : `the ${what}`;
    return [{ of, field, label: `State ${article} of ${nameOf(id)}` }];
  });
}

/** Whether a part has the field at all: a receptacle's standby is its module's to state. */
function states(harness: Harness, id: PartId, field: string): boolean {
  return field in harness.parts[id]!;
}
