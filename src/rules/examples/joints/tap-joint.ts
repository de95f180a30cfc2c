import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "A tap is pushed over a lead and cuts through its insulation with a blade. It is quick, and it is where old looms fail: the blade cuts strands, and water gets in through the slit.",
    "Books differ: some allow taps under dry trim for signals of little current. On a constant feed, on a ground, outside or above 5 A none does, and the finding is a fault there.",
  ],
  trips: () => lamp({ method: "tap", cover: "none" }),
  quiet: () => lamp({ method: "tap", cover: "none" }).rules({ taps: "signals-only" }),
  quietBecause:
    "This harness's settings allow taps for signals, and 0.2 A of illumination under dry trim is one.",
});
