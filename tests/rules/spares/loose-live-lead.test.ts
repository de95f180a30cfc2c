import rule from "../../../src/rules/rules/spares/loose-live-lead.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const battery = () => build().part("supply", "G1");

testRule(rule, {
  silent: [
    {
      name: "a capped live lead",
      build: build().vehicle("X1", { A4: "constant-feed RD" }).path("X1.A4", "XC1"),
    },
    { name: "a loose input", build: build().unit("X2", { "1": "constant-feed YE" }).wire("X2.1", "loose") },
    { name: "a loose ground", build: build().vehicle("X1", { A8: "ground BN" }).wire("X1.A8", "loose") },
    {
      name: "live only through 1 kΩ",
      build: battery().part("resistor", "R1", { resistance_ohm: 1000 }).path("G1.+", "F1", "R1", "loose"),
    },
    {
      name: "behind a diode that conducts the other way",
      build: battery().part("diode", "R1").path("G1.+", "F1", "R1.K").wire("R1.A", "loose"),
    },
    {
      name: "behind a relay whose coil nothing feeds",
      build: battery()
        .part("relay", "K1", { poles: "make" })
        .path("G1.+", "F1", "K1.30")
        .wire("K1.87", "loose"),
    },
    {
      name: "behind a load",
      build: battery().part("load", "E1").path("G1.+", "F1", "E1.+").wire("E1.−", "loose"),
    },
  ],
  found: [
    {
      name: "a live lead that ends in a joint by itself",
      build: build().vehicle("X1", { A4: "constant-feed RD fuse:10" }).path("X1.A4", "XJ1"),
      findings: [{ at: ["W1"], says: "ends in XJ1, which holds nothing else, and is live", fix: null }],
    },
    {
      name: "the vehicle's constant lead",
      build: build().vehicle("X1", { A4: "constant-feed RD fuse:15" }).wire("X1.A4", "loose"),
      findings: [{ at: ["W1"], says: "at all times, behind its own 15 A fuse", fix: null }],
    },
    {
      name: "a lead that is live only in reverse",
      build: build().vehicle("X1", { "3": "reverse GN" }).wire("X1.3", "loose"),
      findings: [{ at: ["W1"], says: "in reverse", fix: null }],
    },
    {
      name: "beyond a fuse and 999 Ω",
      build: battery().part("resistor", "R1", { resistance_ohm: 999 }).path("G1.+", "F1", "R1", "loose"),
      findings: [{ at: ["W3"], says: "through F1", fix: null }],
    },
    {
      name: "straight from the battery",
      build: battery().wire("G1.+", "loose", "RD"),
      findings: [{ at: ["W1"], says: "with no fuse on the way", fix: null }],
    },
    {
      name: "beyond a diode the way it conducts, and a switch that a hand closes",
      build: battery().part("diode", "R1").path("G1.+", "F1", "R1", "S1", "loose"),
      findings: [{ at: ["W4"], fix: null }],
    },
    {
      name: "beyond a relay that the key pulls in",
      build: battery()
        .vehicle("X1", { A7: "switched-feed YE" })
        .part("relay", "K1", { poles: "make" })
        .path("G1.+", "F1", "K1.30")
        .wire("X1.A7", "K1.86")
        .path("K1.85", "XE1")
        .wire("K1.87", "loose"),
      findings: [{ at: ["W5"], says: "with the key at accessory or run", fix: null }],
    },
    {
      name: "a spare that is live, with the cap as its one cure",
      build: build().vehicle("X1", { A4: "constant-feed RD spare" }).wire("X1.A4", "loose"),
      findings: [{ at: ["W1"], fix: "Cap W1" }],
    },
    {
      name: "a feed whose input waits on the other chart",
      build: build()
        .vehicle("X1", { A4: "constant-feed RD", A8: "ground BN" })
        .unit("X2", { "1": "constant-feed YE", "3": "ground BK" })
        .path("X1.A8", "XJ1", "X2.3")
        .wire("X1.A4", "loose"),
      findings: [{ at: ["W3"], fix: "Join X1.A4 to X2.1" }],
    },
  ],
});
