import { type Planter, planter } from "./planter.ts";
import { filament } from "./stand-lamps.ts";
import { trailerJob } from "./trailer.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;

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
