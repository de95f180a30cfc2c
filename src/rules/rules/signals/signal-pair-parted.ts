import { partnerOf } from "../../../catalogue/functions.ts";
import type { Point, PointCircuit } from "../../../electrical/points.ts";
import type { Cable, RunId, Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { byName, compareNames, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "signal-pair-parted",
    group: "signals",
    severity: "weak",
    summary: "A signal and its return lie in one cable and in one run.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "cables", "runs"],
    fixable: false,
  },
  *check(context) {
    const { cables, runs } = context.harness;
    if (!Object.keys(cables).length && !Object.keys(runs).length) return;
    const inCables = cablesByWire(context);
    const told = new Set<string>();
    for (const points of context.points.byFunction.values()) {
      const { group, polarity } = points[0]!.means;
      if ((group !== "line-level" && group !== "video") || polarity !== "plus") continue;
      for (const signal of [...points].sort(byName)) {
        const back = returnOf(context, signal);
        if (!back) continue;
        const [there, home] = [context.circuitOf(signal), context.circuitOf(back)];
        const name = `${there.circuit.id} ${home.circuit.id}`;
        if (there === home || told.has(name) || !joinSameBoxes(there, home)) continue;
        const parted = howParted(context, inCables, there, home);
        if (!parted) continue;
        told.add(name);
        yield tell(context, signal, back, parted);
      }
    }
  },
});

function cablesByWire(context: Context): ReadonlyMap<WireId, Cable> {
  const found = new Map<WireId, Cable>();
  for (const cable of Object.values(context.harness.cables))
    for (const id of cable.shield === null ? cable.wires : [...cable.wires, cable.shield])
      found.set(id, cable);
  return found;
}

/** The other contact of the pair: on the same connector where there is one. */
function returnOf(context: Context, signal: Point): Point | undefined {
  const partner = partnerOf(signal.means.id);
  if (partner === null || signal.unit === null) return undefined;
  const own = (context.points.byUnit.get(signal.unit) ?? [])
    .filter(({ means }) => means.id === partner)
    .sort(byName);
  return own.find(({ part }) => part === signal.part) ?? own[0];
}

/** Both go from one box to another, by wires. */
function joinSameBoxes(there: PointCircuit, home: PointCircuit): boolean {
  if (!there.circuit.wires.length || !home.circuit.wires.length) return false;
  const boxes = new Set(there.points.map(({ unit }) => unit));
  return (
    new Set(home.points.flatMap(({ unit }) => (unit !== null && boxes.has(unit) ? [unit] : []))).size > 1
  );
}

type Parted = { readonly words: string; readonly wires: readonly Wire[] };

function howParted(
  context: Context,
  inCables: ReadonlyMap<WireId, Cable>,
  there: PointCircuit,
  home: PointCircuit,
): Parted | null {
  const wiresOf = ({ circuit }: PointCircuit) =>
    circuit.wires.flatMap((id) => context.harness.wires[id] ?? []);
  const [out, back] = [wiresOf(there), wiresOf(home)];
  const cables = (wires: readonly Wire[]) => new Set(wires.flatMap(({ id }) => inCables.get(id) ?? []));
  const [own, other] = [cables(out), cables(back)];
  // A coaxial or shielded cable of which the shield is not drawn as a wire has its return in it.
  const hidden = [...own, ...other].some(
    ({ kind, shield }) => shield === null && (kind === "coax" || kind === "shielded"),
  );
  if ((own.size || other.size) && !hidden && ![...own].some((cable) => other.has(cable))) {
    const name = (set: ReadonlySet<Cable>) =>
      set.size
        ? `in ${sayList([...set].map(({ designation }) => designation).sort(compareNames))}`
        : "in a wire of its own";
    return { words: `lies ${name(own)}, and its return ${name(other)}`, wires: [...out, ...back] };
  }
  const runs = (wires: readonly Wire[]) => new Set<RunId>(wires.flatMap((wire) => wire.runs));
  const [ownRuns, otherRuns] = [runs(out), runs(back)];
  if (!ownRuns.size || !otherRuns.size || [...ownRuns].some((run) => otherRuns.has(run))) return null;
  const name = (set: ReadonlySet<RunId>) =>
    sayList([...set].map((id) => context.harness.runs[id]?.designation ?? id).sort(compareNames));
  return {
    words: `lies in run ${name(ownRuns)}, and its return in run ${name(otherRuns)}`,
    wires: [...out, ...back],
  };
}

function tell(context: Context, signal: Point, back: Point, { words, wires }: Parted): Found {
  return {
    message: `${sayPoint(context, signal)} ${words}.`,
    consequence:
      "The two make a loop as wide as they lie apart, and every lead beside it hums and clicks into the signal.",
    remedy: "Lay the signal and its return side by side, in one cable where there is one for them.",
    about: [
      signal.at,
      back.at,
      ...[...wires]
        .sort((a, b) => compareNames(a.designation, b.designation))
        .map(({ id }) => ({ wire: id })),
    ],
  };
}
