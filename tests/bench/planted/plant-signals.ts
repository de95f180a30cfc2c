import { interfaceJob } from "./data.ts";
import { removeLead } from "./plant-spares.ts";
import { type Planter, planter } from "./planter.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const amplifier = (yard: Yard) => amplifierJob(yard);
const receiver = (yard: Yard) => receiverJob(yard);

/** A microphone on a shielded pair whose shield is grounded at the unit alone. */
function microphoneJob(yard: Yard) {
  const job = receiverJob(yard, { module: true });
  const mic = yard.part("module", "A", { name: "microphone", role: "other", outputs: "none" });
  const tail = yard.receptacle(mic, {
    "+": "microphone-plus gives",
    "−": "microphone-minus gives",
    S: "microphone-shield optional",
  });
  const plug = yard.receptacle(
    job.module!,
    { "1": "microphone-plus takes", "2": "microphone-minus takes", "3": "microphone-shield" },
    { name: "microphone" },
  );
  const plan = { area_mm2: 0.22, length_m: 2, ways: ["direct"] } as const;
  const plus = yard.lead(`${tail}.+`, `${plug}.1`, { ...plan, tag: "mic-plus" });
  const minus = yard.lead(`${tail}.−`, `${plug}.2`, { ...plan, tag: "mic-minus" });
  const cap = yard.part("cap", "XC", { method: "sleeve-folded-back", name: "shield, open at this end" });
  const shield = yard.lead(`${plug}.3`, cap, { ...plan, tag: "mic-shield" });
  yard.build.cable(
    yard.name("WC"),
    "shielded-pair",
    [...plus.wires, ...minus.wires, ...shield.wires],
    shield.wires[0]!,
  );
  return { ...job, mic, tail, plug, cap, wire: shield.wires[0]! };
}

/** An antenna with an amplifier of its own. */
function antennaJob(yard: Yard) {
  const job = receiverJob(yard, { module: true });
  const antenna = yard.name("A");
  yard.build.module(antenna, {
    name: "antenna with amplifier",
    role: "antenna",
    outputs: "none",
    rows: { P: "antenna-power takes 0.5 0.1A", R: "antenna-signal gives", S: "antenna-ground" },
  });
  const socket = yard.receptacle(
    job.module!,
    { R: "antenna-signal takes", S: "antenna-ground" },
    { name: "antenna socket" },
  );
  const lead = yard.tagged("antenna-power");
  for (const wire of lead.wires) yard.remove(wire);
  for (const joint of lead.joints) yard.remove(joint);
  yard.cavity(`${job.vehicle}.A5`, { use: "plugged", lead: null, function: "not-used", direction: "none" });
  yard.lead(`${job.unit}.5`, `${antenna}.P`, { tag: "booster", area_mm2: 0.75, length_m: 3 });
  const plan = { area_mm2: 0.22, length_m: 3, ways: ["direct"] } as const;
  const core = yard.lead(`${antenna}.R`, `${socket}.R`, { ...plan, tag: "antenna" });
  const shield = yard.lead(`${antenna}.S`, `${socket}.S`, { ...plan, tag: "antenna-shield" });
  yard.build.cable(yard.name("WC"), "coax", [...core.wires, ...shield.wires], shield.wires[0]!);
  return { ...job, antenna, socket };
}

