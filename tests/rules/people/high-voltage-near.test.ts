import rule from "../../../src/rules/rules/people/high-voltage-near.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const loom = () => build().vehicle("X1", { "1": "mute" }).unit("X2", { "1": "mute" }).wire("X1.1", "X2.1");
const electric = { vehicle: { highVoltage: "yes", lamps: "unknown" } } as const;

testRule(rule, {
  silent: [
    {
      name: "an electric van, and the run is elsewhere",
      build: loom().settings(electric).run("R1", { zone: "cabin" }, ["W1"]),
    },
    { name: "near an airbag is another rule's", build: loom().run("R1", { near: ["airbag"] }, ["W1"]) },
    { name: "nothing lies in the run", build: loom().run("R1", { near: ["high-voltage"] }, []) },
  ],
  found: [
    {
      name: "a run",
      build: loom().run("R1", { near: ["high-voltage"] }, ["W1"]),
      findings: [{ at: ["W1"], says: "Run R1 comes close to high voltage", fix: null }],
    },
    {
      name: "a box",
      build: build().module("A1", { near: ["high-voltage"] }),
      findings: [{ at: ["A1"], fix: null }],
    },
  ],
});
