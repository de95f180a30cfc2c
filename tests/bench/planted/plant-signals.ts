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
