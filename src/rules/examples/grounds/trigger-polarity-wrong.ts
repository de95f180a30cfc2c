import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (words: string) =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH fuse:10" })
    .module("A1", { role: "display", rows: { REV: `camera-trigger takes ${words}` } })
    .wire("X1.1", "A1.REV");

export default defineExample({
  page: [
    "Some inputs act when 12 V reach them, others when they are pulled to ground; the chart of the unit says which. Door, horn, mute and parking-brake leads are mostly pulled to ground.",
    "A lead of the other kind does nothing, or works upside down. A relay turns one into the other.",
  ],
  trips: () => unit("acts-on-ground"),
  quiet: () => unit("acts-on-volts"),
  quietBecause: "This input waits for volts, and volts come.",
});
