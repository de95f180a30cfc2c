import type { Harness } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { finish, titleBlock, withCable, withRun } from "./workshop.ts";

/**
 * A camera over the van's rear door. The reversing lamp's feed is tapped once: behind a fuse of its own it feeds
 * the camera, and it is the trigger that wakes the display.
 */
export function reversingCamera(): Harness {
  const build = new Build()
    .vehicle(
      "X1",
      { "1": "reverse GN/WH 0.75 fuse:10", "2": "ground-lamps BN 1.5", "3": "stop-lamp RD/BK 0.75 plugged" },
      {
        name: "rear lamp cluster, right",
        shell: "lamp 3",
        gender: "receptacle",
        rows: [[1, 2, 3]],
        chart: { title: "Wren, chassis book, sheet 31", edition: "3", date: "2019-05-01", measured: true },
        note: "Steady 12 V in reverse, measured with the engine running: no pulses from a lamp controller in this van.",
      },
    )
    .vehicle(
      "X2",
      { "1": "switched-feed RD/BK 0.75 fuse:10", "2": "illumination GY/RD 0.5 fuse:5" },
      {
        name: "spare places in the fuse board",
        shell: "board 2",
        gender: "receptacle",
        rows: [[1, 2]],
        chart: { title: "Wren, chassis book, sheet 4", edition: "3", date: "2019-05-01", measured: true },
      },
    )
    .module("A1", {
      name: "camera over the rear door",
      role: "camera",
      outputs: "none",
      wakes: "by-lead",
      video: "pal",
      voltage_V: { least_V: 9, most_V: 16 },
    })
    .receptacle(
      "X3",
      "A1",
      {
        "+": "camera-power RD 0.35 0.2A",
        "−": "ground BK 0.35",
        V: "video-signal YE gives",
        S: "video-shield BK gives",
      },
      { name: "camera tail", form: "flying-leads", gender: "plug" },
    )
    .module("A2", {
      name: "display at the driver's right",
      role: "display",
      outputs: "none",
      wakes: "by-lead",
      video: "pal",
    })
    .receptacle(
      "X4",
      "A2",
      {
        "1": "switched-feed RD 0.5 0.4A",
        "2": "ground BK 0.5",
        "3": "camera-trigger GN 0.35 0.01A",
        "4": "illumination OG/WH 0.35 0.02A",
        "5": "video-signal YE takes",
        "6": "video-shield BK takes",
      },
      { name: "display plug", shell: "display 6", gender: "plug", rows: [[1, 2, 3, 4, 5, 6]] },
    )
    .part("splice", "XJ1", { method: "solder-and-sleeve", cover: "adhesive-sleeve" })
    .part("fuse", "F1", { name: "camera", rating_A: 1, form: "mini" })
    .part("load", "E1", {
      name: "reversing lamp",
      type: "lamp",
      function: "reverse",
      current_A: 1.75,
    })
    .part("ground", "XE1", {
      where: "stud in the right rear pillar",
      surface: "bare-metal",
      serves: "vehicle",
    })
    .part("ground", "XE2", {
      where: "stud behind the dash, right",
      surface: "bare-metal",
      serves: "vehicle",
    });
  build
    .wire("X1.1", "XJ1.1")
    .wire("XJ1.2", "E1.+", "GN/WH")
    .wire("E1.−", "X1.2", "BN")
    .wire("XJ1.2", "F1.1", "GN/WH")
    .wire("F1.2", "X3.+")
    .wire("X3.−", "XE1")
    .wire("XJ1.2", "X4.3", "GN")
    .wire("X2.1", "X4.1", "RD")
    .wire("X4.2", "XE2")
    .wire("X2.2", "X4.4", "OG/WH")
    .wire("X3.V", "X4.5", "YE")
    .wire("X3.S", "X4.6", "BK");
  let harness = finish(build, {
    title: titleBlock("W-021", "Reversing camera", { supplementaryTitle: "camera, display, trigger" }),
    length_m: 0.4,
    lengths: { W7: 6.2, W11: 6.4, W12: 6.4, W8: 0.9, W9: 0.5 },
    area_mm2: 0.75,
  });
  harness = withCable(harness, "coax", ["W11"], "W12", "joined at both ends: here the shield is the return");
  harness = withRun(
    harness,
    {
      designation: "B1",
      from: "rear door",
      to: "dash",
      length_m: 6,
      zone: "cabin",
      covering: "split-loom",
      passes: [{ what: "rear door pillar", protection: "gaiter" }],
      hinge: "twists-along",
      support_m: 0.3,
    },
    (wire) => ["W7", "W11", "W12"].includes(wire.designation),
  );
  return harness;
}
