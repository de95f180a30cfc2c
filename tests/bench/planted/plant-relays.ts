import { type Planter, planter } from "./planter.ts";
import { lampJob } from "./power.ts";
import { filament } from "./stand-lamps.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;

/** Tail and stop lamps at the rear, on a stud each. */
function rearLamps(yard: Yard) {
  const vehicle = yard.vehicle(
    { "1": "stop-lamp 1.5 fuse:10 plain", "2": "tail-lamps 1.5 fuse:7.5 plain" },
    { name: "rear loom" },
  );
  const share = yard.volts === 12 ? 1 : 0.5;
  const stop = filament(yard, "stop-lamp", 1.75 * share);
  const tails = [1, 2, 3, 4].map(() => filament(yard, "tail-lamps", 0.42 * share));
  const block = yard.joint("block", 1.5);
  const plan = { area_mm2: 1.5, ways: ["direct"] } as const;
  yard.lead(`${vehicle}.1`, `${stop}.+`, { ...plan, tag: "stop" });
  yard.lead(`${vehicle}.2`, `${block}.1`, { ...plan, tag: "tail" });
  const studs = [stop, ...tails].map((lamp, index) => {
    if (lamp !== stop) yard.lead(`${block}.2`, `${lamp}.+`, { ...plan, tag: "tail" });
    const stud = yard.ground(`rear panel ${index + 1}, sanded and sealed`);
    yard.lead(`${lamp}.−`, stud, { ...plan, tag: `ground-${lamp}`, length_m: 0.4, colour: "BN" });
    return stud;
  });
  return { vehicle, stop, tails, studs };
}

/** A switched lead through a diode to a load. */
function diodeJob(yard: Yard) {
  const vehicle = yard.vehicle({ "1": "switched-feed 1.5 fuse:5", "2": "ground 1.5" });
  const diode = yard.part("diode", "R", { rating_A: 6 });
  const load = yard.part("load", "E", {
    type: "other",
    function: "switched-feed",
    current_A: 1.5,
    behaviour: "resistance",
    voltage_V: yard.range(),
  });
  const plan = { area_mm2: 1.5, ways: ["direct"] } as const;
  yard.lead(`${vehicle}.1`, `${diode}.A`, { ...plan, tag: "in" });
  yard.lead(`${diode}.K`, `${load}.+`, { ...plan, tag: "out" });
  yard.lead(`${load}.−`, `${vehicle}.2`, { ...plan, tag: "ground", colour: "BK" });
  return { vehicle, diode, load };
}

/** A relay that a unit's electronic output works. */
function moduleRelay(yard: Yard) {
  const vehicle = yard.vehicle({
    "1": "constant-feed 2.5 fuse:15",
    "2": "ground 1.5",
    "3": "switched-feed 1 fuse:5",
  });
  const box = yard.name("A");
  yard.build.module(box, {
    role: "interface",
    outputs: "none",
    wakes: "by-lead",
    sleeps: "yes",
    voltage_V: yard.range(),
    rows: { S: "switched-feed 0.5 0.1A", G: "ground 0.5", O: "relay-control gives 0.5 0.5A" },
  });
  const relay = yard.part("relay", "K", {
    poles: "make",
    suppression: "diode",
    coil_ohm: 85 * (yard.volts / 12) ** 2,
    rating_A: 30,
  });
  const load = yard.part("load", "E", {
    type: "lamp",
    function: "work-lamp",
    current_A: 5,
    behaviour: "resistance",
    voltage_V: yard.range(),
  });
  const plan = { area_mm2: 2.5, ways: ["direct"], length_m: 0.5 } as const;
  yard.lead(`${vehicle}.3`, `${box}.S`, { ...plan, tag: "switched", area_mm2: 1 });
  yard.lead(`${box}.G`, yard.ground(), { ...plan, tag: "ground-box", area_mm2: 1, colour: "BK" });
  yard.lead(`${box}.O`, `${relay}.86`, { ...plan, tag: "coil", area_mm2: 0.75 });
  yard.lead(`${relay}.85`, yard.ground(), { ...plan, tag: "coil-ground", area_mm2: 0.75, colour: "BK" });
  yard.lead(`${vehicle}.1`, `${relay}.30`, { ...plan, tag: "relay-in" });
  yard.lead(`${relay}.87`, `${load}.+`, { ...plan, tag: "lamp" });
  yard.lead(`${load}.−`, yard.ground(), { ...plan, tag: "lamp-ground", colour: "BK" });
  return { vehicle, box, relay, load };
}

