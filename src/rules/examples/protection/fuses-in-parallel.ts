import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const pump = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 15 })
    .part("fuse", "F2", { rating_A: 15 })
    .part("load", "E1", { type: "motor", current_A: 10, function: "water-pump" })
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

export default defineExample({
  page: [
    "When a fuse keeps blowing, a second one is sometimes fitted beside it. Two fuses side by side never share the current evenly: one carries most of it and opens, then the other.",
    "What holds them both up is unknown, so neither rating protects the wire. One fuse of the right rating does.",
  ],
  trips: () => pump().path("G1.+", "F1", "XJ1", "E1.+").path("G1.+", "F2", "XJ1"),
  quiet: () =>
    pump()
      .part("load", "E2", { type: "lamp", current_A: 4, function: "work-lamp" })
      .path("E2.−", "XE3")
      .path("G1.+", "F1", "E1.+")
      .path("G1.+", "F2", "E2.+"),
  quietBecause: "Each fuse has a load of its own; only their supply side is common.",
});
