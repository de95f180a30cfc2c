import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-where-loom-flexes.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "a still run", build: lamp(SEALED).run("B1", { hinge: "none" }, ["W1", "W2"]) },
    { name: "nobody has said", build: lamp(SEALED).run("B1", { zone: "door" }, ["W1", "W2"]) },
    {
      name: "one of its leads goes on across the hinge",
      build: lamp(SEALED)
        .run("B1", { hinge: "none" }, ["W1", "W2"])
        .run("B2", { hinge: "twists-along" }, ["W2"]),
    },
    {
      name: "its two leads meet where one run ends",
      build: lamp(SEALED).run("B1", { hinge: "twists-along" }, ["W1"]).run("B2", {}, ["W2"]),
    },
    {
      name: "both leads lie in a still run too",
      build: lamp(SEALED).run("B1", {}, ["W1", "W2"]).run("B2", { hinge: "bends-across" }, ["W1", "W2"]),
    },
  ],
  found: [
    {
      name: "twists along",
      build: lamp(SEALED).run("B1", { hinge: "twists-along", from: "pillar", to: "door" }, ["W1", "W2"]),
      findings: [{ at: ["XJ1"], says: "B1 (pillar to door)", fix: null }],
    },
    {
      name: "bends across, and goes on",
      build: lamp(SEALED).run("B1", { hinge: "bends-across" }, ["W1", "W2"]).run("B2", {}, ["W2"]),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
