import rule from "../../../src/rules/rules/trailer/trailer-lamps-without-relay.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const towing = (how = "", fuse = 10) =>
  build()
    .vehicle("X1", {
      "1": `indicator-left fuse:${fuse} ${how}`,
      "4": `indicator-right fuse:${fuse} ${how}`,
      "6": `stop-lamp fuse:${fuse} ${how}`,
    })
    .unit("X2", { "1": "indicator-left 1.75A", "4": "indicator-right 1.75A", "6": "stop-lamp 3.5A" });
const all = (harness: ReturnType<typeof towing>) =>
  harness.wire("X1.1", "X2.1").wire("X1.4", "X2.4").wire("X1.6", "X2.6");
const WATCHED = { vehicle: { highVoltage: "unknown", lamps: "watched" } } as const;

testRule(rule, {
  silent: [
    { name: "plain lamps, fuses that bear it", build: all(towing()) },
    { name: "the chart says that these are plain", build: all(towing("plain")).settings(WATCHED) },
    {
      name: "the van's own socket for a trailer",
      build: build()
        .settings(WATCHED)
        .vehicle("X1", { "1": "indicator-left fuse:10", "4": "indicator-right" }, { shell: "ISO 11446" })
        .unit("X2", { "1": "indicator-left 1.75A", "4": "indicator-right 1.75A" }, { shell: "ISO 1724" })
        .wire("X1.1", "X2.1")
        .wire("X1.4", "X2.4"),
    },
    {
      name: "a relay for the lamp",
      build: towing("watched")
        .vehicle("X3", { "1": "constant-feed fuse:20" })
        .part("relay", "K1", { poles: "make" })
        .wire("X1.6", "K1.86")
        .wire("K1.85", "XE1")
        .path("X3.1", "F1", "K1.30")
        .wire("K1.87", "X2.6"),
    },
    {
      name: "a bypass module",
      build: towing("watched")
        .module("A1", { role: "trailer", rows: { I: "stop-lamp takes", O: "stop-lamp gives" } })
        .wire("X1.6", "A1.I")
        .wire("A1.O", "X2.6"),
    },
    {
      name: "new lamps of one side of the vehicle itself",
      build: build()
        .vehicle("X1", { "1": "indicator-left watched", "2": "tail-left watched" })
        .unit("X2", { "1": "indicator-left 1.75A", "2": "tail-left 0.4A" })
        .wire("X1.1", "X2.1")
        .wire("X1.2", "X2.2"),
    },
  ],
  found: [
    {
      name: "outputs that are watched",
      build: all(towing("watched")),
      findings: [{ at: ["X1.1", "X1.4", "X1.6", "X2", "X2.1", "X2.4", "X2.6"], says: "watched", fix: null }],
    },
    {
      name: "a vehicle that watches its lamps, through joints and a diode",
      build: towing()
        .settings(WATCHED)
        .part("diode", "V1")
        .path("X1.1", "XJ1", "X2.1")
        .path("X1.6", "V1", "X2.6"),
      findings: [{ at: ["X1.1", "X1.6", "X2", "X2.1", "X2.6"], fix: null }],
    },
    {
      name: "more than the vehicle's fuse bears",
      build: towing("plain", 3).wire("X1.1", "X2.1").wire("X1.6", "X2.6"),
      findings: [{ at: ["X1.6", "X2", "X2.6"], says: "3.5 A behind a fuse of 3 A", fix: null }],
    },
  ],
});
