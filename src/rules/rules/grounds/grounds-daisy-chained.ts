import { USUAL } from "../../../electrical/operate/assumed.ts";
import type { Point, PointCircuit } from "../../../electrical/points.ts";
import type { Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { fullLoad, sayVolts, type View } from "../../shared/full-load.ts";
import { most_ohm, treeFrom, wayOf } from "../../shared/ground-tree.ts";
import { type Consumer, consumersOf, drawn_A, isFrame } from "../../shared/grounding.ts";
import { byName, compareNames, sayList, sayPoints, sayWire } from "../../words.ts";

/** What one unit's current may move another's zero. @source common practice, no source */
const SHARED_V = 0.1;
/** The same where one of them handles line level or a picture. @source a threshold of our own */
const SHARED_SIGNAL_V = 0.01;

export default defineRule({
  meta: {
    id: "grounds-daisy-chained",
    group: "grounds",
    severity: "weak",
    summary: "Units that share a ground meet at the stud, not on the way to it.",
    source: "common practice, no source; FAA AC 43.13-1B on shared ground studs, from memory",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["ground-drop-too-great"],
  },
  *check(context) {
    const consumers = new Map(consumersOf(context).map((one) => [one.id, one]));
    const circuits = new Set<PointCircuit>();
    // Only where two share a circuit, one of them a box, is there anything to solve.
    for (const one of consumers.values())
      if (!one.isLoad) for (const point of one.grounds) circuits.add(context.circuitOf(point));
    for (const circuit of circuits) {
      const users = usersOf(circuit, consumers);
      if (users.size < 2) continue;
      const found = worstShared(context, circuit, users);
      if (!found) continue;
      const names = [...found.wires].sort((a, b) => compareNames(a.designation, b.designation));
      const points = found.points.sort(byName);
      yield {
        message: `${sayPoints(context, points)} share ${sayList(names.map(sayWire))} on the way to ground, where ${sayVolts(found.drop_V)} is lost at full load.`,
        consequence:
          "The current of the one moves the zero of the other: hum, resets, steering-wheel buttons that answer for each other.",
        remedy:
          "Take each unit's ground to the stud by a lead of its own, or bring the stud to where they meet.",
        about: [...names.map((wire) => ({ wire: wire.id })), ...points.map((point) => point.at)],
      };
    }
  },
});

function usersOf(
  circuit: PointCircuit,
  consumers: ReadonlyMap<string, Consumer>,
): ReadonlyMap<Point, Consumer> {
  const users = new Map<Point, Consumer>();
  const seen = new Set<Consumer>();
  for (const point of circuit.points) {
    const consumer = point.unit === null ? undefined : consumers.get(point.unit);
    if (!consumer?.grounds.includes(point)) continue;
    users.set(point, consumer);
    seen.add(consumer);
  }
  return seen.size > 1 ? users : new Map();
}

type Shared = { readonly wires: readonly Wire[]; readonly drop_V: number; readonly points: Point[] };

/** The stretch between the ground and the place where two units' leads part on which most is lost. */
function worstShared(
  context: Context,
  circuit: PointCircuit,
  users: ReadonlyMap<Point, Consumer>,
): Shared | null {
  const tree = treeFrom(context, circuit.points.filter(isFrame));
  const behind = new Map<WireId, Set<Point>>();
  const ways = new Map<Point, readonly Wire[]>();
  for (const point of users.keys()) {
    const way = wayOf(tree, point);
    ways.set(point, way);
    for (const { id } of way) {
      const set = behind.get(id);
      if (set) set.add(point);
      else behind.set(id, new Set([point]));
    }
  }
  const isShared = ({ id }: Wire): boolean => {
    const units = new Set([...(behind.get(id) ?? [])].map((point) => users.get(point)));
    return units.size > 1 && [...units].some((unit) => !unit!.isLoad);
  };
  const shared = [...ways].map(([point, way]) => ({ point, wires: way.filter(isShared) }));
  // So little is drawn over so short leads that no sum is needed to say that nothing is lost.
  const all_A = [...new Set(users.values())].reduce((sum, unit) => sum + (drawn_A(unit) ?? 0), 0);
  const inReach = shared.filter(
    ({ point, wires }) => wires.length > 0 && most_ohm(tree, point) * all_A > SHARED_SIGNAL_V,
  );
  if (!inReach.length) return null;
  const view = fullLoad(context);
  let worst: Shared | null = null;
  for (const { point, wires } of inReach) {
    const drop_V = wires.reduce((sum, wire) => sum + leastDrop_V(view, wire), 0);
    const points = new Set([point, ...wires.flatMap(({ id }) => [...behind.get(id)!])]);
    const units = [...new Set([...points].map((one) => users.get(one)!))];
    if (drop_V <= (worst?.drop_V ?? 0)) continue;
    const moved = units.some((unit) => {
      const limit_V = handlesSignals(context, unit) ? SHARED_SIGNAL_V : SHARED_V;
      return drop_V * shareOfOthers(view, unit, units) > limit_V;
    });
    if (!moved) continue;
    worst = { wires, drop_V, points: [...points] };
  }
  return worst;
}

/** The shortest and thickest that a lead of which nothing is stated is likely to be. @source common practice, no source */
const LEAST_m = 0.3;
const MOST_mm2 = 1.5;

/** What is lost along a wire; of one whose length or size nobody has stated, what would be lost at the least. */
function leastDrop_V(view: View, wire: Wire): number {
  const drop_V = view.drop_V(wire.id);
  const shorter = wire.length_m === "unknown" && !wire.runs.length ? LEAST_m / USUAL.length_m : 1;
  const thicker = wire.area_mm2 === "unknown" ? USUAL.area_mm2 / MOST_mm2 : 1;
  return drop_V * shorter * thicker;
}

/** Of the current in a shared lead, how much is not the unit's own: only that moves its zero. */
function shareOfOthers(view: View, unit: Consumer, units: readonly Consumer[]): number {
  const of = ({ feeds }: Consumer): number =>
    feeds
      .flatMap(({ landings }) => landings)
      .reduce((sum, key) => sum + Math.abs(view.load(key)?.amps ?? 0), 0);
  const all = units.reduce((sum, one) => sum + of(one), 0);
  return all > 0 ? 1 - of(unit) / all : 0;
}

/** Line level or a picture goes in or out of it by a lead that is joined. */
function handlesSignals(context: Context, { id }: Consumer): boolean {
  return (context.points.byUnit.get(id) ?? []).some(
    (point) =>
      (point.means.group === "line-level" || point.means.group === "video") && !context.isAlone(point),
  );
}
