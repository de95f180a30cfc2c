import { defineExample } from "../example.ts";
import { battery, WORK_LAMP } from "./parts.ts";

const van = () =>
  battery()
    .part("switch", "S1", { operatedBy: "isolator", name: "master switch" })
    .part("fuse", "F1", { rating_A: 10 })
    .part("fuse", "F2", { rating_A: 10 })
    .part("load", "E1", WORK_LAMP)
    .part("load", "E2", { ...WORK_LAMP, type: "heater" })
    .path("G1.+", "S1", "XJ1", "F2", "E2.+")
    .path("E2.−", "XE3")
    .path("F1", "S2", "E1.+")
    .path("E1.−", "XE2");

export default defineExample({
  page: [
    "A master switch next to the battery is there so that one hand can make everything dead: for work on the loom, after a crash, over the winter. What is wired past it stays live while everybody believes that it is off.",
    "Some things have to stay live, such as an alarm. Then have the owner's wish in writing, and waive this finding with that reason, so that it is printed.",
  ],
  trips: () => van().wire("G1.+", "F1.1"),
  quiet: () => van().wire("XJ1", "F1.1"),
  quietBecause: "The lamp is fed from behind the master switch.",
});
