import * as z from "zod/mini";
import {
  area_mm2,
  colour,
  contactNumber,
  current_A,
  filledLine,
  functionName,
  line,
  note,
  object,
  partId,
  unknown,
} from "./values.ts";

const base = { id: partId, designation: filledLine, name: line, note };

/** As seen from what stands behind the cavity: a battery gives, a lamp takes, a data line does both. */
export const direction = z.enum(["gives", "takes", "both", "none", "unknown"]);

export const cavity = object({
  /** What the housing prints beside the cavity: "1", "A4", "30". */
  label: filledLine,
  function: functionName,
  /** The chart's own words for it, kept as written. */
  text: line,
  direction,
  /** The lead that the chart says stands in this cavity; `null` where there is none. */
  lead: z.nullable(object({ colour: z.nullable(colour), area_mm2: z.union([area_mm2, unknown]) })),
  /** `spare`: a person has said that it stays unused. `plugged`: its hole is closed with a cavity plug. */
  use: z.enum(["expected", "optional", "spare", "plugged"]),
  /** What it can supply (gives) or draws (takes). */
  current_A: z.union([current_A, unknown]),
  /** The fuse that already protects it on the far side; `null`: none; `unknown`: the chart does not say. */
  fuse_A: z.nullable(z.union([current_A, unknown])),
  /** How it gives: cut into pulses, or watched by a controller that counts lamps; `plain`: neither. */
  gives: z.enum(["plain", "pulsed", "watched", "unknown"]),
  /** What makes an input act: battery volts on it, or ground. */
  actsOn: z.enum(["volts", "ground", "unknown"]),
});

/** What a stretch of loom or a box stands near, of which a fitter has to beware. */
export const hazard = z.enum([
  "airbag",
  "high-voltage",
  "heat",
  "ignition",
  "moving-parts",
  "pedals",
  "seat-rails",
  "trim-screws",
  "drivers-sight",
  "knees-or-heads",
]);

export const zone = z.enum(["cabin", "engine-bay", "outside", "door", "luggage-space", "unknown"]);

/** The supply volts between which something works unharmed. */
const voltageRange = z.union([
  object({
    least_V: z.number().check(z.nonnegative(), z.maximum(1000)),
    most_V: z.number().check(z.positive(), z.maximum(1000)),
  }),
  unknown,
]);

/** What kind of picture it gives or shows. */
const video = z.enum(["ntsc", "pal", "high-definition", "several", "none", "unknown"]);

/** Which side of the job something belongs to. */
export const side = z.enum(["vehicle", "equipment"]);

export const connector = object({
  ...base,
  kind: z.literal("connector"),
  /** `module` names the box it is a receptacle of; without one, all connectors of a side are one unit. */
  belongsTo: object({ side, module: z.nullable(partId) }),
  gender: z.enum(["plug", "receptacle", "unknown"]),
  form: z.enum(["housing", "line-plug", "flying-leads", "terminal-strip"]),
  /** The housing's shape. Two of one shell can be mated wrongly unless a key or a colour sets them apart. */
  shell: z.nullable(line),
  keying: z.nullable(line),
  /** From which side the cavities are seen. Required: a mirrored reading makes a wholly wrong adapter. */
  view: z.enum(["mating-face", "wire-side"]),
  /** The face as seen from `view`: rows of contact numbers, 0 for a gap. */
  rows: z
    .array(z.array(z.int().check(z.minimum(0), z.maximum(2000))).check(z.maxLength(200)))
    .check(z.maxLength(60)),
  cavities: z.array(cavity).check(z.maxLength(2000)),
  chart: z.nullable(object({ title: line, edition: line, date: line, measured: z.boolean() })),
  matedWith: z.nullable(partId),
  /** How an unused line plug is covered. */
  cover: z.enum(["none", "contact-only", "whole"]),
});

export const splice = object({
  ...base,
  kind: z.literal("splice"),
  method: z.enum([
    "solder-and-sleeve",
    "crimped-butt",
    "bullet-pair",
    "tap",
    "terminal-block",
    "twisted",
    "twist-on-nut",
    "unknown",
  ]),
  cover: z.enum(["adhesive-sleeve", "sleeve", "tape", "cloth-over-tape", "housing", "none", "unknown"]),
  /** Where it lies; `unknown`: where the runs of its wires say. */
  zone,
  /** Of a bullet pair: which half carries the feed when the two are apart. */
  liveHalf: z.enum(["shrouded", "bare", "unknown"]),
  /** Of a crimp: the colour of its barrel, which says what sizes it holds. */
  barrel: z.enum(["red", "blue", "yellow", "bare", "unknown"]),
});

export const cap = object({
  ...base,
  kind: z.literal("cap"),
  method: z.enum(["end-cap", "sleeve-folded-back", "crimp-cap", "tape", "unknown"]),
});

export const ground = object({
  ...base,
  kind: z.literal("ground"),
  where: line,
  surface: z.enum(["bare-metal", "painted", "trim", "moving-part", "seat-belt-bolt", "unknown"]),
  /** Whose point it is: this job's own, one that the vehicle has anyway, one of a safety system's, the battery's post. */
  serves: z.enum(["this-job", "vehicle", "safety-system", "battery-post", "unknown"]),
});

