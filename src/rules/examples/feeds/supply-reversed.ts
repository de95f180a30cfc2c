import { defineExample } from "../example.ts";
import { radioBay } from "./parts.ts";

export default defineExample({
  page: [
    "The unit's feed input lies on ground and its ground on a feed. Most units have a diode across their feed for this: it conducts, and the fuse blows. Those without one die.",
    "Exchange the two leads, and try the unit on a bench supply with a current limit before it goes back in.",
  ],
  trips: () => radioBay().path("X1.1", "XJ1", "X2.3").path("X1.2", "X2.2").path("X1.3", "XJ2", "X2.1"),
  quiet: () => radioBay().path("X1.1", "XJ1", "X2.1").path("X1.2", "X2.2").path("X1.3", "XJ2", "X2.3"),
  quietBecause: "Feed lies on feed, and ground on ground.",
});
