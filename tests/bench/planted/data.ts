import type { Yard } from "./yard.ts";

export type InterfaceJob = {
  readonly vehicle: string;
  readonly module: string;
  /** Towards the vehicle, and towards the receiver. */
  readonly near: string;
  readonly far: string;
  readonly receiver: string;
  readonly plug: string;
  readonly terminators: readonly string[];
};

/** An interface module that reads the bus and gives the receiver its switched feed; keys of the steering wheel. */
export function interfaceJob(yard: Yard, terminated = false): InterfaceJob {
  const vehicle = yard.vehicle(
    {
      "1": "constant-feed RD 1.5 fuse:15",
      "2": "ground BN 1.5",
      "3": "can-high OG/GN 0.5",
      "4": "can-low OG/BN 0.5",
      "5": "steering-key-1 GY/YE 0.5 gives",
      "6": "sense-ground GY/BN 0.5",
      "7": "antenna-power BU 0.5 0.15A",
      "8": "steering-key-2 GY/VT 0.5 gives",
    },
    { name: "radio bay, no switched feed" },
  );
  const module = yard.part("module", "A", {
    name: "radio interface",
    role: "interface",
    outputs: "none",
    wakes: "by-signal",
    sleeps: "yes",
    standby_A: 0.003,
    voltage_V: yard.range(),
    switches: ["1", "2", "3", "4"].map((label) => {
      const wanted = yard.pick(["on", "off"] as const);
      return { label, wanted, position: wanted, meaning: `option ${label}` };
    }),
  });
  const near = yard.receptacle(
    module,
    {
      "1": "constant-feed RD 1.5 0.3A",
      "2": "ground BK 1.5",
      "3": "can-high OG 0.5",
      "4": "can-low BN 0.5",
      "5": "steering-key-1 GY 0.5 takes",
      "6": "sense-ground GY/BK 0.5 takes",
      "7": "steering-key-2 GY/RD 0.5 takes",
    },
    { name: "vehicle side", keying: "black, left" },
  );
  const far = yard.receptacle(
    module,
    {
      "1": "switched-feed RD 0.75 gives 2A fuse:3",
      "2": "illumination OG/WH 0.5 gives 0.2A",
      "3": "reverse VT/WH 0.5 gives 0.2A spare",
      "4": "speed PK 0.5 gives",
      "5": "parking-brake GN/WH 0.5 gives",
      "6": "remote-control BN/YE 0.5 gives",
    },
    { name: "receiver side", keying: "grey, right" },
  );
  const receiver = yard.part("module", "A", {
    name: "radio receiver",
    role: "receiver",
    outputs: "bridged",
    wakes: "by-lead",
    sleeps: "yes",
    standby_A: 0.004,
    voltage_V: yard.range(),
  });
  const plug = yard.receptacle(receiver, {
    "1": "constant-feed YE 1.5 6A",
    "2": "switched-feed RD 0.75 0.1A",
    "3": "ground BK 1.5",
    "4": "illumination OG/WH 0.5 0.02A",
    "5": "speed PK 0.5",
    "6": "parking-brake GN/WH 0.5",
    "7": "remote-control BN/YE 0.5 takes",
    "8": "antenna-power BU 0.5 0.3A",
  });
  const plus = yard.joint("solder", 2.5);
  const minus = yard.joint("solder", 2.5);
  const direct = { ways: ["direct"], length_m: 0.4 } as const;
  yard.lead(`${vehicle}.1`, `${plus}.1`, { ...direct, tag: "constant", area_mm2: 2.5 });
  yard.lead(`${plus}.2`, `${near}.1`, { ...direct, tag: "constant-interface", area_mm2: 2.5 });
  yard.lead(`${plus}.2`, `${plug}.1`, { ...direct, tag: "constant-receiver", area_mm2: 2.5 });
  yard.lead(`${vehicle}.2`, `${minus}.1`, {
    ...direct,
    tag: "ground",
    area_mm2: 2.5,
    length_m: 0.15,
    colour: "BN",
  });
  yard.lead(`${minus}.2`, `${near}.2`, { ...direct, tag: "ground-interface", area_mm2: 2.5, colour: "BK" });
  yard.lead(`${minus}.2`, `${plug}.3`, { ...direct, tag: "ground-receiver", area_mm2: 2.5, colour: "BK" });
  const high = yard.lead(`${vehicle}.3`, `${near}.3`, {
    ...direct,
    tag: "can-high",
    area_mm2: 0.5,
    length_m: 0.35,
  });
  const low = yard.lead(`${vehicle}.4`, `${near}.4`, {
    ...direct,
    tag: "can-low",
    area_mm2: 0.5,
    length_m: 0.35,
  });
  yard.build.cable(yard.name("WC"), "twisted-pair", [high.wires[0]!, low.wires[0]!]);
  yard.lead(`${vehicle}.5`, `${near}.5`, { ...direct, tag: "key-1", area_mm2: 0.5 });
  yard.lead(`${vehicle}.8`, `${near}.7`, { ...direct, tag: "key-2", area_mm2: 0.5 });
  yard.lead(`${vehicle}.6`, `${near}.6`, { ...direct, tag: "sense-ground", area_mm2: 0.5 });
  yard.lead(`${plug}.8`, `${vehicle}.7`, { tag: "antenna-power", area_mm2: 0.75 });
  yard.lead(`${far}.1`, `${plug}.2`, { tag: "switched", area_mm2: 0.75 });
  yard.lead(`${far}.2`, `${plug}.4`, { tag: "illumination", area_mm2: 0.75 });
  yard.lead(`${far}.4`, `${plug}.5`, { tag: "speed", area_mm2: 0.75 });
  yard.lead(`${far}.5`, `${plug}.6`, { tag: "parking-brake", area_mm2: 0.75 });
  yard.lead(`${far}.6`, `${plug}.7`, { tag: "remote", area_mm2: 0.75 });
  yard.cap(`${far}.3`);
  const terminators: string[] = [];
  if (terminated) {
    for (const end of [vehicle, near]) {
      const terminator = yard.part("resistor", "R", { resistance_ohm: 120, power_W: 0.25 });
      terminators.push(terminator);
      const wires = [
        yard.wire(`${end}.3`, `${terminator}.1`, { tag: "terminator", area_mm2: 0.5, length_m: 0.05 }),
        yard.wire(`${end}.4`, `${terminator}.2`, { tag: "terminator", area_mm2: 0.5, length_m: 0.05 }),
      ];
      yard.build.cable(yard.name("WC"), "twisted-pair", wires);
    }
  }
  return { vehicle, module, near, far, receiver, plug, terminators };
}