export const supply = object({
  ...base,
  kind: z.literal("supply"),
  voltage_V: z.number().check(z.positive(), z.maximum(60)),
  capacity_Ah: z.union([z.number().check(z.positive(), z.maximum(10000)), unknown]),
  resistance_ohm: z.union([z.number().check(z.nonnegative(), z.maximum(1000)), unknown]),
  /** What stands over its live post. */
  cover: z.enum(["boot", "none", "unknown"]),
  /** Whether the vehicle measures its battery's current in the lead at the minus post. */
  sensor: z.enum(["on-minus", "none", "unknown"]),
});

export const fuse = object({
  ...base,
  kind: z.literal("fuse"),
  rating_A: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
  form: z.enum(["mini", "regular", "maxi", "glass", "bolt-down", "breaker", "unknown"]),
  /** What it sits in: a holder of its own, the vehicle's fuse box, or a tap that borrows a place there. */
  holder: z.enum(["own", "fuse-box", "tap", "unknown"]),
});

export const relay = object({
  ...base,
  kind: z.literal("relay"),
  /** Which contacts it has besides the coil 85, 86 and the common 30 (DIN 72552 names). */
  poles: z.enum(["make", "changeover", "double-make"]),
  suppression: z.enum(["none", "diode", "resistor", "unknown"]),
  coil_ohm: z.union([z.number().check(z.positive(), z.maximum(10000)), unknown]),
  rating_A: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
});

export const switchPart = object({
  ...base,
  kind: z.literal("switch"),
  operatedBy: z.enum([
    "hand",
    "key",
    "parking-brake",
    "reverse-gear",
    "brake-pedal",
    "lights",
    "door",
    "isolator",
    "other",
  ]),
  rating_A: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
});

export const diode = object({
  ...base,
  kind: z.literal("diode"),
  rating_A: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
});

export const resistor = object({
  ...base,
  kind: z.literal("resistor"),
  resistance_ohm: z.union([z.number().check(z.nonnegative(), z.maximum(1e9)), unknown]),
  power_W: z.union([z.number().check(z.positive(), z.maximum(10000)), unknown]),
});

export const capacitor = object({
  ...base,
  kind: z.literal("capacitor"),
  capacitance_uF: z.union([z.number().check(z.positive(), z.maximum(1e7)), unknown]),
});

export const load = object({
  ...base,
  kind: z.literal("load"),
  type: z.enum(["lamp", "camera", "motor", "heater", "sounder", "antenna", "other"]),
  /** What makes it work: the function its live contact takes. */
  function: functionName,
  current_A: z.union([current_A, unknown]),
  /** How its current follows the voltage; `unknown`: as is usual for its type. */
  behaviour: z.enum(["resistance", "constant-current", "constant-power", "filament", "unknown"]),
  /** What it draws with the key off while its feed is live; `unknown`: the same as at any other time. */
  standby_A: z.union([current_A, unknown]),
  /** True where reversing its two contacts matters (LED, camera); a filament lamp does not care. */
  polarised: z.boolean(),
  voltage_V: voltageRange,
  video,
});

export const speaker = object({
  ...base,
  kind: z.literal("speaker"),
  position: z.enum(["front-left", "front-right", "rear-left", "rear-right", "centre", "subwoofer", "other"]),
  type: z.enum(["full-range", "woofer", "tweeter", "other"]),
  impedance_ohm: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
  power_W: z.union([z.number().check(z.positive(), z.maximum(100000)), unknown]),
});

export const configurationSwitch = object({
  label: filledLine,
  position: z.enum(["on", "off", "unset"]),
  /** What the module's own chart asks for in this job; `unknown` until somebody has looked. */
  wanted: z.enum(["on", "off", "either", "unknown"]),
  meaning: line,
});

export const modulePart = object({
  ...base,
  kind: z.literal("module"),
  role: z.enum([
    "receiver",
    "amplifier",
    "interface",
    "camera",
    "display",
    "antenna",
    "trailer",
    "charger",
    "other",
  ]),
  side,
  /** Contacts fixed to the box itself; its receptacles are connectors that name it. */
  cavities: z.array(cavity).check(z.maxLength(2000)),
  /** Bridged outputs stand at half the supply on both leads: neither may be commoned or grounded. */
  outputs: z.enum(["bridged", "common-negative", "none", "unknown"]),
  /** The least load that its plate allows on a speaker channel; on the pair of channels where they are bridged. */
  leastLoad_ohm: z.union([z.number().check(z.positive(), z.maximum(1000)), unknown]),
  /** What a speaker channel gives into that load, root mean square. */
  channelPower_W: z.union([z.number().check(z.positive(), z.maximum(100000)), unknown]),
  /** What it draws from its constant feed while it sleeps. */
  standby_A: z.union([current_A, unknown]),
  /** A person has said that constant and switched leads are exchanged on purpose (crossover pair). */
  feedsCrossed: z.boolean(),
  wakes: z.enum(["by-lead", "by-signal", "unknown"]),
  /** Whether it goes to sleep by itself, with the data bus quiet. */
  sleeps: z.enum(["yes", "no", "unknown"]),
  voltage_V: voltageRange,
  video,
  /** Whether it joins its signal ground to its supply ground. */
  signalGround: z.enum(["joined", "isolated", "unknown"]),
  /** What it stands near. */
  near: z.array(hazard).check(z.maxLength(20)),
  switches: z.array(configurationSwitch).check(z.maxLength(64)),
});

export const part = z.discriminatedUnion("kind", [
  connector,
  splice,
  cap,
  ground,
  supply,
  fuse,
  relay,
  switchPart,
  diode,
  resistor,
  capacitor,
  load,
  speaker,
  modulePart,
]);

export { contactNumber };
