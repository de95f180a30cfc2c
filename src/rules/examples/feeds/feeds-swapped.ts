import { defineExample } from "../example.ts";
import { radioBay } from "./parts.ts";

export default defineExample({
  page: [
    "The classic of radio wiring: the unit plays, but forgets clock and presets each time the key is turned off. Its constant input comes with the key, and its switched input is always live.",
    "Many vehicles have the two cavities of the radio plug the other way round from the unit's loom, which is why some looms have a pair of bullet joints for crossing over. With the key out, only the constant input may show volts.",
  ],
  trips: () => radioBay().path("X1.1", "XJ1", "X2.2").path("X1.2", "XJ2", "X2.1").path("X1.3", "X2.3"),
  quiet: () => radioBay().path("X1.1", "XJ1", "X2.1").path("X1.2", "XJ2", "X2.2").path("X1.3", "X2.3"),
  quietBecause: "The constant input lies on the constant lead, whatever the colours are.",
});
