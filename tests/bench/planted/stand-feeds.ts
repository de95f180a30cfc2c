import type { Yard } from "./yard.ts";

/** A box that hangs on the battery by two fuses, one of them behind the key. */
export function keyedBox(yard: Yard) {
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
export function tapJob(yard: Yard) {
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
export function besideJob(name: string) {
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

/** A vehicle of data and no switched feed, the feed made by an interface. */
export function busVehicle(yard: Yard) {
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
export function watchedJob(gives: "pulsed" | "watched") {
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
export function minusSwitch(yard: Yard) {
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
