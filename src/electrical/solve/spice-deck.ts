import {
  type Circuit,
  type CircuitElement,
  LAMP_EXPONENT,
  LEAST_ohm,
  LEAST_SWITCHED_ohm,
  nodesOf,
} from "./circuit.ts";
import { DIODE_LEAK_S, isOpen, lampKnee_V, limitSlope_S } from "./devices.ts";
import { tieIdeal } from "./ideal.ts";
import { findIslands } from "./islands.ts";

/**
 * The same circuit as a deck for a general circuit simulator of the SPICE family (ngspice reads it): node 7 is called
 * n7, element 12 begins with its letter and 12. Relays are written as they stand; each island hangs on node 0 by a
 * resistor at its reference, through which nothing flows.
 * @param pulled [elements] 1 where a coil is pulled, as a solution has it
 * @param extra title: the first line, which such programs do not read; guess_V: [nodes] where their search begins, since a
 * constant-power load can have two operating points and they stop at the first that they meet
 */
export function writeSpice(
  circuit: Circuit,
  pulled: Uint8Array,
  extra: { readonly title?: string; readonly guess_V?: Float64Array } = {},
): string {
  const { title = "circuit", guess_V } = extra;
  const ideal = tieIdeal(circuit);
  const { islands, held } = findIslands(circuit, ideal, pulled);
  const closers = new Set(ideal.closers);
  const lines = [
    `* ${title.replace(/[^\x20-\x7e]/g, "?")}`,
    `.options reltol=1e-9 abstol=1e-18 vntol=1e-11 gmin=${DIODE_LEAK_S} itl1=1000 temp=27 tnom=27`,
  ];
  circuit.elements.forEach((element, index) => {
    if (isOpen(element, pulled)) lines.push(`* ${element.kind} ${index} is open`);
    else lines.push(...write(element, index, closers.has(index)));
  });
  islands.forEach((_, index) => {
    lines.push(`Rreference${index} n${held[index]} 0 1`);
  });
  guess_V?.forEach((volts, node) => {
    lines.push(`.nodeset v(n${node})=${text(volts)}`);
  });
  return [...lines, ".op", ".end", ""].join("\n");
}

/** A number that reads back as the same number. */
const text = (value: number): string => String(value).replace("e+", "e");

function write(element: CircuitElement, index: number, closesLoop: boolean): readonly string[] {
  const [a, b] = nodesOf(element);
  const ends = `n${a} n${b}`;
  const volts = `v(n${a},n${b})`;
  const name = (letter: string) => `${letter}${index}`;
  switch (element.kind) {
    case "supply": {
      const inside_ohm = closesLoop ? LEAST_ohm : element.resistance_ohm;
      if (inside_ohm < LEAST_ohm) return [`${name("V")} ${ends} ${text(element.emf_V)}`];
      return [
        `${name("V")} n${a} inside${index} ${text(element.emf_V)}`,
        `${name("R")} inside${index} n${b} ${text(inside_ohm)}`,
      ];
    }
    case "resistance": {
      if (closesLoop) return [`${name("R")} ${ends} ${text(LEAST_ohm)}`];
      if (element.resistance_ohm < LEAST_ohm) return [`${name("V")} ${ends} 0`];
      return [`${name("R")} ${ends} ${text(element.resistance_ohm)}`];
    }
    case "coil":
      return [`${name("R")} ${ends} ${text(element.resistance_ohm)}`];
    case "switch":
    case "contact":
      return [`${name("R")} ${ends} ${text(Math.max(element.resistance_ohm, LEAST_SWITCHED_ohm))}`];
    case "current-load": {
      const { amps, minimum_V } = element;
      const low = `${text(amps / minimum_V)}*${volts}`;
      return [`${name("B")} ${ends} I = ${volts} >= ${text(minimum_V)} ? ${text(amps)} : ${low}`];
    }
    case "power-load": {
      const { power_W, minimum_V } = element;
      const high = `${text(power_W)}/max(${volts},${text(minimum_V)})`;
      const low = `${text(power_W / minimum_V ** 2)}*${volts}`;
      return [`${name("B")} ${ends} I = ${volts} >= ${text(minimum_V)} ? ${high} : ${low}`];
    }
    case "lamp": {
      if (element.filament === "cold") return [`${name("R")} ${ends} ${text(element.cold_ohm)}`];
      const knee_V = text(lampKnee_V(element));
      const scale = text(element.rated_W / element.rated_V ** (1 + LAMP_EXPONENT));
      const low = `${volts}/${text(element.cold_ohm)}`;
      // Under the knee the power is not asked for its slope, which at 0 V has no end.
      const high = `sgn(${volts})*${scale}*exp(${LAMP_EXPONENT}*ln(max(abs(${volts}),${knee_V})))`;
      return [`${name("B")} ${ends} I = abs(${volts}) <= ${knee_V} ? ${low} : ${high}`];
    }
    case "diode": {
      const { saturation_A, ideality, resistance_ohm } = element;
      const inside_ohm = Math.max(resistance_ohm, LEAST_ohm);
      return [
        `.model junction${index} D(IS=${text(saturation_A)} N=${text(ideality)} RS=${text(inside_ohm)})`,
        `${name("D")} ${ends} junction${index}`,
      ];
    }
    case "output": {
      const { emf_V, limit_A } = element;
      const inside_ohm = Math.max(element.resistance_ohm, LEAST_ohm);
      const free = `(${text(emf_V)}-${volts})/${text(inside_ohm)}`;
      const slope = limitSlope_S(limit_A, emf_V);
      const limited = `${text(limit_A)}+${text(slope)}*(${text(emf_V - inside_ohm * limit_A)}-${volts})`;
      const choice = slope * inside_ohm < 1 ? `${free} > ${text(limit_A)} ? ${limited} : ${free}` : free;
      return [`${name("B")} n${b} n${a} I = ${choice}`];
    }
  }
}
