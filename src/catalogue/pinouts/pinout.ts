import { facing } from "../../graph/facing.ts";
import type { Cavity, Colour, ColourCode, Connector, Direction, JobSide } from "../../graph/harness.ts";

/**
 * How sure a row is. `several`: two or more independent published sources agree. `one`: a single source.
 * `disputed`: sources differ, see the note. `memory`: recollection. A rule may hint on the last three, not forbid.
 */
export type Confidence = "several" | "one" | "disputed" | "memory";

export type PinoutRow = {
  readonly cavity: string;
  /** A function of the vocabulary. */
  readonly function: string;
  /** As seen from what stands behind the cavity on the pinout's own side. */
  readonly direction: Direction;
  readonly colour: Colour | null;
  readonly area_mm2: number | "unknown";
  readonly current_A: number | "unknown";
  readonly confidence: Confidence;
  readonly note: string;
};

/** What a connector is for, as a list of ready ones is sorted. */
export type PinoutGroup = "radio" | "trailer" | "diagnostics" | "relay" | "sound-and-data";

/** A ready connector: what stands in each cavity, by whom it is said, and what not to trust it for. Plain data. */
export type Pinout = {
  readonly id: string;
  readonly group: PinoutGroup;
  readonly title: string;
  /** Whose directions the rows give: the receiver's, or the towing vehicle's. */
  readonly side: JobSide;
  readonly form: Connector["form"];
  /** The shape. Two that carry one name go together, whatever their makers meant. */
  readonly shell: string;
  /** The system it is made for, volts; `null` where it serves any. */
  readonly voltage_V: 12 | 24 | null;
  /** Rows of the face, by position in `rows`; `null` where no source shows the face. */
  readonly face: {
    readonly view: "wire-side" | "mating-face";
    readonly rows: readonly (readonly number[])[];
  } | null;
  readonly source: string;
  /** Of the standard that it follows, as the sources state it; "" where they name none. */
  readonly edition: string;
  /** What a person must know before trusting it. */
  readonly caution: string;
  readonly rows: readonly PinoutRow[];
};

type Extra = Partial<Omit<PinoutRow, "cavity" | "function" | "direction" | "colour">>;

/** One row of a table. Without another word it is agreed by several sources, and its size and current are not known. */
export function row(
  cavity: string,
  name: string,
  direction: Direction,
  colour: readonly [ColourCode, ColourCode?] | null = null,
  extra: Extra = {},
): PinoutRow {
  return {
    cavity,
    function: name,
    direction,
    colour: colour ? { base: colour[0], tracer: colour[1] ?? null } : null,
    area_mm2: "unknown",
    current_A: "unknown",
    confidence: "several",
    note: "",
    ...extra,
  };
}

/** Nothing is asked of a cavity that stays empty, or that each maker uses as he likes. */
const FREE: ReadonlySet<string> = new Set(["not-used", "unknown"]);

/**
 * The cavities of a connector that follows a pinout, seen from either side of the job: what a receiver takes,
 * the vehicle gives. Leads get the pinout's colour only on the side that it speaks for.
 */
export function cavitiesOf(pinout: Pinout, side: JobSide): readonly Cavity[] {
  const own = pinout.rows.map(
    (item): Cavity => ({
      label: item.cavity,
      function: item.function,
      text: item.note,
      direction: item.direction,
      lead: item.colour ? { colour: item.colour, area_mm2: item.area_mm2 } : null,
      use: FREE.has(item.function) ? "optional" : "expected",
      current_A: item.current_A,
      fuse_A: "unknown",
      gives: "unknown",
      actsOn: "unknown",
    }),
  );
  return side === pinout.side ? own : facing(own);
}
