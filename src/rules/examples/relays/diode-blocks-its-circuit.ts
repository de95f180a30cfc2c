import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const camera = () =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH fuse:10" })
    .unit("X2", { "3": "camera-trigger GN" })
    .part("diode", "V1", { rating_A: 1 });

export default defineExample({
  page: [
    "A diode lets current through towards its stripe and not back. Turned round, it parts what it was to join: the trigger never comes.",
    "On the part the stripe is the cathode, where current leaves.",
  ],
  trips: () => camera().wire("X1.1", "V1.K").wire("V1.A", "X2.3"),
  quiet: () => camera().wire("X1.1", "V1.A").wire("V1.K", "X2.3"),
  quietBecause: "The stripe looks to what the diode feeds.",
});
