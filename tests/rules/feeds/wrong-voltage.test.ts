import rule from "../../../src/rules/rules/feeds/wrong-voltage.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (least_V: number, most_V: number, volts: 6 | 12 | 24 = 12) =>
  build()
    .settings({ systemVoltage_V: volts })
    .part("supply", "G1", { voltage_V: volts })
    .part("load", "E1", { voltage_V: { least_V, most_V } })
    .path("G1.+", "F1", "E1.+")
    .path("E1.−", "XE1", "G1.−");
const V12 = { least_V: 10, most_V: 16 };

testRule(rule, {
  silent: [
    { name: "a lamp for 10 to 30 V", build: lamp(10, 30, 24) },
    { name: "12 V on a battery of 12.6 V", build: lamp(12, 12).change("G1", { voltage_V: 12.6 }) },
    {
      name: "behind a converter, whose output may be anything",
      build: lamp(10, 30, 24)
        .module("A1", { role: "charger", rows: { "1": "constant-feed", "2": "constant-feed gives" } })
        .module("A2", { voltage_V: V12, rows: { "1": "constant-feed" } })
        .path("F1", "A1.1")
        .path("A1.2", "A2.1"),
    },
    {
      name: "not fed yet",
      build: build()
        .settings({ systemVoltage_V: 24 })
        .module("A1", { voltage_V: V12, rows: { "1": "constant-feed" } }),
    },
    {
      name: "two batteries of 12 V in a row",
      build: build()
        .settings({ systemVoltage_V: 24 })
        .part("supply", "G1")
        .part("supply", "G2")
        .part("load", "E1", { voltage_V: { least_V: 20, most_V: 30 } })
        .path("G1.+", "G2.−")
        .path("G2.+", "F1", "E1.+")
        .path("E1.−", "XE1", "G1.−"),
    },
  ],
  found: [
    {
      name: "a 12 V unit in a 24 V truck, by its plug",
      build: build()
        .settings({ systemVoltage_V: 24 })
        .vehicle("X1", { "1": "constant-feed fuse:10" })
        .module("A1", { voltage_V: V12 })
        .receptacle("X2", "A1", { "1": "constant-feed" })
        .path("X1.1", "XJ1", "X2.1"),
      findings: [{ at: ["A1", "X2.1"], says: "A1 is made for 10 to 16 V", fix: null }],
    },
    {
      name: "a 24 V lamp on 12 V",
      build: lamp(20, 30),
      findings: [{ at: ["E1", "E1.+"], says: "of a 12 V system", fix: null }],
    },
    {
      name: "a factory camera for 6 V on 12 V",
      build: build()
        .part("supply", "G1")
        .module("A1", {
          role: "camera",
          voltage_V: { least_V: 5.5, most_V: 7 },
          rows: { "1": "camera-power" },
        })
        .path("G1.+", "F1", "S1", "A1.1"),
      findings: [{ at: ["A1", "A1.1"], fix: null }],
    },
    {
      name: "the battery and the settings differ",
      build: lamp(10, 30, 24).change("G1", { voltage_V: 12 }),
      findings: [{ at: ["G1"], says: "G1 gives 12 V, and the harness is set to a 24 V system", fix: null }],
    },
  ],
});
