import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Behind a panel there may be a fuel tank, a brake line, an airbag or another loom. Who drills without looking finds out with the drill.",
    "Use the holes that are there. Where a new one is needed, look at the other side first, set a depth stop, and keep to what the vehicle's maker says of drilling.",
  ],
  trips: () => loom({ drilled: "blind" }),
  quiet: () => loom({ drilled: "looked-behind", passes: [{ what: "floor", protection: "grommet" }] }),
  quietBecause: "Somebody has looked behind, and the hole has its grommet.",
});
