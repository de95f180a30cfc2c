import { functionOf } from "../../catalogue/functions.ts";
import {
  CONDITIONS,
  type Condition,
  conditionsOf,
  type KeyPosition,
  type KeyState,
  sayState,
} from "../../electrical/operate/key-state.ts";
import type { Readings } from "../../electrical/operate/readings.ts";
import type { Harness, Switch } from "../../graph/harness.ts";
import { AMPS_SHOWN, ampsBand, type Band, DROP_BANDS, LOAD_BANDS } from "./ink-model.ts";
import type { Overlay } from "./readings-store.ts";
import { writeAmps, writeVolts } from "./say-readings.ts";

export const KEY_NAMES: readonly (readonly [KeyPosition, string])[] = [
  ["off", "Off"],
  ["accessory", "Accessory"],
  ["run", "Run"],
  ["crank", "Crank"],
];

export const OVERLAY_NAMES: readonly (readonly [Overlay, string])[] = [
  ["volts", "Volts"],
  ["amps", "Amperes"],
  ["load", "Load"],
  ["drop", "Drop"],
];

/** "reverse", "parking brake set", "rear fog lamp": a condition as a person reads it. */
export function nameCondition(condition: Condition): string {
  if ((CONDITIONS as readonly string[]).includes(condition)) return condition.replaceAll("-", " ");
  return functionOf(condition).name;
}

/** What this harness can tell apart, besides the key. */
export function conditionsShown(harness: Pick<Harness, "parts">): readonly Condition[] {
  const switches = handSwitches(harness);
  // One switch by hand is worked by its own name.
  return conditionsOf(harness).filter(
    (condition) => condition !== "switches-on" || switches.length > MOST_BY_NAME,
  );
}

/** So many switches stand in the bar by name; more than that are worked together. */
const MOST_BY_NAME = 4;

/** The switches that a hand works, where they are few enough to be worked one by one. */
export function switchesShown(harness: Pick<Harness, "parts">): readonly Switch[] {
  const switches = handSwitches(harness);
  return switches.length > MOST_BY_NAME ? [] : switches;
}

function handSwitches(harness: Pick<Harness, "parts">): readonly Switch[] {
  return Object.values(harness.parts).filter(
    (part): part is Switch =>
      part.kind === "switch" && (part.operatedBy === "hand" || part.operatedBy === "other"),
  );
}

/** "Key at run, lights on": the state in words. */
export function wordsOfState(state: KeyState, harness: Pick<Harness, "parts">): string {
  return `Key at ${sayState({ ...state, closed: state.closed ?? [] }, harness)}`;
}

/** "12.60 V, 14 A drawn; nothing is wrong": what it comes to. */
export function wordsOfSum(readings: Readings): string {
  let drawn_A = 0;
  // What a box gives it has drawn before.
  for (const source of readings.sources.values()) if (source.limitedBy !== "output") drawn_A += source.amps;
  const worst = readings.warnings[0];
  const more = readings.warnings.length - 1;
  const warned = worst
    ? `${worst.words}${more > 0 ? ` And ${more} more.` : ""}`
    : readings.wires.size > 0
      ? "Nothing is over its rating."
      : "";
  return `${writeVolts(readings.solved.built.battery_V)} V, ${writeAmps(drawn_A)} drawn. ${warned}`.trim();
}

/** What the bands of an overlay mean, thinnest first. */
export function legendOf(overlay: Overlay): { readonly words: string; readonly bands: readonly Band[] } {
  switch (overlay) {
    case "volts":
      return { words: "Volts over the vehicle's frame. Faded: dead; in dashes: floating.", bands: [] };
    case "amps":
      return {
        words: "The arrow shows which way.",
        bands: AMPS_SHOWN.map((amps) => ampsBand(amps)).filter((band) => band !== null),
      };
    case "load":
      return { words: "Of what a wire may carry for good.", bands: LOAD_BANDS };
    case "drop":
      return { words: "Volts lost in a wire; bands in per cent of the system's.", bands: DROP_BANDS };
  }
}
