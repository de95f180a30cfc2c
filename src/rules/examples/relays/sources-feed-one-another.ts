import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD fuse:10",
      "2": "interior-lamp gives GY fuse:5",
      "3": "ground BN",
    })
    .part("switch", "S1", { operatedBy: "hand" })
    .part("load", "E1", { type: "lamp", function: "interior-lamp", current_A: 0.8 })
    .wire("E1.−", "X1.3");
const diodes = () => lamp().part("diode", "V1", { rating_A: 3 }).part("diode", "V2", { rating_A: 3 });

export default defineExample({
  page: [
    "Two things may light one lamp: the vehicle and a switch of your own. Joined in plain copper, the switch also feeds back into the vehicle's own lead, and whatever hangs there comes on.",
    "A diode for each source lets both feed the lamp and neither feed the other.",
  ],
  trips: () => lamp().path("X1.2", "XJ1", "E1.+").path("X1.1", "S1", "XJ1"),
  quiet: () => diodes().path("X1.2", "V1", "XJ1", "E1.+").path("X1.1", "S1", "V2", "XJ1"),
  quietBecause: "Each source reaches the lamp through a diode of its own.",
});
