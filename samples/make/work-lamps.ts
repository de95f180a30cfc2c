import type { Harness } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { finish, titleBlock, withRun } from "./workshop.ts";

/** Two lamps over the tail lift, worked by a switch on the dash through a relay. Terminals as DIN 72552 names them. */
export function workLamps(): Harness {
  const build = new Build()
    .part("supply", "G1", { name: "battery", voltage_V: 12.6, capacity_Ah: 95, resistance_ohm: 0.005 })
    .part("fuse", "F1", {
      name: "lamps",
      rating_A: 15,
      form: "regular",
      note: "0.12 m from the battery's plus.",
    })
    .part("fuse", "F2", { name: "relay coil", rating_A: 2, form: "mini" })
    .part("relay", "K1", {
      name: "work lamps",
      poles: "make",
      suppression: "diode",
      coil_ohm: 85,
      rating_A: 30,
      note: "The diode's stripe is at 86: that is the plus side.",
    })
    .part("switch", "S1", { name: "work lamps, dash", operatedBy: "hand", rating_A: 5 })
    .part("load", "E1", { name: "lamp, left", type: "lamp", function: "work-lamp", current_A: 4 })
    .part("load", "E2", { name: "lamp, right", type: "lamp", function: "work-lamp", current_A: 4 })
    .part("splice", "XJ1", { method: "crimped-butt", cover: "adhesive-sleeve", zone: "engine-bay" })
    .part("splice", "XJ2", { method: "crimped-butt", cover: "adhesive-sleeve", zone: "outside" })
    .part("ground", "XE1", { where: "tail lift frame, left", surface: "bare-metal", serves: "this-job" })
    .part("ground", "XE2", { where: "tail lift frame, right", surface: "bare-metal", serves: "this-job" })
    .part("ground", "XE3", { where: "stud behind the dash", surface: "bare-metal" })
    .part("ground", "XE4", { where: "body strap at the battery", surface: "bare-metal" });
  build
    .wire("G1.+", "F1.1", "RD", { length_m: 0.12, area_mm2: 4 })
    .wire("F1.2", "XJ1.1", "RD", { length_m: 0.6 })
    .wire("XJ1.2", "K1.30", "RD", { length_m: 0.2 })
    .wire("XJ1.2", "F2.1", "RD", { length_m: 0.1, area_mm2: 1 })
    .wire("F2.2", "S1.1", "RD/YE", { length_m: 1.8, area_mm2: 1 })
    .wire("S1.2", "K1.86", "YE", { length_m: 1.8, area_mm2: 1 })
    .wire("K1.85", "XE3", "BN", { length_m: 0.3, area_mm2: 1 })
    .wire("K1.87", "XJ2.1", "YE/RD", { length_m: 6.5 })
    .wire("XJ2.2", "E1.+", "YE/RD", { length_m: 0.9 })
    .wire("XJ2.2", "E2.+", "YE/RD", { length_m: 1.1 })
    .wire("E1.−", "XE1", "BN", { length_m: 0.3 })
    .wire("E2.−", "XE2", "BN", { length_m: 0.3 })
    .wire("G1.-", "XE4", "BK", { length_m: 0.3, area_mm2: 35 });
  const harness = finish(build, {
    title: titleBlock("W-009", "Work lamps", { supplementaryTitle: "over the tail lift, by relay" }),
    length_m: 0.3,
    area_mm2: 2.5,
  });
  return withRun(
    harness,
    {
      designation: "B1",
      from: "engine bay",
      to: "tail lift",
      length_m: 6.4,
      zone: "outside",
      covering: "conduit",
      passes: [{ what: "chassis crossmember", protection: "clamp" }],
      support_m: 0.4,
      dripLoop: "yes",
      drilled: "no",
    },
    (wire) => wire.designation === "W8",
  );
}
