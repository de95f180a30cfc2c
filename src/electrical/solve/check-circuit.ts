import { type Circuit, type CircuitElement, nodesOf } from "./circuit.ts";

/** What each figure of an element must be. Zero ohms are ideal; a load that draws nothing is no error. */
const LIMITS: { readonly [Kind in CircuitElement["kind"]]: Readonly<Record<string, "any" | "≥ 0" | "> 0">> } =
  {
    supply: { emf_V: "any", resistance_ohm: "≥ 0" },
    output: { emf_V: "≥ 0", resistance_ohm: "> 0", limit_A: "> 0" },
    resistance: { resistance_ohm: "≥ 0" },
    switch: { resistance_ohm: "≥ 0" },
    "current-load": { amps: "≥ 0", minimum_V: "> 0" },
    "power-load": { power_W: "≥ 0", minimum_V: "> 0" },
    lamp: { rated_V: "> 0", rated_W: "> 0", cold_ohm: "> 0" },
    diode: { saturation_A: "> 0", ideality: "> 0", resistance_ohm: "≥ 0" },
    coil: { resistance_ohm: "> 0", pullIn_V: "> 0", dropOut_V: "≥ 0" },
    contact: { resistance_ohm: "≥ 0" },
  };

/**
 * Refuses a circuit that has no meaning, so that nothing behind this has to ask.
 * @throws RangeError that names the element and the figure
 */
export function checkCircuit(circuit: Circuit): void {
  const { nodeCount, ground, elements } = circuit;
  if (!Number.isInteger(nodeCount) || nodeCount < 0)
    throw new RangeError(`nodeCount is ${nodeCount}; expected a whole number from 0 up`);
  const isNode = (node: number) => Number.isInteger(node) && node >= 0 && node < nodeCount;
  if (ground !== undefined && !isNode(ground))
    throw new RangeError(`ground is node ${ground}; expected a node from 0 to ${nodeCount - 1}`);
  for (let index = 0; index < elements.length; index++) {
    const element = elements[index]!;
    const [a, b] = nodesOf(element);
    if (!isNode(a) || !isNode(b))
      throw new RangeError(
        `element ${index} (${element.kind}) joins nodes ${a} and ${b}; expected nodes from 0 to ${nodeCount - 1}`,
      );
    checkFigures(element, index);
    if (element.kind === "contact" && elements[element.coil]?.kind !== "coil")
      throw new RangeError(
        `element ${index} (contact) names element ${element.coil} as its coil; it is none`,
      );
    if (element.kind === "coil" && element.dropOut_V > element.pullIn_V)
      throw new RangeError(`element ${index} (coil): dropOut_V is over pullIn_V; expected it under or equal`);
  }
}

function checkFigures(element: CircuitElement, index: number): void {
  const limits = LIMITS[element.kind];
  const figures = element as unknown as Readonly<Record<string, number>>;
  for (const name in limits) {
    const value = figures[name]!;
    const limit = limits[name];
    const good = Number.isFinite(value) && (limit === "any" || value > 0 || (limit === "≥ 0" && value === 0));
    if (good) continue;
    const expected = limit === "any" ? "a finite number" : `a finite number ${limit}`;
    throw new RangeError(`element ${index} (${element.kind}): ${name} is ${value}; expected ${expected}`);
  }
}
