import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { fullLoad, sayVolts, voltsAt } from "../../shared/full-load.ts";
import { consumersOf, drawn_A, isSenseGround } from "../../shared/grounding.ts";
import { byName, sayGrounds, sayList, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "sense-ground-elsewhere",
    group: "grounds",
    severity: "weak",
    summary: "The return of a line that is measured goes back to the box that measures it.",
    source:
      "workshop manuals on steering-wheel keys (five) for the principle; the shift: computed, 1 kΩ to 5 V and a key of 100 Ω",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    if (!KEYS.some((name) => context.points.byFunction.has(name))) return;
    for (const { id, points } of context.newUnits) {
      // Of two mated contacts one stands for both: it may be the other box's. Of a contact that only passes a lead on
      // nobody has said that it is the box's.
      const mated = (context.points.standIns.get(id) ?? []).filter((point) =>
        point.landings.every((key) => context.traced.contact(key)?.function !== "unknown"),
      );
      const all = [...points, ...mated].filter((point) => !context.isLeftOut(point));
      const own = all.filter((point) => point.means.group === "ground");
      const lines = all.filter(
        (point) => KEYS.includes(point.means.id) && (point.unit !== id || point.direction !== "gives"),
      );
      for (const line of lines.sort(byName)) {
        const found = judge(context, id, line, own);
        if (!found) continue;
        yield found;
        break;
      }
    }
  },
});

const KEYS: readonly string[] = ["steering-key-1", "steering-key-2"];

function judge(context: Context, unit: string, line: Point, own: readonly Point[]): Found | null {
  const home = new Set(own.map((point) => context.circuitOf(point)));
  const returns = [...returnsOf(context, unit, line, own)].sort(byName);
  if (!returns.length || !own.length) return null;
  const atHome = returns.find((point) => home.has(context.circuitOf(point)));
  if (atHome) {
    const shift_V = shiftOf(context, atHome, own);
    if (shift_V === null || shift_V < MISREAD_V) return null;
    return {
      message: `${sayPoint(context, line)} is measured against ${sayPoints(context, preferred(own).slice(0, 1))}, and ${sayVolts(shift_V)} lie between that and the return of its keys, ${sayPoint(context, atHome)}, at full load.`,
      consequence: CONSEQUENCE,
      remedy: `Bring the return of the keys to ${sayPoints(context, preferred(own).slice(0, 1))} by a lead that carries nothing else.`,
      about: [line.at, atHome.at],
    };
  }
  const grounds = [...home].flatMap((circuit) => context.grounds.feeds(circuit).map(({ source }) => source));
  if (!grounds.length) return null;
  return {
    message: `${sayPoint(context, line)} is measured against ${sayGrounds(context, [...new Set(grounds)].slice(0, 2))}, but its keys return to ${sayList(
      returns.map((point) =>
        point.part.kind === "ground" ? point.part.designation : sayPoint(context, point),
      ),
      3,
    )}.`,
    consequence: CONSEQUENCE,
    remedy: `Bring the return of the keys to ${sayPoints(context, preferred(own))}, and to nothing else.`,
    about: [line.at, ...returns.map((point) => point.at)],
  };
}

const CONSEQUENCE =
  "What other units lose on the way moves the reading: with 0.3 V of shift, a key of 0.45 V reads as 0.73 V. Volume up answers as next track, and only while the fan runs.";
/** Two keys lie about so far apart. @source computed: 1 kΩ to 5 V, keys of 100 Ω and 200 Ω */
const MISREAD_V = 0.3;
/** What has to flow in a return before it is worth a sum. @source a threshold of our own */
const WORTH_A = 1;

/** Volts between the return of the keys and the ground that they are measured against; `null` where little flows there. */
function shiftOf(context: Context, back: Point, own: readonly Point[]): number | null {
  const circuit = context.circuitOf(back);
  const near = [...preferred(own), ...own].find((point) => context.circuitOf(point) === circuit);
  const isLoaded = consumersOf(context).some(
    (consumer) =>
      (drawn_A(consumer) ?? 0) >= WORTH_A &&
      consumer.grounds.some((point) => context.circuitOf(point) === circuit),
  );
  if (!near || !isLoaded) return null;
  const view = fullLoad(context);
  const [here, there] = [voltsAt(view, near.key), voltsAt(view, back.key)];
  return here === null || there === null ? null : Math.abs(here - there);
}

/** Where the ladder of keys behind a line goes back: the return in the same connector, or what its resistors end on. */
function returnsOf(context: Context, unit: string, line: Point, own: readonly Point[]): ReadonlySet<Point> {
  const found = new Set<Point>();
  const circuit = context.circuitOf(line);
  for (const other of circuit.points) {
    if (other.unit === unit || other.part.kind !== "connector" || other.direction === "takes") continue;
    for (const point of context.points.byUnit.get(other.unit ?? "") ?? []) {
      const isReturn = point.part === other.part && isSenseGround(point);
      if (isReturn && !context.isAlone(point) && !context.isLeftOut(point)) found.add(point);
    }
  }
  for (const source of ladderGrounds(context, line, own)) found.add(source);
  return found;
}

/** Grounds that are reached through resistors and switches drawn one by one. */
function ladderGrounds(context: Context, line: Point, grounds: readonly Point[]): readonly Point[] {
  const start = context.circuitOf(line).circuit.id;
  const ids = [start];
  const seen = new Set(ids);
  const found: Point[] = [];
  const own = new Set(grounds.map((point) => context.circuitOf(point).circuit.id));
  const resistors = context.parts.filter((part) => part.kind === "resistor" || part.kind === "switch");
  const ways = new Map<number, number[]>();
  for (const part of resistors) {
    const [a, b] = [1, 2].map((contact) => context.points.circuitAt(part.id, contact).circuit.id) as [
      number,
      number,
    ];
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const)
      ways.set(from, [...(ways.get(from) ?? []), to]);
  }
  for (let next = 0; next < ids.length; next++) {
    const id = ids[next]!;
    if (id !== start) {
      const ground = context.points.circuits[id]!.points.find(
        (point) => point.means.group === "ground" && point.direction === "gives",
      );
      if (ground || own.has(id)) {
        // Home already: the reading box's own ground is among its ends.
        if (own.has(id)) return [];
        found.push(ground!);
        continue;
      }
    }
    for (const to of ways.get(id) ?? []) {
      if (seen.has(to)) continue;
      seen.add(to);
      ids.push(to);
    }
  }
  return found;
}

function preferred(own: readonly Point[]): readonly Point[] {
  const sense = own.filter(isSenseGround);
  return sense.length ? sense : own.slice(0, 1);
}
