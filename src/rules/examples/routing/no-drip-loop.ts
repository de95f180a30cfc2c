import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Water runs along a wire as along a string. If the wire comes down into a plug, the water goes in with it.",
    "Let the loom hang lower than its entry: the water drips off at the lowest point. The rule asks only where it is wet: outside, in the engine bay, in a door.",
  ],
  trips: () => loom({ zone: "outside", dripLoop: "no" }),
  quiet: () => loom({ zone: "cabin", dripLoop: "no" }),
  quietBecause: "The loom lies inside the cabin, where no water runs down it.",
});
