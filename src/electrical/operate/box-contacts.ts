import { functionOf, type WireFunction } from "../../catalogue/functions.ts";
import { contactsOf } from "../../graph/contacts.ts";
import type { Cavity, Connector, Module } from "../../graph/harness.ts";
import { directionOf } from "../direction.ts";

/**
 * What a cavity does to the circuit, as seen from what stands behind it.
 * `feed`: gives volts. `sink`: pulls to ground. `ground`: where current comes back by. `take`: draws.
 */
export type BoxRole = "feed" | "sink" | "ground" | "take";

export type BoxContact = {
  readonly number: number;
  readonly role: BoxRole;
  readonly means: WireFunction;
  readonly cavity: Cavity;
  /** Seen from the vehicle's own wiring, not from a box of the vehicle. */
  readonly ofVehicle: boolean;
  /** The taking side of a ground: a box's own ground contact. */
  readonly returns: boolean;
};

/** Grounds that carry a load's current; the others are for signals, and a box keeps them apart inside. */
const POWER_GROUNDS = new Set([
  "ground",
  "ground-lamps",
  "ground-constant",
  "ground-switched",
  "camera-ground",
  "amplifier-ground",
  "usb-ground",
  "second-battery-ground",
]);

const remembered = new WeakMap<Connector | Module, readonly BoxContact[]>();

/** The cavities of a connector or module that do anything at direct current. The same part always gives the same list. */
export function boxContactsOf(part: Connector | Module): readonly BoxContact[] {
  let known = remembered.get(part);
  if (!known) {
    known = read(part);
    remembered.set(part, known);
  }
  return known;
}

function read(part: Connector | Module): readonly BoxContact[] {
  const ofVehicle =
    part.kind === "connector" && part.belongsTo.side === "vehicle" && part.belongsTo.module === null;
  const found: BoxContact[] = [];
  for (const contact of contactsOf(part)) {
    const { cavity } = contact;
    if (!cavity || cavity.use === "plugged") continue;
    const means = functionOf(contact.function);
    const direction = directionOf(part, contact);
    const role = roleOf(means, direction, ofVehicle);
    if (!role) continue;
    const returns = role === "ground" && (!ofVehicle || direction === "takes");
    found.push({ number: contact.number, role, means, cavity, ofVehicle, returns });
  }
  return found;
}

function roleOf(
  means: WireFunction,
  direction: ReturnType<typeof directionOf>,
  ofVehicle: boolean,
): BoxRole | null {
  if (means.group === "ground") {
    if (ofVehicle && direction === "gives") return "ground";
    return POWER_GROUNDS.has(means.id) ? "ground" : null;
  }
  if (means.group === "safety") return null;
  const gives = direction === "gives" || (direction === "both" && ofVehicle && means.group === "feed");
  if (means.active === "supply") return gives ? "feed" : direction === "takes" ? "take" : null;
  return means.active === "ground" && gives ? "sink" : null;
}

/** Leads that wake a box: feeds that the key switches, and what was made to turn something on. */
const WAKING = new Set([
  "amplifier-turn-on",
  "antenna-power",
  "camera-power",
  "camera-trigger",
  "wake-up",
  "enable",
  "charge-enable",
]);

export function wakes(means: WireFunction): boolean {
  return WAKING.has(means.id) || (means.group === "feed" && !means.liveIn.includes("off"));
}
