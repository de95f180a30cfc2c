import { removeLead } from "./plant-spares.ts";
import { type Planter, planter } from "./planter.ts";
import { amplifierJob, CHANNELS, receiverJob } from "./sound.ts";
import { bridgedAmplifier, factoryAmplifier, withTweeter } from "./stand-speakers.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const own = (yard: Yard) => receiverJob(yard, { speakers: "own", channels: 4, module: yard.chance(0.7) });
const byVehicle = (yard: Yard) => receiverJob(yard, { speakers: "vehicle", channels: 4 });
const either = (yard: Yard) => (yard.chance(0.5) ? own(yard) : byVehicle(yard));
const amplifier = (yard: Yard) => amplifierJob(yard);
const ALL = CHANNELS.map((_, index) => String(index + 1));

/** Takes the caps off a pair of spare speaker leads of a unit, and the wires with them. */
function freePair(yard: Yard, unit: string, number: number): void {
  for (const contact of [`${unit}.P${number}`, `${unit}.M${number}`]) {
    const wire = yard.wiresAt(contact)[0]!;
    const cap = wire.ends[1];
    yard.remove(wire.designation);
    if (cap !== "loose") yard.remove(yard.harness.parts[cap.part]!.designation);
    yard.cavity(contact, { use: "expected" });
  }
}

