import { build } from "../build.ts";
import { defineExample } from "../example.ts";

/** @param ground the coupling's ground contact, with the lead that stands in it or without */
const trailer = (ground: string) =>
  build()
    .vehicle("X1", { "1": "indicator-left YE 1.5 fuse:10", "3": ground }, { shell: "ISO 1724" })
    .part("load", "E1", { type: "lamp", function: "indicator-left", current_A: 1.75 })
    .wire("X1.1", "E1.+");

export default defineExample({
  page: [
    "A trailer's lamps that are grounded to its frame alone find their way back through the ball of the coupling, over grease and paint. It works in the yard, and flickers on the road.",
    "The coupling has a contact for the ground: measure less than 1 Ω from it to the trailer's frame and to the vehicle's body.",
  ],
  trips: () => trailer("ground").wire("E1.−", "XE1"),
  quiet: () => trailer("ground WH 2.5").path("E1.−", "XJ1", "X1.3"),
  quietBecause: "The lamp's current comes back by the coupling's ground contact.",
});
