import { build } from "../build.ts";
import { defineExample } from "../example.ts";
import { SEALED } from "./lamp.ts";

const two = (second_m: number) =>
  build()
    .vehicle("X1", { "1": "speaker-front-left-plus WH 0.75", "2": "speaker-front-left-minus WH/BK 0.75" })
    .part("speaker", "P1", { position: "front-left" })
    .part("splice", "XJ1", SEALED)
    .part("splice", "XJ2", SEALED)
    .wire("X1.1", "XJ1", "WH", { area_mm2: 0.75, length_m: 0.5 })
    .wire("XJ1", "P1.+", "WH", { area_mm2: 0.75, length_m: 1 })
    .wire("X1.2", "XJ2", "WH/BK", { area_mm2: 0.75, length_m: second_m })
    .wire("XJ2", "P1.−", "WH/BK", { area_mm2: 0.75, length_m: 1 })
    .run("B1", { length_m: 1.4, zone: "cabin" }, ["W1", "W2", "W3", "W4"]);

export default defineExample({
  page: [
    "Joints side by side make a lump that will not go through the next hole, and when two of them fail they touch.",
    "Cut the leads so that each joint lies 50 mm from the next. The places are reckoned from the lengths of the leads that leave one housing through the same run; on an adapter too short to stagger them the rule is silent.",
  ],
  trips: () => two(0.5),
  quiet: () => two(0.55),
  quietBecause: "The joints lie 50 mm apart.",
});
