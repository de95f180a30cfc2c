import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const video = (trigger: string) =>
  build()
    .vehicle("X1", { "1": "reverse GN fuse:10" })
    .module("A1", {
      name: "rear camera",
      role: "camera",
      rows: { "1": "video-signal gives YE", "2": "video-shield gives BK" },
    })
    .module("A2", {
      name: "display",
      role: "display",
      rows: {
        "1": "video-signal takes YE",
        "2": "video-shield takes BK",
        "3": `camera-trigger takes RD${trigger}`,
      },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

export default defineExample({
  page: [
    "Video cables for cameras often have a thin red lead at each end, a few centimetres long. The two are the ends of one extra core. It is there to bring the reverse lamp's volts to the display, so that the picture comes by itself.",
    "It has to be joined at both ends or at none. With one end left over the display waits for a trigger that never comes.",
  ],
  trips: () =>
    video(" spare").path("X1.1", "XC1").path("A2.3", "XC2").cable("WC1", "shielded", ["W1", "W3"], "W2"),
  quiet: () => video("").wire("X1.1", "A2.3", "RD").cable("WC1", "shielded", ["W1", "W3"], "W2"),
  quietBecause: "The extra core is on the reverse lead at the back and on the trigger input in front.",
});
