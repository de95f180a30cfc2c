import { checkCircuit } from "./check-circuit.ts";
import { type Circuit, type CircuitElement, isIdeal, nodesOf } from "./circuit.ts";
import { type DeviceColumns, deviceColumns } from "./devices.ts";
import { type Factor, makeFactor } from "./factor.ts";
import { type Ideal, tieIdeal } from "./ideal.ts";
import { orderByDegree, slotOf } from "./order.ts";

/**
 * What a circuit's shape alone decides: the unknowns, the order of elimination and where the factor has entries. It
 * serves every circuit of that shape, whatever its values, switches and relays. The room to compute in is part of it,
 * so one of these serves one solve at a time.
 */
export type Prepared = {
  readonly ideal: Ideal;
  readonly shape: Float64Array;
  /** [elements] the unknowns at each end of each element. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** [elements] where the pair stands in the factor; −1 where both ends are one unknown. */
  readonly slot: Int32Array;
  readonly factor: Factor;
  readonly room: Room;
  readonly coils: readonly number[];
};

/** Columns that every solve writes anew; none of them is part of an answer. */
export type Room = {
  /** [elements] */
  readonly columns: DeviceColumns;
  readonly added: Float64Array;
  readonly slopes: Float64Array;
  /** [unknowns] */
  readonly volts: Float64Array;
  readonly trial: Float64Array;
  readonly step: Float64Array;
  readonly leaving: Float64Array;
  readonly turned: Float64Array;
};

function roomFor(unknowns: number, elements: number): Room {
  return {
    columns: deviceColumns(elements),
    added: new Float64Array(elements),
    slopes: new Float64Array(elements),
    volts: new Float64Array(unknowns),
    trial: new Float64Array(unknowns),
    step: new Float64Array(unknowns),
    leaving: new Float64Array(unknowns),
    turned: new Float64Array(unknowns),
  };
}

/**
 * Works out once what every state of a circuit shares.
 * @throws RangeError if the circuit has no meaning; see `checkCircuit`
 */
export function prepare(circuit: Circuit): Prepared {
  checkCircuit(circuit);
  const { elements } = circuit;
  const ideal = tieIdeal(circuit);
  const first = new Int32Array(elements.length);
  const second = new Int32Array(elements.length);
  const ends = new Int32Array(elements.length * 2);
  const coils: number[] = [];
  for (let index = 0; index < elements.length; index++) {
    const element = elements[index]!;
    const [a, b] = nodesOf(element);
    first[index] = ends[index * 2] = ideal.group[a]!;
    second[index] = ends[index * 2 + 1] = ideal.group[b]!;
    if (element.kind === "coil") coils.push(index);
  }
  const pattern = orderByDegree(ideal.groupCount, ends);
  const slot = new Int32Array(elements.length).fill(-1);
  for (let index = 0; index < elements.length; index++) {
    if (first[index] !== second[index]) slot[index] = slotOf(pattern, first[index]!, second[index]!);
  }
  return {
    ideal,
    shape: shapeOf(circuit),
    first,
    second,
    slot,
    factor: makeFactor(pattern),
    room: roomFor(ideal.groupCount, elements.length),
    coils,
  };
}

/** Whether what was prepared for one circuit serves another: the same elements at the same nodes, with other values. */
export function fits(prepared: Prepared, circuit: Circuit): boolean {
  const { shape } = prepared;
  if (shape[0] !== circuit.nodeCount || shape.length !== 1 + circuit.elements.length * 3) return false;
  for (let index = 0; index < circuit.elements.length; index++) {
    const element = circuit.elements[index]!;
    const [a, b] = nodesOf(element);
    const at = 1 + index * 3;
    if (shape[at] !== kindNumber(element) || shape[at + 1] !== a || shape[at + 2] !== b) return false;
  }
  return true;
}

function shapeOf(circuit: Circuit): Float64Array {
  const shape = new Float64Array(1 + circuit.elements.length * 3);
  shape[0] = circuit.nodeCount;
  for (let index = 0; index < circuit.elements.length; index++) {
    const element = circuit.elements[index]!;
    shape[1 + index * 3] = kindNumber(element);
    shape.set(nodesOf(element), 2 + index * 3);
  }
  return shape;
}

const KINDS: readonly CircuitElement["kind"][] = ["coil", "contact"];

/** Ideal or not, and coil or contact or neither; another kind may take another's place. */
function kindNumber(element: CircuitElement): number {
  return isIdeal(element) ? -1 : KINDS.indexOf(element.kind) + 1;
}
