import type { Yard } from "./yard.ts";

export const CHANNELS = ["front-left", "front-right", "rear-left", "rear-right"] as const;
export type Channel = (typeof CHANNELS)[number];

/** The names of what a receiver job is made of. */
export type ReceiverJob = {
  /** The vehicle's connector. */
  readonly vehicle: string;
  /** The connector with the receiver's leads. */
  readonly unit: string;
  /** The receiver's box, where it is drawn as one. */
  readonly module: string | null;
  readonly channels: readonly Channel[];
  readonly speakers: readonly string[];
};

type Wants = {
  readonly module?: boolean;
  readonly speakers?: "vehicle" | "own" | "none";
  readonly channels?: 2 | 4;
  readonly lines?: boolean;
};

/** A receiver on the vehicle's plug: every lead joined by its function, what is left over capped. */
export function receiverJob(yard: Yard, wants: Wants = {}): ReceiverJob {
  const drawn = wants.module ?? yard.chance(0.6);
  const where = wants.speakers ?? (yard.chance(0.6) ? "vehicle" : "own");
  const channels = CHANNELS.slice(0, wants.channels ?? (yard.chance(0.7) ? 4 : 2));
  const label = (index: number) => String(index + 1);
  const fuse = yard.pick([10, 15]);
  const vehicleRows: Record<string, string> = {
    A1: "speed 0.5",
    A4: `constant-feed RD 1.5 fuse:${fuse}`,
    A5: "antenna-power 0.5 0.15A",
    A6: "illumination 0.5 fuse:5",
    A7: "switched-feed 1 fuse:10",
    A8: "ground BN 1.5",
    A9: "parking-brake 0.5",
    A10: "reverse 0.5 fuse:7.5 plain",
  };
  if (where === "vehicle")
    for (const [index, channel] of channels.entries()) {
      vehicleRows[`B${label(index)}`] = `speaker-${channel}-plus 0.75`;
      vehicleRows[`C${label(index)}`] = `speaker-${channel}-minus 0.75`;
    }
  const vehicle = yard.vehicle(vehicleRows, { name: "radio bay" });
  const unitRows: Record<string, string> = {
    "1": "constant-feed YE 1.5 5A",
    "2": "switched-feed RD 0.75 0.1A",
    "3": "ground BK 1.5",
    "4": "illumination OG/WH 0.5 0.02A",
    "5": "antenna-power BU 0.5 0.3A",
    "6": "speed PK 0.5",
    "7": "parking-brake GN/WH 0.5",
    "8": "camera-trigger VT/WH 0.5 0.01A",
    "9": `mute BN 0.5 spare`,
    "10": wants.lines ? "amplifier-turn-on BU/WH 0.5 0.5A" : "amplifier-turn-on BU/WH 0.5 0.5A spare",
  };
  for (const [index, channel] of channels.entries()) {
    const spare = where === "none" ? " spare" : "";
    unitRows[`P${label(index)}`] = `speaker-${channel}-plus 0.75${spare}`;
    unitRows[`M${label(index)}`] = `speaker-${channel}-minus 0.75${spare}`;
  }
  const module = drawn
    ? yard.part("module", "A", {
        name: "radio receiver",
        role: "receiver",
        outputs: "bridged",
        leastLoad_ohm: 4,
        channelPower_W: 20,
        standby_A: 0.003,
        wakes: "by-lead",
        sleeps: "yes",
        voltage_V: yard.range(),
        signalGround: "joined",
      })
    : null;
  const unit = module ? yard.receptacle(module, unitRows) : yard.unit(unitRows, { name: "receiver" });
  const lead = (from: string, to: string, tag: string, fuse_A: number, current_A: number) =>
    yard.lead(`${vehicle}.${from}`, `${unit}.${to}`, { tag, fuse_A, current_A });
  lead("A4", "1", "constant", fuse, 5);
  lead("A7", "2", "switched", 10, 0.1);
  yard.lead(`${vehicle}.A8`, `${unit}.3`, {
    tag: "ground",
    fuse_A: fuse,
    current_A: 5,
    ways: ["direct", "solder", "crimp", "block"],
  });
  lead("A6", "4", "illumination", 5, 0.02);
  lead("A5", "5", "antenna-power", 1, 0.15);
  lead("A1", "6", "speed", 0.5, 0.01);
  lead("A9", "7", "parking-brake", 0.5, 0.01);
  lead("A10", "8", "reverse", 7.5, 0.01);
  yard.cap(`${unit}.9`);
  if (!wants.lines) yard.cap(`${unit}.10`);
  const speakers: string[] = [];
  for (const [index, channel] of channels.entries()) {
    const [plus, minus] = [`${unit}.P${label(index)}`, `${unit}.M${label(index)}`];
    if (where === "none") {
      yard.cap(plus);
      yard.cap(minus);
      continue;
    }
    const speaker =
      where === "own"
        ? yard.part("speaker", "P", { position: channel, impedance_ohm: 4, power_W: 40 })
        : null;
    if (speaker) speakers.push(speaker);
    const plan = { current_A: 2, length_m: yard.between(0.5, 3), area_mm2: 0.75 } as const;
    yard.lead(plus, speaker ? `${speaker}.+` : `${vehicle}.B${label(index)}`, {
      ...plan,
      tag: `${channel}-plus`,
    });
    yard.lead(minus, speaker ? `${speaker}.−` : `${vehicle}.C${label(index)}`, {
      ...plan,
      tag: `${channel}-minus`,
    });
  }
  return { vehicle, unit, module, channels, speakers };
}

