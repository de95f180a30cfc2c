import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const screen = () =>
  build()
    .vehicle("X1", { "1": "stop-lamp RD/BK 0.75 fuse:10", "2": "parking-brake GN/WH 0.5" })
    .unit("X2", { "9": "parking-brake GN 0.5" });

export default defineExample({
  page: [
    "A screen's parking-brake lead looks for the switch of the parking brake, which is grounded while the brake is set. The word brake on a chart also names the foot brake, whose lamp lead stands at 12 V.",
    "Joined to the foot brake's lead, the screen stays locked, and its input may feed the stop lamps. Follow the screen maker's instructions.",
  ],
  trips: () => screen().wire("X1.1", "X2.9").path("X1.2", "XC1"),
  quiet: () => screen().wire("X1.2", "X2.9").path("X1.1", "XC1"),
  quietBecause: "This lead comes from the parking-brake switch.",
});
