import type { Harness } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { finish, titleBlock, withCable, withRun } from "./workshop.ts";

const CHANNELS = [
  { name: "front-left", plus: "WH", minus: "WH/BK" },
  { name: "front-right", plus: "GY", minus: "GY/BK" },
  { name: "rear-left", plus: "GN", minus: "GN/BK" },
  { name: "rear-right", plus: "VT", minus: "VT/BK" },
] as const;

/** Readings for a crowd: a receiver's line plugs to an amplifier under the bench, four loudspeakers. */
export function amplifiedSound(): Harness {
  const build = new Build()
    .vehicle(
      "X1",
      {
        "1": "constant-feed RD 1.5 fuse:15",
        "2": "switched-feed RD/BK 0.75 fuse:10",
        "3": "ground BN 1.5",
        "4": "illumination GY/RD 0.5 fuse:5",
      },
      {
        name: "radio bay",
        shell: "bay 4",
        gender: "receptacle",
        rows: [[1, 2, 3, 4]],
        chart: { title: "Wren, chassis book, sheet 12", edition: "3", date: "2019-05-01", measured: true },
      },
    )
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      wakes: "by-lead",
      standby_A: 0.004,
    })
    .receptacle(
      "X2",
      "A1",
      {
        "1": "constant-feed YE 1.5 3A",
        "2": "switched-feed RD 0.75 0.1A",
        "3": "ground BK 1.5",
        "4": "illumination OG/WH 0.5 0.02A",
        "5": "amplifier-turn-on BU/WH 0.5 0.5A",
        "6": "antenna-power BU 0.5 0.3A spare",
      },
      { name: "receiver, power", shell: "receiver 6", gender: "plug", rows: [[1, 2, 3, 4, 5, 6]] },
    )
    .module("A2", {
      name: "amplifier under the bench",
      role: "amplifier",
      outputs: "bridged",
      leastLoad_ohm: 2,
      channelPower_W: 60,
      standby_A: 0.001,
      wakes: "by-lead",
      rows: {
        "+12": "constant-feed 10 40A",
        GND: "ground 10",
        REM: "amplifier-turn-on takes 0.5 0.02A",
        ...Object.fromEntries(
          CHANNELS.flatMap(({ name }, index) => [
            [`IN${index + 1}`, `line-${name}-signal takes`],
            [`IN${index + 1}S`, `line-${name}-shield takes`],
          ]),
        ),
        ...Object.fromEntries(
          CHANNELS.flatMap(({ name }, index) => [
            [`${index + 1}+`, `speaker-${name}-plus gives 1.5`],
            [`${index + 1}-`, `speaker-${name}-minus gives 1.5`],
          ]),
        ),
      },
    })
    .part("supply", "G1", { name: "battery", voltage_V: 12.6, capacity_Ah: 95, resistance_ohm: 0.005 })
    .part("fuse", "F1", {
      name: "amplifier",
      rating_A: 40,
      form: "maxi",
      note: "0.15 m from the battery's plus.",
    })
    .part("ground", "XE1", {
      name: "amplifier",
      where: "bench frame, sanded and sealed",
      surface: "bare-metal",
    });
  for (const [index, { name }] of CHANNELS.entries()) {
    build
      .receptacle(
        `X${3 + index}`,
        "A1",
        { hot: `line-${name}-signal WH`, shell: `line-${name}-shield BK` },
        { name: `line out, ${name.replace("-", " ")}`, form: "line-plug", gender: "receptacle" },
      )
      .part("speaker", `P${index + 1}`, { position: name, impedance_ohm: 4, power_W: 60 });
  }
  build
    .wire("G1.+", "F1.1", "RD", { area_mm2: 10, length_m: 0.15 })
    .wire("F1.2", "A2.+12", "RD", { area_mm2: 10, length_m: 5 })
    .wire("A2.GND", "XE1", "BK", { area_mm2: 10, length_m: 0.4 })
    .wire("G1.-", "XE2", "BK", { area_mm2: 35, length_m: 0.3 })
    .wire("X1.1", "X2.1")
    .wire("X1.2", "X2.2")
    .wire("X1.3", "X2.3")
    .wire("X1.4", "X2.4")
    .wire("X2.5", "A2.REM", "BU/WH", { length_m: 5 })
    .wire("X2.6", "XC1");
  for (const [index, { plus, minus }] of CHANNELS.entries()) {
    build
      .wire(`X${3 + index}.hot`, `A2.IN${index + 1}`, "WH", { length_m: 5, area_mm2: 0.22 })
      .wire(`X${3 + index}.shell`, `A2.IN${index + 1}S`, "BK", { length_m: 5, area_mm2: 0.22 })
      .wire(`A2.${index + 1}+`, `P${index + 1}.+`, plus, { length_m: 3 })
      .wire(`A2.${index + 1}-`, `P${index + 1}.−`, minus, { length_m: 3 });
  }
  let harness = finish(build, {
    title: titleBlock("W-017", "Amplified sound", {
      supplementaryTitle: "receiver, amplifier, four loudspeakers",
    }),
    length_m: 0.3,
    area_mm2: 1.5,
  });
  for (let index = 0; index < CHANNELS.length; index++) {
    const first = 11 + index * 4;
    harness = withCable(
      harness,
      "shielded",
      [`W${first}`],
      `W${first + 1}`,
      "line cable: the shield is the return",
    );
    harness = withCable(harness, "twisted-pair", [`W${first + 2}`, `W${first + 3}`]);
  }
  const line = new Set(["W9", ...[11, 15, 19, 23].flatMap((first) => [`W${first}`, `W${first + 1}`])]);
  harness = withRun(
    harness,
    {
      designation: "B1",
      from: "radio bay",
      to: "bench",
      length_m: 4.8,
      zone: "cabin",
      covering: "split-loom",
      note: "left side",
    },
    (wire) => line.has(wire.designation),
  );
  return withRun(
    harness,
    {
      designation: "B2",
      from: "battery",
      to: "bench",
      length_m: 4.8,
      zone: "cabin",
      covering: "conduit",
      passes: [{ what: "bulkhead", protection: "grommet" }],
      note: "right side, away from the line cables",
    },
    (wire) => wire.designation === "W2",
  );
}
