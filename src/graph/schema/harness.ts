import * as z from "zod/mini";
import { hazard, part, zone } from "./parts.ts";
import { rules } from "./rules.ts";
import {
  area_mm2,
  cableId,
  colour,
  contactRef,
  coordinate,
  end,
  filledLine,
  length_m,
  line,
  note,
  object,
  partId,
  photoId,
  runId,
  testRowId,
  unknown,
  waiverId,
  wireId,
} from "./values.ts";

export const wire = object({
  id: wireId,
  designation: filledLine,
  ends: z.tuple([end, end]),
  colour: z.nullable(colour),
  area_mm2: z.union([area_mm2, unknown]),
  length_m: z.union([length_m, unknown]),
  material: z.enum(["copper", "tinned-copper", "cca-15", "cca-10", "unknown"]),
  insulation: z.enum(["thin-wall-85", "thin-wall-105", "cross-linked-125", "silicone", "other", "unknown"]),
  strands: z.enum(["stranded", "solid", "unknown"]),
  /** What is printed on its markers. Empty: the designation. */
  label: line,
  runs: z.array(runId).check(z.maxLength(100)),
  note,
});

export const cable = object({
  id: cableId,
  designation: filledLine,
  kind: z.enum(["twisted-pair", "shielded", "shielded-pair", "coax", "multicore"]),
  wires: z.array(wireId).check(z.maxLength(200)),
  /** The wire that stands for the shield or its drain, where there is one. */
  shield: z.nullable(wireId),
  note,
});

export const run = object({
  id: runId,
  designation: filledLine,
  from: line,
  to: line,
  length_m: z.union([length_m, unknown]),
  zone,
  covering: z.enum(["none", "split-loom", "cloth-tape", "braid", "conduit", "heat-sleeve", "unknown"]),
  passes: z
    .array(object({ what: line, protection: z.enum(["none", "grommet", "gaiter", "clamp", "unknown"]) }))
    .check(z.maxLength(50)),
  /** What it comes close to. */
  near: z.array(hazard).check(z.maxLength(20)),
  /** Whether it crosses a hinge, and how. */
  hinge: z.enum(["none", "twists-along", "bends-across", "unknown"]),
  /** The widest distance between two clips. */
  support_m: z.union([length_m, unknown]),
  /** The tightest bend, at its inner side. */
  bend_mm: z.union([z.number().check(z.nonnegative(), z.maximum(10000)), unknown]),
  /** Whether the lowest point lies before what it enters. */
  dripLoop: z.enum(["yes", "no", "unknown"]),
  /** Whether holes are drilled for it, and whether somebody looked behind first. */
  drilled: z.enum(["no", "looked-behind", "blind", "unknown"]),
  note,
});

const volts = z.number().check(z.positive(), z.maximum(60));

export const settings = object({
  systemVoltage_V: z.union([z.literal(6), z.literal(12), z.literal(24)]),
  ambient_degC: z.number().check(z.minimum(-60), z.maximum(150)),
  sizes: z.enum(["metric", "awg"]),
  dropCritical_percent: z.number().check(z.positive(), z.maximum(100)),
  dropOther_percent: z.number().check(z.positive(), z.maximum(100)),
  sheet: object({
    size: z.enum(["A4", "A3", "Letter", "Tabloid"]),
    orientation: z.enum(["landscape", "portrait"]),
    fit: z.enum(["one-page", "tiles"]),
  }),
  /** What sums of volts, sizes and lengths rest on. `unknown`: what is usual, and the answer says so. */
  electrical: object({
    /** At the battery's posts: parked, with the engine running, while the starter turns. */
    rest_V: z.union([volts, unknown]),
    running_V: z.union([volts, unknown]),
    cranking_V: z.union([volts, unknown]),
    engineBay_degC: z.union([z.number().check(z.minimum(-60), z.maximum(150)), unknown]),
    /** Names one of the books of ampacity; the document does not know which there are. */
    ampacityBook: z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,63}$/)),
    fuseRule: z.enum(["at-most-ampacity", "next-size", "150-percent", "unknown"]),
    /** What the whole vehicle may draw with the key off, and how far that may run the battery down. */
    standbyLimit_mA: z.union([z.number().check(z.nonnegative(), z.maximum(100000)), unknown]),
    chargeFloor_percent: z.union([z.number().check(z.nonnegative(), z.maximum(100)), unknown]),
    /** Added to the runs' lengths when a wire is cut, and what the two terminations of a wire take. */
    slack_percent: z.union([z.number().check(z.nonnegative(), z.maximum(100)), unknown]),
    terminations_mm: z.union([z.number().check(z.nonnegative(), z.maximum(1000)), unknown]),
    currency: line,
    /** Of a metre of wire, by size. */
    prices: z
      .array(object({ area_mm2, perMetre: z.number().check(z.nonnegative(), z.maximum(1e6)) }))
      .check(z.maxLength(200)),
  }),
  /** By which books the harness is checked. */
  rules,
  /** What is known of the vehicle as a whole. */
  vehicle: object({
    /** A traction battery or mains: anything above 60 V DC or 30 V AC. */
    highVoltage: z.enum(["yes", "no", "unknown"]),
    /** Exterior lamps are driven and watched by a controller. */
    lamps: z.enum(["plain", "watched", "unknown"]),
  }),
});

