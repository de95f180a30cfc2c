import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

export default defineExample({
  page: [
    "A joint in which no wire ends was drawn and forgotten, or its leads were taken away.",
    "It is counted in the parts list, and whoever builds the harness looks for its place.",
  ],
  trips: () => lamp(SEALED).part("splice", "XJ2"),
  quiet: () => lamp(SEALED),
  quietBecause: "Two wires end in the joint.",
});
