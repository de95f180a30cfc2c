import type { Circuit, CircuitElement } from "../../../src/electrical/solve/circuit.ts";
import { Dice } from "../../graph/random.ts";

export type Wish = {
  /** About how many wires. */
  readonly wires: number;
  /** Loads of every law, diodes and limited outputs; without, every element is linear. */
  readonly nonlinear: boolean;
  /** Supplies without resistance too. */
  readonly ideal?: boolean;
  /** One supply, no relays, no islands: whatever is added can only lower voltages. */
  readonly passive?: boolean;
};

/**
 * A circuit like a harness: a battery, feeds that branch, loads with returns that share ground leads, some wires side by
 * side or round in a loop, switches, relays, a second supply, and here and there a piece that nothing feeds.
 */
export function randomCircuit(seed: number, wish: Wish): Circuit {
  const dice = new Dice(seed);
  const elements: CircuitElement[] = [];
  let nodeCount = 0;
  for (let left = wish.wires; left > 0; ) {
    const wires = nodeCount === 0 && (wish.passive || dice.next() < 0.7) ? left : Math.ceil(left / 2);
    nodeCount = growIsland(dice, wish, elements, nodeCount, wires);
    left -= wires;
  }
  return { nodeCount, ground: 0, elements };
}

const between = (dice: Dice, low: number, high: number): number => low + (high - low) * dice.next();
/** Spread evenly over the powers of ten, as wires and heaters are. */
const spread = (dice: Dice, low: number, high: number): number => low * (high / low) ** dice.next();
const oneOf = <Item>(dice: Dice, items: readonly Item[]): Item =>
  items[Math.floor(dice.next() * items.length)]!;
/** Mostly a neighbour of late: harnesses branch, but are long rather than wide. */
const lateOf = (dice: Dice, nodes: readonly number[]): number =>
  dice.next() < 0.2 ? nodes[0]! : nodes[Math.max(0, nodes.length - 1 - Math.floor(dice.next() * 12))]!;

function growIsland(
  dice: Dice,
  wish: Wish,
  elements: CircuitElement[],
  first: number,
  wires: number,
): number {
  let nodeCount = first + 2;
  const grounds = [first];
  const feeds = [first + 1];
  const fed = wish.passive || first === 0 || dice.next() < 0.6;
  const supply = (plus: number, minus: number, emf_V: number) =>
    elements.push({
      kind: "supply",
      plus,
      minus,
      emf_V,
      resistance_ohm: wish.ideal && dice.next() < 0.5 ? 0 : spread(dice, 3e-3, 5e-2),
    });
  if (fed) supply(feeds[0]!, grounds[0]!, between(dice, 11.5, 14.4));
  const wire = (from: number, to: number) =>
    elements.push({ kind: "resistance", from, to, resistance_ohm: spread(dice, 5e-4, 0.2) });
  let left = wires;
  while (left > 0) {
    const chance = dice.next();
    if (chance < 0.3) {
      const node = nodeCount++;
      wire(lateOf(dice, feeds), node);
      feeds.push(node);
    } else if (chance < 0.55) {
      const node = nodeCount++;
      wire(node, lateOf(dice, grounds));
      grounds.push(node);
    } else if (chance < 0.62) {
      const side = dice.next() < 0.5 ? feeds : grounds;
      const [one, other] = [lateOf(dice, side), lateOf(dice, side)];
      if (one !== other) wire(one, other);
    } else if (chance < 0.7) {
      const node = nodeCount++;
      elements.push({
        kind: "switch",
        from: lateOf(dice, feeds),
        to: node,
        closed: dice.next() < 0.7,
        resistance_ohm: spread(dice, 1e-3, 1e-2),
      });
      feeds.push(node);
    } else if (chance < 0.74 && !wish.passive) {
      const coil = elements.length;
      const node = nodeCount++;
      const ends = { from: lateOf(dice, feeds), to: lateOf(dice, grounds) };
      elements.push({ kind: "coil", ...ends, resistance_ohm: 85, pullIn_V: 8, dropOut_V: 1.5 });
      const closedWhen = dice.next() < 0.5 ? "pulled" : "released";
      elements.push({
        kind: "contact",
        from: lateOf(dice, feeds),
        to: node,
        coil,
        closedWhen,
        resistance_ohm: 4e-3,
      });
      feeds.push(node);
    } else if (chance < 0.76 && !wish.passive && fed) {
      const node = nodeCount++;
      supply(node, lateOf(dice, grounds), between(dice, 12, 14.4));
      wire(lateOf(dice, feeds), node);
    } else {
      const node = nodeCount++;
      wire(lateOf(dice, feeds), node);
      elements.push(...load(dice, wish, node, lateOf(dice, grounds)));
    }
    left--;
  }
  return nodeCount;
}

function load(dice: Dice, wish: Wish, from: number, to: number): readonly CircuitElement[] {
  const chance = wish.nonlinear ? dice.next() : 0;
  if (chance < 0.25) return [{ kind: "resistance", from, to, resistance_ohm: spread(dice, 1, 1e5) }];
  if (chance < 0.4) return [{ kind: "current-load", from, to, amps: spread(dice, 1e-3, 10), minimum_V: 6 }];
  if (chance < 0.6) return [{ kind: "power-load", from, to, power_W: spread(dice, 0.1, 60), minimum_V: 7 }];
  if (chance < 0.8 || wish.passive) {
    const rated_W = oneOf(dice, [3, 5, 10, 21, 55]);
    const cold_ohm = 12 ** 2 / rated_W / 12;
    const filament = dice.next() < 0.9 ? "hot" : "cold";
    return [{ kind: "lamp", from, to, rated_V: 12, rated_W, cold_ohm, filament }];
  }
  if (chance < 0.95) {
    const [anode, cathode] = dice.next() < 0.8 ? [from, to] : [to, from];
    const inside_ohm = spread(dice, 2, 500);
    const saturation_A = spread(dice, 1e-13, 1e-9);
    // Something beside it, or a piece that hangs on blocking diodes alone would stand where nanoamperes put it.
    return [
      { kind: "diode", anode, cathode, saturation_A, ideality: 1.5, resistance_ohm: inside_ohm },
      { kind: "resistance", from, to, resistance_ohm: spread(dice, 100, 5000) },
    ];
  }
  return [
    { kind: "output", plus: from, minus: to, emf_V: 12, resistance_ohm: 0.2, limit_A: spread(dice, 0.1, 2) },
  ];
}
