import rule from "../../../src/rules/rules/relays/relay-contact-unfused.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .part("supply", "G1")
    .vehicle("X1", { "1": "constant-feed no-fuse", "2": "constant-feed fuse:20", "3": "constant-feed" })
    .part("relay", "K1", { poles: "make" })
    .part("fuse", "F1", { rating_A: 10 })
    .part("load", "E1", { type: "lamp", function: "work-lamp" });

testRule(rule, {
  silent: [
    { name: "a fuse before 30", build: bench().path("G1.+", "F1", "K1.30").wire("K1.87", "E1.+") },
    { name: "the vehicle's own fuse", build: bench().wire("X1.2", "K1.30").path("K1.87", "F1", "E1.+") },
    { name: "the chart does not say", build: bench().wire("X1.3", "K1.30").path("K1.87", "F1", "E1.+") },
    { name: "no fuse at all: another rule", build: bench().wire("G1.+", "K1.30").wire("K1.87", "E1.+") },
    {
      name: "the fuse is close to the battery, contact or no contact",
      build: bench()
        .wire("G1.+", "K1.30", "RD", { length_m: 0.1 })
        .wire("K1.87", "F1", "RD", { length_m: 0.1 })
        .wire("F1", "E1.+"),
    },
  ],
  found: [
    {
      name: "a fuse behind the contact",
      build: bench().wire("G1.+", "K1.30").path("K1.87", "F1", "E1.+"),
      findings: [{ at: ["G1.+", "K1.30"], says: "behind the contact", fix: null }],
    },
    {
      name: "a feed of the vehicle with no fuse, through a joint and a switch",
      build: bench().path("X1.1", "XJ1", "S1", "K1.30").path("K1.87", "F1", "E1.+"),
      findings: [{ at: ["K1.30", "X1.1"], fix: null }],
    },
    {
      name: "two metres before the fuse",
      build: bench()
        .wire("G1.+", "K1.30", "RD", { length_m: 2 })
        .wire("K1.87", "F1", "RD", { length_m: 0.1 })
        .wire("F1", "E1.+"),
      findings: [{ at: ["G1.+", "K1.30"], fix: null }],
    },
  ],
});
