import { build } from "../build.ts";
import { defineExample } from "../example.ts";
import { SEALED } from "./lamp.ts";

const feeds = (mark: string) => {
  const built = build()
    .vehicle("X1", {
      "1": "constant-feed RD 1.5 fuse:15",
      "2": "switched-feed YE 0.75 fuse:10",
      "3": "ground BN 1.5",
    })
    .unit("X2", {
      "1": "constant-feed OG 1.5 4A",
      "2": "switched-feed RD 0.75 0.1A",
      "3": "ground BK 1.5",
    });
  for (const joint of ["XJ1", "XJ2", "XJ3"]) built.part("splice", joint, SEALED);
  built.path("X1.1", "XJ1", "X2.1").path("X1.2", "XJ2", "X2.2").path("X1.3", "XJ3", "X2.3");
  return mark === "" ? built : built.change("W1", { label: "constant" }).change("W4", { label: "switched" });
};

export default defineExample({
  page: [
    "Two charts seldom agree on colours. Where red is the constant feed on one and the switched feed on the other, somebody who joins red to red has made a fault that works on the bench.",
    "Join by cavity and function, tick each row, and let a second person read it aloud. Markers with words of their own on both leads keep the next one from it, and this rule silent.",
  ],
  trips: () => feeds(""),
  quiet: () => feeds("marked"),
  quietBecause: "Both red leads carry markers that say what they are.",
});
