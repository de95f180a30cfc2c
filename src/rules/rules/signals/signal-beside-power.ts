import type { Polarity } from "../../../catalogue/functions.ts";
import type { RunId, Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { fullLoad } from "../../shared/full-load.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

/** What is heard in a line or seen in a picture beside it. @source a threshold of our own */
const POWER_A = 5;

export default defineRule({
  meta: {
    id: "signal-beside-power",
    group: "signals",
    severity: "weak",
    summary: "Line, picture and antenna leads do not lie along a lead of high current.",
    source:
      "FCS 1362:2010 §4.6.2.1 and p. 21: supply runs apart from entertainment leads, no parallel runs, coaxial cable above all; an audio shop asks for 18 in; 5 A and the length: ours",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const runs = Object.values(context.harness.runs);
    if (!runs.length) return;
    const inRuns = wiresByRun(context);
    const signals = signalWires(context, (polarity) => polarity !== "minus");
    if (!signals.size) return;
    // Their returns carry no more than they do: a run with nothing else in it needs no sum.
    const returns = signalWires(context, (polarity) => polarity === "minus");
    const shared = [...inRuns].filter(
      ([, wires]) =>
        wires.some(({ id }) => signals.has(id)) &&
        wires.some(({ id }) => !signals.has(id) && !returns.has(id)),
    );
    if (!shared.length) return;
    const limit = context.profile.limits.signalBesidePower_m;
    for (const group of together(beside(context, shared, signals, limit.value))) {
      yield tell(group, limit);
    }
  },
});

function wiresByRun(context: Context): ReadonlyMap<RunId, Wire[]> {
  const found = new Map<RunId, Wire[]>();
  for (const wire of Object.values(context.harness.wires)) {
    for (const run of wire.runs) {
      const list = found.get(run);
      if (list) list.push(wire);
      else found.set(run, [wire]);
    }
  }
  return found;
}

const SOUND_AND_PICTURE = new Set(["line-level", "video"]);
const ANTENNA = new Set(["antenna-signal", "gps-antenna"]);

/** Wires of circuits that carry a signal there, or back by a lead of its own; the frame is no such lead. */
function signalWires(
  context: Context,
  isWanted: (polarity: Polarity | null) => boolean,
): ReadonlySet<WireId> {
  const found = new Set<WireId>();
  for (const points of context.points.byFunction.values()) {
    const { group, id, polarity } = points[0]!.means;
    if ((!ANTENNA.has(id) && !SOUND_AND_PICTURE.has(group)) || !isWanted(polarity)) continue;
    for (const point of points) {
      const { circuit, points: others } = context.circuitOf(point);
      if (others.some(({ means }) => means.group === "feed" || means.group === "ground")) continue;
      for (const wire of circuit.wires) found.add(wire);
    }
  }
  return found;
}

/** A signal wire and a wire of high current that lie side by side. */
type Beside = { readonly signal: Wire; readonly power: Wire; length_m: number; readonly amps: number };

function beside(
  context: Context,
  shared: readonly (readonly [RunId, readonly Wire[]])[],
  signals: ReadonlySet<WireId>,
  limit_m: number,
): readonly Beside[] {
  const view = fullLoad(context);
  const pairs = new Map<string, Beside>();
  for (const [run, all] of shared) {
    const own = all.filter(({ id }) => signals.has(id));
    for (const power of all) {
      const amps = signals.has(power.id) ? 0 : Math.abs(view.amps(power.id));
      if (amps <= POWER_A) continue;
      for (const signal of own) {
        const length_m = lengthOf(context, run, signal, power);
        if (length_m === null) continue;
        const name = `${signal.id} ${power.id}`;
        const pair = pairs.get(name);
        if (pair) pair.length_m += length_m;
        else pairs.set(name, { signal, power, length_m, amps });
      }
    }
  }
  return [...pairs.values()].filter(({ length_m }) => length_m > limit_m * (1 + 1e-9));
}

/** Of the run; where it is not told, of the shorter wire, if both lie in this run alone. */
function lengthOf(context: Context, run: RunId, a: Wire, b: Wire): number | null {
  const length_m = context.harness.runs[run]?.length_m;
  if (typeof length_m === "number") return length_m;
  if (a.runs.length > 1 || b.runs.length > 1) return null;
  return a.length_m === "unknown" || b.length_m === "unknown" ? null : Math.min(a.length_m, b.length_m);
}

/** Pairs that have a wire in common make one finding. */
function together(pairs: readonly Beside[]): readonly (readonly Beside[])[] {
  const left = new Set(pairs);
  const groups: Beside[][] = [];
  for (const first of pairs) {
    if (!left.delete(first)) continue;
    const group = [first];
    for (let next = 0; next < group.length; next++) {
      for (const other of left) {
        if (other.signal !== group[next]!.signal && other.power !== group[next]!.power) continue;
        left.delete(other);
        group.push(other);
      }
    }
    groups.push(group);
  }
  return groups;
}

function tell(group: readonly Beside[], limit: { readonly value: number; readonly book: string }): Found {
  const sorted = (wires: readonly Wire[]) =>
    [...new Set(wires)].sort((a, b) => compareNames(a.designation, b.designation));
  const signals = sorted(group.map(({ signal }) => signal));
  const powers = sorted(group.map(({ power }) => power));
  const longest_m = Math.max(...group.map(({ length_m }) => length_m));
  const most_A = Math.max(...group.map(({ amps }) => amps));
  return {
    message: `${sayList(signals.map(sayWire))} ${signals.length === 1 ? "lies" : "lie"} beside ${sayList(powers.map(sayWire))}, which ${powers.length === 1 ? "carries" : "carry"} up to ${Number(most_A.toPrecision(2))} A, for ${Number(longest_m.toPrecision(3))} m; at most ${limit.value} m (${limit.book}).`,
    consequence: "What the current does is heard as whine and clicks, or rolls over the picture.",
    remedy:
      "Lay the signal down the other side of the vehicle, half a metre away where it can be, and let the two cross at right angles.",
    about: [...signals, ...powers].map(({ id }) => ({ wire: id })),
  };
}
