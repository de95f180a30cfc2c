import { type Planter, planter } from "./planter.ts";
import { lampJob } from "./power.ts";
import { trailerJob } from "./trailer.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;
const RELAYS = ["relays:"];

/** A lamp of a kind with its filament. */
function filament(yard: Yard, name: string, current_A: number): string {
  return yard.part("load", "E", {
    name,
    type: "lamp",
    function: name,
    current_A,
    behaviour: "filament",
    voltage_V: yard.range(),
  });
}

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
    RELAYS,
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
    RELAYS,
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
    [...RELAYS, "no-fuse"],
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
    RELAYS,
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
    RELAYS,
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
    [...RELAYS, "trigger-back-feeds-lamp"],
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
    RELAYS,
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
    RELAYS,
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
    RELAYS,
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
    [...RELAYS],
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
    [...RELAYS, "no-fuse"],
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
    RELAYS,
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

/** A trailer with lamps of its own behind its plug. */
function litTrailer(yard: Yard) {
  const job = trailerJob(yard, false);
  const names = {
    "1": "indicator-left",
    "4": "indicator-right",
    "5": "tail-right",
    "7": "tail-left",
    "6": "stop-lamp",
  } as const;
  const share = yard.volts === 12 ? 1 : 0.5;
  const ground = yard.joint("block", 2.5);
  yard.lead(`${ground}.1`, `${job.plug}.3`, {
    tag: "trailer-ground",
    area_mm2: 2.5,
    length_m: 1,
    ways: ["direct"],
    colour: "WH",
  });
  const lamps = Object.entries(names).map(([pin, name]) => {
    const lamp = filament(yard, name, (pin === "5" || pin === "7" ? 0.42 : 1.75) * share);
    yard.lead(`${job.plug}.${pin}`, `${lamp}.+`, {
      tag: `trailer-${pin}`,
      area_mm2: 1.5,
      length_m: 3,
      ways: ["direct"],
    });
    yard.lead(`${lamp}.−`, `${ground}.2`, {
      tag: "trailer-return",
      area_mm2: 1.5,
      length_m: 3,
      ways: ["direct"],
      colour: "WH",
    });
    return lamp;
  });
  return { ...job, lamps, ground };
}

