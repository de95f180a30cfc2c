import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const radio = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 10 })
    .module("A1", { name: "radio telephone", rows: { "1": "constant-feed 5A", "2": "ground" } })
    .path("G1.+", "F1", "A1.1")
    .path("G1.−", "XE1");

export default defineExample({
  page: [
    "On a vehicle whose body is the negative, a fuse in the negative lead does not turn anything off when it opens: the unit still finds its way back, through the shields of its signal lines or the antenna's braid.",
    "Some books ask for a fuse in both leads where a unit is wired straight to the battery's posts. That is a policy, and a harness keeps to one; choose it in the rules of the harness.",
  ],
  trips: () => radio().part("fuse", "F2", { rating_A: 10 }).path("A1.2", "F2", "XE2"),
  quiet: () => radio().path("A1.2", "XE2"),
  quietBecause: "The fuse is in the positive lead, and the ground goes to the body without one.",
});