/** Section I of the reference: relays, diodes, back-feed. */
export const RELAY_FAULTS: readonly Planter[] = [
  planter(
    "I01",
    "bare coil on an electronic output",
    ["coil-without-suppression"],
    moduleRelay,
    (yard, { relay, box }) => {
      yard.build.change(relay, { suppression: "none" });
      return [relay, box];
    },
    BOTH,
  ),
  planter(
    "I02",
    "relay with a diode the wrong way round",
    ["suppressed-coil-reversed"],
    moduleRelay,
    (yard, { relay, box }) => {
      yard.exchange(`${relay}.85`, `${relay}.86`);
      return [relay, box];
    },
    BOTH,
  ),
  planter(
    "I03",
    "feed into 87a",
    ["relay-contacts-mixed"],
    (yard) => {
      const job = lampJob(yard);
      yard.build.change(job.relay, { poles: "changeover" });
      return job;
    },
    (yard, { relay }) => {
      yard.exchange(`${relay}.30`, `${relay}.87a`);
      return [relay];
    },
    BOTH,
  ),
  planter(
    "I03",
    "lamps on 87a",
    ["relay-contacts-mixed"],
    (yard) => {
      const job = lampJob(yard);
      yard.build.change(job.relay, { poles: "changeover" });
      return job;
    },
    (yard, { relay, lamps }) => {
      yard.exchange(`${relay}.87`, `${relay}.87a`);
      return [relay, ...lamps];
    },
    BOTH,
  ),
  planter(
    "I05",
    "stop and tail lamps on one stud's lead",
    ["lost-ground-back-feeds"],
    rearLamps,
    (yard, { stop, tails, studs }) => {
      // The stop lamp's and one tail lamp's ground meet in a joint with one lead to the stud.
      const joint = yard.joint("solder", 1.5);
      for (const lamp of [stop, tails[0]!]) {
        const wire = yard.wiresAt(`${lamp}.−`)[0]!;
        yard.move(wire.designation, studs[lamp === stop ? 0 : 1]!, `${joint}.1`);
      }
      const shared = yard.wire(`${joint}.2`, studs[0]!, {
        tag: "shared",
        area_mm2: 1.5,
        length_m: 0.4,
        colour: "BN",
      });
      return [stop, ...tails, joint, shared, studs[0]!];
    },
    BOTH,
  ),
  planter(
    "I06",
    "reversing feed and a hand switch in one lead",
    ["sources-feed-one-another", "trigger-back-feeds-lamp"],
    (yard) => {
      const vehicle = yard.vehicle({
        "1": "reverse 1.5 fuse:7.5 plain",
        "2": "switched-feed 1.5 fuse:7.5",
        "3": "ground 1.5",
      });
      const hand = yard.part("switch", "S", { operatedBy: "hand", rating_A: 10 });
      const load = yard.part("load", "E", {
        type: "lamp",
        function: "work-lamp",
        current_A: 1.5,
        behaviour: "filament",
        voltage_V: yard.range(),
      });
      const second = yard.part("load", "E", {
        type: "lamp",
        function: "reverse",
        current_A: 1.5,
        behaviour: "filament",
        voltage_V: yard.range(),
      });
      const plan = { area_mm2: 1.5, ways: ["direct"] } as const;
      yard.lead(`${vehicle}.2`, `${hand}.1`, { ...plan, tag: "hand" });
      yard.lead(`${hand}.2`, `${load}.+`, { ...plan, tag: "work" });
      yard.lead(`${vehicle}.1`, `${second}.+`, { ...plan, tag: "reverse" });
      yard.lead(`${load}.−`, yard.ground(), { ...plan, tag: "ground", length_m: 0.4, colour: "BK" });
      yard.lead(`${second}.−`, `${vehicle}.3`, { ...plan, tag: "ground", colour: "BK" });
      return { vehicle, hand, load, second };
    },
    (yard, { vehicle, hand, load, second }) => [
      vehicle,
      hand,
      load,
      second,
      yard.wire(`${load}.+`, `${second}.+`, { tag: "bridge", area_mm2: 1.5, length_m: 0.5 }),
    ],
    BOTH,
  ),
  planter(
    "I07",
    "diode the wrong way",
    ["diode-blocks-its-circuit"],
    diodeJob,
    (yard, { diode, load }) => {
      yard.exchange(`${diode}.A`, `${diode}.K`);
      return [diode, load];
    },
    BOTH,
  ),
  planter(
    "I07",
    "diode too small",
    ["diode-too-small"],
    diodeJob,
    (yard, { diode }) => {
      yard.build.change(diode, { rating_A: 1 });
      return [diode];
    },
    BOTH,
  ),
  planter(
    "I08",
    "relay that holds itself",
    ["relay-holds-itself"],
    (yard) => lampJob(yard),
    (yard, { relay, manual }) => {
      const wire = yard.wire(`${relay}.87`, `${relay}.86`, { tag: "hold", area_mm2: 4, length_m: 0.1 });
      return [relay, manual, wire, ...yard.tagged("coil").wires];
    },
    { volts: [12, 24], also: ["fuse-bigger-than-wire", "branch-thinner-than-fuse"] },
  ),
  planter(
    "I09",
    "contacts overloaded",
    ["relay-contact-overloaded"],
    lampJob,
    (yard, { relay }) => {
      yard.build.change(relay, { rating_A: 2 });
      return [relay];
    },
    BOTH,
  ),
  planter(
    "I09",
    "contact without a fuse",
    ["relay-contact-unfused", "no-fuse"],
    lampJob,
    (yard, { relay, battery }) => {
      const wire = yard.tagged("relay-in").wires[0]!;
      yard.move(wire, yard.tagged("relay-in").from, `${battery}.+`);
      return [relay, wire, battery];
    },
    BOTH,
  ),
  planter(
    "I10",
    "coil held with the key off",
    ["relay-on-with-key-off"],
    moduleRelay,
    (yard, { relay, box, vehicle }) => {
      const lead = yard.tagged("coil");
      yard.move(lead.wires[0]!, `${box}.O`, `${vehicle}.1`);
      yard.cavity(`${box}.O`, { use: "optional" });
      return [relay, vehicle, ...lead.wires];
    },
    {
      volts: [12, 24],
      also: [
        "fuse-bigger-than-wire",
        "branch-thinner-than-fuse",
        "same-function-unjoined",
        "required-lead-missing",
      ],
    },
  ),
];
