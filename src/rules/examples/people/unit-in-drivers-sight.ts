import type { Module } from "../../../graph/harness.ts";
import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const screen = (near: Module["near"]) =>
  build().module("A1", {
    name: "monitor of the reversing camera",
    role: "display",
    near: [...near],
    rows: { "1": "video-front-signal takes optional" },
  });

export default defineExample({
  page: [
    "What stands between the driver and the road hides a child or a bicycle; what moves on a screen draws the eye. Most local codes say where a screen may stand and what it may show while driving.",
    "The place is agreed with the one who drives, sitting in the seat, before anything is drilled.",
  ],
  trips: () => screen(["drivers-sight"]),
  quiet: () => screen([]),
  quietBecause: "The monitor stands out of the driver's sight of the road.",
});
