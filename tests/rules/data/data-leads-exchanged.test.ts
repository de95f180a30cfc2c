import rule from "../../../src/rules/rules/data/data-leads-exchanged.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .module("A1", { rows: { "+": "usb-data-plus", "-": "usb-data-minus" } })
    .module("A2", { rows: { "+": "usb-data-plus", "-": "usb-data-minus" } });
const old = () =>
  build()
    .vehicle("X1", { "2": "j1850-plus", "10": "j1850-minus" })
    .unit("X2", { "2": "j1850-plus", "10": "j1850-minus" });

testRule(rule, {
  silent: [
    { name: "plus to plus", build: boxes().wire("A1.+", "A2.+").wire("A1.-", "A2.-") },
    { name: "a socket that only charges", build: boxes().wire("A2.+", "A2.-") },
    { name: "J1850 with its plus alone", build: old().wire("X1.2", "X2.2") },
  ],
  found: [
    {
      name: "USB crosswise",
      build: boxes().wire("A1.+", "A2.-").wire("A1.-", "A2.+"),
      findings: [{ at: ["A1.+", "A1.-", "A2.+", "A2.-"], fix: "Exchange the two leads at A1.+ and A1.-" }],
    },
    {
      name: "J1850 crosswise",
      build: old().wire("X1.2", "X2.10").wire("X1.10", "X2.2"),
      findings: [{ at: ["X1.10", "X1.2", "X2.10", "X2.2"], fix: "Exchange the two leads at X2.10 and X2.2" }],
    },
  ],
});
