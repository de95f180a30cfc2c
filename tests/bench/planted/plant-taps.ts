import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { receiverJob } from "./sound.ts";
import { besideJob, minusSwitch, tapJob, watchedJob } from "./stand-feeds.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const receiver = (yard: Yard) => receiverJob(yard);

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

/** Section B of the reference, from B08: taps, voltages, switches, second batteries. */
export const TAPS: readonly Planter[] = [
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
