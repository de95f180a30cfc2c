import { functionOf, type WireFunction } from "../../catalogue/functions.ts";
import type { Cavity, Harness, Part, PartId, Switch } from "../../graph/harness.ts";

export const KEY_POSITIONS = ["off", "accessory", "run", "crank"] as const;
export type KeyPosition = (typeof KEY_POSITIONS)[number];

/** What may be so besides the key's position. */
export const CONDITIONS = [
  "engine-running",
  "lights-on",
  "reverse",
  "brake-on",
  "parking-brake-set",
  "doors-open",
  "unit-on",
  "switches-on",
] as const;
export type NamedCondition = (typeof CONDITIONS)[number];
/**
 * A condition, or the name of a function that no key position makes live: "indicator-left" is an indicator in the half
 * second that it is lit.
 */
export type Condition = NamedCondition | (string & {});

/** In what state a harness is looked at. */
export type KeyState = {
  readonly key: KeyPosition;
  readonly conditions: readonly Condition[];
  /** Switches that are closed although no condition closes them: one hand switch of several. */
  readonly closed?: readonly PartId[];
};

/** Conditions as a person types them: the short words beside the full ones. */
const SHORT: Readonly<Record<string, NamedCondition>> = {
  engine: "engine-running",
  lights: "lights-on",
  brake: "brake-on",
  "parking-brake": "parking-brake-set",
  doors: "doors-open",
  unit: "unit-on",
  switches: "switches-on",
};

/** Reads a condition as a person types it; `null` for a word that names none. */
export function readCondition(word: string): Condition | null {
  if (Object.hasOwn(SHORT, word)) return SHORT[word]!;
  if ((CONDITIONS as readonly string[]).includes(word)) return word;
  return isAtTimes(functionOf(word)) ? word : null;
}

/** "run, lights on, S1 closed" */
export function sayState(state: KeyState, harness?: Pick<Harness, "parts">): string {
  const conditions = state.conditions.map((condition) => condition.replaceAll("-", " "));
  const closed = (state.closed ?? []).map((id) => `${harness?.parts[id]?.designation ?? id} closed`);
  return [state.key, ...conditions, ...closed].join(", ");
}

/** Stands at supply voltage at times that no key position and no named condition decides. */
function isAtTimes(means: WireFunction): boolean {
  return means.id !== "unknown" && means.liveIn.length === 0 && means.active !== "signal";
}

/**
 * Whether a giving contact of a function is on.
 * @param ofVehicle the vehicle's own leads follow the key; that a unit plays does not turn them on
 */
export function isLive(means: WireFunction, state: KeyState, ofVehicle: boolean): boolean {
  if (means.liveIn.length === 0) return state.conditions.includes(means.id);
  if ((means.liveIn as readonly string[]).includes(state.key)) return true;
  return state.conditions.some(
    (condition) =>
      (means.liveIn as readonly string[]).includes(condition) && !(ofVehicle && condition === "unit-on"),
  );
}

/** Whether a contact that pulls its lead to ground does so: a parking-brake switch, a mute line. */
export function isPulled(means: WireFunction, state: KeyState): boolean {
  const condition = means.id === "parking-brake" ? "parking-brake-set" : means.id;
  return state.conditions.includes(condition);
}

const CLOSED_BY: Readonly<Partial<Record<Switch["operatedBy"], NamedCondition>>> = {
  "parking-brake": "parking-brake-set",
  "reverse-gear": "reverse",
  "brake-pedal": "brake-on",
  lights: "lights-on",
  door: "doors-open",
  hand: "switches-on",
  other: "switches-on",
};

/** Whether a switch lets through. An isolator does in every state: it is opened for work and for laying up only. */
export function isClosed(part: Switch, state: KeyState): boolean {
  if (part.operatedBy === "isolator") return true;
  if (state.closed?.includes(part.id)) return true;
  const condition = CLOSED_BY[part.operatedBy];
  return condition === undefined ? state.key !== "off" : state.conditions.includes(condition);
}

/** The conditions that change anything in a harness: what a control for them has to offer. */
export function conditionsOf(harness: Pick<Harness, "parts">): readonly Condition[] {
  const found = new Set<Condition>();
  for (const id in harness.parts)
    for (const condition of conditionsOfPart(harness.parts[id as PartId]!)) found.add(condition);
  const order = (condition: Condition) => {
    const at = (CONDITIONS as readonly string[]).indexOf(condition);
    return at < 0 ? CONDITIONS.length : at;
  };
  return [...found].sort((a, b) => order(a) - order(b) || (a < b ? -1 : 1));
}

const NONE: readonly Condition[] = [];
const BY_BATTERY: readonly Condition[] = ["engine-running"];
const BY_SWITCH: Readonly<Record<string, readonly Condition[]>> = Object.fromEntries(
  Object.entries(CLOSED_BY).map(([operatedBy, condition]) => [operatedBy, [condition]]),
);
const remembered = new WeakMap<Part, readonly Condition[]>();

function conditionsOfPart(part: Part): readonly Condition[] {
  switch (part.kind) {
    case "supply":
      return BY_BATTERY;
    case "switch":
      return BY_SWITCH[part.operatedBy] ?? NONE;
    case "connector":
    case "module": {
      let known = remembered.get(part);
      if (!known) {
        known = conditionsOfCavities(part.cavities);
        remembered.set(part, known);
      }
      return known;
    }
    default:
      return NONE;
  }
}

function conditionsOfCavities(cavities: readonly Cavity[]): readonly Condition[] {
  const found = new Set<Condition>();
  for (const cavity of cavities) {
    const means = functionOf(cavity.function);
    if (means.group === "feed" && cavity.direction === "gives") found.add("engine-running");
    if (means.id === "parking-brake") found.add("parking-brake-set");
    else if (isAtTimes(means) && means.group !== "ground") found.add(means.id);
    for (const word of means.liveIn) if (decides(means, word)) found.add(word);
  }
  return [...found];
}

/** Whether a function comes and goes with a condition, rather than with the key alone. */
function decides(means: WireFunction, word: string): boolean {
  if (!(CONDITIONS as readonly string[]).includes(word) || means.liveIn.includes("off")) return false;
  return word !== "unit-on" || !means.liveIn.includes("run");
}

/** Every key position, with nothing on and with everything on: what a wire has to be sized for. */
export function designStates(harness: Pick<Harness, "parts">): readonly KeyState[] {
  return designStatesOf(conditionsOf(harness));
}

/** @param all the conditions that change anything */
export function designStatesOf(all: readonly Condition[]): readonly KeyState[] {
  const still = all.filter((condition) => condition !== "engine-running");
  return KEY_POSITIONS.flatMap((key): KeyState[] => [
    { key, conditions: [] },
    { key, conditions: still },
    ...(key === "run" && all.length > still.length ? [{ key, conditions: all }] : []),
  ]);
}
