import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = () =>
  build()
    .part("supply", "G1")
    .part("relay", "K1", { poles: "make", suppression: "resistor" })
    .part("fuse", "F1", { rating_A: 10 })
    .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 4 })
    .path("E1.−", "XE1")
    .wire("G1.−", "XE2");

export default defineExample({
  page: [
    "A fuse protects what lies behind it. Put behind the relay, it leaves the lead from the battery, the socket and the contact with nothing that stops a short.",
    "The fuse belongs before 30, as close to the battery as can be.",
  ],
  trips: () => lamp().wire("G1.+", "K1.30").path("K1.87", "F1", "E1.+"),
  quiet: () => lamp().path("G1.+", "F1", "K1.30").wire("K1.87", "E1.+"),
  quietBecause: "The fuse stands between the battery and 30.",
});