/** Section F of the reference: signal and antenna leads. */
export const SIGNALS: readonly Planter[] = [
  planter(
    "F01",
    "line cables in the power lead's run",
    ["signal-beside-power"],
    amplifier,
    (yard, { powerRun }) => {
      const wires = [
        "line-front-left",
        "line-shield-front-left",
        "line-rear-right",
        "line-shield-rear-right",
      ].flatMap((tag) => yard.tagged(tag).wires);
      for (const wire of wires) yard.build.change(wire, { runs: [yard.runId(powerRun)] });
      return [...wires, ...yard.tagged("amplifier-feed").wires];
    },
  ),
  planter(
    "F01",
    "power lead through the video's run",
    ["signal-beside-power"],
    cameraJob,
    (yard, { loom }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 20, form: "regular", holder: "own" });
      const load = yard.part("load", "E", {
        type: "heater",
        function: "heater-control",
        current_A: 12,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      const battery = yard.battery();
      yard.wire(battery.plus, `${fuse}.1`, { tag: "heat", area_mm2: 10, length_m: 0.12 });
      const wire = yard.wire(`${fuse}.2`, `${load}.+`, {
        tag: "heat",
        area_mm2: 16,
        length_m: 6.6,
        runs: [loom],
      });
      yard.wire(`${load}.−`, yard.ground(), { tag: "heat", area_mm2: 16, length_m: 0.4, colour: "BK" });
      return [wire, ...yard.tagged("video").wires, ...yard.tagged("video-shield").wires];
    },
    { volts: [12, 24], also: ["feed-and-ground-apart"] },
  ),
  planter(
    "F02",
    "shield of a pair grounded at both ends",
    ["shield-grounded-twice"],
    microphoneJob,
    (yard, { wire, cap, tail }) => {
      const stud = yard.ground();
      yard.move(wire, cap, stud);
      yard.remove(cap);
      return [wire, stud, tail];
    },
  ),
  planter(
    "F03",
    "cores joined, shield not",
    ["shield-not-carried-through"],
    microphoneJob,
    (yard, { tail, cap, plug }) => {
      const made: string[] = [];
      for (const contact of ["+", "−"]) {
        const old = yard.wiresAt(`${tail}.${contact}`)[0]!;
        const joint = yard.joint("solder", 0.22);
        yard.move(old.designation, `${tail}.${contact}`, `${joint}.2`);
        made.push(
          joint,
          old.designation,
          yard.wire(`${tail}.${contact}`, `${joint}.1`, { tag: "mic", area_mm2: 0.22, length_m: 1 }),
        );
      }
      const second = yard.part("cap", "XC", { name: "shield, not joined" });
      const third = yard.part("cap", "XC", { name: "shield, not joined" });
      const shield = yard.wire(second, third, { tag: "mic", area_mm2: 0.22, length_m: 1 });
      yard.build.cable(yard.name("WC"), "shielded-pair", [made[2]!, made[5]!, shield], shield);
      return [...made, shield, cap, tail, plug];
    },
    { also: ["loose-lead"] },
  ),
  planter(
    "F04",
    "coax spliced",
    ["coax-spliced"],
    cameraJob,
    (yard, { plug }) => {
      const made: string[] = [];
      for (const contact of ["5", "6"]) {
        const old = yard.wiresAt(`${plug}.${contact}`)[0]!;
        const joint = yard.joint(yard.pick(["solder", "crimp"] as const), 0.5);
        yard.move(old.designation, `${plug}.${contact}`, `${joint}.1`);
        made.push(
          joint,
          old.designation,
          yard.wire(`${joint}.2`, `${plug}.${contact}`, { tag: "video", area_mm2: 0.22, length_m: 0.5 }),
        );
      }
      yard.build.cable(yard.name("WC"), "coax", [made[2]!], made[5]!);
      return made;
    },
    BOTH,
  ),
  planter(
    "F05",
    "antenna amplifier unfed",
    ["antenna-amplifier-unpowered", "same-function-unjoined", "required-lead-missing"],
    antennaJob,
    (yard, { antenna }) => [antenna, ...removeLead(yard, "booster")],
  ),
  planter(
    "F05",
    "vehicle's antenna amplifier unfed",
    ["antenna-amplifier-unpowered", "same-function-unjoined", "required-lead-missing"],
    receiver,
    (yard) => removeLead(yard, "antenna-power"),
  ),
  planter(
    "F06",
    "antenna power on the coax's shield",
    ["antenna-power-grounded"],
    antennaJob,
    (yard, { antenna, unit }) => {
      const lead = yard.tagged("booster");
      yard.move(lead.wires.at(-1)!, `${antenna}.P`, `${antenna}.S`);
      return [antenna, unit, ...lead.wires];
    },
    { also: ["antenna-amplifier-unpowered", "same-function-unjoined", "required-lead-missing"] },
  ),
  planter(
    "F06",
    "antenna power on a stud",
    ["antenna-power-grounded"],
    receiver,
    (yard, { unit, vehicle }) => {
      const lead = yard.tagged("antenna-power");
      const stud = yard.ground();
      yard.move(lead.wires.at(-1)!, `${unit}.5`, `${unit}.5`);
      return [
        unit,
        vehicle,
        stud,
        yard.wire(`${unit}.5`, stud, { tag: "frame", area_mm2: 0.75, length_m: 0.3 }),
      ];
    },
  ),
];

