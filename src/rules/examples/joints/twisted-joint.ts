import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

export default defineExample({
  page: [
    "Bare ends twisted together hold on the bench and let go on the road: heat lets the copper creep, and shaking does the rest. Tape round the twist hides it and holds nothing.",
    "A twist is a good start of a soldered joint. It is no joint by itself.",
  ],
  trips: () => lamp({ method: "twisted", cover: "tape" }),
  quiet: () => lamp(SEALED),
  quietBecause: "The joint is soldered, and a sleeve holds it.",
});
