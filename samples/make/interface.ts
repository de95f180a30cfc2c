import type { Harness } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { finish, rowsOf, titleBlock, withCable } from "./workshop.ts";

const SWITCHES = [
  ["1", "on", "on", "van of this family"],
  ["2", "off", "off", "van of the older family"],
  ["3", "on", "on", "steering-wheel keys by resistance"],
  ["4", "off", "off", "steering-wheel keys by data"],
  ["5", "off", "either", "beep at reverse"],
  ["6", "on", "on", "accessory output holds ten minutes"],
  ["7", "off", "off", "line output"],
  ["8", "off", "off", "maker's test: never on"],
] as const;

/**
 * A van whose radio bay has data instead of a switched feed: an interface module reads the bus and gives the
 * receiver what it wants. Its two receptacles are of one shell, so a key and a colour keep them apart.
 */
export function interfaceModule(): Harness {
  const build = new Build()
    .vehicle(
      "X1",
      {
        "1": "constant-feed RD 1.5 fuse:15",
        "2": "ground BN 1.5",
        "3": "can-high OG/GN 0.35",
        "4": "can-low OG/BN 0.35",
        "5": "steering-key-1 GY/YE 0.35 gives",
        "6": "sense-ground GY/BN 0.35",
        "7": "antenna-power BU 0.5 0.15A",
      },
      {
        name: "radio bay, no switched feed",
        shell: "bay 8",
        gender: "receptacle",
        rows: rowsOf(4, 3),
        chart: {
          title: "Wren the younger, chassis book, sheet 12",
          edition: "1",
          date: "2024-02-01",
          measured: true,
        },
      },
    )
    .module("A1", {
      name: "radio interface",
      role: "interface",
      outputs: "none",
      wakes: "by-signal",
      standby_A: 0.003,
      switches: SWITCHES.map(([label, position, wanted, meaning]) => ({ label, position, wanted, meaning })),
    })
    .receptacle(
      "X2",
      "A1",
      {
        "1": "constant-feed RD 1.5 0.3A",
        "2": "ground BK 1.5",
        "3": "can-high OG 0.35",
        "4": "can-low BN 0.35",
        "5": "steering-key-1 GY 0.35 takes",
        "6": "sense-ground GY/BK 0.35 takes",
      },
      {
        name: "vehicle side",
        shell: "interface 6",
        keying: "black, key left",
        gender: "plug",
        rows: rowsOf(3, 3),
      },
    )
    .receptacle(
      "X3",
      "A1",
      {
        "1": "switched-feed RD 0.75 gives 2A fuse:3",
        "2": "illumination OG/WH 0.35 gives",
        "3": "reverse VT/WH 0.35 gives spare",
        "4": "speed PK 0.35 gives",
        "5": "parking-brake GN/WH 0.35 gives",
        "6": "steering-key-2 BN/YE 0.35 gives",
      },
      {
        name: "receiver side",
        shell: "interface 6",
        keying: "grey, key right",
        gender: "plug",
        rows: rowsOf(3, 3),
      },
    )
    .module("A2", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      wakes: "by-lead",
      standby_A: 0.004,
    })
    .receptacle(
      "X4",
      "A2",
      {
        "1": "constant-feed YE 1.5 8A",
        "2": "switched-feed RD 0.75 0.1A",
        "3": "ground BK 1.5",
        "4": "illumination OG/WH 0.5 0.02A",
        "5": "speed PK 0.5",
        "6": "parking-brake GN/WH 0.5",
        "7": "steering-key-2 BN/YE 0.5",
        "8": "antenna-power BU 0.5",
      },
      { name: "receiver, power", shell: "receiver 8", gender: "plug", rows: rowsOf(4, 4) },
    )
    .part("splice", "XJ1", { method: "solder-and-sleeve", cover: "adhesive-sleeve" })
    .part("splice", "XJ2", { method: "solder-and-sleeve", cover: "adhesive-sleeve" });
  build
    .wire("X1.1", "XJ1.1")
    .wire("XJ1.2", "X2.1", "RD")
    .wire("XJ1.2", "X4.1", "YE")
    .wire("X1.2", "XJ2.1")
    .wire("XJ2.2", "X2.2", "BK")
    .wire("XJ2.2", "X4.3", "BK")
    .wire("X1.3", "X2.3")
    .wire("X1.4", "X2.4")
    .wire("X1.5", "X2.5")
    .wire("X1.6", "X2.6")
    .wire("X1.7", "X4.8")
    .wire("X3.1", "X4.2")
    .wire("X3.2", "X4.4")
    .wire("X3.4", "X4.5")
    .wire("X3.5", "X4.6")
    .wire("X3.6", "X4.7")
    .wire("X3.3", "XC1");
  const harness = finish(build, {
    title: titleBlock("W-032", "Interface module", {
      supplementaryTitle: "data bus to receiver",
      vehicle: "step van Wren the younger",
    }),
    length_m: 0.25,
    area_mm2: 0.5,
  });
  return withCable(harness, "twisted-pair", ["W7", "W8"], null, "CAN; at most 50 mm untwisted at either end");
}
