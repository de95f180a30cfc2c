import rule from "../../../src/rules/rules/grounds/sense-ground-elsewhere.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const keys = () =>
  build()
    .vehicle("X1", { "1": "steering-key-1 GN gives", "2": "steering-key-ground BN", "3": "ground BN" })
    .module("A1", { role: "interface", rows: { K: "steering-key-1 takes", S: "sense-ground", G: "ground" } })
    .wire("X1.1", "A1.K")
    .wire("A1.G", "X1.3");
const ladder = () =>
  build()
    .module("A1", { role: "interface", rows: { K: "steering-key-1 takes", G: "ground" } })
    .part("switch", "S1", { operatedBy: "hand" })
    .part("resistor", "R1", { resistance_ohm: 100 })
    .path("A1.K", "S1", "R1", "XJ1")
    .path("A1.G", "XE1");
const shared = (area_mm2: number) =>
  keys()
    .module("A2", { rows: { "+": "constant-feed 15A", G: "ground" } })
    .vehicle("X5", { "1": "constant-feed fuse:20" })
    .wire("X5.1", "A2.+", "RD", { area_mm2: 4, length_m: 1 })
    .change("W2", { area_mm2, length_m: 2 })
    .wire("A2.G", "A1.G", "BK", { area_mm2: 4, length_m: 0.3 })
    .wire("X1.2", "X1.3", "BN", { area_mm2: 1, length_m: 0.1 });

testRule(rule, {
  silent: [
    { name: "the return comes to the sense ground", build: keys().wire("X1.2", "A1.S") },
    { name: "the return comes to the one ground that there is", build: keys().wire("X1.2", "A1.G") },
    { name: "the return is not joined, which is told elsewhere", build: keys() },
    { name: "a ladder drawn out, home", build: ladder().wire("XJ1", "A1.G") },
    { name: "a ladder drawn out, on the stud of the box", build: ladder().path("XJ1", "XE1") },
    {
      name: "the keys come on data",
      build: build()
        .module("A1", { rows: { D: "lin", G: "ground" } })
        .path("A1.G", "XE1"),
    },
    { name: "a shared ground in which little is lost", build: shared(16) },
  ],
  found: [
    {
      name: "the return on a stud",
      build: keys().path("X1.2", "XE1"),
      findings: [{ at: ["A1.K", "X1.2"], says: "measured against X1.3 ground (brown)", fix: null }],
    },
    {
      name: "a ladder drawn out, on another stud",
      build: ladder().path("XJ1", "XE2"),
      findings: [{ at: ["A1.K", "XE2"], says: "its keys return to XE2", fix: null }],
    },
    {
      name: "two lines of one box, through mated couplers",
      build: build()
        .vehicle("X1", {
          "1": "steering-key-1 gives",
          "2": "steering-key-2 gives",
          "3": "steering-key-ground",
        })
        .unit("X3", { "1": "steering-key-1 takes", "2": "steering-key-2 takes", "3": "unknown" })
        .mate("X1", "X3")
        .unit("X2", { "1": "ground" })
        .path("X2.1", "XE1")
        .path("X3.3", "XE2"),
      findings: [{ at: ["X1.1", "X1.3"], fix: null }],
    },
    {
      name: "a shared ground in which another unit's current flows",
      build: shared(1),
      findings: [{ at: ["A1.K", "X1.2"], says: "lie between that and the return of its keys", fix: null }],
    },
  ],
});
