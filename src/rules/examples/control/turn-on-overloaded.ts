import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const source = () =>
  build().module("A1", { role: "receiver", rows: { REM: "amplifier-turn-on BU/WH 0.5 gives 0.3A" } });

export default defineExample({
  page: [
    "The turn-on output of a receiver is a small transistor, made to tell amplifiers that it is time. It gives a few tenths of an ampere.",
    "Amplifiers take very little of it, and several may hang on one. Fans, lamps and relay coils take more: a coil about 0.15 A, a fan a whole ampere. One relay on the output, with a diode across its coil, feeds all the rest.",
  ],
  trips: () =>
    source()
      .part("load", "E1", { type: "motor", function: "amplifier-turn-on", current_A: 0.8 })
      .wire("A1.REM", "E1.+")
      .part("ground", "XE1", { surface: "bare-metal" })
      .wire("E1.−", "XE1"),
  quiet: () =>
    source()
      .module("A2", { role: "amplifier", rows: { REM: "amplifier-turn-on takes 0.02A" } })
      .module("A3", { role: "amplifier", rows: { REM: "amplifier-turn-on takes 0.02A" } })
      .wire("A1.REM", "A2.REM")
      .wire("A1.REM", "A3.REM"),
  quietBecause: "Two amplifiers draw 0.04 A together.",
});
