import rule from "../../../src/rules/rules/trailer/trailer-without-ground.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const trailer = (shell: string | null = "ISO 1724") =>
  build()
    .vehicle("X1", { "1": "indicator-left", "4": "indicator-right", "3": "ground" }, { shell })
    .part("load", "E1", { type: "lamp", function: "indicator-left" })
    .wire("X1.1", "E1.+");
const socket = () =>
  build()
    .vehicle("X1", { "1": "indicator-left", "4": "indicator-right", "8": "ground" })
    .unit("X2", { "1": "indicator-left", "4": "indicator-right", "3": "ground" })
    .wire("X1.1", "X2.1")
    .wire("X1.4", "X2.4");

testRule(rule, {
  silent: [
    { name: "back by the coupling", build: trailer().wire("E1.−", "X1.3") },
    { name: "by the frame and the coupling", build: trailer().path("E1.−", "XE1").wire("XE1", "X1.3") },
    {
      name: "the vehicle's own rear: its body is the ground",
      build: trailer(null).wire("E1.−", "XE1"),
    },
    { name: "a socket on the vehicle's ground", build: socket().wire("X2.3", "X1.8") },
    { name: "a socket on a stud", build: socket().wire("X2.3", "XE1") },
    {
      name: "no lamp joined yet",
      build: build().vehicle("X1", { "1": "indicator-left", "3": "ground" }, { shell: "ISO 1724" }),
    },
  ],
  found: [
    {
      name: "grounded to the trailer's frame alone",
      build: trailer().wire("E1.−", "XE1"),
      findings: [{ at: ["X1", "X1.3"], says: "leads nowhere", fix: null }],
    },
    {
      name: "a socket whose ground is left",
      build: socket(),
      findings: [{ at: ["X2", "X2.3"], fix: null }],
    },
    {
      name: "a socket whose ground ends under a cap",
      build: socket().wire("X2.3", "XC1"),
      findings: [{ at: ["X2", "X2.3"], fix: null }],
    },
  ],
});
