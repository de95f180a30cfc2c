import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Between two clips a loom sags and swings. Where it touches, it chafes.",
    "610 mm (24 in) from clip to clip are the most in aircraft and on boats, and a good habit on the road. Tape that holds it to other wires is no support.",
  ],
  trips: () => loom({ support_m: 0.9 }),
  quiet: () => loom({ support_m: 0.6 }),
  quietBecause: "600 mm is within the limit.",
});
