import { defineExample } from "../example.ts";
import { battery, WORK_LAMP } from "./parts.ts";

const box = () =>
  battery()
    .part("fuse", "F1", { rating_A: 10, holder: "fuse-box" })
    .part("fuse", "F2", { rating_A: 5, holder: "tap" })
    .part("load", "E1", { type: "lamp", current_A: 3, function: "interior-lamp" })
    .part("load", "E2", { ...WORK_LAMP, current_A: 2 })
    .path("G1.+", "XJ1", "F1", "XJ2", "E1.+")
    .path("F2", "E2.+")
    .path("E1.−", "XE2")
    .path("E2.−", "XE3");

export default defineExample({
  page: [
    "A fuse tap takes the place of a fuse in the fuse box and holds two: the original one, and one for a new lead. One of the two contacts of the place is live by itself, the other only through the fuse.",
    "Put in the wrong way round, the new lead is fed through the original fuse, which then carries both loads. Pull the fuse and look with a meter which contact is live before you put the tap in. Some makers allow no taps at all, because they spread the contacts.",
  ],
  trips: () => box().wire("XJ2", "F2.1"),
  quiet: () => box().wire("XJ1", "F2.1"),
  quietBecause: "Both fuses share the live contact, so each carries its own load only.",
});
