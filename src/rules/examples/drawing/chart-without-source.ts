import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plug = (title: string) =>
  build()
    .vehicle(
      "X1",
      { "1": "mute BN" },
      { chart: { title, edition: "3", date: "2026-01-12", measured: false } },
    )
    .wire("X1.1", "XC1", "BN");

export default defineExample({
  page: [
    "Two editions of one chart often differ in a cavity or two. Without its title and date nobody can tell which was followed.",
    "What was found with a meter has no chart; it is marked as measured, which is worth more than any paper.",
  ],
  trips: () => plug(""),
  quiet: () => plug("Van Wren, radio plug"),
  quietBecause: "The chart's title is there.",
});
