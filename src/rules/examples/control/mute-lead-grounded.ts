import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const receiver = () => build().unit("X2", { "2": "mute BN 0.5" });

export default defineExample({
  page: [
    "A mute lead is pulled to ground by a telephone or a navigation unit while it speaks. At rest it is open.",
    "Tied to ground, it keeps the receiver silent for ever, and one looks for the fault in the loudspeakers. Measure the lead against the frame: at rest there is no way.",
  ],
  trips: () => receiver().path("X2.2", "XE1"),
  quiet: () => receiver().part("switch", "S1", { operatedBy: "hand" }).path("X2.2", "S1", "XE1"),
  quietBecause: "A switch stands between the lead and the frame, and somebody opens it again.",
});
