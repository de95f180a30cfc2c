import { defineExample } from "../example.ts";
import { battery, WORK_LAMP } from "./parts.ts";

const alarm = () =>
  battery()
    .part("fuse", "F1", { rating_A: 5 })
    .module("A1", {
      name: "alarm",
      rows: { "1": "constant-feed 0.1A", "2": "ground", "3": "alarm-siren gives" },
    })
    .part("load", "E1", { type: "sounder", function: "alarm-siren", current_A: 0.5 })
    .part("load", "E2", { ...WORK_LAMP, current_A: 2 })
    .path("G1.+", "F1", "XJ1", "A1.1")
    .path("A1.2", "XE2")
    .path("A1.3", "E1.+")
    .path("E1.−", "XE3")
    .path("E2.−", "XE4");

export default defineExample({
  page: [
    "An alarm or a tracker is worth as much as its feed. With a lamp or a radio behind the same fuse, one bad bulb holder silences it, and whoever wants it silent knows where to begin.",
    "Give it a branch and a fuse of its own, straight from the supply. Its own siren and lamp may hang on it.",
  ],
  trips: () => alarm().path("XJ1", "S1", "E2.+"),
  quiet: () => alarm().part("fuse", "F2", { rating_A: 10 }).path("G1.+", "F2", "S1", "E2.+"),
  quietBecause: "The lamp has a fuse of its own; only the alarm hangs on the alarm's.",
});
