import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = (): Build =>
  build()
    .module("A1", {
      name: "rear camera",
      role: "camera",
      signalGround: "joined",
      rows: { "1": "video-signal gives YE", "2": "video-shield gives BK", "3": "ground BK 0.5" },
    })
    .module("A2", {
      name: "display",
      role: "display",
      signalGround: "joined",
      rows: { "1": "video-signal takes YE", "2": "video-shield takes BK", "3": "ground BK 0.5" },
    })
    .part("ground", "XE1", { where: "stud behind the dash", surface: "bare-metal" })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2")
    .cable("WC1", "coax", ["W1"], "W2")
    .wire("A2.3", "XE1", "BK");

export default defineExample({
  page: [
    "The shield of a picture lead joins the camera's ground to that of its display. Where each of them has a ground of its own as well, far apart, a part of the vehicle's current takes the way through the shield.",
    "It shows as bars that crawl over the picture and change with the engine's speed. Unplug the camera's own ground for a trial: where the bars go, this was it.",
  ],
  trips: () =>
    boxes()
      .part("ground", "XE2", { where: "stud beside the rear door", surface: "bare-metal" })
      .wire("A1.3", "XE2", "BK"),
  quiet: () => boxes().wire("A1.3", "A2.3", "BK"),
  quietBecause: "The camera's ground comes back to the display, and both stand on one stud.",
});
