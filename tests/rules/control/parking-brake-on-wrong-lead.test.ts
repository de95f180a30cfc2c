import rule from "../../../src/rules/rules/control/parking-brake-on-wrong-lead.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const screen = (line = "parking-brake GN") =>
  build()
    .vehicle("X1", {
      "1": "stop-lamp RD/BK fuse:10",
      "2": "parking-brake GN/WH",
      "3": "switched-feed RD fuse:5",
      "4": "can-high WH",
      "5": "door-switch BN",
    })
    .unit("X2", { "9": line });

testRule(rule, {
  silent: [
    { name: "on the vehicle's switch lead", build: screen().wire("X1.2", "X2.9") },
    { name: "on ground for good, which a rule of its own tells", build: screen().path("X2.9", "XE1") },
    {
      name: "through a switch of one's own to the frame",
      build: screen().part("switch", "S1", { operatedBy: "parking-brake" }).path("X2.9", "S1", "XE1"),
    },
    {
      name: "with the tell-tale lamp of the brake on the lead",
      build: screen()
        .part("load", "E1", { type: "lamp", function: "warning-lamp" })
        .wire("X1.3", "E1.+")
        .wire("E1.−", "X1.2")
        .wire("X1.2", "X2.9"),
    },
    {
      name: "on a lead of which nobody knows",
      build: screen().unit("X3", { "1": "unknown" }).wire("X3.1", "X2.9"),
    },
    {
      name: "from a bus module that pulls it",
      build: screen()
        .module("A1", { role: "interface", rows: { P: "parking-brake gives" } })
        .wire("A1.P", "X2.9"),
    },
    {
      name: "one that volts make act, through a relay",
      build: screen("parking-brake acts-on-volts")
        .part("switch", "S1", { operatedBy: "parking-brake" })
        .part("relay", "K1", { poles: "make" })
        .path("X1.3", "K1.30")
        .path("X1.3", "K1.86")
        .path("K1.85", "S1", "XE1")
        .path("K1.87", "X2.9"),
    },
    {
      name: "a second screen's input on the same lead",
      build: screen().unit("X4", { "1": "parking-brake" }).path("X1.2", "X2.9", "X4.1"),
    },
  ],
  found: [
    {
      name: "on the foot brake's lamp",
      build: screen().wire("X1.1", "X2.9"),
      findings: [{ at: ["X1.1", "X2.9"], says: "X1.1 stop lamp", fix: null }],
    },
    {
      name: "on 12 V, through a fuse and a joint",
      build: screen().path("X1.3", "F1", "XJ1", "X2.9"),
      findings: [{ at: ["X1.3", "X2.9"], fix: null }],
    },
    {
      name: "on a data lead",
      build: screen().wire("X1.4", "X2.9"),
      findings: [{ at: ["X1.4", "X2.9"], fix: null }],
    },
    {
      name: "on the door contact",
      build: screen().wire("X1.5", "X2.9"),
      findings: [{ at: ["X1.5", "X2.9"], fix: null }],
    },
    {
      name: "fed through a relay's contact",
      build: screen()
        .part("relay", "K1", { poles: "make" })
        .path("X1.3", "K1.86")
        .path("K1.85", "XE1")
        .path("X1.1", "K1.30")
        .path("K1.87", "X2.9"),
      findings: [{ at: ["X1.1", "X2.9"], fix: null }],
    },
  ],
});