/** Section E of the reference: speakers and amplifier outputs. */
export const SPEAKERS: readonly Planter[] = [
  planter(
    "E01",
    "one channel reversed at the unit",
    ["speaker-polarity-swapped"],
    either,
    (yard, { unit, speakers, vehicle }) => {
      const number = yard.pick(ALL);
      yard.exchange(`${unit}.P${number}`, `${unit}.M${number}`);
      return [unit, vehicle, ...speakers];
    },
    BOTH,
  ),
  planter(
    "E01",
    "one channel reversed at the speaker",
    ["speaker-polarity-swapped"],
    own,
    (yard, { unit, speakers }) => {
      const speaker = yard.pick(speakers);
      yard.exchange(`${speaker}.+`, `${speaker}.−`);
      return [unit, speaker];
    },
  ),
  planter(
    "E01",
    "one channel reversed at an amplifier",
    ["speaker-polarity-swapped"],
    amplifier,
    (yard, { amplifier: box, speakers }) => {
      const number = yard.pick(ALL);
      yard.exchange(`${box}.${number}+`, `${box}.${number}-`);
      return [box, ...speakers];
    },
  ),
  planter(
    "E02",
    "every channel reversed",
    ["all-channels-reversed"],
    either,
    (yard, { unit, speakers, vehicle }) => {
      for (const number of ALL) yard.exchange(`${unit}.P${number}`, `${unit}.M${number}`);
      return [unit, vehicle, ...speakers];
    },
  ),
  planter(
    "E03",
    "two negatives bridged",
    ["speaker-negatives-commoned", "outputs-tied"],
    either,
    (yard, { unit }) => [
      unit,
      yard.wire(`${unit}.M1`, `${unit}.M3`, { tag: "bridge", area_mm2: 0.75, length_m: 0.2 }),
    ],
    BOTH,
  ),
  planter(
    "E03",
    "negatives in one joint at the speakers",
    ["speaker-negatives-commoned", "outputs-tied"],
    amplifier,
    (yard, { amplifier: box, speakers }) => [
      box,
      ...speakers,
      yard.wire(`${speakers[0]}.−`, `${speakers[1]}.−`, { tag: "bridge", area_mm2: 1.5, length_m: 1 }),
    ],
  ),
  planter(
    "E04",
    "speaker negative to a stud",
    ["speaker-lead-grounded"],
    own,
    (yard, { unit, speakers }) => {
      const speaker = yard.pick(speakers);
      return [
        unit,
        speaker,
        yard.wire(`${speaker}.−`, yard.ground(), { tag: "frame", area_mm2: 0.75, length_m: 0.3 }),
      ];
    },
    BOTH,
  ),
  planter(
    "E04",
    "vehicle's speaker negative to the vehicle's ground",
    ["speaker-lead-grounded"],
    byVehicle,
    (yard, { unit, vehicle }) => [
      unit,
      vehicle,
      yard.wire(`${vehicle}.C2`, `${vehicle}.A8`, { tag: "frame", area_mm2: 0.75, length_m: 0.2 }),
    ],
  ),
  planter(
    "E05",
    "minus leads of two channels exchanged",
    ["speakers-crossed"],
    own,
    (yard, { unit, speakers }) => {
      yard.exchange(`${speakers[0]}.−`, `${speakers[2]}.−`);
      return [unit, ...speakers];
    },
    BOTH,
  ),
  planter(
    "E05",
    "minus leads of two channels exchanged at the vehicle's plug",
    ["speakers-crossed"],
    byVehicle,
    (yard, { unit, vehicle }) => {
      yard.exchange(`${vehicle}.C1`, `${vehicle}.C2`);
      return [unit, vehicle];
    },
  ),
  planter(
    "E06",
    "left and right exchanged",
    ["sides-swapped"],
    either,
    (yard, { unit, vehicle, speakers }) => {
      yard.exchange(`${unit}.P1`, `${unit}.P2`);
      yard.exchange(`${unit}.M1`, `${unit}.M2`);
      return [unit, vehicle, ...speakers];
    },
    BOTH,
  ),
  planter(
    "E06",
    "line leads left and right exchanged",
    ["sides-swapped"],
    amplifier,
    (yard, { amplifier: box, plugs, receiver }) => {
      yard.exchange(`${box}.IN1`, `${box}.IN2`);
      yard.exchange(`${box}.IN1S`, `${box}.IN2S`);
      return [box, ...plugs, receiver.unit, receiver.module!];
    },
  ),
  planter(
    "E07",
    "front and rear exchanged",
    ["front-and-rear-swapped"],
    either,
    (yard, { unit, vehicle, speakers }) => {
      yard.exchange(`${unit}.P2`, `${unit}.P4`);
      yard.exchange(`${unit}.M2`, `${unit}.M4`);
      return [unit, vehicle, ...speakers];
    },
  ),
  planter(
    "E08",
    "old vehicle with one common speaker ground",
    [
      "common-ground-speakers-on-bridged-outputs",
      "speaker-negatives-commoned",
      "speaker-lead-grounded",
      "outputs-tied",
    ],
    byVehicle,
    (yard, { unit, vehicle }) => {
      for (const number of ["2", "3", "4"]) {
        const lead = yard.leads.find((one) => one.to === `${vehicle}.C${number}`)!;
        yard.move(lead.wires.at(-1)!, `${vehicle}.C${number}`, `${vehicle}.C1`);
        yard.cavity(`${vehicle}.C${number}`, {
          function: "not-used",
          direction: "none",
          use: "plugged",
          lead: null,
        });
      }
      return [unit, vehicle];
    },
  ),
  planter(
    "E08",
    "speakers grounded at the frame",
    ["common-ground-speakers-on-bridged-outputs", "speaker-negatives-commoned", "speaker-lead-grounded"],
    own,
    (yard, { unit, speakers }) => {
      const stud = yard.ground();
      for (const number of ["1", "2"]) {
        const lead = yard.leads.find((one) => one.from === `${unit}.M${number}`)!;
        const speaker = speakers[Number(number) - 1]!;
        yard.move(lead.wires.at(-1)!, `${speaker}.−`, stud);
        yard.wire(`${speaker}.−`, stud, { tag: "frame", area_mm2: 0.75, length_m: 0.3 });
      }
      return [unit, stud, ...speakers];
    },
  ),
  planter(
    "E09",
    "receiver's leads on an amplifier's outputs",
    ["outputs-tied", "speaker-on-input"],
    factoryAmplifier("speaker"),
    (yard, { unit, box }) => {
      for (const sign of ["+", "-"]) {
        const lead = yard.tagged(`in-front-left-${sign}`);
        yard.move(lead.wires.at(-1)!, `${box}.I1${sign}`, `${box}.O1${sign}`);
      }
      return [unit, box];
    },
  ),
  planter(
    "E10",
    "speaker level into a line input",
    ["speaker-level-into-line-input"],
    amplifier,
    (yard, { amplifier: box, receiver, plugs }) => {
      const number = 1;
      removeLead(yard, "line-front-left");
      removeLead(yard, "line-shield-front-left");
      freePair(yard, receiver.unit, number);
      yard.lead(`${receiver.unit}.P1`, `${box}.IN1`, {
        tag: "level",
        area_mm2: 0.75,
        length_m: 3,
        ways: ["direct", "solder"],
      });
      yard.lead(`${receiver.unit}.M1`, `${box}.IN1S`, {
        tag: "level",
        area_mm2: 0.75,
        length_m: 3,
        ways: ["direct", "solder"],
      });
      return [box, receiver.unit, plugs[0]!];
    },
    { also: ["unused-line-plug-uncovered", "required-lead-missing"] },
  ),
  planter(
    "E11",
    "line level into a speaker-level input",
    ["line-level-into-speaker-input"],
    factoryAmplifier("line"),
    (yard, { box, unit }) => {
      for (const [index, channel] of ["front-left", "front-right"].entries()) {
        yard.cavity(`${box}.I${index + 1}+`, { function: `speaker-${channel}-plus` });
        yard.cavity(`${box}.I${index + 1}-`, { function: `speaker-${channel}-minus` });
      }
      return [box, unit];
    },
  ),
  planter(
    "E12",
    "a second speaker beside the first",
    ["speaker-load-too-low"],
    amplifier,
    (yard, { amplifier: box, speakers }) => {
      const extra = [0, 1].map(() =>
        yard.part("speaker", "P", { position: "front-left", impedance_ohm: 4, power_W: 60 }),
      );
      for (const speaker of extra) {
        yard.wire(`${speakers[0]}.+`, `${speaker}.+`, { tag: "beside", area_mm2: 1.5, length_m: 0.5 });
        yard.wire(`${speakers[0]}.−`, `${speaker}.−`, { tag: "beside", area_mm2: 1.5, length_m: 0.5 });
      }
      return [box, ...speakers, ...extra];
    },
  ),
  planter(
    "E12",
    "a speaker of 2 ohm on a receiver that wants 4",
    ["speaker-load-too-low"],
    (yard) => receiverJob(yard, { module: true, speakers: "own", channels: 4 }),
    (yard, { speakers, unit, module }) => {
      const speaker = yard.pick(speakers);
      yard.build.change(speaker, { impedance_ohm: 2 });
      return [speaker, unit, module!];
    },
  ),
  planter(
    "E13",
    "bridged into too little",
    ["bridged-load-too-low"],
    bridgedAmplifier,
    (yard, { box, speaker }) => {
      yard.build.change(speaker, { impedance_ohm: 2 });
      return [box, speaker];
    },
  ),
  planter(
    "E14",
    "tweeter without its capacitor",
    ["tweeter-without-capacitor"],
    withTweeter,
    (yard, { tweeter, capacitor, from }) => {
      yard.remove(capacitor);
      const wire = yard.wire(from, `${tweeter}.+`, { tag: "tweeter", area_mm2: 1.5, length_m: 0.4 });
      return [tweeter, wire];
    },
  ),
  planter(
    "E15",
    "factory amplifier not woken",
    ["amplifier-not-woken", "turn-on-not-joined", "required-lead-missing"],
    factoryAmplifier("speaker"),
    (yard, { box, unit }) => {
      removeLead(yard, "turn-on");
      yard.cavity(`${unit}.10`, { use: "optional" });
      return [box, unit];
    },
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "E17",
    "speakers on the input terminals",
    ["speaker-on-input"],
    factoryAmplifier("speaker"),
    (yard, { box, speakers }) => {
      for (const sign of ["+", "-"] as const) {
        const end = `${speakers[0]}.${sign === "+" ? "+" : "−"}`;
        for (const wire of yard.wiresAt(`${box}.I1${sign}`)) yard.remove(wire.designation);
        const wires = yard.wiresAt(end);
        for (const wire of wires) yard.remove(wire.designation);
        yard.wire(`${box}.I1${sign}`, end, { tag: "wrong", area_mm2: 1.5, length_m: 1 });
      }
      return [box, speakers[0]!];
    },
    { also: ["required-lead-missing", "joint-left-open", "loose-lead"] },
  ),
];
