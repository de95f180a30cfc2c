import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const dash = () =>
  build()
    .vehicle("X1", { "1": "switched-feed RD 0.75 fuse:10", "2": "illumination GY/RD 0.5 fuse:5" })
    .unit("X2", { "4": "illumination OG/WH 0.5" });

export default defineExample({
  page: [
    "The illumination lead tells a screen that it is dark outside: it is live with the vehicle's lights on and dead without them.",
    "On a feed that is live by day as well, the screen stays in its night setting. Measure the lead with the lights off and on before it is joined.",
  ],
  trips: () => dash().wire("X1.1", "X2.4").path("X1.2", "XC1"),
  quiet: () => dash().wire("X1.2", "X2.4").path("X1.1", "XC1"),
  quietBecause: "This lead of the vehicle is live with the lights on only.",
});
