import { removeLead } from "./plant-spares.ts";
import { type Planter, planter } from "./planter.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const amplifier = (yard: Yard) => amplifierJob(yard);
const receiver = (yard: Yard) => receiverJob(yard);

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
    ["trigger-back-feeds-lamp", "sources-feed-one-another"],
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
