import rule from "../../../src/rules/rules/joints/tracers-hard-to-tell.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const plug = (one: string, other: string, second = "reverse") =>
  build().vehicle("X1", { "1": `illumination ${one}`, "2": `${second} ${other}` });

testRule(rule, {
  silent: [
    { name: "tracers that anyone can tell", build: plug("GN/VT", "GN/WH") },
    { name: "another base", build: plug("GN/VT", "BU/BN") },
    { name: "no tracer", build: plug("VT", "BN") },
    { name: "two leads for the same thing", build: plug("GN/VT", "GN/BN", "illumination") },
    {
      name: "both are marked",
      build: plug("GN/VT", "GN/BN")
        .wire("X1.1", "XC1", null, { label: "illumination" })
        .wire("X1.2", "XC2", null, { label: "reverse" }),
    },
    {
      name: "on two plugs",
      build: build().vehicle("X1", { "1": "illumination GN/VT" }).vehicle("X2", { "1": "reverse GN/BN" }),
    },
  ],
  found: [
    {
      name: "violet and brown",
      build: plug("GN/VT", "GN/BN"),
      findings: [{ at: ["X1.1", "X1.2"], says: "green with a violet tracer", fix: null }],
    },
    {
      name: "grey and white, by the wires that are drawn",
      build: plug("BK", "BK").wire("X1.1", "XC1", "BU/GY").wire("X1.2", "XC2", "BU/WH"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
  ],
});
