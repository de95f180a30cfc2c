import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = (cover: "boot" | "none") =>
  build()
    .part("supply", "G1", { cover })
    .part("fuse", "F1", { rating_A: 10 })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .path("G1.+", "F1", "E1.+")
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

export default defineExample({
  page: [
    "The battery's plus post and every stud before the first fuse is live at all times, with nothing to stop the current. A tool that falls across such a stud and the body cannot be pulled off again.",
    "A rubber boot or the lid of a box is enough. Take the negative lead off first whenever you work there.",
  ],
  trips: () => lamp("none"),
  quiet: () => lamp("boot"),
  quietBecause: "A boot covers the post.",
});
