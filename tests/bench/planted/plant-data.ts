import { interfaceJob } from "./data.ts";
import { type Planter, planter } from "./planter.ts";
import { cameraJob } from "./sight.ts";

const BOTH = { volts: [12, 24] } as const;

/** Sections H of the reference: cameras. */
export const CAMERA: readonly Planter[] = [
  ...(["pulsed", "watched"] as const).map((gives) =>
    planter(
      "H01",
      `camera on a ${gives} lamp feed`,
      ["camera-on-pulsed-feed", "watched-output-tapped"],
      (yard) => {
        const job = cameraJob(yard);
        yard.cavity(`${job.cluster}.1`, { gives });
        return job;
      },
      (yard, { joint, fuse, tail, camera, cluster }) => {
        const front = yard.tagged("camera-stub").from;
        const wire = yard.tagged("camera-stub").wires[0]!;
        yard.move(wire, front, `${joint}.2`);
        return [fuse, tail, camera, wire, cluster, joint];
      },
      BOTH,
    ),
  ),
  planter(
    "H02",
    "camera far on a thin lead",
    ["camera-starved", "drop-too-great"],
    cameraJob,
    (yard, { camera, tail }) => {
      yard.build.change(camera, {
        voltage_V: yard.volts === 12 ? { least_V: 11, most_V: 16 } : { least_V: 22, most_V: 32 },
      });
      yard.cavity(`${tail}.+`, { current_A: 1.2 });
      const wire = yard.tagged("camera-feed").wires[0]!;
      yard.build.change(wire, { area_mm2: 0.22, length_m: 18, runs: [] });
      return [camera, tail, wire];
    },
    { volts: [12, 24], also: ["fuse-bigger-than-wire", "wire-too-small-to-handle"] },
  ),
  planter(
    "H03",
    "camera options not recorded",
    ["camera-options-unset", "configuration-switch-unset"],
    cameraJob,
    (yard, { camera }) => {
      yard.build.change(camera, {
        switches: [{ label: "mirror", position: "unset", wanted: "unknown", meaning: "mirrored picture" }],
      });
      return [camera];
    },
    BOTH,
  ),
  planter(
    "H03",
    "camera options not as wanted",
    ["camera-options-unset", "configuration-switch-wrong"],
    cameraJob,
    (yard, { camera }) => {
      yard.build.change(camera, {
        switches: [{ label: "mirror", position: "off", wanted: "on", meaning: "mirrored picture" }],
      });
      return [camera];
    },
  ),
  planter(
    "H04",
    "camera and display on distant grounds",
    ["camera-ground-apart-from-display", "ground-loop"],
    cameraJob,
    (yard, { camera, tail, display, plug }) => {
      yard.build.change(camera, { signalGround: "joined" });
      yard.cavity(`${tail}.+`, { current_A: 0.5 });
      yard.build.change(yard.tagged("camera-ground").wires[0]!, { length_m: 4, area_mm2: 0.5 });
      return [camera, tail, display, plug, ...yard.tagged("camera-ground").wires];
    },
    { volts: [12, 24], also: ["ground-thinner-than-feed"] },
  ),
  planter(
    "H05",
    "camera on the constant feed",
    ["camera-always-powered"],
    cameraJob,
    (yard, { board, fuse, tail, camera }) => {
      const stub = yard.tagged("camera-stub");
      yard.move(stub.wires[0]!, stub.from, `${board}.3`);
      yard.cavity(`${board}.3`, { use: "expected" });
      return [fuse, tail, camera, ...stub.wires, board];
    },
    BOTH,
  ),
  planter(
    "H06",
    "two kinds of picture",
    ["video-standards-differ"],
    cameraJob,
    (yard, { camera, display }) => {
      yard.build.change(camera, { video: "high-definition" });
      yard.build.change(display, { video: "ntsc" });
      return [camera, display];
    },
    BOTH,
  ),
];

