import type { Harness, Run, RunId, Wire, WireId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { leastBendRadius } from "../bundle/bend-radius.ts";
import { type BundleDiameter, bundleDiameter } from "../bundle/bundle-diameter.ts";
import { bundleMass } from "../bundle/bundle-mass.ts";
import { type CoveringChoice, chooseCovering } from "../bundle/covering.ts";
import { chooseHeatShrink, type HeatShrink } from "../bundle/heat-shrink.ts";
import { type InsulationWall, outsideDiameter } from "../conductor/insulation.ts";
import { massPerMetre } from "../conductor/mass.ts";
import { type Figure, isKnown } from "../figure.ts";
import type { WireFacts } from "./built.ts";
import { circuitOf } from "./circuit-of.ts";

export type RunBundle = {
  readonly run: RunId;
  readonly wires: readonly WireId[];
  /** Wires whose outside no table has; they are left out of every figure. */
  readonly unknown: readonly { readonly wire: WireId; readonly why: string }[];
  /** `null` for a run that no wire follows. */
  readonly diameter: BundleDiameter | null;
  /** Of the wires in this run, over its length; `null` where the length is not stated. */
  readonly mass: Figure | null;
  readonly bendRadius: Figure | null;
  /** What goes round it, for the covering that the run has; `null` where it has none to be chosen. */
  readonly covering: CoveringChoice | null;
  /** For each hole that is to have a grommet. */
  readonly grommet: CoveringChoice | null;
  /** Sleeve that slides over the bundle and grips it; `null` where none does. */
  readonly heatShrink: HeatShrink | null;
};

/** Wires by the run that they follow, and what that makes of each run. */
export function bundlesOf(harness: Harness, traced: Pick<Traced, "wiresAt">): readonly RunBundle[] {
  const facts = circuitOf(harness, traced, { key: "off", conditions: [] }).wires;
  const byRun = new Map<RunId, Wire[]>();
  for (const wire of Object.values(harness.wires)) {
    for (const run of new Set(wire.runs)) {
      const list = byRun.get(run);
      if (list) list.push(wire);
      else byRun.set(run, [wire]);
    }
  }
  return Object.values(harness.runs).map((run) => bundleOf(run, byRun.get(run.id) ?? [], facts));
}

/** Cross-linked and silicone cable is thicker than thin wall. */
export function wallOf(insulation: Wire["insulation"]): InsulationWall {
  return insulation === "cross-linked-125" || insulation === "silicone" ? "medium" : "thin";
}

function bundleOf(run: Run, wires: readonly Wire[], facts: ReadonlyMap<WireId, WireFacts>): RunBundle {
  const diameters_mm: number[] = [];
  const shares: { grams_per_m: number; length_m: number }[] = [];
  const unknown: { wire: WireId; why: string }[] = [];
  for (const wire of wires) {
    const { area_mm2, material } = facts.get(wire.id)!;
    const outside = outsideDiameter(Math.max(area_mm2, 0.001), wallOf(wire.insulation));
    if (!isKnown(outside)) {
      unknown.push({ wire: wire.id, why: outside.unknown });
      continue;
    }
    diameters_mm.push(outside.value);
    const mass = massPerMetre(area_mm2, material, wallOf(wire.insulation));
    if (isKnown(mass) && typeof run.length_m === "number")
      shares.push({ grams_per_m: mass.value, length_m: run.length_m });
  }
  const base = { run: run.id, wires: wires.map(({ id }) => id), unknown };
  if (diameters_mm.length === 0) {
    return {
      ...base,
      diameter: null,
      mass: null,
      bendRadius: null,
      covering: null,
      grommet: null,
      heatShrink: null,
    };
  }
  const diameter = bundleDiameter(diameters_mm);
  const size_mm = diameter.reckoned.value;
  const hasGrommet = run.passes.some(({ protection }) => protection === "grommet");
  return {
    ...base,
    diameter,
    mass: typeof run.length_m === "number" ? bundleMass(shares) : null,
    bendRadius: leastBendRadius(size_mm),
    covering: coveringFor(run, size_mm),
    grommet: hasGrommet ? chooseCovering("grommet", size_mm) : null,
    heatShrink: chooseHeatShrink(size_mm, size_mm),
  };
}

function coveringFor(run: Run, size_mm: number): CoveringChoice | null {
  switch (run.covering) {
    case "split-loom":
    case "conduit":
      return chooseCovering("split-loom", size_mm);
    case "braid":
    case "heat-sleeve":
      return chooseCovering("braided-sleeve", size_mm);
    default:
      return null;
  }
}
