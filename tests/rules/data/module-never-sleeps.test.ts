import rule from "../../../src/rules/rules/data/module-never-sleeps.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Known = Parameters<ReturnType<typeof build>["module"]>[1];
const module = (known: Known, feed = "constant-feed RD fuse:5") =>
  build()
    .vehicle("X1", { "6": "can-high", "14": "can-low", "16": feed })
    .module("A1", {
      role: "interface",
      rows: { H: "can-high", L: "can-low", B: "constant-feed takes" },
      ...known,
    });
const joined = (known: Known, feed?: string) =>
  module(known, feed).wire("X1.6", "A1.H").wire("X1.14", "A1.L").wire("X1.16", "A1.B");

testRule(rule, {
  silent: [
    { name: "it sleeps", build: joined({ sleeps: "yes" }) },
    { name: "nobody has said", build: joined({ sleeps: "unknown" }) },
    { name: "fed with the key", build: joined({ sleeps: "no" }, "ignition-feed fuse:5") },
    { name: "not on the bus", build: module({ sleeps: "no" }).wire("X1.16", "A1.B") },
  ],
  found: [
    {
      name: "at the diagnostic socket",
      build: joined({ sleeps: "no" }),
      findings: [{ at: ["A1"], says: "A1.B", fix: null }],
    },
    {
      name: "on LIN, by a receptacle and a fuse",
      build: build()
        .vehicle("X1", { "1": "lin", "2": "constant-feed fuse:15" })
        .module("A1", { sleeps: "no" })
        .receptacle("X2", "A1", { "1": "lin", "2": "constant-feed" })
        .wire("X1.1", "X2.1")
        .path("X1.2", "F1", "X2.2"),
      findings: [{ at: ["A1"], fix: null }],
    },
  ],
});
