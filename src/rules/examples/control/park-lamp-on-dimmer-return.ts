import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const dash = () =>
  build().vehicle("X1", {
    "1": "illumination GY/RD 0.5 fuse:5",
    "2": "dimmer-return GY/BN 0.5",
  });

export default defineExample({
  page: [
    "Many dashboards have two lamp leads behind the radio: the feed of the parking lamps, and the return of the dash lamps that the dimmer grounds, more or less.",
    "Tied together they are a short as soon as the lights are on. The dimmer hides it until somebody turns it up: then the fuse blows, and dash and tail lamps go dark. Measure each lead with the lights on and off before it is joined.",
  ],
  trips: () => dash().wire("X1.1", "X1.2"),
  quiet: () => dash().unit("X2", { "4": "illumination OG/WH 0.5" }).wire("X1.1", "X2.4").path("X1.2", "XC1"),
  quietBecause: "The feed goes to the screen, and the dimmer's lead is capped.",
});