/** The names of what an amplifier job is made of. */
export type AmplifierJob = {
  readonly amplifier: string;
  readonly battery: string;
  readonly fuse: string;
  readonly stud: string;
  readonly speakers: readonly string[];
  readonly plugs: readonly string[];
  readonly receiver: ReceiverJob;
  readonly powerRun: string;
  readonly lineRun: string;
};

/** Line plugs of a receiver to an amplifier by the battery's own fuse, its turn-on lead, its speakers. */
export function amplifierJob(yard: Yard, fuse_A: 30 | 40 | 60 = yard.pick([30, 40])): AmplifierJob {
  const receiver = receiverJob(yard, { module: true, speakers: "none", lines: true, channels: 4 });
  const current_A = fuse_A * 0.7;
  const rows: Record<string, string> = {
    "+12": `constant-feed 10 ${current_A}A`,
    GND: "ground 10",
    REM: "amplifier-turn-on takes 0.5 0.02A",
  };
  for (const [index, channel] of CHANNELS.entries()) {
    rows[`IN${index + 1}`] = `line-${channel}-signal takes`;
    rows[`IN${index + 1}S`] = `line-${channel}-shield takes`;
    rows[`${index + 1}+`] = `speaker-${channel}-plus gives 1.5`;
    rows[`${index + 1}-`] = `speaker-${channel}-minus gives 1.5`;
  }
  const amplifier = yard.name("A");
  yard.build.module(amplifier, {
    name: "amplifier",
    role: "amplifier",
    outputs: "bridged",
    leastLoad_ohm: 2,
    channelPower_W: 50,
    standby_A: 0.001,
    wakes: "by-lead",
    sleeps: "yes",
    voltage_V: yard.range(),
    signalGround: "isolated",
    rows,
  });
  const battery = yard.battery();
  const fuse = yard.part("fuse", "F", { name: "amplifier", rating_A: fuse_A, form: "maxi", holder: "own" });
  const length_m = yard.between(2.5, 4.5);
  const area_mm2 = yard.area(fuse_A, current_A, length_m + 0.5);
  const powerRun = yard.run({
    length_m,
    covering: "conduit",
    passes: [{ what: "bulkhead", protection: "grommet" }],
  });
  const lineRun = yard.run({ length_m });
  const long = Number((length_m * 1.08).toFixed(2));
  yard.lead(battery.plus, `${fuse}.1`, {
    tag: "battery-stub",
    area_mm2,
    length_m: 0.15,
    ways: ["direct"],
    colour: "RD",
  });
  yard.lead(`${fuse}.2`, `${amplifier}.+12`, {
    tag: "amplifier-feed",
    area_mm2,
    length_m: long,
    ways: ["direct"],
    colour: "RD",
    runs: [powerRun],
    fuse_A,
  });
  const stud = yard.ground("seat crossmember, sanded and sealed");
  yard.lead(`${amplifier}.GND`, stud, {
    tag: "amplifier-ground",
    area_mm2,
    length_m: 0.4,
    ways: ["direct"],
    colour: "BK",
  });
  yard.lead(`${receiver.unit}.10`, `${amplifier}.REM`, {
    tag: "turn-on",
    area_mm2: 0.75,
    length_m: long,
    runs: [lineRun],
    ways: ["direct", "solder", "bullet"],
  });
  const plugs: string[] = [];
  const speakers: string[] = [];
  for (const [index, channel] of CHANNELS.entries()) {
    const plug = yard.receptacle(
      receiver.module!,
      { hot: `line-${channel}-signal WH`, shell: `line-${channel}-shield BK` },
      {
        name: `line out ${channel}`,
        form: "line-plug",
        gender: "receptacle",
        shell: `line ${index}`,
        keying: `ring ${index}`,
      },
    );
    plugs.push(plug);
    const line = { area_mm2: 0.22, length_m: long, runs: [lineRun], ways: ["direct"] } as const;
    const hot = yard.lead(`${plug}.hot`, `${amplifier}.IN${index + 1}`, {
      ...line,
      tag: `line-${channel}`,
      colour: "WH",
    });
    const shell = yard.lead(`${plug}.shell`, `${amplifier}.IN${index + 1}S`, {
      ...line,
      tag: `line-shield-${channel}`,
      colour: "BK",
    });
    yard.build.cable(yard.name("WC"), "shielded", [hot.wires[0]!, shell.wires[0]!], shell.wires[0]!);
    const speaker = yard.part("speaker", "P", { position: channel, impedance_ohm: 4, power_W: 60 });
    speakers.push(speaker);
    const plan = { area_mm2: 1.5, current_A: 4, length_m: yard.between(1, 4) } as const;
    yard.lead(`${amplifier}.${index + 1}+`, `${speaker}.+`, {
      ...plan,
      tag: `out-${channel}-plus`,
      ways: ["direct", "crimp", "solder"],
    });
    yard.lead(`${amplifier}.${index + 1}-`, `${speaker}.−`, {
      ...plan,
      tag: `out-${channel}-minus`,
      ways: ["direct", "crimp", "solder"],
    });
  }
  return { amplifier, battery: battery.name, fuse, stud, speakers, plugs, receiver, powerRun, lineRun };
}
