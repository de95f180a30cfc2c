import type { Build } from "../build.ts";
import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const joined = (plus: string, minus: string): Build =>
  withSpeakers().wire("A1.1", plus).wire("A1.2", minus).wire("A1.3", "P2.+").wire("A1.4", "P2.−");

export default defineExample({
  page: [
    "All cones have to move the same way at the same time. One that is joined the wrong way round takes away the bass that the others make.",
    "Nothing breaks, so it stays for years. A cell of 1.5 V for a moment, its plus on the lead called plus, must push the cone out. A tweeter that its designer reversed on purpose is a case for a waiver.",
  ],
  trips: () => joined("P1.−", "P1.+"),
  quiet: () => joined("P1.+", "P1.−"),
  quietBecause: "Both speakers are plus to plus.",
});
