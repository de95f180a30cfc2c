import type { Run, Wire } from "../../../graph/harness.ts";
import { type Build, build } from "../build.ts";

type Known = Partial<Omit<Run, "id" | "designation">>;

/** A small lamp on the vehicle's illumination lead: W1 to it, W2 back, both in the run B1. */
export function loom(run: Known, wire: Partial<Wire> = {}): Build {
  return build()
    .vehicle("X1", { "1": "illumination GY 0.5 fuse:5", "2": "ground BN 0.5" })
    .part("load", "E1", { type: "lamp", current_A: 0.2, function: "illumination" })
    .wire("X1.1", "E1.+", "GY", { area_mm2: 0.5, ...wire })
    .wire("E1.−", "X1.2", "BN", { area_mm2: 0.5, ...wire })
    .run("B1", run, ["W1", "W2"]);
}

/** A work lamp on the battery, its lead W2 from fuse to lamp in the run B1. */
export function fused(run: Known, wire: Partial<Wire> = {}): Build {
  return build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 10 })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .wire("G1.+", "F1", "RD", { area_mm2: 2.5, length_m: 0.15 })
    .wire("F1", "E1.+", "RD", { area_mm2: 2.5, ...wire })
    .path("E1.−", "XE1")
    .path("G1.−", "XE2")
    .run("B1", run, ["W2"]);
}
