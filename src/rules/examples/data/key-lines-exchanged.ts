import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "5": "steering-key-1 GY/YE gives", "6": "steering-key-2 GY/RD gives" })
    .unit("X2", { "5": "steering-key-1 BN takes", "6": "steering-key-2 BN/YE takes" });

export default defineExample({
  page: [
    "Two lines of keys divide the buttons between them. Exchanged, a radio that has been taught finds every button on the wrong line.",
    "A single line may go to either input, for the radio is taught its buttons anyway.",
  ],
  trips: () => boxes().wire("X1.5", "X2.6").wire("X1.6", "X2.5"),
  quiet: () => boxes().wire("X1.5", "X2.5").wire("X1.6", "X2.6"),
  quietBecause: "Each line goes to the input of its number.",
});
