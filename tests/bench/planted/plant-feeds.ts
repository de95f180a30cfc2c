import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const receiver = (yard: Yard) => receiverJob(yard);
const wiresOf = (yard: Yard, ...tags: readonly string[]) => tags.flatMap((tag) => yard.tagged(tag).wires);

/** A box that hangs on the battery by two fuses, one of them behind the key. */
function keyedBox(yard: Yard) {
  const battery = yard.battery();
  const constant = yard.part("fuse", "F", { rating_A: 5, form: "mini", holder: "own" });
  const keyed = yard.part("fuse", "F", { rating_A: 5, form: "mini", holder: "own" });
  const key = yard.part("switch", "S", { name: "key", operatedBy: "key", rating_A: 20 });
  const box = yard.name("A");
  yard.build.module(box, {
    role: "receiver",
    outputs: "bridged",
    wakes: "by-lead",
    sleeps: "yes",
    standby_A: 0.002,
    voltage_V: yard.range(),
    rows: { B: "constant-feed 1 2A", S: "switched-feed 1 0.1A", G: "ground 1" },
  });
  const plan = { area_mm2: 1.5, ways: ["direct"] } as const;
  yard.lead(battery.plus, `${constant}.1`, { ...plan, tag: "stub-1", length_m: 0.12 });
  yard.lead(battery.plus, `${keyed}.1`, { ...plan, tag: "stub-2", length_m: 0.12 });
  yard.lead(`${constant}.2`, `${box}.B`, {
    tag: "constant",
    area_mm2: 1.5,
    length_m: 1.2,
    ways: ["direct", "solder", "crimp", "bullet"],
  });
  yard.lead(`${keyed}.2`, `${key}.1`, { ...plan, tag: "key-in", length_m: 0.6 });
  yard.lead(`${key}.2`, `${box}.S`, {
    tag: "switched",
    area_mm2: 1.5,
    length_m: 0.8,
    ways: ["direct", "solder", "crimp", "bullet"],
  });
  const stud = yard.ground();
  yard.lead(`${box}.G`, stud, { ...plan, tag: "ground", length_m: 0.4, colour: "BK" });
  return { battery, box, key, stud, keyed, constant };
}

/** A fuse box with a tap: both fuses stand on the hot contact. */
function tapJob(yard: Yard) {
  const battery = yard.battery();
  const main = yard.part("fuse", "F", { name: "box", rating_A: 40, form: "maxi", holder: "own" });
  const hot = yard.part("splice", "XJ", {
    name: "fuse box, hot",
    method: "terminal-block",
    cover: "housing",
    zone: "cabin",
  });
  const old = yard.part("fuse", "F", { name: "washer", rating_A: 10, form: "mini", holder: "fuse-box" });
  const tap = yard.part("fuse", "F", { name: "new radio", rating_A: 5, form: "mini", holder: "tap" });
  const loads = [old, tap].map((fuse) => {
    const load = yard.part("load", "E", {
      type: "other",
      function: "switched-feed",
      current_A: 2,
      behaviour: "resistance",
      voltage_V: yard.range(),
    });
    return { fuse, load };
  });
  yard.lead(battery.plus, `${main}.1`, { tag: "stub", area_mm2: 10, length_m: 0.15, ways: ["direct"] });
  yard.lead(`${main}.2`, `${hot}.1`, { tag: "main", area_mm2: 10, length_m: 0.5, ways: ["direct"] });
  for (const { fuse, load } of loads) {
    yard.lead(`${hot}.2`, `${fuse}.1`, { tag: `in-${fuse}`, area_mm2: 10, length_m: 0.05, ways: ["direct"] });
    yard.lead(`${fuse}.2`, `${load}.+`, {
      tag: `out-${fuse}`,
      area_mm2: 1.5,
      length_m: 1.2,
      ways: ["direct"],
    });
    yard.lead(`${load}.−`, yard.ground(), {
      tag: "ground",
      area_mm2: 1.5,
      length_m: 0.4,
      ways: ["direct"],
      colour: "BK",
    });
  }
  return { old, tap, hot };
}

