import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "A wire that follows a run of 2 m cannot be 1.8 m long. Either the wire was measured as the crow flies, or the run is wrong.",
    "A tight lead pulls its contact out of the housing. Leave enough to fit each terminal twice.",
  ],
  trips: () => loom({ length_m: 2 }, { length_m: 1.8 }),
  quiet: () => loom({ length_m: 2 }, { length_m: 2.1 }),
  quietBecause: "The wire is as long as its run and a little more.",
});
