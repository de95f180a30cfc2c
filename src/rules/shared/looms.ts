import type { Run, RunId, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import type { About } from "../rule.ts";
import { compareNames, sayList, sayWire } from "../words.ts";

/** A stretch of the loom with the wires that lie in it, by designation. */
export type Loom = { readonly run: Run; readonly wires: readonly Wire[] };

const remembered = new WeakMap<Context, ReadonlyMap<RunId, readonly Wire[]>>();

function wiresByRun(context: Context): ReadonlyMap<RunId, readonly Wire[]> {
  const known = remembered.get(context);
  if (known) return known;
  const byRun = new Map<RunId, Wire[]>();
  for (const wire of Object.values(context.harness.wires)) {
    if (!wire.runs.length) continue;
    for (const id of new Set(wire.runs)) {
      const list = byRun.get(id);
      if (list) list.push(wire);
      else byRun.set(id, [wire]);
    }
  }
  remembered.set(context, byRun);
  return byRun;
}

/** The stretches that a test picks, by designation, each with its wires; one that holds none is no loom yet. */
export function loomsWhere(context: Context, test: (run: Run) => boolean): readonly Loom[] {
  const picked = Object.values(context.harness.runs).filter(test);
  if (!picked.length) return [];
  const byRun = wiresByRun(context);
  return picked
    .flatMap((run): Loom[] => {
      const wires = byRun.get(run.id);
      if (!wires) return [];
      return [{ run, wires: [...wires].sort((a, b) => compareNames(a.designation, b.designation)) }];
    })
    .sort((a, b) => compareNames(a.run.designation, b.run.designation));
}

/**
 * Stretches that hold the very same wires, together: what is told of wires would else be told twice in one breath,
 * and a waiver could not tell the two apart.
 */
export function together<L extends Loom>(looms: readonly L[]): readonly (readonly L[])[] {
  const groups = new Map<string, L[]>();
  for (const loom of looms) {
    const key = loom.wires
      .map(({ id }) => id)
      .sort()
      .join(" ");
    const group = groups.get(key);
    if (group) group.push(loom);
    else groups.set(key, [loom]);
  }
  return [...groups.values()];
}

/** "B1 (engine bay to tail lift)"; the designation alone where nobody has said from where to where. */
export function sayRun({ designation, from, to }: Run): string {
  return from && to ? `${designation} (${from} to ${to})` : designation;
}

export function sayRuns(looms: readonly Loom[]): string {
  return sayList(looms.map(({ run }) => sayRun(run)));
}

/** All its wires, the ones to look at first before the others. */
export function aboutWires(wires: readonly Wire[], first: readonly Wire[] = []): readonly About[] {
  return [...new Set([...first, ...wires])].map(({ id }) => ({ wire: id }));
}

/** Its wires that are live from a source with no fuse on the way. */
export function unfusedIn(context: Context, wires: readonly Wire[]): readonly Wire[] {
  return wires.filter((wire) => {
    const circuit = context.traced.circuitOfWire(wire.id);
    return (
      circuit !== undefined &&
      context.stretches
        .at(circuit.id)
        .some(({ guard, source }) => guard.kind === "none" && source.means.group === "feed")
    );
  });
}

/** Its wires that are live with the key off. */
export function alwaysLiveIn(context: Context, wires: readonly Wire[]): readonly Wire[] {
  return wires.filter((wire) => {
    const circuit = context.traced.circuitOfWire(wire.id);
    return (
      circuit !== undefined && context.feeds.liveAt(context.points.circuits[circuit.id]!).includes("off")
    );
  });
}

/** " W2 (red) in it has no fuse." or nothing. */
export function sayUnfused(wires: readonly Wire[]): string {
  if (!wires.length) return "";
  return ` ${sayList(wires.map(sayWire))} in it ${wires.length === 1 ? "has" : "have"} no fuse.`;
}