/** A vehicle lead of some function beside a plain feed that a new lamp hangs on. */
function besideJob(name: string) {
  return (yard: Yard) => {
    const vehicle = yard.vehicle({
      "1": "switched-feed 1 fuse:7.5",
      "2": `${name} gives spare`,
      "3": "ground 1",
    });
    const fuse = yard.part("fuse", "F", { rating_A: 3, form: "mini", holder: "own" });
    const load = yard.part("load", "E", {
      type: "lamp",
      function: "interior-lamp",
      current_A: 1,
      behaviour: "filament",
      voltage_V: yard.range(),
    });
    yard.lead(`${vehicle}.1`, `${fuse}.1`, {
      tag: "feed",
      area_mm2: 1.5,
      length_m: 0.15,
      ways: ["direct", "solder", "crimp"],
    });
    yard.lead(`${fuse}.2`, `${load}.+`, {
      tag: "lamp",
      area_mm2: 1,
      length_m: 1,
      ways: ["direct", "solder"],
    });
    yard.lead(`${load}.−`, `${vehicle}.3`, {
      tag: "ground",
      area_mm2: 1,
      length_m: 1,
      ways: ["direct"],
      colour: "BK",
    });
    return { vehicle, load, fuse };
  };
}

const FORBIDDEN = [
  "forbidden-circuit-tapped",
  "airbag-circuit-touched",
  "data-lead-on-feed",
  "high-voltage-touched",
  "data-lead-on-wrong-bus",
];
const touched = [
  "airbag",
  "wheel-speed",
  "injector",
  "ignition-coil",
  "fuel-pump",
  "brake-switch",
  "anti-lock-feed",
  "can-high",
];

