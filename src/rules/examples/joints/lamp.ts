import type { Splice, Wire } from "../../../graph/harness.ts";
import { type Build, build } from "../build.ts";

/** A small lamp on the vehicle's illumination lead, joined once: W1, XJ1, W2; its ground is W3. */
export function lamp(joint: Partial<Splice>, first: Partial<Wire> = {}, second: Partial<Wire> = {}): Build {
  return build()
    .vehicle("X1", { "1": "illumination GY 0.5 fuse:5", "2": "ground BN 0.5" })
    .part("load", "E1", { type: "lamp", current_A: 0.2, function: "illumination" })
    .part("splice", "XJ1", joint)
    .wire("X1.1", "XJ1", "GY", { area_mm2: 0.5, ...first })
    .wire("XJ1", "E1.+", "GY", { area_mm2: 0.5, ...second })
    .wire("E1.−", "X1.2", "BN", { area_mm2: 0.5 });
}

export const SEALED = { method: "solder-and-sleeve", cover: "adhesive-sleeve" } as const;

/** Several of these lamps from one joint; each has a ground of its own. */
export function lamps(count: number, joint: Partial<Splice>): Build {
  const built = build()
    .vehicle("X1", { "1": "illumination GY 0.5 fuse:5" })
    .part("splice", "XJ1", joint)
    .wire("X1.1", "XJ1", "GY", { area_mm2: 0.5 });
  for (let number = 1; number <= count; number++)
    built
      .part("load", `E${number}`, { type: "lamp", current_A: 0.2, function: "illumination" })
      .wire("XJ1", `E${number}.+`, "GY", { area_mm2: 0.5 })
      .wire(`E${number}.−`, `XE${number}`, "BN", { area_mm2: 0.5 });
  return built;
}

/** A constant feed of the vehicle to a unit, by way of one joint. */
export function feed(joint: Partial<Splice>, current_A = 4): Build {
  return build()
    .vehicle("X1", { "1": "constant-feed RD 2.5 fuse:20", "2": "ground BN 2.5" })
    .module("A1", { rows: { "+": `constant-feed RD 2.5 ${current_A}A`, "−": "ground BN 2.5" } })
    .part("splice", "XJ1", joint)
    .wire("X1.1", "XJ1", "RD", { area_mm2: 2.5, length_m: 0.2 })
    .wire("XJ1", "A1.+", "RD", { area_mm2: 2.5, length_m: 0.2 })
    .wire("A1.−", "X1.2", "BN", { area_mm2: 2.5, length_m: 0.4 });
}
