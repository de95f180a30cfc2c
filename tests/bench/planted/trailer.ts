import type { Yard } from "./yard.ts";

export type TrailerJob = { readonly socket: string; readonly plug: string; readonly pins: readonly string[] };

const PINS: readonly (readonly [string, string, number, number])[] = [
  ["1", "indicator-left", 10, 1.75],
  ["2", "fog-rear", 10, 1.75],
  ["3", "ground-lamps", 0, 0],
  ["4", "indicator-right", 10, 1.75],
  ["5", "tail-right", 7.5, 0.9],
  ["6", "stop-lamp", 10, 3.5],
  ["7", "tail-left", 7.5, 0.9],
  ["8", "reverse", 10, 1.75],
];

/** From the vehicle's socket to a trailer's: pin by pin, three returns apart where constant and switched come too. */
export function trailerJob(yard: Yard, full = yard.chance(0.5), coupling = true): TrailerJob {
  const share = yard.volts === 12 ? 1 : 0.5;
  const vehicleRows: Record<string, string> = {};
  const trailerRows: Record<string, string> = {};
  for (const [pin, name, fuse, current] of PINS) {
    vehicleRows[pin] = name === "ground-lamps" ? "ground-lamps WH 2.5" : `${name} 1.5 fuse:${fuse} plain`;
    trailerRows[pin] = name === "ground-lamps" ? "ground-lamps WH 2.5" : `${name} 1.5 ${current * share}A`;
  }
  const pins = PINS.map(([pin]) => pin);
  if (full) {
    Object.assign(vehicleRows, {
      "9": "constant-feed 2.5 fuse:15",
      "10": "ignition-feed 2.5 fuse:15",
      "11": "ground-switched 2.5",
      "13": "ground-constant 2.5",
    });
    Object.assign(trailerRows, {
      "9": "constant-feed 2.5 6A",
      "10": "ignition-feed 2.5 6A",
      "11": "ground-switched 2.5",
      "13": "ground-constant 2.5",
    });
    pins.push("9", "10", "11", "13");
  }
  const socket = yard.vehicle(
    vehicleRows,
    coupling
      ? { name: "13-pin plug", shell: "ISO 11446", gender: "plug" }
      : { name: "rear lamp loom", shell: "rear loom", gender: "plug" },
  );
  const plug = yard.unit(trailerRows, {
    name: "trailer's socket",
    shell: `trailer ${socket}`,
    gender: "receptacle",
  });
  const wires: string[] = [];
  for (const pin of pins) {
    const area_mm2 = ["3", "9", "10", "11", "13"].includes(pin) ? 2.5 : 1.5;
    const lead = yard.lead(`${socket}.${pin}`, `${plug}.${pin}`, {
      tag: `pin-${pin}`,
      area_mm2,
      length_m: 0.6,
      ways: ["direct"],
    });
    wires.push(...lead.wires);
  }
  yard.build.cable(yard.name("WC"), "multicore", wires);
  return { socket, plug, pins };
}
