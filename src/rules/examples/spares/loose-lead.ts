import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lead = (end: string) =>
  build().vehicle("X1", { "1": "mute BN" }).unit("X2", { "1": "mute BN" }).wire("X1.1", end, "BN");

export default defineExample({
  page: [
    "A wire that ends in the air joins nothing: what it was for does not work, and its bare end finds metal sooner or later.",
    "Join it, or make it a spare: a cap on it alone, tied back, and listed.",
  ],
  trips: () => lead("loose").wire("X2.1", "XC1", "BN"),
  quiet: () => lead("X2.1"),
  quietBecause: "Both ends are on a contact.",
});
