import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const bridged = (impedance_ohm: number): Build =>
  build()
    .module("A1", {
      name: "amplifier",
      role: "amplifier",
      leastLoad_ohm: 4,
      rows: {
        "1+": "speaker-rear-left-plus gives",
        "1-": "speaker-rear-left-minus gives",
        "2+": "speaker-rear-right-plus gives",
        "2-": "speaker-rear-right-minus gives",
      },
    })
    .part("speaker", "P1", { position: "subwoofer", type: "woofer", impedance_ohm })
    .wire("A1.1+", "P1.+", "WH")
    .wire("A1.2-", "P1.−", "BK");

export default defineExample({
  page: [
    "Two channels are bridged where a speaker hangs from the plus of one to the minus of the other. They push and pull it together, and each of them sees only half of its impedance.",
    "2 Ω on the bridge is 1 Ω for each channel. Amplifiers name a least load for bridged use; it is mostly twice that of a single channel.",
  ],
  trips: () => bridged(2),
  quiet: () => bridged(4),
  quietBecause: "4 Ω between the two channels is what the amplifier's plate allows.",
});
