/**
 * What a conductor is for: one vocabulary for every chart. Rules and matching read these names, never the
 * text on a chart. The words are the trade's; terminal numbers are DIN 72552 where that standard has one.
 */
import { BODY } from "./functions/body.ts";
import { CONTROLS } from "./functions/controls.ts";
import { DATA } from "./functions/data.ts";
import { define, type WireFunction } from "./functions/define.ts";
import { EQUIPMENT } from "./functions/equipment.ts";
import { FEEDS, GROUNDS } from "./functions/feeds.ts";
import { LIGHTING } from "./functions/lighting.ts";
import { SENSORS } from "./functions/sensors.ts";
import { SOUND } from "./functions/sound.ts";

export type { Channel, FunctionGroup, LiveState, Polarity, WireFunction } from "./functions/define.ts";
export { LIVE_STATES } from "./functions/define.ts";

/** Every function, in the order in which a menu shows them. */
export const FUNCTIONS: readonly WireFunction[] = [
  define("unknown", "not known", "none", ""),
  define(
    "not-used",
    "not used",
    "none",
    "notused contact? | notconnected | reserved | empty contact? | spare contact? | notused reserved",
    { synonyms: ["not connected", "nc", "n/c", "reserved", "empty"] },
  ),
  ...FEEDS,
  ...GROUNDS,
  ...LIGHTING,
  ...CONTROLS,
  ...BODY,
  ...SENSORS,
  ...EQUIPMENT,
  ...DATA,
  ...SOUND,
];

const byId = new Map(FUNCTIONS.map((item) => [item.id, item]));
const UNKNOWN = byId.get("unknown")!;

/** The function of that name; one this version has never heard of reads as "not known". */
export function functionOf(id: string): WireFunction {
  return byId.get(id) ?? UNKNOWN;
}

/** True for both halves of the ground family: what a supply's return may be joined to. */
export function isGround(id: string): boolean {
  return functionOf(id).group === "ground";
}

const OPPOSITES: readonly (readonly [string, string])[] = [
  ["plus", "minus"],
  ["signal", "shield"],
  ["high", "low"],
];

/** "speaker-front-left-plus" → "speaker-front-left-minus"; `null` for a function without a partner. */
export function partnerOf(id: string): string | null {
  if (functionOf(id).polarity === null) return null;
  for (const pair of OPPOSITES) {
    for (const [own, other] of [pair, [pair[1], pair[0]]] as const) {
      if (id.endsWith(`-${own}`)) return `${id.slice(0, -own.length)}${other}`;
    }
  }
  return null;
}
