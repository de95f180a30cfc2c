import rule from "../../../src/rules/rules/control/turn-on-overloaded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const source = (current = "") =>
  build().module("A1", { role: "receiver", rows: { REM: `amplifier-turn-on gives ${current}` } });
const amplifiers = (count: number, amps: string) => {
  const made = source();
  for (let at = 2; at < 2 + count; at++) {
    made.module(`A${at}`, { role: "amplifier", rows: { REM: `amplifier-turn-on takes ${amps}` } });
    made.wire("A1.REM", `A${at}.REM`);
  }
  return made;
};
const relays = (count: number, current: string) => {
  const made = source(current);
  for (let at = 1; at <= count; at++) {
    made.part("relay", `K${at}`, { poles: "make", coil_ohm: 80 });
    made.wire("A1.REM", `K${at}.86`).path(`K${at}.85`, `XE${at}`);
  }
  return made;
};

testRule(rule, {
  silent: [
    { name: "five amplifiers that draw little", build: amplifiers(5, "0.02A") },
    { name: "amplifiers of which no current is stated", build: amplifiers(6, "") },
    { name: "one relay", build: relays(1, "") },
    {
      name: "an ampere where the chart gives one",
      build: source("1A").part("load", "E1", { current_A: 1 }).wire("A1.REM", "E1.+"),
    },
    {
      name: "a fan on the contact of the relay, fed by the battery",
      build: relays(1, "0.3A")
        .part("supply", "G1")
        .part("load", "E1", { type: "motor", current_A: 3 })
        .path("G1.+", "F1", "K1.30")
        .wire("K1.87", "E1.+"),
    },
    {
      name: "a feed helps out: that they are tied is told elsewhere",
      build: source("0.3A")
        .vehicle("X1", { "1": "switched-feed fuse:5" })
        .part("load", "E1", { current_A: 2 })
        .path("A1.REM", "XJ1", "E1.+")
        .wire("XJ1", "X1.1"),
    },
    {
      name: "three coils of 24 V draw half",
      build: relays(3, "0.3A")
        .settings({ systemVoltage_V: 24 })
        .change("K1", { coil_ohm: 320 })
        .change("K2", { coil_ohm: 320 })
        .change("K3", { coil_ohm: 320 }),
    },
  ],
  found: [
    {
      name: "a fan",
      build: source().part("load", "E1", { type: "motor", current_A: 0.8 }).path("A1.REM", "XJ1", "E1.+"),
      findings: [{ at: ["A1.REM", "E1.+"], says: "0.8 A to E1.+", fix: null }],
    },
    {
      name: "four relays on a silent chart",
      build: relays(4, ""),
      findings: [{ at: ["A1.REM", "K1.86", "K2.86", "K3.86", "K4.86"], says: "0.6 A", fix: null }],
    },
    {
      name: "two relays where the chart says 0.2 A, turned about",
      build: source("0.2A")
        .part("relay", "K1", { poles: "make", suppression: "none" })
        .part("relay", "K2", { poles: "make" })
        .path("A1.REM", "F1", "K1.85")
        .wire("K1.85", "K2.86"),
      findings: [
        { at: ["A1.REM", "K1.85", "K2.86"], severity: "fault", says: "Its chart allows 0.2 A", fix: null },
      ],
    },
    {
      name: "by the shop's own limit",
      build: amplifiers(4, "0.05A").rules({
        profile: "shop",
        shop: "Thistledown workshop",
        limits: [{ name: "turnOn_A", value: 0.15 }],
      }),
      findings: [
        {
          at: ["A1.REM", "A2.REM", "A3.REM", "A4.REM", "A5.REM"],
          says: "the limit of Thistledown workshop",
          fix: null,
        },
      ],
    },
    {
      name: "a camera and an amplifier on the antenna's lead, through mated couplers",
      build: build()
        .unit("X2", { "5": "antenna-power 0.3A" })
        .vehicle("X1", { "1": "antenna-power 0.35A" })
        .unit("X3", { "1": "unknown" })
        .mate("X1", "X3")
        .wire("X2.5", "X3.1"),
      findings: [{ at: ["X2.5", "X1.1"], severity: "fault", fix: null }],
    },
  ],
});
