import { build } from "../build.ts";
import { defineExample } from "../example.ts";
import { SEALED } from "./lamp.ts";

const joined = (...joints: readonly string[]) => {
  const built = build()
    .vehicle("X1", { "1": "illumination GY 0.5 fuse:5", "2": "ground BN 0.5" })
    .part("load", "E1", { type: "lamp", current_A: 0.2, function: "illumination" });
  for (const joint of joints) built.part("splice", joint, SEALED);
  return built.path("X1.1", ...joints, "E1.+").path("E1.−", "X1.2");
};

export default defineExample({
  page: [
    "Every joint in a lead is one more thing that can fail, and one more to open when it does. An adapter needs one; one extension makes two.",
    "Where there are more, take one longer piece of wire.",
  ],
  trips: () => joined("XJ1", "XJ2", "XJ3"),
  quiet: () => joined("XJ1", "XJ2"),
  quietBecause: "Two joints are what this harness's book allows.",
});