/** Section B of the reference: feeds. */
export const FEEDS: readonly Planter[] = [
  planter(
    "B01",
    "exchanged at the unit",
    ["feeds-swapped"],
    receiver,
    (yard, { unit }) => {
      yard.exchange(`${unit}.1`, `${unit}.2`);
      return [unit];
    },
    BOTH,
  ),
  planter(
    "B01",
    "exchanged at the vehicle's plug",
    ["feeds-swapped"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.exchange(`${vehicle}.A4`, `${vehicle}.A7`);
      return [vehicle, unit];
    },
  ),
  planter(
    "B01",
    "the vehicle's plug filled the other way round",
    ["feeds-swapped"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.cavity(`${vehicle}.A4`, { function: "switched-feed", fuse_A: 10 });
      yard.cavity(`${vehicle}.A7`, { function: "constant-feed", fuse_A: 10 });
      return [vehicle, unit];
    },
  ),
  planter(
    "B01",
    "exchanged behind fuses and key",
    ["feeds-swapped"],
    keyedBox,
    (yard, { box }) => {
      yard.exchange(`${box}.B`, `${box}.S`);
      return [box];
    },
    BOTH,
  ),
  planter(
    "B02",
    "both feeds on the constant cavity",
    ["both-feeds-one-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("switched").wires[0]!, `${vehicle}.A7`, `${vehicle}.A4`);
      return [unit, vehicle];
    },
    BOTH,
  ),
  planter(
    "B02",
    "the key by-passed",
    ["both-feeds-one-kind"],
    keyedBox,
    (yard, { box, key }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${key}.2`, `${key}.1`);
      return [box, wire];
    },
    BOTH,
  ),
  planter(
    "B03",
    "both feeds on the switched cavity",
    ["both-feeds-one-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("constant").wires[0]!, `${vehicle}.A4`, `${vehicle}.A7`);
      return [unit, vehicle];
    },
    { also: ["same-function-unjoined", "tapped-circuit-overloaded", "fuse-too-small"] },
  ),
  planter(
    "B03",
    "both feeds behind the key",
    ["both-feeds-one-kind"],
    keyedBox,
    (yard, { box, key, constant }) => {
      yard.move(yard.tagged("constant").wires[0]!, `${constant}.2`, `${key}.2`);
      return [box];
    },
    BOTH,
  ),
  planter(
    "B04",
    "a bridge between constant and switched",
    ["feeds-tied"],
    receiver,
    (yard, { vehicle }) => [
      vehicle,
      yard.wire(`${vehicle}.A4`, `${vehicle}.A7`, { tag: "bridge", area_mm2: 1.5, length_m: 0.2 }),
    ],
    BOTH,
  ),
  planter(
    "B04",
    "both vehicle leads in one joint",
    ["feeds-tied"],
    (yard) => cameraJob(yard),
    (yard, { board }) => {
      const joint = yard.tagged("switched").to.split(".")[0]!;
      const wire = yard.wire(`${board}.3`, `${joint}.1`, { tag: "helping", area_mm2: 1.5, length_m: 0.4 });
      yard.cavity(`${board}.3`, { use: "expected" });
      return [board, joint, wire];
    },
  ),
  planter(
    "B05",
    "feed and ground exchanged at a receiver",
    ["supply-reversed"],
    receiver,
    (yard, { unit, vehicle }) => {
      yard.exchange(`${unit}.1`, `${unit}.3`);
      return [unit, vehicle];
    },
    BOTH,
  ),
  planter(
    "B05",
    "camera reversed",
    ["supply-reversed"],
    cameraJob,
    (yard, { tail, camera }) => {
      yard.exchange(`${tail}.+`, `${tail}.−`);
      return [tail, camera];
    },
    BOTH,
  ),
  planter(
    "B05",
    "amplifier reversed",
    ["supply-reversed"],
    (yard) => amplifierJob(yard),
    (yard, { amplifier }) => {
      yard.exchange(`${amplifier}.+12`, `${amplifier}.GND`);
      return [amplifier];
    },
  ),
  planter(
    "B05",
    "polarised lamp reversed",
    ["supply-reversed"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      yard.exchange(`${lamp}.+`, `${lamp}.−`);
      return [lamp];
    },
    BOTH,
  ),
  planter(
    "B06",
    "accessory unit on an ignition feed",
    ["feed-of-wrong-kind"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.cavity(`${vehicle}.A7`, { function: "ignition-feed" });
      return [vehicle, unit];
    },
    BOTH,
  ),
  planter(
    "B06",
    "accessory unit on the lights",
    ["feed-of-wrong-kind", "switched-input-on-another-lead"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.move(yard.tagged("switched").wires[0]!, `${vehicle}.A7`, `${vehicle}.A6`);
      return [vehicle, unit, ...wiresOf(yard, "switched")];
    },
    { also: ["one-lead-two-jobs", "same-function-unjoined"] },
  ),
  planter(
    "B07",
    "switched input on illumination",
    ["switched-input-on-another-lead", "feed-of-wrong-kind"],
    busVehicle,
    (yard, { vehicle, unit, far }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${far}.1`, `${vehicle}.4`);
      return [unit, vehicle, wire];
    },
    { also: ["same-function-unjoined"] },
  ),
  planter(
    "B07",
    "switched input on antenna power of its own",
    [
      "switched-input-on-another-lead",
      "feed-of-wrong-kind",
      "one-lead-two-jobs",
      "relays:",
      "required-lead-missing",
    ],
    busVehicle,
    (yard, { unit, far }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.move(wire, `${far}.1`, `${unit}.5`);
      return [unit, wire];
    },
  ),
  planter(
    "B07",
    "switched input left loose",
    ["switched-input-on-another-lead", "required-lead-missing", "loose-lead", "loose-live-lead"],
    busVehicle,
    (yard, { unit }) => {
      const wire = yard.tagged("switched").wires[0]!;
      yard.loosen(wire, 0);
      return [unit, wire];
    },
  ),
  ...(["pulsed", "watched"] as const).map((gives) =>
    planter(
      "B08",
      `lamp hung on a ${gives} output`,
      ["watched-output-tapped", "lamp-outside-its-class"],
      watchedJob(gives),
      (yard, { joint }) => {
        const load = yard.part("load", "E", {
          type: "lamp",
          function: "work-lamp",
          current_A: 1,
          behaviour: "resistance",
          voltage_V: yard.range(),
        });
        const wire = yard.wire(`${joint}.2`, `${load}.+`, { tag: "tapped", area_mm2: 1, length_m: 0.5 });
        yard.wire(`${load}.−`, yard.ground(), { tag: "tapped", area_mm2: 1, length_m: 0.5, colour: "BK" });
        return [load, wire, joint];
      },
      BOTH,
    ),
  ),
  planter(
    "B09",
    "more behind the vehicle's fuse than it bears",
    ["tapped-circuit-overloaded", "fuse-too-small"],
    besideJob("reverse"),
    (yard, { vehicle }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 10, form: "mini", holder: "own" });
      const load = yard.part("load", "E", {
        type: "heater",
        function: "heater-control",
        current_A: 9,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      yard.wire(`${vehicle}.1`, `${fuse}.1`, { tag: "extra", area_mm2: 1.5, length_m: 0.12 });
      yard.wire(`${fuse}.2`, `${load}.+`, { tag: "extra", area_mm2: 1.5, length_m: 0.8 });
      yard.wire(`${load}.−`, yard.ground(), { tag: "extra", area_mm2: 1.5, length_m: 0.5, colour: "BK" });
      return [vehicle, load, fuse];
    },
    BOTH,
  ),
  planter(
    "B09",
    "receiver of many amperes on a small fuse",
    ["tapped-circuit-overloaded", "fuse-too-small"],
    receiver,
    (yard, { vehicle, unit }) => {
      yard.cavity(`${unit}.1`, { current_A: 14 });
      yard.cavity(`${vehicle}.A4`, { fuse_A: 10 });
      return [vehicle, unit];
    },
  ),
  ...touched.map((name) =>
    planter(
      "B10",
      `lamp hung on ${name}`,
      FORBIDDEN,
      besideJob(name),
      (yard, { vehicle, load, fuse }) => {
        const wire = yard.tagged("feed").wires[0]!;
        yard.move(wire, `${vehicle}.1`, `${vehicle}.2`);
        yard.cavity(`${vehicle}.2`, { use: "expected" });
        return [vehicle, wire, load, fuse];
      },
      { also: ["same-function-unjoined", "can-lead-missing", "no-fuse", "fuse-bigger-than-wire"] },
    ),
  ),
  planter(
    "B11",
    "fuse tap behind the old fuse",
    ["fuse-tap-backwards"],
    tapJob,
    (yard, { old, tap, hot }) => {
      const wire = yard.tagged(`in-${tap}`).wires[0]!;
      yard.move(wire, `${hot}.2`, `${old}.2`);
      return [tap, old, wire];
    },
    BOTH,
  ),
  planter(
    "B12",
    "6 V camera",
    ["wrong-voltage"],
    cameraJob,
    (yard, { camera }) => {
      yard.build.change(camera, { voltage_V: { least_V: 5.5, most_V: 6.5 } });
      return [camera];
    },
    BOTH,
  ),
  planter(
    "B12",
    "lamp of the other system",
    ["wrong-voltage"],
    lampJob,
    (yard, { lamps }) => {
      const lamp = yard.pick(lamps);
      yard.build.change(lamp, {
        voltage_V: yard.volts === 12 ? { least_V: 20, most_V: 32 } : { least_V: 9, most_V: 16 },
      });
      return [lamp];
    },
    BOTH,
  ),
  planter(
    "B12",
    "12 V receiver in a 24 V van",
    ["wrong-voltage"],
    (yard) => receiverJob(yard, { module: true }),
    (yard, { module, unit }) => {
      yard.build.change(module!, { voltage_V: { least_V: 9, most_V: 16 } });
      return [module!, unit];
    },
    { volts: [24] },
  ),
  planter(
    "B13",
    "new feed round the master switch",
    ["isolator-bypassed"],
    (yard) => boardJob(yard, 4, { isolator: true }),
    (yard, { main }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 5, form: "mini", holder: "own" });
      const load = yard.part("load", "E", {
        type: "other",
        function: "constant-feed",
        current_A: 0.5,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      yard.wire(`${main}.2`, `${fuse}.1`, { tag: "round", area_mm2: 35, length_m: 0.1 });
      const wire = yard.wire(`${fuse}.2`, `${load}.+`, { tag: "round", area_mm2: 1, length_m: 1 });
      yard.wire(`${load}.−`, yard.ground(), { tag: "round", area_mm2: 1, length_m: 0.5, colour: "BK" });
      return [fuse, load, wire, main];
    },
    BOTH,
  ),
  planter(
    "B14",
    "radio on both sides of a switch in the minus",
    ["negative-isolator-bypassed"],
    minusSwitch,
    (yard, { box, battery, isolator }) => {
      const wire = yard.wire(`${box}.C`, `${battery}.−`, {
        tag: "round",
        area_mm2: 1.5,
        length_m: 0.8,
        colour: "BK",
      });
      yard.cavity(`${box}.C`, { use: "expected" });
      return [box, battery, isolator, wire];
    },
    BOTH,
  ),
  planter(
    "B15",
    "two batteries plus to plus",
    ["supplies-joined"],
    (yard) => lampJob(yard),
    (yard, { battery }) => {
      const second = yard.battery();
      const [one, two] = [0, 1].map(() =>
        yard.part("fuse", "F", { rating_A: 100, form: "bolt-down", holder: "own" }),
      );
      yard.wire(`${battery}.+`, `${one}.1`, { tag: "join", area_mm2: 35, length_m: 0.15 });
      yard.wire(`${one}.2`, `${two}.1`, { tag: "join", area_mm2: 35, length_m: 2 });
      yard.wire(`${two}.2`, `${second.name}.+`, { tag: "join", area_mm2: 35, length_m: 0.15 });
      return [battery, second.name, one!, two!];
    },
    BOTH,
  ),
  planter(
    "B16",
    "another load behind the alarm's fuse",
    ["alarm-feed-shared"],
    (yard) => {
      const battery = yard.battery();
      const fuse = yard.part("fuse", "F", { name: "alarm", rating_A: 5, form: "mini", holder: "own" });
      const siren = yard.part("load", "E", {
        name: "siren",
        type: "sounder",
        function: "alarm-siren",
        current_A: 1,
        behaviour: "resistance",
        standby_A: 0.001,
        voltage_V: yard.range(),
      });
      const joint = yard.joint("solder", 1.5);
      yard.lead(battery.plus, `${fuse}.1`, { tag: "stub", area_mm2: 1.5, length_m: 0.12, ways: ["direct"] });
      yard.lead(`${fuse}.2`, `${joint}.1`, { tag: "alarm", area_mm2: 1.5, length_m: 0.6, ways: ["direct"] });
      yard.lead(`${joint}.2`, `${siren}.+`, { tag: "alarm", area_mm2: 1.5, length_m: 0.6, ways: ["direct"] });
      yard.lead(`${siren}.−`, yard.ground(), {
        tag: "alarm",
        area_mm2: 1.5,
        length_m: 0.4,
        ways: ["direct"],
        colour: "BK",
      });
      return { fuse, siren, joint };
    },
    (yard, { fuse, siren, joint }) => {
      const hand = yard.part("switch", "S", { operatedBy: "hand", rating_A: 10 });
      const load = yard.part("load", "E", {
        type: "lamp",
        function: "interior-lamp",
        current_A: 1,
        behaviour: "filament",
        voltage_V: yard.range(),
      });
      const wire = yard.wire(`${joint}.2`, `${hand}.1`, { tag: "extra", area_mm2: 1.5, length_m: 0.5 });
      yard.wire(`${hand}.2`, `${load}.+`, { tag: "extra", area_mm2: 1.5, length_m: 0.5 });
      yard.wire(`${load}.−`, yard.ground(), { tag: "extra", area_mm2: 1.5, length_m: 0.4, colour: "BK" });
      return [fuse, siren, load, wire, joint];
    },
  ),
];

