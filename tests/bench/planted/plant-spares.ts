import { interfaceJob } from "./data.ts";
import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const LOOSE = ["loose-lead", "loose-live-lead"];
const BOTH = { volts: [12, 24] } as const;

/** Takes away a lead from contact to contact, its joints and all. */
export function removeLead(yard: Yard, tag: string): readonly string[] {
  const lead = yard.tagged(tag);
  for (const wire of lead.wires) yard.remove(wire);
  for (const joint of lead.joints) yard.remove(joint);
  return [lead.from, lead.to];
}

/** The end of a lead that is nearest to where it goes is left hanging. */
export function loosenLast(yard: Yard, tag: string): readonly string[] {
  const lead = yard.tagged(tag);
  const wire = lead.wires.at(-1)!;
  yard.loosen(wire, 1);
  return [wire, lead.to, lead.from, ...lead.wires];
}

const receiver = (yard: Yard) => receiverJob(yard);
const withSpeakers = (yard: Yard) => receiverJob(yard, { speakers: yard.pick(["own", "vehicle"] as const) });

/** Section A of the reference: loose ends, spares, forgotten leads. */
export const SPARES: readonly Planter[] = [
  planter("A01", "signal lead hangs at the unit", LOOSE, receiver, (yard) => loosenLast(yard, "speed"), BOTH),
  planter("A01", "signal lead hangs at its joint or plug", LOOSE, receiver, (yard) => {
    const lead = yard.tagged("speed");
    yard.loosen(lead.wires[0]!, 1);
    return [...lead.wires, lead.from, lead.to];
  }),
  planter("A01", "speaker lead hangs", LOOSE, withSpeakers, (yard) => loosenLast(yard, "front-right-plus")),
  planter(
    "A01",
    "ground lead of a lamp hangs",
    LOOSE,
    lampJob,
    (yard) => loosenLast(yard, "lamp-ground"),
    BOTH,
  ),
  planter("A01", "parking-brake lead hangs at the vehicle", LOOSE, receiver, (yard) => {
    const lead = yard.tagged("parking-brake");
    yard.loosen(lead.wires[0]!, 0);
    return [...lead.wires, lead.from, lead.to];
  }),
  planter("A02", "mute spare lost its cap", ["spare-not-capped", "loose-lead"], receiver, (yard, job) => {
    const [wire] = yard.wiresAt(`${job.unit}.9`);
    const cap = wire!.ends[1];
    yard.build.change(wire!.designation, { ends: [wire!.ends[0], "loose"] });
    if (cap !== "loose") yard.remove(yard.harness.parts[cap.part]!.designation);
    return [job.unit, wire!.designation];
  }),
  planter(
    "A02",
    "spare with its lead and neither wire nor cap",
    ["spare-not-capped"],
    receiver,
    (yard, job) => {
      const [wire] = yard.wiresAt(`${job.unit}.9`);
      const cap = wire!.ends[1];
      yard.remove(wire!.designation);
      if (cap !== "loose") yard.remove(yard.harness.parts[cap.part]!.designation);
      return [job.unit];
    },
  ),
  planter(
    "A02",
    "open hole in a housing outside",
    ["unused-hole-open"],
    (yard) => {
      const run = yard.run({ zone: "outside", covering: "conduit", length_m: 1 });
      const rows = { "1": "reverse 1 fuse:7.5 plain", "2": "ground-lamps 1", "3": "not-used plugged" };
      const cluster = yard.vehicle(rows, { name: "lamp cluster" });
      const lamp = yard.part("load", "E", {
        type: "lamp",
        function: "reverse",
        current_A: 1.5,
        behaviour: "filament",
        voltage_V: yard.range(),
      });
      const plan = { area_mm2: 1, length_m: 1.1, runs: [run], ways: ["direct"] } as const;
      yard.lead(`${cluster}.1`, `${lamp}.+`, { ...plan, tag: "lamp" });
      yard.lead(`${lamp}.−`, `${cluster}.2`, { ...plan, tag: "lamp-ground", colour: "BN" });
      return cluster;
    },
    (yard, cluster) => {
      yard.cavity(`${cluster}.3`, { use: "expected" });
      return [cluster];
    },
  ),
  planter(
    "A03",
    "constant lead hangs at the unit",
    ["loose-live-lead"],
    receiver,
    (yard) => loosenLast(yard, "constant"),
    BOTH,
  ),
  planter("A03", "illumination lead hangs: live by night", ["loose-live-lead"], receiver, (yard) =>
    loosenLast(yard, "illumination"),
  ),
  planter(
    "A03",
    "battery feed hangs before the amplifier",
    ["loose-live-lead"],
    (yard) => amplifierJob(yard),
    (yard) => loosenLast(yard, "amplifier-feed"),
  ),
  planter(
    "A03",
    "battery feed hangs before its fuse",
    ["loose-live-lead"],
    lampJob,
    (yard) => loosenLast(yard, "battery-stub"),
    BOTH,
  ),
  planter(
    "A03",
    "relay's output hangs",
    ["loose-live-lead"],
    lampJob,
    (yard) => loosenLast(yard, "lamp-out"),
    BOTH,
  ),
  planter(
    "A03",
    "camera feed hangs behind its fuse",
    ["loose-live-lead"],
    cameraJob,
    (yard) => loosenLast(yard, "camera-feed"),
    BOTH,
  ),
  planter(
    "A03",
    "feed hangs behind a switch",
    ["loose-live-lead"],
    (yard) => boardJob(yard, 4),
    (yard) => loosenLast(yard, "board-load"),
    BOTH,
  ),
  planter(
    "A03",
    "output of an interface hangs",
    ["loose-live-lead"],
    (yard) => interfaceJob(yard),
    (yard) => loosenLast(yard, "switched"),
  ),
  planter(
    "A04",
    "line plug without a cover",
    ["unused-line-plug-uncovered"],
    (yard) => {
      const job = amplifierJob(yard);
      return yard.receptacle(
        job.receiver.module!,
        { hot: "line-subwoofer-signal WH optional", shell: "line-subwoofer-shield BK optional" },
        {
          name: "line out, deep notes",
          form: "line-plug",
          gender: "receptacle",
          cover: "whole",
          keying: "ring 9",
        },
      );
    },
    (yard, plug) => {
      yard.build.change(plug, { cover: yard.pick(["none", "contact-only"] as const) });
      return [plug];
    },
  ),
  planter(
    "A05",
    "two unused speaker leads under one cap",
    ["unused-speaker-leads-together", "several-spares-under-one-cap"],
    (yard) => receiverJob(yard, { speakers: "none" }),
    (yard, { unit }) => {
      const [plus, minus] = [yard.wiresAt(`${unit}.P1`)[0]!, yard.wiresAt(`${unit}.M1`)[0]!];
      const old = minus.ends[1];
      yard.build.change(minus.designation, { ends: [minus.ends[0], plus.ends[1]] });
      if (old !== "loose") yard.remove(yard.harness.parts[old.part]!.designation);
      return [unit, plus.designation, minus.designation, yard.nameOfEnd(plus.ends[1])];
    },
  ),
  planter(
    "A05",
    "unused speaker lead on the frame",
    ["unused-speaker-leads-together", "speaker-lead-grounded"],
    (yard) => receiverJob(yard, { speakers: "none" }),
    (yard, { unit }) => {
      const minus = yard.wiresAt(`${unit}.M2`)[0]!;
      const old = minus.ends[1];
      const stud = yard.ground();
      yard.build.change(minus.designation, { ends: [minus.ends[0], yard.build.at(stud)] });
      if (old !== "loose") yard.remove(yard.harness.parts[old.part]!.designation);
      return [unit, minus.designation, stud];
    },
  ),
  planter(
    "A06",
    "constant feed missing",
    ["required-lead-missing", "same-function-unjoined", "both-feeds-one-kind"],
    receiver,
    (yard) => removeLead(yard, "constant"),
  ),
  planter("A06", "ground missing", ["required-lead-missing", "unit-without-ground"], receiver, (yard) =>
    removeLead(yard, "ground"),
  ),
  planter(
    "A06",
    "half of a speaker pair missing",
    ["required-lead-missing", "same-function-unjoined"],
    withSpeakers,
    (yard) => removeLead(yard, "front-left-minus"),
  ),
  planter(
    "A06",
    "half of an amplifier's speaker pair missing",
    ["required-lead-missing", "same-function-unjoined"],
    (yard) => amplifierJob(yard),
    (yard) => removeLead(yard, "out-rear-left-plus"),
  ),
  planter(
    "A06",
    "one CAN lead missing",
    ["required-lead-missing", "can-lead-missing"],
    (yard) => interfaceJob(yard),
    (yard) => removeLead(yard, "can-low"),
  ),
  planter(
    "A06",
    "switched feed missing",
    ["required-lead-missing", "same-function-unjoined"],
    (yard) => interfaceJob(yard),
    (yard) => removeLead(yard, "switched"),
  ),
  ...["illumination", "reverse", "parking-brake", "speed"].map((tag) =>
    planter(
      "A07",
      `${tag} on both charts, not joined`,
      ["same-function-unjoined", "required-lead-missing"],
      receiver,
      (yard) => removeLead(yard, tag),
      BOTH,
    ),
  ),
  planter(
    "A08",
    "mute under the turn-on's cap",
    ["several-spares-under-one-cap"],
    receiver,
    (yard, { unit }) => {
      const [mute, turnOn] = [yard.wiresAt(`${unit}.9`)[0]!, yard.wiresAt(`${unit}.10`)[0]!];
      const old = mute.ends[1];
      yard.build.change(mute.designation, { ends: [mute.ends[0], turnOn.ends[1]] });
      if (old !== "loose") yard.remove(yard.harness.parts[old.part]!.designation);
      return [unit, mute.designation, turnOn.designation, yard.nameOfEnd(turnOn.ends[1])];
    },
  ),
  planter("A09", "spare that says nothing", ["unlabelled-spare"], receiver, (yard, { unit }) => {
    const wire = yard.wiresAt(`${unit}.9`)[0]!;
    const cap = yard.nameOfEnd(wire.ends[1]);
    yard.build.change(cap, { name: "", note: "" });
    yard.cavity(`${unit}.9`, { function: "unknown", text: "" });
    return [wire.designation, cap, unit];
  }),
  planter(
    "A10",
    "lead in a cavity that its chart calls not used",
    ["lead-in-unused-cavity"],
    receiver,
    (yard) => {
      const lead = yard.tagged(yard.pick(["speed", "illumination", "reverse"]));
      const end = yard.pick([lead.from, lead.to]);
      yard.cavity(end, { function: "not-used", direction: "none" });
      return [lead.from, lead.to, ...lead.wires];
    },
  ),
  planter(
    "A10",
    "lead one hole too far",
    ["lead-in-unused-cavity"],
    (yard) => {
      const rows = { "1": "switched-feed 1 fuse:7.5", "2": "not-used", "3": "ground 1" };
      const vehicle = yard.vehicle(rows);
      const unit = yard.unit({ "1": "switched-feed 1 1A", "2": "ground 1" });
      yard.lead(`${vehicle}.1`, `${unit}.1`, {
        tag: "feed",
        fuse_A: 7.5,
        current_A: 1,
        ways: ["direct", "solder", "plugs"],
      });
      yard.lead(`${vehicle}.3`, `${unit}.2`, { tag: "ground", fuse_A: 7.5, current_A: 1, ways: ["direct"] });
      return vehicle;
    },
    (yard, vehicle) => {
      const lead = yard.tagged("feed");
      yard.move(lead.wires[0]!, `${vehicle}.1`, `${vehicle}.2`);
      return [vehicle, ...lead.wires];
    },
  ),
  planter("A11", "mute on a stud", ["mute-lead-grounded"], receiver, (yard, { unit }) => {
    const mute = yard.wiresAt(`${unit}.9`)[0]!;
    const old = mute.ends[1];
    const stud = yard.ground();
    yard.build.change(mute.designation, { ends: [mute.ends[0], yard.build.at(stud)] });
    if (old !== "loose") yard.remove(yard.harness.parts[old.part]!.designation);
    return [unit, mute.designation, stud];
  }),
  planter(
    "A11",
    "mute on the vehicle's ground",
    ["mute-lead-grounded"],
    receiver,
    (yard, { unit, vehicle }) => {
      const mute = yard.wiresAt(`${unit}.9`)[0]!;
      const old = mute.ends[1];
      yard.build.change(mute.designation, { ends: [mute.ends[0], yard.build.at(`${vehicle}.A8`)] });
      if (old !== "loose") yard.remove(yard.harness.parts[old.part]!.designation);
      return [unit, mute.designation, vehicle];
    },
  ),
  planter(
    "A11",
    "mute that a telephone uses, on ground",
    ["mute-lead-grounded"],
    (yard) => {
      const vehicle = yard.vehicle({
        "1": "constant-feed 1.5 fuse:15",
        "2": "switched-feed 1 fuse:10",
        "3": "ground 1.5",
        "4": "mute 0.5 acts-on-ground",
      });
      const unit = yard.unit({
        "1": "constant-feed 1.5 5A",
        "2": "switched-feed 0.75 0.1A",
        "3": "ground 1.5",
        "4": "mute 0.5 acts-on-ground",
      });
      for (const pin of ["1", "2", "3", "4"])
        yard.lead(`${vehicle}.${pin}`, `${unit}.${pin}`, {
          tag: `pin-${pin}`,
          area_mm2: 2.5,
          length_m: 0.5,
          ways: ["direct", "solder", "block"],
        });
      return { vehicle, unit };
    },
    (yard, { vehicle, unit }) => [
      vehicle,
      unit,
      yard.wire(`${unit}.4`, `${unit}.3`, { tag: "bridge", area_mm2: 1, length_m: 0.1 }),
    ],
    BOTH,
  ),
  planter(
    "A12",
    "trigger core of a video cable joined at one end",
    ["trigger-core-at-one-end", ...LOOSE],
    (yard) => {
      const job = cameraJob(yard);
      const lead = yard.tagged("trigger");
      const [hot, shield] = [yard.tagged("video").wires[0]!, yard.tagged("video-shield").wires[0]!];
      yard.dropCables();
      yard.build.cable("WC90", "coax", [hot, shield, lead.wires[0]!], shield);
      return job;
    },
    (yard) => loosenLast(yard, "trigger"),
  ),
];
