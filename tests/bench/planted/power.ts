import type { Yard } from "./yard.ts";

/** The names of what a lamp job is made of. */
export type LampJob = {
  readonly battery: string;
  readonly main: string;
  readonly coilFuse: string;
  readonly relay: string;
  readonly lamps: readonly string[];
  readonly grounds: readonly string[];
  readonly outside: string;
  readonly manual: string;
};

/** Work lamps by a relay from the battery, worked by a switch on a switched feed, or from the battery's side. */
export function lampJob(yard: Yard): LampJob {
  const battery = yard.battery();
  const count = yard.pick([2, 3]);
  const each_A = yard.pick([2, 3]);
  const total_A = count * each_A;
  const fuse_A = total_A <= 5 ? 10 : 15;
  const main = yard.part("fuse", "F", { name: "lamps", rating_A: fuse_A, form: "regular", holder: "own" });
  const coilFuse = yard.part("fuse", "F", { name: "relay coil", rating_A: 2, form: "mini", holder: "own" });
  const relay = yard.part("relay", "K", {
    name: "work lamps",
    poles: yard.pick(["make", "changeover"]),
    suppression: yard.pick(["diode", "resistor"]),
    coil_ohm: yard.volts === 12 ? 85 : 320,
    rating_A: 30,
  });
  const manual = yard.part("switch", "S", { name: "work lamps", operatedBy: "hand", rating_A: 5 });
  const area_mm2 = yard.area(fuse_A, total_A, 7);
  const block = yard.joint("block", area_mm2, "engine-bay");
  const outside = yard.run({
    length_m: 5,
    zone: "outside",
    covering: "conduit",
    passes: [{ what: "crossmember", protection: "grommet" }],
  });
  yard.lead(battery.plus, `${main}.1`, { tag: "battery-stub", area_mm2, length_m: 0.15, ways: ["direct"] });
  yard.lead(`${main}.2`, `${block}.1`, { tag: "lamp-main", area_mm2, length_m: 0.5, ways: ["direct"] });
  yard.lead(`${block}.2`, `${relay}.30`, { tag: "relay-in", area_mm2, length_m: 0.3, ways: ["direct"] });
  yard.lead(`${block}.2`, `${coilFuse}.1`, {
    tag: "coil-stub",
    area_mm2: 2.5,
    length_m: 0.12,
    ways: ["direct"],
  });
  yard.lead(`${coilFuse}.2`, `${manual}.1`, {
    tag: "coil-feed",
    area_mm2: 1,
    length_m: 1.5,
    ways: ["direct", "solder"],
  });
  yard.lead(`${manual}.2`, `${relay}.86`, {
    tag: "coil",
    area_mm2: 1,
    length_m: 1.5,
    ways: ["direct", "solder"],
  });
  const coilGround = yard.ground();
  yard.lead(`${relay}.85`, coilGround, {
    tag: "coil-ground",
    area_mm2: 1,
    length_m: 0.4,
    ways: ["direct"],
    colour: "BN",
  });
  const spread = yard.part("splice", "XJ", { method: "terminal-block", cover: "housing", zone: "cabin" });
  yard.lead(`${relay}.87`, `${spread}.1`, {
    tag: "lamp-out",
    area_mm2,
    length_m: 5.5,
    ways: ["direct"],
    runs: [outside],
  });
  const lamps: string[] = [];
  const grounds: string[] = [coilGround];
  for (let index = 0; index < count; index++) {
    const lamp = yard.part("load", "E", {
      name: `work lamp ${index + 1}`,
      type: "lamp",
      function: "work-lamp",
      current_A: each_A,
      behaviour: "constant-power",
      polarised: true,
      voltage_V: yard.range(),
    });
    lamps.push(lamp);
    const stud = yard.ground(`lift frame ${index + 1}, sanded and sealed`);
    grounds.push(stud);
    yard.lead(`${spread}.2`, `${lamp}.+`, { tag: "lamp", area_mm2, length_m: 0.8, ways: ["direct"] });
    yard.lead(`${lamp}.−`, stud, {
      tag: "lamp-ground",
      area_mm2,
      length_m: 0.4,
      ways: ["direct"],
      colour: "BN",
    });
  }
  return { battery: battery.name, main, coilFuse, relay, lamps, grounds, outside, manual };
}