/** Fields of ISO 7200, with the vehicle's own lines besides. */
export const titleBlock = object({
  owner: line,
  documentNumber: line,
  revision: line,
  dateOfIssue: line,
  title: line,
  supplementaryTitle: line,
  creator: line,
  approver: line,
  documentType: line,
  status: z.enum(["draft", "under-test", "released"]),
  language: line,
  vehicle: line,
});

export const waiver = object({
  id: waiverId,
  /** One finding; every finding of a rule; every finding of a group of rules. */
  covers: z.enum(["finding", "rule", "group"]),
  /** The name of the rule, or of the group. */
  rule: filledLine,
  /** The parts and wires the waived finding is about; of a rule or a group, none. */
  about: z
    .array(z.union([contactRef, object({ wire: wireId }), object({ part: partId })]))
    .check(z.maxLength(2000)),
  reason: filledLine,
  by: line,
  date: line,
});

export const testRow = object({
  id: testRowId,
  kind: z.enum([
    "see",
    "continuity",
    "isolation",
    "pre-power",
    "power-up",
    "key-position",
    "drop",
    "drain",
    "function",
  ]),
  at: z.array(contactRef).check(z.maxLength(10)),
  expected: line,
  reading: line,
  unit: line,
  passed: z.nullable(z.boolean()),
  by: line,
  date: line,
  /** The drawing's revision that was tested. */
  revision: line,
});

export const photo = object({
  id: photoId,
  caption: line,
  about: z
    .array(z.union([contactRef, object({ wire: wireId }), object({ part: partId })]))
    .check(z.maxLength(100)),
  /** PNG, JPEG or WebP only: an SVG may carry script. */
  image: z
    .string()
    .check(z.maxLength(8_000_000), z.regex(/^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/=]*$/)),
});

export const place = object({
  x: coordinate,
  y: coordinate,
  /** A person put it here; arranging leaves it alone. */
  pinned: z.boolean(),
  /** Its contacts face the other way from their usual side. */
  turned: z.boolean(),
});

/** x1,y1,x2,y2,… from the first end to the second. */
export const path = z.array(coordinate).check(z.minLength(4), z.maxLength(400));

/**
 * Where things stand on the drawing. Kept apart from what they are, so that a drag leaves every derived
 * electrical value valid, and kept in the file, so that the sheet of five years hence is today's.
 * A path that no longer fits is routed anew.
 */
export const layout = object({
  places: z.record(partId, place),
  paths: z.record(wireId, path),
});

export const sections = {
  parts: part,
  wires: wire,
  cables: cable,
  runs: run,
  waivers: waiver,
  testRecord: testRow,
  photos: photo,
} as const;

export const FORMAT_VERSION = 3;

export const harness = object({
  format: z.literal("pigtail-harness"),
  formatVersion: z.int().check(z.minimum(1)),
  settings,
  titleBlock,
  parts: z.record(partId, part),
  wires: z.record(wireId, wire),
  cables: z.record(cableId, cable),
  runs: z.record(runId, run),
  waivers: z.record(waiverId, waiver),
  testRecord: z.record(testRowId, testRow),
  photos: z.record(photoId, photo),
  layout,
});