/** Section M of the reference: trailers and exterior lamps. */
export const TRAILER: readonly Planter[] = [
  planter(
    "M01",
    "trailer straight on watched lamps",
    ["trailer-lamps-without-relay", "watched-output-tapped"],
    (yard) => {
      yard.build.settings({ vehicle: { highVoltage: "no", lamps: "plain" } });
      const job = trailerJob(yard, false, false);
      for (const pin of ["1", "2", "4", "5", "6", "7", "8"])
        yard.cavity(`${job.socket}.${pin}`, { gives: "unknown" });
      return job;
    },
    (yard, { socket, plug }) => {
      yard.build.settings({ vehicle: { highVoltage: "no", lamps: "watched" } });
      return [socket, plug];
    },
    BOTH,
  ),
  planter(
    "M01",
    "trailer straight on outputs that are watched",
    ["trailer-lamps-without-relay", "watched-output-tapped", "lamp-outside-its-class"],
    (yard) => trailerJob(yard, false, false),
    (yard, { socket, plug }) => {
      for (const pin of ["1", "4", "5", "6", "7"]) yard.cavity(`${socket}.${pin}`, { gives: "watched" });
      return [socket, plug];
    },
    BOTH,
  ),
  planter(
    "M02",
    "returns of lamps and constant feed together",
    ["trailer-returns-joined"],
    (yard) => trailerJob(yard, true),
    (yard, { plug, socket }) => [
      plug,
      socket,
      yard.wire(`${plug}.3`, `${plug}.${yard.pick(["11", "13"])}`, {
        tag: "bridge",
        area_mm2: 2.5,
        length_m: 0.1,
      }),
    ],
    BOTH,
  ),
  planter(
    "M03",
    "plate lamp on both sides",
    ["plate-lamp-from-both-sides"],
    (yard) => {
      const job = litTrailer(yard);
      const plate = filament(yard, "plate-lamp", 0.42);
      yard.lead(`${job.plug}.7`, `${plate}.+`, {
        tag: "plate",
        area_mm2: 1.5,
        length_m: 2,
        ways: ["direct"],
      });
      yard.lead(`${plate}.−`, `${job.ground}.2`, {
        tag: "plate-ground",
        area_mm2: 1.5,
        length_m: 2,
        ways: ["direct"],
      });
      return { ...job, plate };
    },
    (yard, { plug, plate, socket }) => [
      plug,
      plate,
      socket,
      yard.wire(`${plate}.+`, `${plug}.5`, { tag: "other side", area_mm2: 1.5, length_m: 2 }),
    ],
    { volts: [12, 24], also: ["relays:", "outputs-tied"] },
  ),
  planter(
    "M04",
    "combined lamps from separate leads",
    ["combined-and-separate-lamps"],
    (yard) => {
      const vehicle = yard.vehicle({
        "1": "indicator-left 1.5 fuse:10",
        "2": "indicator-right 1.5 fuse:10",
        "3": "stop-lamp 1.5 fuse:10",
        "4": "ground-lamps 2.5",
      });
      const unit = yard.unit({
        "1": "indicator-left 1.5 1.75A",
        "2": "indicator-right 1.5 1.75A",
        "3": "stop-lamp 1.5 3.5A",
        "4": "ground-lamps 2.5",
      });
      for (const pin of ["1", "2", "3", "4"])
        yard.lead(`${vehicle}.${pin}`, `${unit}.${pin}`, {
          tag: `pin-${pin}`,
          area_mm2: 2.5,
          length_m: 0.5,
          ways: ["direct"],
        });
      return { vehicle, unit };
    },
    (yard, { unit, vehicle }) => {
      yard.cavity(`${unit}.1`, { function: "stop-turn-left" });
      yard.cavity(`${unit}.2`, { function: "stop-turn-right" });
      const lead = yard.tagged("pin-3");
      yard.move(lead.wires[0]!, `${unit}.3`, `${unit}.1`);
      yard.cavity(`${unit}.3`, { function: "not-used", direction: "none", use: "plugged", lead: null });
      return [unit, vehicle, ...lead.wires];
    },
    { volts: [12, 24], also: ["relays:", "outputs-tied"] },
  ),
  planter(
    "M05",
    "trailer's feed without a fuse",
    ["no-fuse", "trailer-feed-not-isolated"],
    (yard) => trailerJob(yard, true),
    (yard, { socket, plug }) => {
      yard.cavity(`${socket}.9`, { fuse_A: null });
      return [socket, plug, ...yard.tagged("pin-9").wires];
    },
    BOTH,
  ),
  planter(
    "M05",
    "trailer's battery on a feed that stays joined",
    ["trailer-feed-not-isolated", "supplies-joined"],
    (yard) => trailerJob(yard, true),
    (yard, { plug, socket }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 15, form: "regular", holder: "own" });
      const battery = yard.part("supply", "G", {
        name: "trailer's battery",
        voltage_V: yard.volts,
        capacity_Ah: 70,
        resistance_ohm: 0.01,
        cover: "boot",
        sensor: "none",
      });
      yard.wire(`${battery}.+`, `${fuse}.1`, { tag: "charge", area_mm2: 2.5, length_m: 0.12 });
      const wire = yard.wire(`${fuse}.2`, `${plug}.9`, { tag: "charge", area_mm2: 2.5, length_m: 2 });
      yard.wire(`${battery}.−`, `${plug}.13`, { tag: "charge", area_mm2: 2.5, length_m: 2, colour: "BK" });
      return [battery, fuse, wire, plug, socket];
    },
    { volts: [12, 24], also: ["relays:"] },
  ),
  planter(
    "M06",
    "no return in the coupling",
    ["trailer-without-ground", "unit-without-ground", "required-lead-missing"],
    litTrailer,
    (yard, { plug, socket, lamps, ground }) => {
      yard.remove(yard.tagged("pin-3").wires[0]!);
      const stud = yard.ground("trailer's drawbar");
      yard.wire(`${ground}.1`, stud, { tag: "frame", area_mm2: 2.5, length_m: 1 });
      return [plug, socket, ground, stud, ...lamps];
    },
    { volts: [12, 24], also: ["same-function-unjoined", "relays:"] },
  ),
  planter(
    "M07",
    "plug and socket seen from one side alike",
    ["plug-and-socket-same-view"],
    (yard) => {
      const rows = {
        "1": "indicator-left 1.5 none",
        "2": "tail-left 1.5 none",
        "3": "tail-right 1.5 none",
        "4": "indicator-right 1.5 none",
      };
      const plug = yard.unit(rows, {
        gender: "plug",
        shell: "coupling 4",
        view: "wire-side",
        rows: [[1, 2, 3, 4]],
      });
      const socket = yard.unit(rows, {
        gender: "receptacle",
        shell: "coupling 4",
        view: "mating-face",
        rows: [[1, 2, 3, 4]],
      });
      yard.build.mate(plug, socket);
      return { plug, socket };
    },
    (yard, { plug, socket }) => {
      yard.build.change(socket, { view: "wire-side" });
      return [plug, socket];
    },
  ),
  planter(
    "M08",
    "LED on an output that watches a filament",
    ["lamp-outside-its-class"],
    (yard) => {
      const vehicle = yard.vehicle({ "1": "stop-lamp 1.5 fuse:10 watched 1.75A", "2": "ground-lamps 1.5" });
      const lamp = filament(yard, "stop-lamp", 1.75);
      yard.lead(`${vehicle}.1`, `${lamp}.+`, { tag: "stop", area_mm2: 1.5, ways: ["direct"] });
      yard.lead(`${lamp}.−`, `${vehicle}.2`, { tag: "ground", area_mm2: 1.5, ways: ["direct"] });
      return { vehicle, lamp };
    },
    (yard, { vehicle, lamp }) => {
      yard.build.change(lamp, { current_A: 0.15, behaviour: "constant-current", polarised: true });
      return [vehicle, lamp];
    },
    BOTH,
  ),
];
