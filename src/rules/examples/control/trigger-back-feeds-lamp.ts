import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const bare = () =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH 0.75 fuse:10", "2": "switched-feed RD 0.75 fuse:5" })
    .unit("X2", { "3": "camera-trigger GN 0.5" })
    .part("switch", "S1", { operatedBy: "hand", name: "camera" });
const camera = () => bare().part("diode", "V1", { rating_A: 1 }).part("diode", "V2", { rating_A: 1 });

export default defineExample({
  page: [
    "A button that calls up the camera at will sends 12 V into the trigger. If the trigger is joined to the reversing lamp's lead in plain copper, the same 12 V light the white lamps behind, on the road.",
    "A diode lets the reversing lead reach the trigger and nothing come back. Its stripe looks to the trigger.",
  ],
  trips: () => bare().wire("X1.1", "X2.3").path("X1.2", "S1", "X2.3"),
  quiet: () =>
    camera().path("X1.1", "V1.A").wire("V1.K", "X2.3").path("X1.2", "S1", "V2.A").wire("V2.K", "X2.3"),
  quietBecause:
    "A diode each keeps the button's volts away from the lamp, and the lamp's away from the button.",
});