/** A receiver on a vehicle that dims its dash lamps on the ground side. */
function dimmerJob(yard: Yard) {
  const vehicle = yard.vehicle({
    "1": "constant-feed 1.5 fuse:15",
    "2": "switched-feed 1 fuse:10",
    "3": "ground 1.5",
    "4": "illumination 0.5 fuse:5",
    "5": "dimmer-return 0.5 spare",
  });
  const unit = yard.unit({
    "1": "constant-feed 1.5 5A",
    "2": "switched-feed 0.75 0.1A",
    "3": "ground 1.5",
    "4": "illumination 0.5 0.02A",
  });
  for (const [contact, tag] of [
    ["1", "constant"],
    ["2", "switched"],
    ["3", "ground"],
    ["4", "illumination"],
  ] as const)
    yard.lead(`${vehicle}.${contact}`, `${unit}.${contact}`, {
      tag,
      area_mm2: 1.5,
      ways: ["direct", "solder", "crimp", "block"],
    });
  yard.cap(`${vehicle}.5`);
  return { vehicle, unit };
}

const moved =
  (tag: string, from: string, to: string) =>
  (yard: Yard, { vehicle, unit }: { vehicle: string; unit: string }) => {
    const lead = yard.tagged(tag);
    yard.move(lead.wires[0]!, `${vehicle}.${from}`, `${vehicle}.${to}`);
    return [vehicle, unit, ...lead.wires];
  };

