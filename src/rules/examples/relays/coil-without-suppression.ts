import { defineExample } from "../example.ts";
import { turnOnByRelay } from "./bench.ts";

export default defineExample({
  page: [
    "A coil that is switched off makes a spike of hundreds of volts. A switch spits a spark and bears it; the transistor in a radio or a module does not bear it for long.",
    "A diode across the coil, its stripe at the plus end, takes the spike up; so does a resistor inside the relay.",
  ],
  trips: () => turnOnByRelay("none").wire("X2.5", "K1.86").wire("K1.85", "XJ2"),
  quiet: () =>
    turnOnByRelay("none")
      .part("diode", "V1")
      .path("X2.5", "XJ3", "K1.86")
      .path("K1.85", "XJ4", "XJ2")
      .path("XJ4", "V1", "XJ3"),
  quietBecause: "V1 lies across the coil with its stripe at the plus end.",
});
