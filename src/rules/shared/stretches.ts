import { isGround } from "../../catalogue/functions.ts";
import type { Point } from "../../electrical/points.ts";
import type { Fuse } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";

/** What opens when a stretch of wiring is shorted. */
export type Guard =
  | { readonly kind: "fuse"; readonly fuse: Fuse }
  /** A fuse that stands behind the source's own cavity. */
  | { readonly kind: "behind"; readonly rating_A: number }
  | { readonly kind: "none" }
  /** The chart does not say, or the source is an output that limits itself. */
  | { readonly kind: "unknown" };

/** The circuits that current passes from a guard on, before it meets the next fuse. */
export type Stretch = {
  readonly guard: Guard;
  readonly source: Point;
  /** The circuit that it begins in; the others are reached through switches, relay contacts, diodes, resistors. */
  readonly start: number;
  readonly circuits: readonly number[];
  /** The stretch that its fuse is fed from; `null` where it begins at the source itself. */
  readonly above: Stretch | null;
};

export type Stretches = {
  readonly all: readonly Stretch[];
  /** The stretches that a circuit, by its id, belongs to. */
  at(circuit: number): readonly Stretch[];
};

/** More guards than this over one circuit tell a reader nothing new, and would make the walk quadratic. */
const MOST_AT_ONE = 6;

/**
 * Every stretch of wiring that one fuse, or none, protects: from each source outwards, fuse by fuse. A fuse is
 * passed away from the source only. Grows in step with the harness.
 */
export function stretchesOf(context: Context): Stretches {
  const all: Stretch[] = [];
  const at: Stretch[][] = [];
  /** How many fuses stand between a circuit and the nearest source. */
  const level = new Map<number, number>();
  let wave: { guard: Guard; source: Point; start: number; above: Stretch | null }[] = [];
  for (const source of context.points.all.filter(isSource).sort(byName)) {
    const start = context.circuitOf(source).circuit.id;
    wave.push({ guard: guardOf(source), source, start, above: null });
  }
  for (let depth = 0; wave.length; depth++) {
    const made = wave.map((one) => spread(context, one, depth, level));
    wave = [];
    for (const stretch of made) {
      if (!stretch.circuits.length) continue;
      all.push(stretch);
      for (const circuit of stretch.circuits) {
        at[circuit] ??= [];
        at[circuit].push(stretch);
      }
    }
    const begun = new Set<string>();
    for (const stretch of made) {
      for (const from of stretch.circuits) {
        for (const { to, gate } of context.ways[from] ?? []) {
          if (gate.kind !== "fuse" || level.has(to) || begun.has(`${gate.fuse} ${to}`)) continue;
          const fuse = context.harness.parts[gate.fuse];
          if (fuse?.kind !== "fuse") continue;
          begun.add(`${gate.fuse} ${to}`);
          wave.push({ guard: { kind: "fuse", fuse }, source: stretch.source, start: to, above: stretch });
        }
      }
    }
  }
  return { all, at: (circuit) => at[circuit] ?? [] };

  function spread(
    { ways }: Context,
    one: Omit<Stretch, "circuits">,
    depth: number,
    levels: Map<number, number>,
  ): Stretch {
    const circuits: number[] = [];
    const seen = new Set<number>();
    const reach = (circuit: number) => {
      if (seen.has(circuit) || (levels.get(circuit) ?? depth) < depth) return;
      seen.add(circuit);
      if ((at[circuit]?.length ?? 0) >= MOST_AT_ONE) return;
      levels.set(circuit, depth);
      circuits.push(circuit);
    };
    reach(one.start);
    for (let next = 0; next < circuits.length; next++)
      for (const { to, gate } of ways[circuits[next]!] ?? []) if (gate.kind !== "fuse") reach(to);
    return { ...one, circuits };
  }
}

/** Gives supply voltage from outside: a battery, a cavity of the vehicle, an output of a box. */
export function isSource(point: Point): boolean {
  if (point.direction !== "gives" || isGround(point.means.id)) return false;
  return point.means.liveIn.length > 0 || point.means.active === "supply";
}

function guardOf(source: Point): Guard {
  if (source.part.kind === "supply") return { kind: "none" };
  const behind = source.contact.cavity?.fuse_A;
  if (typeof behind === "number") return { kind: "behind", rating_A: behind };
  return behind === null ? { kind: "none" } : { kind: "unknown" };
}

/** What a stretch's guard is rated at, amperes; `null` where nothing says so. */
export function ratingOf(guard: Guard): number | null {
  if (guard.kind === "behind") return guard.rating_A;
  return guard.kind === "fuse" && guard.fuse.rating_A !== "unknown" ? guard.fuse.rating_A : null;
}

/** "F1 (15 A)", "the 15 A fuse behind X1.A4". */
export function sayGuard({ guard, source }: Stretch, nameOf: (point: Point) => string): string {
  if (guard.kind === "fuse")
    return guard.fuse.rating_A === "unknown"
      ? guard.fuse.designation
      : `${guard.fuse.designation} (${guard.fuse.rating_A} A)`;
  return guard.kind === "behind" ? `the ${guard.rating_A} A fuse behind ${nameOf(source)}` : "no fuse";
}
