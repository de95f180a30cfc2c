import { leaders } from "./pair.ts";
import type { WireToRoute } from "./types.ts";

/** What the router asks about wires, as numbers. */
export type Wiring = {
  readonly circuits: Int32Array;
  /** -1 for a wire of its own. */
  readonly bonds: Int32Array;
  /** For a wire that follows its pair's first wire, that wire; for others, itself. */
  readonly leaders: Int32Array;
};

export function wiringOf(wires: readonly WireToRoute[]): Wiring {
  const circuits = numbered();
  const bonds = numbered();
  return {
    circuits: Int32Array.from(wires, (wire) => circuits(wire.circuit)),
    bonds: Int32Array.from(wires, (wire) => (wire.bond === undefined ? -1 : bonds(wire.bond))),
    leaders: leaders(wires),
  };
}

function numbered(): (name: string) => number {
  const known = new Map<string, number>();
  return (name) => {
    const number = known.get(name) ?? known.size;
    known.set(name, number);
    return number;
  };
}