/** A vehicle of data and no switched feed, the feed made by an interface. */
function busVehicle(yard: Yard) {
  const vehicle = yard.vehicle({
    "1": "constant-feed 1.5 fuse:15",
    "2": "ground 1.5",
    "3": "can-high 0.5",
    "4": "illumination fuse:5 optional",
    "5": "can-low 0.5",
  });
  const module = yard.part("module", "A", {
    role: "interface",
    outputs: "none",
    sleeps: "yes",
    wakes: "by-signal",
    standby_A: 0.002,
    voltage_V: yard.range(),
  });
  const near = yard.receptacle(module, {
    "1": "constant-feed 1 0.3A",
    "2": "ground 1",
    "3": "can-high 0.5",
    "4": "can-low 0.5",
  });
  const far = yard.receptacle(module, { "1": "switched-feed 0.75 gives 2A fuse:3 optional" });
  const unit = yard.unit({
    "1": "constant-feed 1.5 5A",
    "2": "switched-feed 0.75 0.1A",
    "3": "ground 1.5",
    "5": "antenna-power 0.3A optional",
  });
  const direct = { ways: ["direct"], length_m: 0.4, area_mm2: 2.5 } as const;
  const plus = yard.joint("solder", 2.5);
  const minus = yard.joint("solder", 2.5);
  yard.lead(`${vehicle}.1`, `${plus}.1`, { ...direct, tag: "constant" });
  yard.lead(`${plus}.2`, `${near}.1`, { ...direct, tag: "constant-1" });
  yard.lead(`${plus}.2`, `${unit}.1`, { ...direct, tag: "constant-2" });
  yard.lead(`${vehicle}.2`, `${minus}.1`, { ...direct, tag: "ground", colour: "BK" });
  yard.lead(`${minus}.2`, `${near}.2`, { ...direct, tag: "ground-1", colour: "BK" });
  yard.lead(`${minus}.2`, `${unit}.3`, { ...direct, tag: "ground-2", colour: "BK" });
  const high = yard.lead(`${vehicle}.3`, `${near}.3`, { ...direct, tag: "can-high", area_mm2: 0.5 });
  const low = yard.lead(`${vehicle}.5`, `${near}.4`, { ...direct, tag: "can-low", area_mm2: 0.5 });
  yard.build.cable(yard.name("WC"), "twisted-pair", [...high.wires, ...low.wires]);
  yard.lead(`${far}.1`, `${unit}.2`, { ...direct, tag: "switched", area_mm2: 0.75 });
  return { vehicle, unit, far, module };
}

