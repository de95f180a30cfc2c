import { defineExample } from "../example.ts";
import { radioBay } from "./parts.ts";

export default defineExample({
  page: [
    "A vehicle gives a radio two feeds: one that is always live, for its memory, and one that comes with the key. They must never meet: what ties them together keeps everything on the key's side live.",
    "It happens where somebody with no switched lead at hand twists the two together, and where a relay or a fuse holder is wired back to front. With the key out, no lead of the switched side may show volts.",
  ],
  trips: () => radioBay().path("X1.1", "XJ1", "X2.1").path("X1.2", "XJ1", "X2.2").path("X1.3", "X2.3"),
  quiet: () => radioBay().path("X1.1", "X2.1").path("X1.2", "X2.2").path("X1.3", "X2.3"),
  quietBecause: "Each feed goes to an input of its own.",
});
