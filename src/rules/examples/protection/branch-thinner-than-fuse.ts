import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const board = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 6 fuse:40", "2": "ground BN" })
    .part("load", "E1", { type: "heater", current_A: 20, function: "constant-feed" })
    .part("load", "E2", { type: "lamp", current_A: 1, function: "work-lamp" })
    .wire("X1.1", "XJ1", "RD", { area_mm2: 6, length_m: 1 })
    .wire("XJ1", "E1.+", "RD", { area_mm2: 6, length_m: 1 })
    .path("E1.−", "XJ2", "X1.2")
    .path("E2.−", "XJ2");

export default defineExample({
  page: [
    "One thick lead with a large fuse goes to a joint or a distribution block, and a thin lead to a small load leaves it. The large fuse lets through far more than the thin lead bears.",
    "Fuse again where you branch: each thinner lead begins with its own fuse, close to the joint.",
  ],
  trips: () => board().wire("XJ1.2", "E2.+", "RD", { area_mm2: 0.75, length_m: 3 }),
  quiet: () =>
    board()
      .part("fuse", "F1", { rating_A: 5 })
      .wire("XJ1.2", "F1", "RD", { area_mm2: 2.5, length_m: 0.2 })
      .wire("F1", "E2.+", "RD", { area_mm2: 0.75, length_m: 3 }),
  quietBecause: "The thin branch begins with a fuse of its own, 200 mm from the joint.",
});