/** A lamp on an output that a controller pulses or watches. */
function watchedJob(gives: "pulsed" | "watched") {
  return (yard: Yard) => {
    const cluster = yard.vehicle({ "1": `reverse 1 fuse:10 ${gives} 1.75A`, "2": "ground-lamps 1" });
    const joint = yard.joint("solder", 1);
    const lamp = yard.part("load", "E", {
      type: "lamp",
      function: "reverse",
      current_A: 1.75,
      behaviour: "filament",
      voltage_V: yard.range(),
    });
    yard.lead(`${cluster}.1`, `${joint}.1`, { tag: "lamp", area_mm2: 1.5, length_m: 0.3, ways: ["direct"] });
    yard.lead(`${joint}.2`, `${lamp}.+`, { tag: "lamp", area_mm2: 1.5, length_m: 0.3, ways: ["direct"] });
    yard.lead(`${lamp}.−`, `${cluster}.2`, {
      tag: "lamp-ground",
      area_mm2: 1.5,
      length_m: 0.5,
      ways: ["direct"],
      colour: "BN",
    });
    return { cluster, joint, lamp };
  };
}

/** A master switch between the battery's minus and the frame, and a radio grounded on the frame. */
function minusSwitch(yard: Yard) {
  const battery = yard.part("supply", "G", {
    voltage_V: yard.volts,
    capacity_Ah: 90,
    resistance_ohm: 0.005,
    cover: "boot",
    sensor: "none",
  });
  const isolator = yard.part("switch", "S", { name: "master switch", operatedBy: "isolator", rating_A: 150 });
  const strap = yard.ground("body strap");
  const stud = yard.ground();
  const fuse = yard.part("fuse", "F", { rating_A: 5, form: "mini", holder: "own" });
  const box = yard.name("A");
  yard.build.module(box, {
    role: "receiver",
    outputs: "bridged",
    wakes: "by-lead",
    sleeps: "yes",
    standby_A: 0.002,
    voltage_V: yard.range(),
    rows: { B: "switched-feed 1 2A", G: "ground 1", C: "ground 1 optional" },
  });
  const key = yard.part("switch", "S", { operatedBy: "key", rating_A: 20 });
  yard.lead(`${battery}.−`, `${isolator}.1`, {
    tag: "minus",
    area_mm2: 35,
    length_m: 0.4,
    ways: ["direct"],
    colour: "BK",
  });
  yard.lead(`${isolator}.2`, strap, {
    tag: "minus",
    area_mm2: 35,
    length_m: 0.4,
    ways: ["direct"],
    colour: "BK",
  });
  yard.lead(`${battery}.+`, `${fuse}.1`, { tag: "stub", area_mm2: 1.5, length_m: 0.12, ways: ["direct"] });
  yard.lead(`${fuse}.2`, `${key}.1`, { tag: "feed", area_mm2: 1.5, length_m: 0.8, ways: ["direct"] });
  yard.lead(`${key}.2`, `${box}.B`, { tag: "feed", area_mm2: 1.5, length_m: 0.8, ways: ["direct"] });
  yard.lead(`${box}.G`, stud, {
    tag: "ground",
    area_mm2: 1.5,
    length_m: 0.5,
    ways: ["direct"],
    colour: "BK",
  });
  return { battery, isolator, box, strap };
}
