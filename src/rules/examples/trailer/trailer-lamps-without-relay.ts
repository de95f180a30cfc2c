import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const towing = () =>
  build()
    .settings({ vehicle: { highVoltage: "unknown", lamps: "watched" } })
    .vehicle("X1", {
      "1": "indicator-left YE 1 fuse:10",
      "4": "indicator-right GN 1 fuse:10",
      "8": "ground BN 2.5",
      "9": "constant-feed RD 2.5 fuse:20",
    })
    .unit(
      "X2",
      { "1": "indicator-left YE 1.5 1.75A", "3": "ground WH 2.5", "4": "indicator-right GN 1.5 1.75A" },
      { shell: "ISO 1724" },
    )
    .wire("X1.8", "X2.3");
const bypass = () =>
  towing()
    .module("A1", {
      role: "trailer",
      rows: {
        "+": "constant-feed takes",
        "-": "ground takes",
        LI: "indicator-left takes",
        RI: "indicator-right takes",
        LO: "indicator-left gives",
        RO: "indicator-right gives",
      },
    })
    .wire("X1.9", "A1.+")
    .wire("A1.-", "X1.8")
    .wire("X1.1", "A1.LI")
    .wire("X1.4", "A1.RI")
    .wire("A1.LO", "X2.1")
    .wire("A1.RO", "X2.4");

export default defineExample({
  page: [
    "Many vehicles watch each of their lamps, and know by its current that it burns. A trailer's lamp on the same lead doubles that current, and the controller sees a fault.",
    "A bypass module listens to the vehicle's lamps and lights the trailer's from a fused feed of its own. Where the vehicle's lamps are plain, it is their fuse that sets the limit.",
  ],
  trips: () => towing().wire("X1.1", "X2.1").wire("X1.4", "X2.4").wire("X1.9", "XC1"),
  quiet: () => bypass(),
  quietBecause: "The lamps only drive the bypass module, which has its own feed.",
});