/** Section G of the reference: control leads. */
export const CONTROL: readonly Planter[] = [
  planter(
    "G01",
    "amplifier woken by antenna power",
    ["antenna-power-as-turn-on"],
    amplifier,
    (yard, { receiver: { unit }, amplifier: box }) => {
      const wire = yard.tagged("turn-on").wires[0]!;
      yard.move(wire, `${unit}.10`, `${unit}.5`);
      return [unit, box, wire];
    },
    { also: ["turn-on-overloaded"] },
  ),
  planter(
    "G02",
    "fan on the turn-on lead",
    ["turn-on-overloaded"],
    amplifier,
    (yard, { amplifier: box, receiver: { unit } }) => {
      const fan = yard.part("load", "E", {
        type: "motor",
        function: "amplifier-turn-on",
        current_A: 1.5,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      yard.wire(`${box}.REM`, `${fan}.+`, { tag: "fan", area_mm2: 0.75, length_m: 0.5 });
      yard.wire(`${fan}.−`, yard.ground(), { tag: "fan", area_mm2: 0.75, length_m: 0.4, colour: "BK" });
      return [unit, box, fan];
    },
  ),
  planter(
    "G02",
    "five relay coils on the turn-on lead",
    ["turn-on-overloaded"],
    amplifier,
    (yard, { amplifier: box, receiver: { unit } }) => {
      const relays = [1, 2, 3, 4, 5].map(() => {
        const relay = yard.part("relay", "K", {
          poles: "make",
          suppression: "diode",
          coil_ohm: 80,
          rating_A: 30,
        });
        yard.wire(`${box}.REM`, `${relay}.86`, { tag: "coil", area_mm2: 0.75, length_m: 0.5 });
        yard.wire(`${relay}.85`, yard.ground(), { tag: "coil", area_mm2: 0.75, length_m: 0.4, colour: "BK" });
        return relay;
      });
      return [unit, box, ...relays];
    },
    { also: ["joint-left-open"] },
  ),
  planter(
    "G03",
    "turn-on from the constant feed",
    ["turn-on-from-constant"],
    amplifier,
    (yard, { amplifier: box, receiver: { unit, vehicle } }) => {
      const wire = yard.tagged("turn-on").wires[0]!;
      yard.move(wire, `${unit}.10`, `${vehicle}.A4`);
      return [vehicle, box, wire];
    },
    {
      also: [
        "fuse-bigger-than-wire",
        "branch-thinner-than-fuse",
        "same-function-unjoined",
        "required-lead-missing",
      ],
    },
  ),
  planter(
    "G04",
    "turn-on not joined",
    ["turn-on-not-joined", "amplifier-not-woken", "same-function-unjoined", "required-lead-missing"],
    amplifier,
    (yard) => removeLead(yard, "turn-on"),
  ),
  planter(
    "G05",
    "illumination on the constant feed",
    ["illumination-on-steady-feed"],
    receiver,
    moved("illumination", "A6", "A4"),
    {
      volts: [12, 24],
      also: ["same-function-unjoined", "fuse-bigger-than-wire", "branch-thinner-than-fuse"],
    },
  ),
  planter(
    "G05",
    "illumination on the switched feed",
    ["illumination-on-steady-feed"],
    receiver,
    moved("illumination", "A6", "A7"),
    { also: ["same-function-unjoined", "fuse-bigger-than-wire", "branch-thinner-than-fuse"] },
  ),
  planter(
    "G06",
    "illumination on the dimmer's return",
    ["illumination-on-dimmer-return"],
    dimmerJob,
    moved("illumination", "4", "5"),
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "G07",
    "park-lamp feed and dimmer return together",
    ["park-lamp-on-dimmer-return"],
    dimmerJob,
    (yard, { vehicle }) => [
      vehicle,
      yard.wire(`${vehicle}.4`, `${vehicle}.5`, { tag: "bridge", area_mm2: 0.75, length_m: 0.1 }),
    ],
    { also: ["several-spares-under-one-cap"] },
  ),
  planter(
    "G08",
    "parking brake on the vehicle's ground",
    ["parking-brake-grounded"],
    receiver,
    moved("parking-brake", "A9", "A8"),
    { volts: [12, 24], also: ["same-function-unjoined"] },
  ),
  planter(
    "G08",
    "parking brake on a stud",
    ["parking-brake-grounded"],
    receiver,
    (yard, { vehicle, unit }) => {
      const lead = yard.tagged("parking-brake");
      const stud = yard.ground();
      yard.move(lead.wires[0]!, `${vehicle}.A9`, stud);
      return [unit, stud, ...lead.wires];
    },
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "G09",
    "parking brake on the constant feed",
    ["parking-brake-on-wrong-lead", "trigger-polarity-wrong"],
    receiver,
    moved("parking-brake", "A9", "A4"),
    { also: ["same-function-unjoined", "fuse-bigger-than-wire", "branch-thinner-than-fuse"] },
  ),
  planter(
    "G09",
    "parking brake on the speed lead",
    ["parking-brake-on-wrong-lead"],
    receiver,
    moved("parking-brake", "A9", "A1"),
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "G10",
    "trigger from the stop lamp",
    ["reverse-trigger-from-wrong-place"],
    cameraJob,
    (yard, { cluster, plug, joint }) => {
      const wire = yard.tagged("trigger").wires[0]!;
      yard.move(wire, `${joint}.2`, `${cluster}.2`);
      yard.cavity(`${cluster}.2`, { use: "expected" });
      return [cluster, plug, wire];
    },
    { volts: [12, 24], also: ["same-function-unjoined"] },
  ),
  planter(
    "G10",
    "trigger from the light switch",
    ["reverse-trigger-from-wrong-place"],
    receiver,
    moved("reverse", "A10", "A6"),
    { also: ["same-function-unjoined", "one-lead-two-jobs"] },
  ),
  planter(
    "G11",
    "a camera button that lights the reversing lamp",
    ["trigger-back-feeds-lamp", "relays:"],
    cameraJob,
    (yard, { board, plug, lamp, cluster }) => {
      const hand = yard.part("switch", "S", { name: "camera", operatedBy: "hand", rating_A: 5 });
      const one = yard.wire(`${board}.1`, `${hand}.1`, { tag: "button", area_mm2: 1.5, length_m: 0.5 });
      const two = yard.wire(`${hand}.2`, `${plug}.3`, { tag: "button", area_mm2: 1.5, length_m: 0.5 });
      return [hand, plug, lamp, one, two, board, cluster];
    },
    BOTH,
  ),
  planter(
    "G12",
    "illumination and reverse trigger on one lead",
    ["one-lead-two-jobs"],
    receiver,
    (yard, { unit, vehicle }) => [
      unit,
      vehicle,
      yard.wire(`${unit}.4`, `${unit}.8`, { tag: "bridge", area_mm2: 0.75, length_m: 0.1 }),
    ],
    {
      also: [
        "reverse-trigger-from-wrong-place",
        "trigger-back-feeds-lamp",
        "relays:",
        "fuse-bigger-than-wire",
        "outputs-tied",
      ],
    },
  ),
];

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
