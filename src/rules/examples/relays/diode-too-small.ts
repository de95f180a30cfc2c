import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const pump = (rating_A: number) =>
  build()
    .vehicle("X1", { "1": "ignition-feed BK fuse:10", "3": "ground BN" })
    .part("diode", "V1", { rating_A })
    .part("load", "E1", { type: "motor", function: "water-pump", current_A: 4 })
    .path("X1.1", "V1", "E1.+")
    .wire("E1.−", "X1.3");

export default defineExample({
  page: [
    "A diode loses about 0.8 V and turns it into heat: 3 W at 4 A, in a thing as small as a grain of rice. Choose it for twice the current, or switch by a relay.",
  ],
  trips: () => pump(1),
  quiet: () => pump(10),
  quietBecause: "This diode is rated for more than twice what the pump draws.",
});
