import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:5", "4": "lin" })
    .unit("X2", { "1": "constant-feed RD", "3": "ground BK", "4": "lin VT" })
    .wire("X2.3", "XE1");

export default defineExample({
  page: [
    "Data leads live on a few volts. Joined to a feed, the small transistors behind them burn, and not only in the new module: every control unit on that bus has the battery on its input.",
    "Prove with a meter, before a module is plugged in, that its data leads carry no battery volts.",
  ],
  trips: () => boxes().path("X1.1", "XJ1", "X2.1").wire("XJ1.2", "X2.4"),
  quiet: () =>
    boxes()
      .path("X1.1", "XJ1", "X2.1")
      .wire("X1.4", "X2.4")
      .part("resistor", "R1", { resistance_ohm: 1000 })
      .path("XJ1", "R1", "X2.4"),
  quietBecause: "A pull-up of 1 kΩ lets a few milliamperes through: a LIN line is made that way.",
});
