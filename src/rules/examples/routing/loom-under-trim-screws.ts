import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "The trim comes off for the job and goes back on afterwards, and its screws find the loom that was laid behind it.",
    "Lay the loom clear of the holes, and watch it while the panel goes back.",
  ],
  trips: () => loom({ near: ["trim-screws"] }),
  quiet: () => loom({ zone: "cabin", support_m: 0.3 }),
  quietBecause: "The loom is clipped, and no screw comes near it.",
});
