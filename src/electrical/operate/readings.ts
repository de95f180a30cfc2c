import type { ContactKey } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import type { Prepared } from "../solve/prepare.ts";
import type { Solution } from "../solve/solve.ts";
import type { Assumption } from "./assumed.ts";
import type { Built } from "./built.ts";
import type { Ask } from "./circuit-of.ts";
import type { KeyState } from "./key-state.ts";

/** Volts over the vehicle's frame; "floating" where nothing that gives volts reaches. */
export type Volts = number | "floating";

export type WireReading = {
  /** From the wire's first end to its second; below 0 the other way. */
  readonly amps: number;
  /** Along the wire, 0 or more. */
  readonly drop_V: number;
  readonly watts: number;
  /** `null` where no book of ampacity has the size. */
  readonly percentOfAmpacity: number | null;
};

export type FuseReading = {
  readonly amps: number;
  readonly rating_A: number | null;
  readonly percentOfRating: number | null;
  /**
   * `holds`: for good. `full`: holds, but carries more than three quarters of its rating. `may-open`: over its rating, and
   * the table does not promise that it opens. `unknown`: no rating is stated.
   */
  readonly verdict: "holds" | "full" | "may-open" | "opens" | "unknown";
};

export type RelayReading = {
  readonly pulled: boolean;
  readonly chatters: boolean;
  /** It would stay the other way if it had been so. */
  readonly holds: boolean;
  readonly coil_V: number;
  readonly coil_A: number;
};

export type LoadReading = {
  readonly part: PartId;
  /** Between its two contacts: what a meter across it shows. 0 where one of them floats. */
  readonly volts: number;
  readonly amps: number;
  /** What it is made to draw; `null` where nobody has said. */
  readonly stated_A: number | null;
  /** Has three quarters of the nominal volts, the right way round. */
  readonly works: boolean;
  /** Has volts the wrong way round, and would be harmed or stay dead. */
  readonly reversed: boolean;
};

export type SourceReading = {
  readonly volts: Volts;
  /** What it gives; below 0 it takes. */
  readonly amps: number;
  readonly limit_A: number | null;
  readonly limitedBy: "fuse" | "output" | "none" | "unknown";
  readonly percentOfLimit: number | null;
};

export type WarningCode =
  | "dead-short"
  | "conflicting-supplies"
  | "output-at-limit"
  | "load-starved"
  | "load-reversed"
  | "relay-chatters"
  | "relays-race"
  | "relay-holds"
  | "fuse-opens"
  | "fuse-full"
  | "source-overloaded"
  | "back-fed"
  | "wire-overloaded"
  | "box-restless"
  | "not-settled";

export type ReadingWarning = {
  readonly code: WarningCode;
  readonly words: string;
  /** Ids of parts and wires, the one to look at first. */
  readonly about: readonly (PartId | WireId)[];
};

/** Everything that a harness shows in one state. Never NaN; what hangs in the air says so. */
export type Readings = {
  readonly state: KeyState;
  readonly contacts: ReadonlyMap<ContactKey, Volts>;
  /** Wires with a loose end carry nothing and are here too. */
  readonly wires: ReadonlyMap<WireId, WireReading>;
  readonly fuses: ReadonlyMap<PartId, FuseReading>;
  readonly relays: ReadonlyMap<PartId, RelayReading>;
  /** Load parts by their plus, boxes by each contact that draws. */
  readonly loads: ReadonlyMap<ContactKey, LoadReading>;
  /** Batteries by their plus, the vehicle's feeds and boxes' outputs by their contact. */
  readonly sources: ReadonlyMap<ContactKey, SourceReading>;
  /** Boxes that can sleep: whether they are awake, by a module's id, or "equipment". */
  readonly awake: ReadonlyMap<string, boolean>;
  readonly warnings: readonly ReadingWarning[];
  readonly assumptions: readonly Assumption[];
  /** What was solved, for whoever asks why. */
  readonly solved: Solved;
};

export type Solved = {
  readonly harness: Harness;
  readonly ask: Ask;
  readonly built: Built;
  readonly solution: Solution;
  readonly prepared: Prepared;
};
