import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const trailer = () =>
  build()
    .vehicle(
      "X1",
      { "9": "constant-feed OG 2.5 fuse:20", "13": "ground-constant WH 2.5" },
      { shell: "ISO 11446" },
    )
    .part("supply", "G2", { name: "trailer battery", capacity_Ah: 95 })
    .part("fuse", "F1", { rating_A: 20 })
    .wire("G2.−", "X1.13");

export default defineExample({
  page: [
    "The trailer's own battery is charged through the coupling. With nothing but fuses between, the two batteries are one: what the trailer draws while it is parked is missing in the morning at the starter.",
    "A charge relay joins the two while the engine runs, and a charger does it more gently.",
  ],
  trips: () => trailer().path("X1.9", "F1", "G2.+"),
  quiet: () =>
    trailer()
      .module("A1", {
        role: "charger",
        rows: { IN: "constant-feed takes", OUT: "second-battery-feed gives", "-": "ground takes" },
      })
      .wire("X1.9", "A1.IN")
      .path("A1.OUT", "F1", "G2.+")
      .wire("A1.-", "X1.13"),
  quietBecause: "A charger stands between the two batteries and lets nothing back.",
});
