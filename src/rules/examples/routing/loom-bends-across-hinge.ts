import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "A loom that is bent each time a door opens breaks inside, core by core. One that lies along the hinge is only twisted a little, which it bears for years.",
    "A rubber gaiter spreads the bend over its length.",
  ],
  trips: () => loom({ hinge: "bends-across" }),
  quiet: () => loom({ hinge: "bends-across", passes: [{ what: "door pillar", protection: "gaiter" }] }),
  quietBecause: "A gaiter spreads the bend.",
});
