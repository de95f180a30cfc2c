import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "Whether to solder or to crimp is an old quarrel, and books disagree. One asks for solder wherever a joint goes into an existing loom; those for boats do not trust solder alone.",
    "Choose in the settings what this harness follows. Where both are allowed, this rule says nothing.",
  ],
  trips: () =>
    lamp({ method: "crimped-butt", barrel: "red", cover: "adhesive-sleeve" }).rules({
      joints: "solder-only",
    }),
  quiet: () => lamp({ method: "crimped-butt", barrel: "red", cover: "adhesive-sleeve" }),
  quietBecause: "The settings of this harness allow both.",
});
