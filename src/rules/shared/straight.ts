import type { Point, PointCircuit } from "../../electrical/points.ts";
import type { Harness } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";
import { givesVolts } from "./near.ts";

const remembered = new WeakMap<Harness["parts"], ReadonlySet<string>>();

/** Pairs of circuits, by their ids, that a resistor joins. */
function resisted(context: Context): ReadonlySet<string> {
  let found = remembered.get(context.harness.parts);
  if (!found) {
    const made = new Set<string>();
    for (const part of context.parts) {
      if (part.kind !== "resistor") continue;
      const [a, b] = [1, 2].map((contact) => context.traced.circuitAt(part.id, contact)!.id);
      made.add(`${a} ${b}`).add(`${b} ${a}`);
    }
    found = made;
    remembered.set(context.harness.parts, found);
  }
  return found;
}

/**
 * The circuits that current reaches from one without a resistor on the way: through fuses, switches, relay contacts,
 * and diodes the way they conduct.
 */
export function straightOn(context: Context, start: PointCircuit): readonly PointCircuit[] {
  const ids = [start.circuit.id];
  const seen = new Set(ids);
  for (let next = 0; next < ids.length; next++) {
    const from = ids[next]!;
    for (const { to, gate } of context.ways[from] ?? []) {
      if (seen.has(to) || (gate.kind === "through" && resisted(context).has(`${from} ${to}`))) continue;
      seen.add(to);
      ids.push(to);
    }
  }
  return ids.map((id) => context.points.circuits[id]!);
}

/** What gives battery volts to the circuit of a lead with no resistor in between. */
export function raises(context: Context, circuit: PointCircuit, own: Point): readonly Point[] {
  if (!context.feeds.isLive(circuit)) return [];
  const near = circuit.points.filter((point) => point !== own && givesVolts(point));
  if (near.length) return near.sort(byName);
  return context.feeds
    .feeds(circuit)
    .map(({ source }) => source)
    .filter((source) => straightOn(context, context.circuitOf(source)).includes(circuit))
    .sort(byName);
}

/** What holds a circuit at ground with no resistor in between. */
export function lowers(context: Context, circuit: PointCircuit): readonly Point[] {
  if (!context.grounds.isLive(circuit)) return [];
  const reached = straightOn(context, circuit);
  return context.grounds
    .feeds(circuit)
    .map(({ source }) => source)
    .filter((source) => reached.includes(context.circuitOf(source)))
    .sort(byName);
}
