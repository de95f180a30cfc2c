import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/drilled-blind.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "somebody has looked", build: loom({ drilled: "looked-behind" }) },
    { name: "no hole", build: loom({ drilled: "no" }) },
    { name: "nobody has said", build: loom({}) },
    { name: "a run that no wire follows yet", build: loom({}).run("B2", { drilled: "blind" }, []) },
  ],
  found: [
    {
      name: "blind",
      build: loom({ drilled: "blind", from: "cabin", to: "engine bay" }),
      findings: [{ at: ["W1", "W2"], says: "B1 (cabin to engine bay)", fix: null }],
    },
    {
      name: "two runs with the same wires are told together",
      build: loom({ drilled: "blind" }).run("B2", { drilled: "blind" }, ["W1", "W2"]),
      findings: [{ at: ["W1", "W2"], says: "B1 and B2", fix: null }],
    },
    {
      name: "two runs with different wires",
      build: loom({ drilled: "blind" }).run("B2", { drilled: "blind" }, ["W2"]),
      findings: [
        { at: ["W1", "W2"], fix: null },
        { at: ["W2"], fix: null },
      ],
    },
  ],
});
