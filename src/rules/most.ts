import type { Readings } from "../electrical/operate/readings.ts";
import type { ContactKey } from "../graph/contacts.ts";
import type { PartId, WireId } from "../graph/harness.ts";
import type { Context } from "./context.ts";
import { heaviestStates } from "./states.ts";

/** The most that flows through a thing, and in which of the solved states. */
export type Most = { readonly amps: number; readonly readings: Readings };

export type Mosts = {
  readonly wires: ReadonlyMap<WireId, Most>;
  readonly fuses: ReadonlyMap<PartId, Most>;
  /** What the vehicle's leads give, by contact. */
  readonly sources: ReadonlyMap<ContactKey, Most>;
};

const remembered = new WeakMap<Context, Mosts>();

/**
 * The most that loads draw through each wire, fuse and source, with all on that can be on. Current
 * that no load explains is a short, of which other rules speak: it is left out.
 */
export function mostsOf(context: Context): Mosts {
  const known = remembered.get(context);
  if (known) return known;
  const wires = new Map<WireId, Most>();
  const fuses = new Map<PartId, Most>();
  const sources = new Map<ContactKey, Most>();
  for (const readings of statesCurrents(context) ? heaviestStates(context) : []) {
    // What loads are stated to draw they draw at about their nominal volts: neither charging nor cranking.
    const { key, conditions } = readings.state;
    if (key === "crank" || conditions.includes("engine-running")) continue;
    let drawn_A = 1;
    for (const { amps } of readings.loads.values()) drawn_A += Math.abs(amps) * 1.05;
    for (const { coil_A } of readings.relays.values()) drawn_A += Math.abs(coil_A);
    const raise = <Key>(found: Map<Key, Most>, key: Key, amps: number) => {
      if (amps > drawn_A || amps <= (found.get(key)?.amps ?? 0)) return;
      found.set(key, { amps, readings });
    };
    for (const [id, { amps }] of readings.wires) raise(wires, id, Math.abs(amps));
    for (const [id, { amps }] of readings.fuses) raise(fuses, id, Math.abs(amps));
    for (const [key, { amps }] of readings.sources) raise(sources, key, amps);
  }
  const made = { wires, fuses, sources };
  remembered.set(context, made);
  return made;
}

/** Whether it is said of anything how much it draws; where it is not, there is nothing to solve for. */
export function statesCurrents({ points }: Context): boolean {
  return points.all.some(({ part, contact, direction }) => {
    if (part.kind === "load") return part.current_A !== "unknown";
    return direction !== "gives" && contact.cavity !== null && contact.cavity.current_A !== "unknown";
  });
}
