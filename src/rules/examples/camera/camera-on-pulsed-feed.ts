import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const van = () =>
  build()
    .vehicle("X1", {
      "1": "reverse GN/WH 0.75 fuse:10 pulsed",
      "2": "ground BN 1.5",
      "3": "switched-feed RD/BK 0.75 fuse:10 spare",
    })
    .module("A1", {
      name: "rear camera",
      role: "camera",
      rows: { "1": "camera-power RD 0.5 0.2A", "2": "ground BK 0.5" },
    })
    .wire("X1.2", "A1.2");

export default defineExample({
  page: [
    "In newer vehicles a controller switches the lamps by electronics. Once the engine charges it cuts the volts into pulses, so that the lamps do not get more than 12 V, and it counts what its lamps draw.",
    "A camera on such a lead flickers, or works with the engine stopped and not with it running. A meter shows it: in reverse, 12 V with the engine off and some 8 to 11 V with it on.",
  ],
  trips: () => van().wire("X1.1", "A1.1").path("X1.3", "XC1"),
  quiet: () => van().path("X1.3", "F1", "A1.1").path("X1.1", "XC1").change("F1", { rating_A: 1 }),
  quietBecause:
    "The camera is fed whenever the key is on, behind a fuse of its own, and the lamp's lead is left alone.",
});
