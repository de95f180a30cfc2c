import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const spares = () =>
  build().vehicle("X1", { "1": "mute BN spare", "2": "illumination GY spare" }).wire("X1.1", "XC1", "BN");

export default defineExample({
  page: [
    "A cap that is pushed over two bare ends holds them against each other: it is a joint, and nobody drew it.",
    "If one of the two gives volts, the other takes them into a unit that never expected any.",
  ],
  trips: () => spares().wire("X1.2", "XC1", "GY"),
  quiet: () => spares().wire("X1.2", "XC2", "GY"),
  quietBecause: "Each spare has its own cap.",
});
