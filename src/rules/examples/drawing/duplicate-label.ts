import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const two = (first: string, second: string) =>
  build()
    .vehicle("X1", { "1": "mute BN", "2": "illumination GY" })
    .unit("X2", { "1": "mute BN", "2": "illumination GY" })
    .wire("X1.1", "X2.1", "BN", { label: first })
    .wire("X1.2", "X2.2", "GY", { label: second });

export default defineExample({
  page: [
    "A label is read years later by somebody who has the drawing in one hand and the loom in the other. Two wires that say the same send them to the wrong one.",
    "What is printed on a wire is its label or, where it has none, its designation: a label that is another wire's designation is the same trap.",
  ],
  trips: () => two("radio", "radio"),
  quiet: () => two("radio mute", "radio dimmer"),
  quietBecause: "Each wire says what it alone is.",
});
