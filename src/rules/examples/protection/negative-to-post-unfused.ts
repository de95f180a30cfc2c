import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const radio = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 10 })
    .module("A1", { name: "radio telephone", rows: { "1": "constant-feed 5A", "2": "ground" } })
    .path("G1.+", "F1", "A1.1")
    .path("G1.−", "XE1")
    .rules({ negativeFuse: "both-at-posts" });

export default defineExample({
  page: [
    "A unit that is wired straight to both posts of the battery has a second way to the body, through its case or its antenna. If the battery's own body strap opens, the starter draws its current through the unit's thin negative lead.",
    'A harness may therefore choose to fuse both leads at the posts. This rule holds it to that choice; with the policy "positive only" it is silent.',
  ],
  trips: () => radio().path("A1.2", "G1.−"),
  quiet: () => radio().part("fuse", "F2", { rating_A: 10 }).path("A1.2", "F2").path("F2", "G1.−"),
  quietBecause: "Both leads have a fuse, as the harness's policy asks.",
});
