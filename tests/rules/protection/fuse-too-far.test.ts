import rule from "../../../src/rules/rules/protection/fuse-too-far.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = () => build().part("supply", "G1").part("load", "E1").path("E1.−", "XE1", "G1.−");
const at = (length_m: number | "unknown") =>
  lamp().wire("G1.+", "F1", "RD", { length_m, designation: "W8" }).path("F1", "E1.+");
const boat = { profile: "boat" } as const;
const sheathed = (covering: "conduit" | "cloth-tape") => at(0.9).run("B1", { covering }, ["W8"]);

testRule(rule, {
  silent: [
    { name: "457 mm exactly", build: at(0.457) },
    { name: "178 mm exactly in a boat", build: at(0.178).rules(boat) },
    { name: "nobody has said how long it is", build: at("unknown") },
    { name: "900 mm in conduit all the way", build: sheathed("conduit") },
    {
      name: "the shop allows a metre",
      build: at(0.9).rules({
        shop: "Thistledown workshop",
        limits: [{ name: "fuseDistance_mm", value: 1000 }],
      }),
    },
    {
      name: "a second fuse far behind the first",
      build: lamp()
        .wire("G1.+", "F1", "RD", { length_m: 0.1 })
        .wire("F1", "F2", "RD", { length_m: 5 })
        .path("F2", "E1.+"),
    },
    {
      name: "the vehicle's own fuse stands before the lead",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15" })
        .part("load", "E1")
        .wire("X1.1", "F1", "RD", { length_m: 4 })
        .path("F1", "E1.+"),
    },
  ],
  found: [
    {
      name: "458 mm",
      build: at(0.458),
      findings: [
        {
          at: ["F1", "G1.+"],
          says: "F1 stands 458 mm from G1.+ constant feed (red); 457 mm is the most",
          fix: null,
        },
      ],
    },
    {
      name: "179 mm in a boat",
      build: at(0.179).rules(boat),
      findings: [{ at: ["F1", "G1.+"], says: "33 CFR 183.455(b)", fix: null }],
    },
    { name: "taped only", build: sheathed("cloth-tape"), findings: [{ at: ["F1", "G1.+"], fix: null }] },
    {
      name: "sheathed, but past the longer limit",
      build: at(1.2).run("B1", { covering: "split-loom" }, ["W8"]),
      findings: [
        {
          at: ["F1", "G1.+"],
          says: "1016 mm is the most for a lead that is sheathed all the way",
          fix: null,
        },
      ],
    },
    {
      name: "through an isolator and a joint, one length not stated",
      build: lamp()
        .part("switch", "S1", { operatedBy: "isolator" })
        .wire("G1.+", "S1", "RD", { length_m: 0.3 })
        .wire("S1", "XJ1", "RD")
        .wire("XJ1", "F1", "RD", { length_m: 0.4 })
        .path("F1", "E1.+"),
      findings: [{ at: ["F1", "G1.+"], says: "at least 700 mm", fix: null }],
    },
    {
      name: "through a mated plug, from a lead that the vehicle does not protect",
      build: build()
        .vehicle("X1", { "1": "constant-feed no-fuse" })
        .unit("X2", { "1": "unknown none" })
        .mate("X1", "X2")
        .part("load", "E1")
        .wire("X2.1", "F1", "RD", { length_m: 2 })
        .path("F1", "E1.+"),
      findings: [{ at: ["F1", "X1.1"], fix: null }],
    },
  ],
});
