import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const van = (): Build =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      rows: { "1": "line-rear-left-signal WH", "2": "line-rear-left-shield BK" },
    })
    .module("A2", {
      name: "amplifier",
      role: "amplifier",
      rows: { "1": "line-rear-left-signal takes WH", "2": "line-rear-left-shield takes BK" },
    })
    .vehicle("X1", { "1": "constant-feed RD 4 fuse:20", "2": "ground BN 4" })
    .part("load", "E1", { name: "rear heater", type: "heater", function: "constant-feed", current_A: 15 })
    .wire("A1.1", "A2.1", "WH", { length_m: 4 })
    .wire("A1.2", "A2.2", "BK", { length_m: 4 })
    .wire("X1.1", "E1.+", "RD", { area_mm2: 4, length_m: 4 })
    .wire("E1.−", "X1.2", "BN", { area_mm2: 4, length_m: 4 })
    .cable("WC1", "shielded", ["W1"], "W2");

export default defineExample({
  page: [
    "A current that changes makes a field round its lead, and a lead beside it hears that. The longer the two lie together, the more: the whine of the alternator, the click of every switch, bars in a picture.",
    "Lay line, picture and antenna leads down one side of the vehicle and the heavy feeds down the other. Where they have to meet, let them cross at a right angle.",
  ],
  trips: () => van().run("B1", { from: "dash", to: "bench", length_m: 3.5 }, ["W1", "W2", "W3", "W4"]),
  quiet: () =>
    van()
      .run("B1", { from: "dash", to: "bench", length_m: 3.5, note: "left side" }, ["W1", "W2"])
      .run("B2", { from: "battery", to: "bench", length_m: 3.5, note: "right side" }, ["W3", "W4"]),
  quietBecause: "The heater's leads have a run of their own, on the other side of the van.",
});
