import rule from "../../../src/rules/rules/relays/relay-contacts-mixed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = (poles: "make" | "changeover" = "changeover") =>
  build()
    .vehicle("X1", {
      "1": "constant-feed fuse:20",
      "2": "ignition-feed fuse:10",
      "3": "ground",
      "4": "starter-signal",
    })
    .unit("X2", { "5": "amplifier-turn-on" })
    .part("relay", "K1", { poles, suppression: "resistor" })
    .part("switch", "S1")
    .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 4 })
    .wire("E1.−", "X1.3")
    .wire("K1.85", "X1.3");
const bySwitch = () => bench().wire("X1.1", "K1.30").path("X1.1", "S1", "K1.86");

testRule(rule, {
  silent: [
    { name: "on 87", build: bySwitch().wire("K1.87", "E1.+") },
    {
      name: "changes over between two sources",
      build: bench().path("X2.5", "K1.86").wire("X1.1", "K1.87a").wire("X1.2", "K1.87").wire("K1.30", "E1.+"),
    },
    {
      name: "shed while the starter turns",
      build: bench().wire("X1.2", "K1.30").wire("X1.4", "K1.86").wire("K1.87a", "E1.+"),
    },
    {
      name: "a make contact the other way round is the same contact",
      build: bench("make").wire("X1.1", "K1.87").path("X1.1", "S1", "K1.86").wire("K1.30", "E1.+"),
    },
    {
      name: "two lamps, one or the other",
      build: bySwitch()
        .part("load", "E2", { type: "lamp", function: "interior-lamp" })
        .wire("K1.87", "E1.+")
        .wire("K1.87a", "E2.+"),
    },
  ],
  found: [
    {
      name: "the feed on 87a, the lamp on 87, and 30 free",
      build: bench().path("X1.1", "F1", "K1.87a").path("X1.2", "S1", "K1.86").wire("K1.87", "E1.+"),
      findings: [
        { at: ["K1.30", "K1.87a"], says: "never reaches E1.+", fix: "Move the lead at 87a of K1 to 30" },
      ],
    },
    {
      name: "the feed on 87 and the lamp on 87a",
      build: bench().wire("X1.1", "K1.87").path("X1.2", "S1", "K1.86").wire("K1.87a", "E1.+"),
      findings: [{ at: ["K1.30", "K1.87"], says: "instead of 30", fix: null }],
    },
    {
      name: "the lamp on 87a, a switch on the coil",
      build: bySwitch().wire("K1.87a", "E1.+"),
      findings: [{ at: ["K1.87a"], says: "E1.+ hangs on 87a", fix: null }],
    },
    {
      name: "an amplifier on 87a, behind a fuse, pulled by a unit",
      build: bench()
        .module("A1", { role: "amplifier", rows: { B: "constant-feed takes" } })
        .wire("X1.1", "K1.30")
        .wire("X2.5", "K1.86")
        .path("K1.87a", "F1", "A1.B"),
      findings: [{ at: ["K1.87a"], fix: null }],
    },
    {
      name: "the coil on the ignition: meant so, perhaps",
      build: bench().wire("X1.1", "K1.30").wire("X1.2", "K1.86").wire("K1.87a", "E1.+"),
      findings: [{ at: ["K1.87a"], severity: "weak", fix: null }],
    },
    {
      name: "the feed on 87a and the lamp on 30",
      build: bench().path("X1.1", "F1", "K1.87a").path("X1.2", "S1", "K1.86").path("K1.30", "XJ1", "E1.+"),
      findings: [{ at: ["K1.30", "K1.87a"], says: "instead of 30", fix: null }],
    },
  ],
});
