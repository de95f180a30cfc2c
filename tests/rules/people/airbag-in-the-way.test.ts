import rule from "../../../src/rules/rules/people/airbag-in-the-way.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const loom = () => build().vehicle("X1", { "1": "mute" }).unit("X2", { "1": "mute" }).wire("X1.1", "X2.1");

testRule(rule, {
  silent: [
    { name: "a run that comes near nothing", build: loom().run("R1", { zone: "cabin" }, ["W1"]) },
    { name: "a run near heat is another rule's", build: loom().run("R1", { near: ["heat"] }, ["W1"]) },
    { name: "no wire lies in it", build: loom().run("R1", { near: ["airbag"] }, []) },
    { name: "a box elsewhere", build: build().module("A1", { near: ["trim-screws"] }) },
  ],
  found: [
    {
      name: "a run",
      build: loom().run("R1", { near: ["airbag", "trim-screws"] }, ["W1"]),
      findings: [{ at: ["W1"], says: "Run R1 comes close to an airbag; W1 is in it", fix: null }],
    },
    {
      name: "a box",
      build: build().module("A1", { near: ["airbag"] }),
      findings: [{ at: ["A1"], fix: null }],
    },
  ],
});
