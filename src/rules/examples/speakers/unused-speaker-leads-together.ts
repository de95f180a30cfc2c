import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const spare = () =>
  build().module("A1", {
    name: "radio receiver",
    role: "receiver",
    outputs: "bridged",
    rows: { "1": "speaker-rear-left-plus GN spare", "2": "speaker-rear-left-minus GN/BK spare" },
  });

export default defineExample({
  page: [
    "A channel that drives nothing may stay open, but its two leads must not meet. Put away as a pair, stripped ends together under one cap, they are a short across the output.",
    "Many receivers shut down all channels when one is shorted, and the fault is then looked for at the speakers that are in use.",
  ],
  trips: () => spare().path("A1.1", "XJ1", "XC1").wire("A1.2", "XJ1"),
  quiet: () => spare().path("A1.1", "XC1").path("A1.2", "XC2"),
  quietBecause: "Each of the two leads has a cap of its own.",
});
