/** Situations in which a giving contact of the function stands at supply voltage. */
export const LIVE_STATES = [
  "off",
  "accessory",
  "run",
  "crank",
  "lights-on",
  "reverse",
  "brake-on",
  "unit-on",
] as const;
export type LiveState = (typeof LIVE_STATES)[number];

export type FunctionGroup =
  | "feed"
  | "ground"
  | "lighting"
  | "control"
  | "speaker"
  | "line-level"
  | "video"
  | "data"
  | "antenna"
  | "safety"
  | "none";

export type Channel = "front-left" | "front-right" | "rear-left" | "rear-right" | "centre" | "subwoofer";
export type Polarity = "plus" | "minus";

export type WireFunction = {
  readonly id: string;
  /** As a person reads it in a table. */
  readonly name: string;
  readonly group: FunctionGroup;
  readonly liveIn: readonly LiveState[];
  /** What level means "on" for an input of this function. */
  readonly active: "supply" | "ground" | "signal";
  readonly channel: Channel | null;
  readonly polarity: Polarity | null;
  readonly din72552: string | null;
  /** Which side of a usual job drives the lead: the vehicle, the equipment added to it, or either. */
  readonly givenBy: "vehicle" | "equipment" | "either";
  /** Short words by which a person finds it in a list, lower case, English. */
  readonly synonyms: readonly string[];
  /**
   * What a chart says of it, as sets of ideas from `../words`, in any order and language: "stop lamp?". An idea
   * with "?" may be missing. "@0.3" says how likely the function is where that wording fits several.
   */
  readonly meanings: readonly string[];
};

type Known = Partial<Omit<WireFunction, "id" | "name" | "group" | "meanings">>;

const GIVEN_BY: Readonly<Record<FunctionGroup, WireFunction["givenBy"]>> = {
  feed: "vehicle",
  ground: "vehicle",
  lighting: "vehicle",
  control: "vehicle",
  speaker: "equipment",
  "line-level": "equipment",
  video: "either",
  data: "either",
  antenna: "equipment",
  safety: "vehicle",
  none: "either",
};

/**
 * One function of the vocabulary.
 * @param meanings wordings, parted by " | "
 */
export function define(
  id: string,
  name: string,
  group: FunctionGroup,
  meanings: string,
  known: Known = {},
): WireFunction {
  return {
    id,
    name,
    group,
    liveIn: [],
    active: "signal",
    channel: null,
    polarity: null,
    din72552: null,
    givenBy: GIVEN_BY[group],
    synonyms: [],
    meanings: meanings
      .split(" | ")
      .map((meaning) => meaning.trim())
      .filter((meaning) => meaning !== ""),
    ...known,
  };
}

/** A lead that stands at supply voltage when it is on: a lamp's, a motor's, a relay coil's. */
export const SUPPLY = { active: "supply" } as const;
/** A lead that is pulled to ground when it is on. */
export const TO_GROUND = { active: "ground" } as const;