/** The names of what a fuse board is made of. */
export type BoardJob = {
  readonly battery: string;
  readonly main: string;
  readonly block: string;
  readonly circuits: readonly {
    readonly fuse: string;
    readonly switch: string;
    readonly load: string;
    readonly ground: string;
  }[];
};

const CONSUMERS = [
  ["lamp", "interior-lamp", 0.5, 5],
  ["lamp", "interior-lamp", 1.5, 5],
  ["other", "power-socket-feed", 4, 10],
  ["motor", "water-pump", 5, 10],
  ["heater", "heater-control", 7, 15],
  ["sounder", "switched-feed", 0.5, 3],
] as const;

/** A battery, a main fuse, a block, and a fused and switched circuit for each consumer. */
export function boardJob(
  yard: Yard,
  count: number,
  known: { isolator?: boolean; boat?: boolean } = {},
): BoardJob {
  const battery = yard.battery();
  const main = yard.part("fuse", "F", { name: "board", rating_A: 100, form: "bolt-down", holder: "own" });
  const block = yard.part("splice", "XJ", {
    name: "board, plus",
    method: "terminal-block",
    cover: "housing",
    zone: "cabin",
  });
  yard.lead(battery.plus, `${main}.1`, {
    tag: "battery-stub",
    area_mm2: 35,
    length_m: 0.15,
    ways: ["direct"],
  });
  let from = `${main}.2`;
  if (known.isolator) {
    const isolator = yard.part("switch", "S", {
      name: "master switch",
      operatedBy: "isolator",
      rating_A: 150,
    });
    yard.lead(from, `${isolator}.1`, { tag: "board-main", area_mm2: 35, length_m: 0.6, ways: ["direct"] });
    from = `${isolator}.2`;
  }
  yard.lead(from, `${block}.1`, { tag: "board-main", area_mm2: 35, length_m: 0.8, ways: ["direct"] });
  const ways = known.boat
    ? (["direct", "crimp"] as const)
    : (["direct", "crimp", "plugs", "solder"] as const);
  const bus = known.boat
    ? yard.part("splice", "XJ", {
        name: "minus bar",
        method: "terminal-block",
        cover: "housing",
        zone: "cabin",
      })
    : null;
  if (bus)
    yard.lead(`${bus}.1`, `${battery.name}.−`, {
      tag: "bus-ground",
      area_mm2: 35,
      length_m: 0.8,
      ways: ["direct"],
      colour: "BK",
    });
  const circuits: BoardJob["circuits"][number][] = [];
  for (let index = 0; index < count; index++) {
    const [type, name, current_A, fuse_A] = yard.pick(CONSUMERS);
    const fuse = yard.part("fuse", "F", {
      name: `circuit ${index + 1}`,
      rating_A: fuse_A,
      form: "regular",
      holder: "own",
    });
    const hand = yard.part("switch", "S", { name: `circuit ${index + 1}`, operatedBy: "hand", rating_A: 20 });
    const load = yard.part("load", "E", {
      name: `consumer ${index + 1}`,
      type,
      function: name,
      current_A,
      behaviour: "resistance",
      voltage_V: yard.range(),
    });
    const length_m = yard.between(1, 4);
    const area_mm2 = Math.max(1, yard.area(fuse_A, current_A, length_m + 2.5));
    yard.lead(`${block}.2`, `${fuse}.1`, {
      tag: "board-stub",
      area_mm2: 35,
      length_m: 0.1,
      ways: ["direct"],
    });
    yard.lead(`${fuse}.2`, `${hand}.1`, { tag: "board-out", area_mm2, length_m: 1, fuse_A, ways });
    yard.lead(`${hand}.2`, `${load}.+`, { tag: "board-load", area_mm2, length_m, fuse_A, ways });
    const ground = bus ? `${bus}.2` : yard.ground(`body rib ${index + 1}, sanded and sealed`);
    yard.lead(`${load}.−`, ground, {
      tag: "board-ground",
      area_mm2,
      length_m: bus ? length_m : 0.5,
      ways: ["direct"],
      colour: "BK",
    });
    circuits.push({ fuse, switch: hand, load, ground });
  }
  return { battery: battery.name, main, block, circuits };
}
