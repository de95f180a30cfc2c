import rule from "../../../src/rules/rules/protection/wire-size-unknown.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (missing: readonly string[] = []) => {
  const harness = build()
    .part("supply", "G1")
    .part("load", "E1")
    .part("load", "E2")
    .path("E1.−", "XE1", "G1.−")
    .path("E2.−", "XE1");
  for (const [name, from, to] of [
    ["W11", "G1.+", "F1"],
    ["W12", "F1", "XJ1"],
    ["W13", "XJ1", "E1.+"],
    ["W14", "XJ1", "E2.+"],
  ] as const)
    harness.wire(from, to, "RD", { designation: name, area_mm2: missing.includes(name) ? "unknown" : 2.5 });
  return harness;
};

testRule(rule, {
  silent: [
    { name: "all are stated", build: lamp() },
    { name: "none is stated yet", build: lamp(["W11", "W12", "W13", "W14"]) },
    { name: "half are stated: somebody is at work", build: lamp(["W11", "W12"]) },
    {
      name: "returns and signals may do without",
      build: lamp()
        .vehicle("X1", { "1": "illumination GY" })
        .unit("X2", { "1": "illumination" })
        .wire("X1.1", "X2.1"),
    },
    {
      name: "the chart states the size of its lead",
      build: lamp()
        .vehicle("X1", { "1": "constant-feed RD 1.5" })
        .unit("X2", { "1": "constant-feed" })
        .wire("X1.1", "X2.1"),
    },
  ],
  found: [
    {
      name: "one of four",
      build: lamp(["W13"]),
      findings: [
        {
          at: ["W13"],
          says: "The size of W13 (red) is not stated, while 3 other power leads have theirs",
          fix: null,
        },
      ],
    },
    { name: "the lead before the fuse", build: lamp(["W11"]), findings: [{ at: ["W11"], fix: null }] },
  ],
});
