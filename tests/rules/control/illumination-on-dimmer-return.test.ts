import rule from "../../../src/rules/rules/control/illumination-on-dimmer-return.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const dash = (line = "illumination OG/WH 0.5") =>
  build()
    .vehicle("X1", { "1": "illumination GY/RD fuse:5", "2": "dimmer-return GY/BN" })
    .unit("X2", { "4": line });

testRule(rule, {
  silent: [
    { name: "on the feed of the lamps", build: dash().wire("X1.1", "X2.4") },
    { name: "one that ground makes act", build: dash("illumination acts-on-ground").wire("X1.2", "X2.4") },
    {
      name: "a unit with both leads",
      build: build()
        .vehicle("X1", { "1": "illumination fuse:5", "2": "dimmer-return" })
        .unit("X2", { "4": "illumination", "5": "dimmer-return takes" })
        .wire("X1.1", "X2.4")
        .wire("X1.2", "X2.5"),
    },
    {
      name: "both tied to it: a danger speaks",
      build: dash().path("X1.1", "XJ1", "X1.2").path("XJ1", "X2.4"),
    },
    {
      name: "a dash lamp between the feed and the dimmer",
      build: dash()
        .part("load", "E1", { type: "lamp", function: "illumination" })
        .wire("X1.1", "E1.+")
        .wire("E1.−", "X1.2")
        .wire("X1.1", "X2.4"),
    },
    { name: "a person has left it out", build: dash("illumination spare").wire("X1.2", "X2.4") },
  ],
  found: [
    {
      name: "joined straight",
      build: dash().wire("X1.2", "X2.4"),
      findings: [{ at: ["X1.2", "X2.4"], says: "the ground side of a dimmer", fix: null }],
    },
    {
      name: "through a joint and a fuse, by a module's own contact",
      build: build()
        .vehicle("X1", { "2": "dimmer-return GY/BN" })
        .module("A1", { role: "display", rows: { ILL: "illumination takes" } })
        .path("X1.2", "XJ1", "F1", "A1.ILL"),
      findings: [{ at: ["X1.2", "A1.ILL"], fix: null }],
    },
    {
      name: "two inputs on it",
      build: dash().unit("X4", { "1": "illumination" }).path("X1.2", "X2.4", "X4.1"),
      findings: [
        { at: ["X1.2", "X2.4"], fix: null },
        { at: ["X1.2", "X4.1"], fix: null },
      ],
    },
  ],
});