/** Section J of the reference: data, modules, keys of the steering wheel. */
export const DATA: readonly Planter[] = [
  planter(
    "J01",
    "CAN leads exchanged",
    ["can-leads-exchanged"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      yard.exchange(`${near}.3`, `${near}.4`);
      return [near, vehicle];
    },
  ),
  planter(
    "J01",
    "CAN low not joined",
    ["can-lead-missing", "required-lead-missing", "loose-lead"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      const lead = yard.tagged("can-low");
      yard.loosen(lead.wires[0]!, 1);
      return [near, vehicle, ...lead.wires];
    },
  ),
  planter(
    "J02",
    "no twist",
    ["can-pair-untwisted"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      yard.dropCables();
      for (const tag of ["can-high", "can-low"])
        yard.build.change(yard.tagged(tag).wires[0]!, { length_m: 0.8 });
      return [near, vehicle, ...yard.tagged("can-high").wires, ...yard.tagged("can-low").wires];
    },
  ),
  planter(
    "J02",
    "one lead longer by 0.2 m",
    ["can-pair-untwisted", "pair-lengths-differ"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      const wire = yard.tagged("can-high").wires[0]!;
      yard.build.change(wire, { length_m: 0.55 });
      return [near, vehicle, wire, "WC1"];
    },
  ),
  planter(
    "J03",
    "one terminator alone",
    ["can-termination-wrong"],
    (yard) => interfaceJob(yard, true),
    (yard, { terminators, near, vehicle }) => {
      yard.remove(terminators[1]!);
      return [...terminators, near, vehicle];
    },
  ),
  planter(
    "J03",
    "three terminators",
    ["can-termination-wrong"],
    (yard) => interfaceJob(yard, true),
    (yard, { terminators, near, vehicle }) => {
      const third = yard.part("resistor", "R", { resistance_ohm: 120, power_W: 0.25 });
      yard.wire(`${near}.3`, `${third}.1`, { tag: "terminator", area_mm2: 0.5, length_m: 0.05 });
      yard.wire(`${near}.4`, `${third}.2`, { tag: "terminator", area_mm2: 0.5, length_m: 0.05 });
      return [...terminators, third, near, vehicle];
    },
  ),
  planter(
    "J05",
    "key lines exchanged",
    ["key-lines-exchanged"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => {
      yard.exchange(`${near}.5`, `${near}.7`);
      return [near, vehicle];
    },
  ),
  planter(
    "J05",
    "12 V on a key line",
    ["key-line-on-battery"],
    (yard) => interfaceJob(yard),
    (yard, { near, vehicle }) => [
      near,
      vehicle,
      yard.wire(`${near}.5`, `${near}.1`, { tag: "bridge", area_mm2: 2.5, length_m: 0.1 }),
    ],
    { also: ["fuse-bigger-than-wire", "branch-thinner-than-fuse"] },
  ),
  planter(
    "J06",
    "switch not as the chart asks",
    ["configuration-switch-wrong"],
    (yard) => interfaceJob(yard),
    (yard, { module }) => {
      yard.build.change(module, {
        switches: [{ label: "3", position: "on", wanted: "off", meaning: "keys by resistance" }],
      });
      return [module];
    },
  ),
  planter(
    "J06",
    "switches not written down",
    ["configuration-switch-unset"],
    (yard) => interfaceJob(yard),
    (yard, { module }) => {
      yard.build.change(module, {
        switches: [{ label: "3", position: "unset", wanted: "off", meaning: "keys by resistance" }],
      });
      return [module];
    },
  ),
  planter(
    "J07",
    "two receptacles of one shell",
    ["same-shell-mated-wrongly"],
    (yard) => interfaceJob(yard),
    (yard, { near, far }) => {
      yard.build.change(near, { shell: "box 8", keying: null });
      yard.build.change(far, { shell: "box 8", keying: null });
      return [near, far];
    },
  ),
  planter(
    "J09",
    "module that never sleeps",
    ["module-never-sleeps"],
    (yard) => interfaceJob(yard),
    (yard, { module, near }) => {
      yard.build.change(module, { sleeps: "no" });
      return [module, near];
    },
  ),
];
