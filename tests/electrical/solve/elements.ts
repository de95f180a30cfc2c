import type { Circuit, CircuitElement } from "../../../src/electrical/solve/circuit.ts";

/** Elements in few words, for circuits written out in tests: nodes first, then figures. */
export const supply = (plus: number, minus: number, emf_V: number, resistance_ohm = 0): CircuitElement => ({
  kind: "supply",
  plus,
  minus,
  emf_V,
  resistance_ohm,
});
export const resistance = (from: number, to: number, resistance_ohm: number): CircuitElement => ({
  kind: "resistance",
  from,
  to,
  resistance_ohm,
});
export const currentLoad = (from: number, to: number, amps: number, minimum_V = 6): CircuitElement => ({
  kind: "current-load",
  from,
  to,
  amps,
  minimum_V,
});
export const powerLoad = (from: number, to: number, power_W: number, minimum_V = 7): CircuitElement => ({
  kind: "power-load",
  from,
  to,
  power_W,
  minimum_V,
});
/** 8 V and 1.5 V at 85 Ω are what makers give for 12 V plug-in relays. */
export const coil = (from: number, to: number): CircuitElement => ({
  kind: "coil",
  from,
  to,
  resistance_ohm: 85,
  pullIn_V: 8,
  dropOut_V: 1.5,
});
export const contact = (
  from: number,
  to: number,
  ofCoil: number,
  closedWhen: "pulled" | "released",
): CircuitElement => ({ kind: "contact", from, to, coil: ofCoil, closedWhen, resistance_ohm: 0.004 });
export const closable = (from: number, to: number, closed: boolean): CircuitElement => ({
  kind: "switch",
  from,
  to,
  closed,
  resistance_ohm: 0.005,
});

/** As many nodes as the elements name, ground at 0. */
export function circuitOf(...elements: readonly CircuitElement[]): Circuit {
  const nodes = elements.flatMap((element) =>
    "plus" in element
      ? [element.plus, element.minus]
      : "anode" in element
        ? [element.anode, element.cathode]
        : [element.from, element.to],
  );
  return { nodeCount: Math.max(...nodes, 0) + 1, ground: 0, elements };
}
