import type { WireFunction } from "../../../catalogue/functions.ts";
import type { Part, Switch } from "../../../graph/harness.ts";
import { wakes } from "../box-contacts.ts";
import type { GatheredBoxes } from "../boxes-of.ts";
import { isClosed, isLive, isPulled, type KeyState } from "../key-state.ts";

/** A state, and what the system's batteries have in it. */
export type AtState = {
  readonly state: KeyState;
  readonly battery_V: number;
  readonly batteryIsSet: boolean;
};

/** All that a state can set in some parts: states that set it alike cannot be told apart there. */
export type Dials = {
  readonly switches: readonly Switch[];
  readonly live: readonly { readonly means: WireFunction; readonly ofVehicle: boolean }[];
  readonly pulled: readonly WireFunction[];
  /** Something draws less, or sleeps, with the key off. */
  readonly sleeps: boolean;
  readonly hasSource: boolean;
};

export function dialsOf(changing: readonly Part[], { vehicle, boxes }: GatheredBoxes): Dials {
  const live = new Map<string, { means: WireFunction; ofVehicle: boolean }>();
  const pulled = new Set<WireFunction>();
  const follow = (means: WireFunction, ofVehicle: boolean) =>
    live.set(`${means.id} ${ofVehicle}`, { means, ofVehicle });
  let hasSource = changing.some(({ kind }) => kind === "supply");
  let sleeps = changing.some((part) => part.kind === "load" && part.standby_A !== "unknown");
  for (const { role, means } of vehicle) {
    if (role === "feed") follow(means, true);
    if (role === "sink") pulled.add(means);
    hasSource ||= role === "feed";
  }
  for (const { contacts, module } of boxes) {
    sleeps ||= module?.wakes === "by-signal";
    for (const { role, means } of contacts) {
      if (role === "feed") follow(means, false);
      if (role === "take" && wakes(means)) follow(means, true);
      if (role === "sink") pulled.add(means);
      hasSource ||= role === "feed";
    }
  }
  const switches = changing.filter((part): part is Switch => part.kind === "switch");
  return { switches, live: [...live.values()], pulled: [...pulled], sleeps, hasSource };
}

/** How a state sets the dials, as one text. Where nothing gives, all is at rest in every state. */
export function setOf(dials: Dials, { state, battery_V, batteryIsSet }: AtState): string {
  if (!dials.hasSource) return "";
  let bits = "";
  for (const one of dials.switches) bits += isClosed(one, state) ? 1 : 0;
  for (const { means, ofVehicle } of dials.live) bits += isLive(means, state, ofVehicle) ? 1 : 0;
  for (const means of dials.pulled) bits += isPulled(means, state) ? 1 : 0;
  if (dials.sleeps) bits += state.key === "off" ? 1 : 0;
  return `${bits} ${batteryIsSet ? battery_V : `about ${battery_V}`}`;
}
