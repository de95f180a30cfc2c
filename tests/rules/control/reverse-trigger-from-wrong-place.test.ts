import rule from "../../../src/rules/rules/control/reverse-trigger-from-wrong-place.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rear = () =>
  build()
    .vehicle("X1", {
      "1": "reverse GN/WH fuse:10",
      "2": "fog-rear GY/YE fuse:10",
      "3": "stop-lamp RD fuse:10",
      "4": "switched-feed RD/BK fuse:5",
      "5": "constant-feed RD fuse:5",
    })
    .unit("X2", { "3": "camera-trigger GN" });

testRule(rule, {
  silent: [
    { name: "on the reversing lamp's lead", build: rear().wire("X1.1", "X2.3") },
    {
      name: "from a bus interface",
      build: rear()
        .module("A1", { role: "interface", rows: { R: "camera-trigger gives" } })
        .wire("A1.R", "X2.3"),
    },
    {
      name: "a constant feed through the gearbox's switch",
      build: rear().part("switch", "S1", { operatedBy: "reverse-gear" }).path("X1.5", "S1", "X2.3"),
    },
    {
      name: "through a relay that the reversing lamp's lead pulls",
      build: rear()
        .part("relay", "K1", { poles: "make" })
        .path("X1.1", "K1.86")
        .path("K1.85", "XE1")
        .path("X1.5", "K1.30")
        .path("K1.87", "X2.3"),
    },
    {
      name: "a button beside it",
      build: rear().part("switch", "S1", { operatedBy: "hand" }).path("X1.4", "S1", "X2.3"),
    },
    {
      name: "a socket for a trailer, whose lamps other rules tell",
      build: rear().unit("X5", { "1": "reverse", "2": "indicator-left" }).wire("X1.2", "X5.1"),
    },
    { name: "joined to nothing", build: rear() },
  ],
  found: [
    {
      name: "on the fog lamp",
      build: rear().wire("X1.2", "X2.3"),
      findings: [{ at: ["X1.2", "X2.3"], says: "that is not in reverse", fix: null }],
    },
    {
      name: "on the brake lamp, through a joint and a fuse",
      build: rear().path("X1.3", "XJ1", "F1", "X2.3"),
      findings: [{ at: ["X1.3", "X2.3"], says: "with the brake on", fix: null }],
    },
    {
      name: "on a feed that comes with the key",
      build: rear().wire("X1.4", "X2.3"),
      findings: [{ at: ["X1.4", "X2.3"], says: "not only in reverse", fix: null }],
    },
    {
      name: "a display's reverse input, through a relay that the brake pulls",
      build: rear()
        .module("A2", { role: "display", rows: { REV: "reverse takes" } })
        .part("relay", "K1", { poles: "make" })
        .path("X1.3", "K1.86")
        .path("K1.85", "XE1")
        .path("X1.5", "K1.30")
        .path("K1.87", "A2.REV"),
      findings: [{ at: ["A2.REV", "X1.5"], fix: null }],
    },
  ],
});
