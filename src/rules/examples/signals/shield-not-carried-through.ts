import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const cores = () =>
  build()
    .module("A1", {
      name: "rear camera",
      role: "camera",
      rows: { "1": "video-signal gives YE", "2": "video-shield gives BK" },
    })
    .module("A2", {
      name: "display",
      role: "display",
      rows: { "1": "video-signal takes YE", "2": "video-shield takes BK" },
    })
    .part("splice", "XJ1", { method: "solder-and-sleeve", cover: "adhesive-sleeve" })
    .path("A1.1", "XJ1", "A2.1");

export default defineExample({
  page: [
    "Where a shielded cable is made longer, it is easy to join the cores and to forget the shield, which has been cut back out of the way.",
    "The lead behind the joint is then unshielded, however good its cable is; of a line or video cable the return is missing as well. Give the shield a row of its own in the joint table.",
  ],
  trips: () =>
    cores()
      .path("A1.2", "XC1")
      .path("XC2", "A2.2")
      .cable("WC1", "shielded", ["W1"], "W3")
      .cable("WC2", "shielded", ["W2"], "W4"),
  quiet: () =>
    cores()
      .part("splice", "XJ2", { method: "solder-and-sleeve", cover: "adhesive-sleeve" })
      .path("A1.2", "XJ2", "A2.2")
      .cable("WC1", "shielded", ["W1"], "W3")
      .cable("WC2", "shielded", ["W2"], "W4"),
  quietBecause: "The shield goes through the joint XJ2 beside the core.",
});
