import rule from "../../../src/rules/rules/joints/several-joints-in-lead.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const chain = (...joints: readonly string[]) =>
  build()
    .vehicle("X1", { "1": "illumination" })
    .unit("X2", { "1": "illumination" })
    .path("X1.1", ...joints, "X2.1");

testRule(rule, {
  silent: [
    { name: "one", build: chain("XJ1") },
    { name: "two", build: chain("XJ1", "XJ2") },
    {
      name: "three where the shop allows them",
      build: chain("XJ1", "XJ2", "XJ3").rules({ limits: [{ name: "jointsInLead", value: 3 }] }),
    },
    {
      name: "three joints, two in each lead",
      build: chain("XJ1", "XJ2")
        .unit("X3", { "1": "illumination" })
        .path("XJ1.2", "XJ3", "X3.1")
        .unit("X4", { "1": "illumination" })
        .path("XJ1.1", "X4.1")
        .rules({ limits: [{ name: "jointsInLead", value: 3 }] }),
    },
    {
      name: "a terminal block between",
      build: build()
        .part("splice", "XJ2", { method: "terminal-block" })
        .vehicle("X1", { "1": "illumination" })
        .unit("X2", { "1": "illumination" })
        .path("X1.1", "XJ1", "XJ2", "XJ3", "X2.1"),
    },
    {
      name: "a fuse parts the lead",
      build: build()
        .vehicle("X1", { "1": "illumination" })
        .unit("X2", { "1": "illumination" })
        .path("X1.1", "XJ1", "XJ2", "F1", "XJ3", "X2.1"),
    },
  ],
  found: [
    {
      name: "three",
      build: chain("XJ1", "XJ2", "XJ3"),
      findings: [
        { at: ["XJ1", "XJ2", "XJ3"], says: "The lead from X1.1 to X2.1 goes through 3 joints", fix: null },
      ],
    },
    {
      name: "two where aircraft practice is followed",
      build: chain("XJ1", "XJ2").rules({ limits: [{ name: "jointsInLead", value: 1 }] }),
      findings: [{ at: ["XJ1", "XJ2"], says: "1 is the most", fix: null }],
    },
    {
      name: "three with a branch in the middle",
      build: chain("XJ1", "XJ2", "XJ3").unit("X3", { "1": "illumination" }).wire("XJ2.2", "X3.1"),
      findings: [{ at: ["XJ1", "XJ2", "XJ3"], fix: null }],
    },
  ],
});
