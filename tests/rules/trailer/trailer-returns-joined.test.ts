import rule from "../../../src/rules/rules/trailer/trailer-returns-joined.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const coupling = () =>
  build().vehicle(
    "X1",
    { "3": "ground-lamps", "11": "ground-switched", "13": "ground-constant" },
    { shell: "ISO 11446" },
  );
const lamps = () =>
  coupling()
    .part("load", "E1", { type: "lamp", function: "tail-left" })
    .part("load", "E2", { type: "lamp", function: "interior-lamp" });

testRule(rule, {
  silent: [
    { name: "each on its own", build: lamps().wire("E1.−", "X1.3").wire("E2.−", "X1.13") },
    { name: "two loads on one return", build: lamps().wire("E1.−", "X1.3").wire("E2.−", "X1.3") },
    {
      name: "towards the vehicle's body they come together",
      build: build()
        .unit("X2", { "3": "ground-lamps", "11": "ground-switched", "13": "ground-constant" })
        .wire("X2.3", "XE1")
        .wire("X2.11", "XE1")
        .wire("X2.13", "XE1"),
    },
    { name: "nothing joined", build: coupling() },
  ],
  found: [
    {
      name: "in one joint",
      build: lamps().path("E1.−", "XJ1", "X1.3").path("E2.−", "XJ1", "X1.13"),
      findings: [{ at: ["X1.13", "X1.3"], says: "are joined", fix: null }],
    },
    {
      name: "at a stud of the frame",
      build: coupling().wire("X1.11", "XE1").wire("X1.3", "XE1"),
      findings: [{ at: ["X1.11", "X1.3"], fix: null }],
    },
    {
      name: "behind an extension, two on one",
      build: coupling()
        .unit("X2", { "11": "ground-switched", "13": "ground-constant" })
        .wire("X1.11", "X2.11")
        .wire("X1.11", "X2.13"),
      findings: [{ at: ["X1.11", "X2.11", "X2.13"], fix: null }],
    },
    {
      name: "the lamps' return is called plain ground",
      build: build().vehicle("X1", { "3": "ground", "13": "ground-constant" }).path("X1.3", "XJ1", "X1.13"),
      findings: [{ at: ["X1.13", "X1.3"], fix: null }],
    },
  ],
});
