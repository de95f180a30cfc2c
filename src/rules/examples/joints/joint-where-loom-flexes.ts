import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

export default defineExample({
  page: [
    "Where a door or a lid moves the loom, the strands bend a little each time. A joint does not bend: all the bending happens at its edge, and there the strands break.",
    "Put joints where the loom lies still, and tie them on both sides.",
  ],
  trips: () => lamp(SEALED).run("B1", { hinge: "twists-along" }, ["W1", "W2"]),
  quiet: () =>
    lamp(SEALED).run("B1", { hinge: "none" }, ["W1", "W2"]).run("B2", { hinge: "twists-along" }, ["W2"]),
  quietBecause: "The joint lies in B1, which keeps still; only B2 crosses the hinge.",
});
