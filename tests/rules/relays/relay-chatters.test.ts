import rule from "../../../src/rules/rules/relays/relay-chatters.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .vehicle("X1", { "1": "ignition-feed fuse:10", "3": "ground" })
    .part("relay", "K1", { poles: "changeover", suppression: "resistor" })
    .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 2 })
    .wire("X1.1", "K1.30")
    .wire("K1.85", "X1.3")
    .wire("E1.−", "X1.3");

testRule(rule, {
  silent: [
    {
      name: "fed from before the contact",
      build: bench().path("X1.1", "S1", "K1.86").wire("K1.87a", "E1.+"),
    },
    { name: "at rest for good", build: bench().wire("K1.87a", "E1.+") },
    {
      name: "another relay's contact at rest",
      build: bench()
        .part("relay", "K2", { poles: "changeover" })
        .wire("X1.1", "K2.30")
        .path("X1.1", "S1", "K2.86")
        .wire("K2.85", "X1.3")
        .wire("K2.87a", "K1.86")
        .wire("K1.87", "E1.+"),
    },
  ],
  found: [
    {
      name: "fed through its own contact",
      build: bench().wire("K1.87a", "K1.86").wire("K1.87", "E1.+"),
      findings: [{ at: ["K1"], says: "cuts its own coil", fix: null }],
    },
    {
      name: "through a switch, as long as it is closed",
      build: bench().path("K1.87a", "S1", "XJ1", "K1.86").wire("K1.87", "E1.+"),
      findings: [{ at: ["K1"], says: "switches on", fix: null }],
    },
  ],
});
