import type { Yard } from "./yard.ts";

export type CameraJob = {
  /** The lamp cluster's connector (1 reverse, 2 stop, 3 ground) and the fuse board's (1 switched, 2 light). */
  readonly cluster: string;
  readonly board: string;
  readonly camera: string;
  readonly tail: string;
  readonly display: string;
  readonly plug: string;
  readonly fuse: string;
  readonly lamp: string;
  readonly loom: string;
  readonly joint: string;
};

/** A camera over the rear door: fed with the key on by a fuse of its own, shown when the reversing lamp is lit. */
export function cameraJob(yard: Yard): CameraJob {
  const cluster = yard.vehicle(
    {
      "1": "reverse GN/WH 0.75 fuse:10 plain",
      "2": "stop-lamp RD/BK 0.75 fuse:10 plugged",
      "3": "ground-lamps BN 1.5",
    },
    { name: "rear lamp cluster" },
  );
  const board = yard.vehicle(
    {
      "1": "switched-feed RD/BK 1 fuse:10",
      "2": "illumination GY/RD 0.5 fuse:5",
      "3": "constant-feed RD 1.5 fuse:15 plugged",
    },
    { name: "fuse board" },
  );
  const camera = yard.part("module", "A", {
    name: "camera",
    role: "camera",
    outputs: "none",
    wakes: "by-lead",
    video: yard.pick(["pal", "ntsc"]),
    voltage_V: yard.range(),
    signalGround: "isolated",
    switches: [
      { label: "mirror", position: "on", wanted: "on", meaning: "mirrored picture" },
      { label: "lines", position: "off", wanted: "off", meaning: "guide lines" },
    ],
  });
  const tail = yard.receptacle(
    camera,
    {
      "+": "camera-power RD 0.5 0.2A",
      "−": "ground BK 0.5",
      V: "video-signal YE gives",
      S: "video-shield BK gives",
    },
    { name: "camera tail", form: "flying-leads" },
  );
  const display = yard.part("module", "A", {
    name: "display",
    role: "display",
    outputs: "none",
    wakes: "by-lead",
    sleeps: "yes",
    video: "several",
    voltage_V: yard.range(),
    signalGround: "joined",
  });
  const plug = yard.receptacle(
    display,
    {
      "1": "switched-feed RD 0.5 0.4A",
      "2": "ground BK 0.5",
      "3": "camera-trigger GN 0.5 0.01A",
      "4": "illumination OG/WH 0.5 0.02A",
      "5": "video-signal YE takes",
      "6": "video-shield BK takes",
    },
    { name: "display plug" },
  );
  const fuse = yard.part("fuse", "F", { name: "camera", rating_A: 2, form: "mini", holder: "own" });
  const lamp = yard.part("load", "E", {
    name: "reversing lamp",
    type: "lamp",
    function: "reverse",
    current_A: yard.volts === 12 ? 1.75 : 0.9,
    behaviour: "filament",
    voltage_V: yard.range(),
  });
  const loom = yard.run({
    length_m: 6,
    passes: [{ what: "rear door pillar", protection: "gaiter" }],
    hinge: "twists-along",
  });
  const front = yard.part("splice", "XJ", {
    method: "solder-and-sleeve",
    cover: "adhesive-sleeve",
    zone: "cabin",
  });
  yard.lead(`${board}.1`, `${front}.1`, { tag: "switched", area_mm2: 1.5, length_m: 0.4, ways: ["direct"] });
  yard.lead(`${front}.2`, `${plug}.1`, {
    tag: "display-feed",
    area_mm2: 1.5,
    length_m: 0.5,
    ways: ["direct", "plugs"],
  });
  yard.lead(`${front}.2`, `${fuse}.1`, {
    tag: "camera-stub",
    area_mm2: 1.5,
    length_m: 0.12,
    ways: ["direct"],
  });
  yard.lead(`${fuse}.2`, `${tail}.+`, {
    tag: "camera-feed",
    area_mm2: 1,
    length_m: 6.6,
    runs: [loom],
    ways: ["direct"],
  });
  const back = yard.ground("stud in the rear pillar");
  yard.lead(`${tail}.−`, back, {
    tag: "camera-ground",
    area_mm2: 1,
    length_m: 0.5,
    ways: ["direct"],
    colour: "BK",
  });
  const dash = yard.ground("stud behind the dash");
  yard.lead(`${plug}.2`, dash, {
    tag: "display-ground",
    area_mm2: 1.5,
    length_m: 0.4,
    ways: ["direct", "crimp"],
    colour: "BK",
  });
  const joint = yard.part("splice", "XJ", {
    method: "solder-and-sleeve",
    cover: "adhesive-sleeve",
    zone: "cabin",
  });
  yard.lead(`${cluster}.1`, `${joint}.1`, { tag: "reverse", area_mm2: 1.5, length_m: 0.4, ways: ["direct"] });
  yard.lead(`${joint}.2`, `${lamp}.+`, {
    tag: "reverse-lamp",
    area_mm2: 1.5,
    length_m: 0.4,
    ways: ["direct"],
  });
  yard.lead(`${lamp}.−`, `${cluster}.3`, {
    tag: "lamp-ground",
    area_mm2: 1.5,
    length_m: 0.4,
    ways: ["direct"],
    colour: "BN",
  });
  yard.lead(`${joint}.2`, `${plug}.3`, {
    tag: "trigger",
    area_mm2: 1.5,
    length_m: 6.6,
    runs: [loom],
    ways: ["direct"],
  });
  yard.lead(`${board}.2`, `${plug}.4`, {
    tag: "illumination",
    area_mm2: 0.75,
    length_m: 0.6,
    ways: ["direct", "solder"],
  });
  const video = { area_mm2: 0.22, length_m: 6.6, runs: [loom], ways: ["direct"] } as const;
  const hot = yard.lead(`${tail}.V`, `${plug}.5`, { ...video, tag: "video", colour: "YE" });
  const shield = yard.lead(`${tail}.S`, `${plug}.6`, { ...video, tag: "video-shield", colour: "BK" });
  yard.build.cable(yard.name("WC"), "coax", hot.wires, shield.wires[0]!);
  return { cluster, board, camera, tail, display, plug, fuse, lamp, loom, joint };
}
