import rule from "../../../src/rules/rules/data/data-lead-on-wrong-bus.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const vehicle = () =>
  build().vehicle("X1", {
    "1": "k-line",
    "2": "lin",
    "3": "can-high",
    "4": "can-low",
    "5": "second-can-high",
    "6": "second-can-low",
  });
const module = () =>
  vehicle().module("A1", { rows: { H: "can-high", L: "can-low", B: "lin", D: "data", S: "speed" } });

testRule(rule, {
  silent: [
    { name: "LIN to LIN", build: module().wire("X1.2", "A1.B") },
    { name: "a lead that is only called data", build: module().wire("X1.1", "A1.D") },
    {
      name: "the module on the second bus",
      build: module().wire("X1.5", "A1.H").wire("X1.6", "A1.L"),
    },
    { name: "keys by data", build: vehicle().unit("X2", { "1": "steering-key-1" }).wire("X1.2", "X2.1") },
    {
      name: "one speaker line of the drawing on no bus",
      build: module().wire("X1.3", "A1.H").wire("X1.4", "A1.L").wire("X1.2", "A1.B"),
    },
  ],
  found: [
    {
      name: "LIN on the K line",
      build: module().path("X1.1", "XJ1", "A1.B"),
      findings: [{ at: ["A1.B", "X1.1"], says: "different buses", fix: null }],
    },
    {
      name: "LIN on a CAN lead, beside the right ones",
      build: module().wire("X1.3", "A1.H").wire("X1.4", "A1.L").wire("X1.4", "A1.B"),
      findings: [{ at: ["A1.B", "A1.L", "X1.4"], fix: null }],
    },
    {
      name: "a speaker's lead",
      build: vehicle().unit("X2", { "1": "speaker-front-left-plus" }).wire("X1.3", "X2.1"),
      findings: [{ at: ["X1.3", "X2.1"], says: "no data lead", fix: null }],
    },
    {
      name: "an input that wants a feed",
      build: vehicle().unit("X2", { "1": "illumination takes" }).wire("X1.2", "X2.1"),
      findings: [{ at: ["X1.2", "X2.1"], fix: null }],
    },
    {
      name: "a lamp behind a fuse and a switch",
      build: vehicle()
        .part("load", "E1", { type: "lamp", function: "work-lamp" })
        .path("X1.3", "F1", "S1", "E1.+"),
      findings: [{ at: ["E1.+", "X1.3"], says: "no data lead", fix: null }],
    },
    {
      name: "both buses of the vehicle in one joint",
      build: module().wire("X1.3", "A1.H").wire("X1.4", "A1.L").wire("X1.3", "X1.5"),
      findings: [{ at: ["X1.3", "X1.5"], says: "two buses of one box", fix: null }],
    },
    {
      name: "one lead from each of two buses",
      build: module().wire("X1.5", "A1.H").wire("X1.4", "A1.L"),
      findings: [{ at: ["A1.H", "A1.L", "X1.4", "X1.5"], says: "one lead from each", fix: null }],
    },
  ],
});
