import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const car = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("switch", "S1", { operatedBy: "isolator", name: "master switch" })
    .path("XE1", "S1", "G1.−")
    .part("fuse", "F1", { rating_A: 5 })
    .module("A1", {
      role: "receiver",
      name: "radio receiver",
      rows: { "1": "constant-feed 0.1A", "2": "ground", "3": "ground" },
    })
    .path("G1.+", "F1", "A1.1")
    .path("A1.2", "XE2");

export default defineExample({
  page: [
    "On some vehicles the master switch lies between the battery's minus and the frame. If one ground of a unit goes to the battery's post and another to the frame, the unit itself joins the two.",
    "With the switch open, everything in the vehicle comes back through that unit; and when somebody turns the key, the starter's current tries to go through a thin lead. All grounds go to the frame's side.",
  ],
  trips: () => car().path("A1.3", "G1.−"),
  quiet: () => car().path("A1.3", "XE3"),
  quietBecause:
    "Both grounds of the unit are at the frame; only its memory feed comes from before the switch.",
});
