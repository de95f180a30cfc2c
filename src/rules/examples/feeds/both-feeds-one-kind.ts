import { defineExample } from "../example.ts";
import { radioBay } from "./parts.ts";

export default defineExample({
  page: [
    "A unit has two feed inputs so that it can sleep and still remember. With both on a constant lead it may never sleep, and the battery is flat after days; with both on a switched lead it forgets everything.",
    "Where the vehicle has only one kind, the other comes from the fuse box, from an interface module, or over a relay.",
  ],
  trips: () =>
    radioBay().path("X1.1", "XC1").path("X1.2", "XJ1", "X2.1").path("XJ1", "X2.2").path("X1.3", "X2.3"),
  quiet: () =>
    radioBay().path("X1.2", "XC1").path("X1.1", "XJ1", "X2.1").path("XJ1", "S1", "X2.2").path("X1.3", "X2.3"),
  quietBecause: "Both come from the constant lead, but a switch that somebody turns lies in one of them.",
});
