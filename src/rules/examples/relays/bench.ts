import { type Build, build } from "../build.ts";

/** A vehicle's fused feeds and its ground, a switch, a relay and a work lamp that it lights; joined but for 87. */
export function lampByRelay(poles: "make" | "changeover" | "double-make" = "make"): Build {
  return build()
    .vehicle("X1", { "1": "constant-feed RD 2.5 fuse:20", "3": "ground BN 2.5" })
    .part("switch", "S1", { operatedBy: "hand" })
    .part("relay", "K1", { poles, suppression: "resistor" })
    .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 4 })
    .path("X1.1", "XJ1", "K1.30")
    .path("XJ1", "S1", "K1.86")
    .path("K1.85", "XJ2", "X1.3")
    .wire("E1.−", "XJ2");
}

/** A radio's turn-on output that drives a relay's coil. */
export function turnOnByRelay(suppression: "none" | "diode" | "resistor" | "unknown"): Build {
  return build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15", "3": "ground BN" })
    .unit("X2", { "5": "amplifier-turn-on BU/WH" })
    .part("relay", "K1", { poles: "make", suppression })
    .part("load", "E1", { type: "other", function: "amplifier-feed", current_A: 5 })
    .wire("X1.1", "K1.30")
    .path("K1.87", "E1.+")
    .path("E1.−", "XJ2", "X1.3");
}
