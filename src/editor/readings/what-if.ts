import { functionOf } from "../../catalogue/functions.ts";
import type { Ask } from "../../electrical/operate/circuit-of.ts";
import { contactsOf } from "../../graph/contacts.ts";
import type { Cavity, Connector, Harness, Module, PartId } from "../../graph/harness.ts";
import type { WhatIf } from "./readings-store.ts";

/** Of what an amplifier draws, what reaches its speakers at full power. @source a class AB stage; from memory */
export const AMPLIFIER_EFFICIENCY = 0.6;

/** What-if values as `operate` takes them. */
export function askOf(whatIf: WhatIf): Ask {
  return {
    ...(whatIf.supply_V === null ? {} : { battery_V: whatIf.supply_V }),
    ...(whatIf.ambient_degC === null ? {} : { ambient_degC: whatIf.ambient_degC }),
  };
}

/**
 * What each amplifier draws with every channel at full power, amperes at the system's nominal volts, by the contact that
 * feeds it. Amplifiers without a stated power a channel are not here.
 */
export function fullDraws(harness: Harness): ReadonlyMap<PartId, { contact: number; amps: number }> {
  const draws = new Map<PartId, { contact: number; amps: number }>();
  for (const module of Object.values(harness.parts)) {
    if (module.kind !== "module" || module.role !== "amplifier" || module.channelPower_W === "unknown")
      continue;
    const housings = Object.values(harness.parts).filter(
      (part): part is Connector | Module =>
        part.id === module.id || (part.kind === "connector" && part.belongsTo.module === module.id),
    );
    const channels = housings.flatMap(({ cavities }) => cavities).filter(isChannel).length;
    for (const part of housings) {
      const feed = contactsOf(part).find(({ cavity }) => cavity && isConstantFeed(cavity));
      if (!feed || channels === 0) continue;
      const watts = (channels * module.channelPower_W) / AMPLIFIER_EFFICIENCY;
      draws.set(part.id, { contact: feed.number, amps: watts / harness.settings.systemVoltage_V });
      break;
    }
  }
  return draws;
}

/** The harness with its amplifiers at full; the very same one where that changes nothing. */
export function amplified(harness: Harness, whatIf: WhatIf): Harness {
  if (!whatIf.amplifiersAtFull) return harness;
  const draws = fullDraws(harness);
  if (draws.size === 0) return harness;
  const parts = { ...harness.parts };
  for (const [id, { contact, amps }] of draws) {
    const part = parts[id];
    if (part?.kind !== "connector" && part?.kind !== "module") continue;
    const cavities = part.cavities.map((cavity, index) =>
      index === contact - 1 ? { ...cavity, current_A: Math.max(amps, stated(cavity)) } : cavity,
    );
    parts[id] = { ...part, cavities };
  }
  return { ...harness, parts };
}

function isChannel(cavity: Cavity): boolean {
  return cavity.direction === "gives" && /^speaker-.*-plus$/.test(cavity.function);
}

function isConstantFeed(cavity: Cavity): boolean {
  const means = functionOf(cavity.function);
  return cavity.direction === "takes" && means.group === "feed" && means.liveIn.includes("off");
}

function stated(cavity: Cavity): number {
  return cavity.current_A === "unknown" ? 0 : cavity.current_A;
}
