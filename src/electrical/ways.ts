import type { Harness, Part, PartId, Relay, Switch } from "../graph/harness.ts";
import type { Points } from "./points.ts";

/** A resistor from here on lets a lead signal, but not spark. */
const BLOCKING_ohm = 1000;

/** What must be so for current to pass. */
export type Gate =
  | { readonly kind: "through" }
  | { readonly kind: "fuse"; readonly fuse: PartId }
  | { readonly kind: "switch"; readonly operatedBy: Switch["operatedBy"] }
  | { readonly kind: "make"; readonly coil: readonly [number, number] }
  | { readonly kind: "rest"; readonly coil: readonly [number, number] };
export type Way = { readonly to: number; readonly gate: Gate };
/** The ways that leave each circuit, by its id. */
export type Ways = readonly (readonly Way[] | undefined)[];

const THROUGH: Gate = { kind: "through" };

/**
 * Every way from circuit to circuit through a part that lets current pass: fuses, switches, relay contacts,
 * diodes the way they conduct, resistors under 1 kΩ (or not stated). Loads, coils and capacitors end the walk.
 * @param against true to walk against the current, as from a ground to what it grounds
 * @returns for each circuit, by its id, the ways that leave it
 */
export function waysOf(harness: Pick<Harness, "parts">, points: Points, against: boolean): Ways {
  const ways: (Way[] | undefined)[] = new Array(points.circuits.length);
  const idAt = (part: Part, contact: number): number => points.circuitAt(part.id, contact).circuit.id;
  const add = (from: number, to: number, gate: Gate): void => {
    if (from === to) return;
    const list = ways[from];
    if (list) list.push({ to, gate });
    else ways[from] = [{ to, gate }];
  };
  const both = (a: number, b: number, gate: Gate): void => {
    add(a, b, gate);
    add(b, a, gate);
  };
  for (const part of passing(harness)) {
    switch (part.kind) {
      case "fuse":
        both(idAt(part, 1), idAt(part, 2), { kind: "fuse", fuse: part.id });
        break;
      case "switch":
        both(idAt(part, 1), idAt(part, 2), { kind: "switch", operatedBy: part.operatedBy });
        break;
      case "resistor":
        if (part.resistance_ohm === "unknown" || part.resistance_ohm < BLOCKING_ohm)
          both(idAt(part, 1), idAt(part, 2), THROUGH);
        break;
      case "diode": {
        const [from, to] = against ? [2, 1] : [1, 2];
        add(idAt(part, from), idAt(part, to), THROUGH);
        break;
      }
      case "relay": {
        const coil = [idAt(part, 2), idAt(part, 3)] as const;
        both(idAt(part, 1), idAt(part, 4), { kind: "make", coil });
        const fifth = fifthContact(part);
        if (fifth) both(idAt(part, 1), idAt(part, 5), { kind: fifth, coil });
        break;
      }
    }
  }
  return ways;
}

const PASSING: ReadonlySet<Part["kind"]> = new Set(["fuse", "switch", "resistor", "diode", "relay"]);

/** In the order of their designations, so that which of two ways is found first does not hang on ids. */
function passing(harness: Pick<Harness, "parts">): readonly Part[] {
  const parts = Object.values(harness.parts).filter((part) => PASSING.has(part.kind));
  return parts.sort((a, b) => compareText(a.designation, b.designation));
}

/** Plain order of texts: quick, and the same on every machine. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function fifthContact(relay: Relay): "rest" | "make" | null {
  if (relay.poles === "make") return null;
  return relay.poles === "changeover" ? "rest" : "make";
}
