import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plug = () =>
  build()
    .vehicle("X1", { "1": "mute BN", "2": "not-used" })
    .unit("X2", { "1": "not-used", "2": "mute takes" });

export default defineExample({
  page: [
    "Charts mark cavities as not used, not connected or reserved. A lead that ends in one does nothing, or drives a contact that was meant for the factory's tests.",
    "The usual cause is a chart that was read from the wrong side: a housing seen from its mating face is the mirror image of the same housing seen from the wires.",
  ],
  trips: () => plug().wire("X1.1", "X2.1", "BN"),
  quiet: () => plug().wire("X1.1", "X2.2", "BN"),
  quietBecause: "The lead goes to the mute input, and the unused cavities are empty.",
});
