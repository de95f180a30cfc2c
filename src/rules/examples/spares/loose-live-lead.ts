import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const fed = (end: string) =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A: 15, form: "regular" })
    .path("G1.+", "F1", "XJ1")
    .wire("XJ1", end, "RD")
    .wire("G1.−", "XE1", "BK");

export default defineExample({
  page: [
    "A lead whose end hangs free is harmless while nothing feeds it. One that a battery or a vehicle's feed can reach, in whatever key position, sparks on the first metal that it touches.",
    "Look at the way from the source to the bare end: take the feed off first, then join the lead or put a cap on it.",
  ],
  trips: () => fed("loose"),
  quiet: () => fed("XC1"),
  quietBecause: "The same lead ends under a cap.",
});
