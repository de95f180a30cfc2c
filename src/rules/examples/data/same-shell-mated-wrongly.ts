import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const two = (first: string | null, second: string | null) =>
  build()
    .module("A1", { role: "interface" })
    .receptacle("X2", "A1", { "1": "illumination" }, { shell: "interface 2", gender: "plug", keying: first })
    .receptacle("X3", "A1", { "1": "speed" }, { shell: "interface 2", gender: "plug", keying: second });

export default defineExample({
  page: [
    "Two receptacles of one shape and one keying go into each other's places, at the next service if not today. Where they carry the same functions nothing comes of it; where they do not, a feed meets a signal.",
    "Makers set them apart by a key, by colour, by sex, or by leads that are too short for the wrong place.",
  ],
  trips: () => two(null, null),
  quiet: () => two("key left, black", "key right, grey"),
  quietBecause: "The keys keep the two housings apart.",
});
