import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const sound = () =>
  build()
    .module("A1", {
      role: "receiver",
      rows: { ANT: "antenna-power BU 0.5 gives 0.3A", REM: "amplifier-turn-on BU/WH 0.5 gives 0.3A" },
    })
    .module("A2", { role: "amplifier", rows: { REM: "amplifier-turn-on takes 0.5 0.02A" } });

export default defineExample({
  page: [
    "A receiver has two leads that say that it is on. One raises the antenna and, in many units, is live only while the tuner plays; the other wakes amplifiers whatever plays. Blue and blue with a white tracer are common, but the chart decides.",
    "An amplifier on the antenna's lead works in the workshop, with the radio on, and falls silent with the first record.",
  ],
  trips: () => sound().wire("A1.ANT", "A2.REM").path("A1.REM", "XC1"),
  quiet: () => sound().wire("A1.REM", "A2.REM").path("A1.ANT", "XC1"),
  quietBecause: "The amplifier hangs on the amplifier turn-on.",
});
