import type { Point, PointCircuit } from "../../electrical/points.ts";
import { contactKey } from "../../graph/contacts.ts";
import type { Resistor } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { lowers, raises } from "./straight.ts";

/** A data lead by the bus that it belongs to, and which half of a pair it is. */
export type Line = {
  readonly family: "can" | "lin" | "k-line" | "l-line" | "j1850" | "usb";
  readonly half: "high" | "low" | null;
};

const LINES: Readonly<Record<string, Line>> = {
  "can-high": { family: "can", half: "high" },
  "can-low": { family: "can", half: "low" },
  "second-can-high": { family: "can", half: "high" },
  "second-can-low": { family: "can", half: "low" },
  lin: { family: "lin", half: null },
  "k-line": { family: "k-line", half: null },
  "l-line": { family: "l-line", half: null },
  "j1850-plus": { family: "j1850", half: "high" },
  "j1850-minus": { family: "j1850", half: "low" },
  "usb-data-plus": { family: "usb", half: "high" },
  "usb-data-minus": { family: "usb", half: "low" },
};

/** Data leads of whichever bus: a chart that says no more may mean the one as well as the other. */
const OPEN_WORDS = ["data", "data-receive", "data-transmit", "diagnostics"] as const;

export const DATA_LINES: readonly string[] = Object.keys(LINES);
export const ALL_DATA: readonly string[] = [...DATA_LINES, ...OPEN_WORDS];
const CAN_HIGH: ReadonlySet<string> = new Set(["can-high", "second-can-high"]);
const CAN_LOW: ReadonlySet<string> = new Set(["can-low", "second-can-low"]);

export function lineOf({ means }: Point): Line | null {
  return Object.hasOwn(LINES, means.id) ? LINES[means.id]! : null;
}

export function isCan(point: Point): boolean {
  return CAN_HIGH.has(point.means.id) || CAN_LOW.has(point.means.id);
}

export const isHigh = (point: Point): boolean => lineOf(point)?.half === "high";
export const isLow = (point: Point): boolean => lineOf(point)?.half === "low";

/** More leads of one function than this on a box with several connectors tell no pair. */
const MOST_ALIKE = 4;

/** The other half of a pair: of the same bus, in the same housing, or else on the same box. */
export function otherHalves(context: Context, point: Point): readonly Point[] {
  const name = point.means.id;
  const wanted = isHigh(point)
    ? name.replace(/high$/, "low").replace(/plus$/, "minus")
    : name.replace(/low$/, "high").replace(/minus$/, "plus");
  if (wanted === name) return [];
  const { part } = point;
  if (part.kind === "connector" || part.kind === "module") {
    const own = part.cavities.flatMap((cavity, index) =>
      cavity.function === wanted ? (context.points.pointAt(part.id, index + 1) ?? []) : [],
    );
    if (own.length) return own;
  }
  const alike = onBox(context).get(`${point.unit} ${wanted}`) ?? [];
  return alike.length > MOST_ALIKE ? [] : alike;
}

const remembered = new WeakMap<Context, ReadonlyMap<string, readonly Point[]>>();

/** Data leads by their box and function. */
function onBox(context: Context): ReadonlyMap<string, readonly Point[]> {
  let found = remembered.get(context);
  if (!found) {
    const made = new Map<string, Point[]>();
    for (const point of context.withFunction(...DATA_LINES)) {
      if (point.unit === null) continue;
      const key = `${point.unit} ${point.means.id}`;
      const list = made.get(key);
      if (list) list.push(point);
      else made.set(key, [point]);
    }
    found = made;
    remembered.set(context, found);
  }
  return found;
}

/** A bus of two leads: what hangs on the high lead, and what on the low one. */
export type Bus = { readonly high: PointCircuit; readonly low: PointCircuit };

/** Every CAN bus of the harness that joins two boxes by both leads: once for each pair of circuits. */
export function canBuses(context: Context): readonly Bus[] {
  const found = new Map<string, Bus>();
  for (const name of CAN_HIGH) {
    for (const point of context.withFunction(name)) {
      const high = context.circuitOf(point);
      for (const other of otherHalves(context, point)) {
        const low = context.circuitOf(other);
        if (low !== high) found.set(`${high.circuit.id} ${low.circuit.id}`, { high, low });
      }
    }
  }
  return [...found.values()];
}

/** A resistor, or two in a row, from the one lead to the other. */
export type Bridge = { readonly resistors: readonly Resistor[]; readonly ohm: number | null };

/** What bridges the two leads of a bus: its terminators, and whatever else somebody put there. */
export function bridgesOf(context: Context, { high, low }: Bus): readonly Bridge[] {
  const from = resistorsAt(context, high);
  if (!from.length) return [];
  const to = new Map(resistorsAt(context, low).map(({ part, far }) => [far, part] as const));
  const bridges: Bridge[] = [];
  for (const { part, far } of from) {
    if (far === low.circuit.id) {
      bridges.push({ resistors: [part], ohm: known(part) });
      continue;
    }
    // Split in two halves with a capacitor in the middle: one terminator all the same.
    const second = to.get(far);
    if (!second || second === part || context.grounds.isLive(context.points.circuits[far]!)) continue;
    const [a, b] = [known(part), known(second)];
    bridges.push({ resistors: [part, second], ohm: a === null || b === null ? null : a + b });
  }
  return bridges;
}

function known(part: Resistor): number | null {
  return part.resistance_ohm === "unknown" ? null : part.resistance_ohm;
}

/** The resistors that touch a circuit, each with the circuit at its far end. */
function resistorsAt(
  context: Context,
  circuit: PointCircuit,
): readonly { readonly part: Resistor; readonly far: number }[] {
  return circuit.points.flatMap(({ part, contact }) => {
    if (part.kind !== "resistor") return [];
    const far = context.traced.circuitOf(contactKey(part.id, 3 - contact.number))!.id;
    return far === circuit.circuit.id ? [] : [{ part, far }];
  });
}

/** What holds a data or key lead at battery volts, or at ground, without a resistor in between. */
export function heldBy(context: Context, point: Point, to: "volts" | "ground"): readonly Point[] {
  return to === "volts"
    ? raises(context, context.circuitOf(point), point)
    : lowers(context, context.circuitOf(point));
}
