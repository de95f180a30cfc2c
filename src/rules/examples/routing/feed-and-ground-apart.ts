import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (back: "B1" | "B2") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 2.5 fuse:15", "2": "ground BN 2.5" })
    .module("A1", { rows: { "+": "constant-feed RD 2.5 2A", "−": "ground BN 2.5" } })
    .wire("X1.1", "A1.+", "RD", { area_mm2: 2.5 })
    .wire("A1.−", "X1.2", "BN", { area_mm2: 2.5 })
    .run("B1", { length_m: 3 }, back === "B1" ? ["W1", "W2"] : ["W1"])
    .run("B2", { length_m: 3 }, back === "B2" ? ["W2"] : []);

export default defineExample({
  page: [
    "Current that goes out by one way and comes back by another makes a loop, and a loop is an aerial: it picks up the alternator's whine and sends out the unit's own noise.",
    "Lay feed and ground side by side. A ground that goes straight to a stud close by is no loop to speak of, and the rule lets it pass.",
  ],
  trips: () => unit("B2"),
  quiet: () => unit("B1"),
  quietBecause: "Both leads lie in the same run.",
});
