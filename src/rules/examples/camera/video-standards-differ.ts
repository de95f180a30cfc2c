import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const joined = (video: "ntsc" | "pal") =>
  build()
    .module("A1", {
      name: "rear camera",
      role: "camera",
      video,
      rows: { "1": "video-signal gives YE", "2": "video-shield gives BK" },
    })
    .module("A2", {
      name: "display",
      role: "display",
      video: "ntsc",
      rows: { "1": "video-signal takes YE", "2": "video-shield takes BK" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2")
    .cable("WC1", "coax", ["W1"], "W2");

export default defineExample({
  page: [
    "Plugs that fit say nothing of the picture that goes through them. NTSC and PAL differ in lines and speed, and high-definition cameras send another signal through the same yellow plug.",
    "A display that does not know the kind shows blue, or a picture that rolls. Some can be told in a menu which kind to expect.",
  ],
  trips: () => joined("pal"),
  quiet: () => joined("ntsc"),
  quietBecause: "Camera and display both speak NTSC.",
});
