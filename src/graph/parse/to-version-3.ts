import { each, filled, isRaw, type Raw } from "./raw.ts";

/** What version 3 asks besides; each as not stated, so that a file of before says no more than it did. */
export const OF_CAVITY: Raw = { gives: "unknown", actsOn: "unknown" };
const OF_PART: Readonly<Record<string, Raw>> = {
  splice: { zone: "unknown", liveHalf: "unknown", barrel: "unknown" },
  ground: { serves: "unknown" },
  supply: { cover: "unknown", sensor: "unknown" },
  fuse: { holder: "unknown" },
  load: { voltage_V: "unknown", video: "unknown" },
  module: { sleeps: "unknown", voltage_V: "unknown", video: "unknown", signalGround: "unknown", near: [] },
};
const OF_WIRE: Raw = { strands: "unknown" };
const OF_RUN: Raw = {
  near: [],
  hinge: "unknown",
  support_m: "unknown",
  bend_mm: "unknown",
  dripLoop: "unknown",
  drilled: "unknown",
};
const RULES: Raw = {
  profile: "road-vehicle",
  shop: "",
  negativeFuse: "by-profile",
  taps: "by-profile",
  joints: "by-profile",
  limits: [],
  own: [],
};
const VEHICLE: Raw = { highVoltage: "unknown", lamps: "unknown" };

/** Adds the fields that the whole rule book reads. What a file has of them already stays. */
export function toVersion3(raw: Raw): Raw {
  const { settings } = raw;
  return {
    ...raw,
    settings: isRaw(settings)
      ? { ...settings, rules: filled(RULES, settings.rules), vehicle: filled(VEHICLE, settings.vehicle) }
      : settings,
    parts: each(raw.parts, part),
    wires: each(raw.wires, (wire) => filled(OF_WIRE, wire)),
    runs: each(raw.runs, (run) => filled(OF_RUN, run)),
    waivers: each(raw.waivers, (waiver) => filled({ covers: "finding" }, waiver)),
  };
}

function part(value: unknown): unknown {
  if (!isRaw(value)) return value;
  const kind = typeof value.kind === "string" && Object.hasOwn(OF_PART, value.kind) ? value.kind : null;
  const more = kind === null ? value : filled(OF_PART[kind]!, value);
  if (!isRaw(more) || !Array.isArray(more.cavities)) return more;
  return { ...more, cavities: more.cavities.map((cavity: unknown) => filled(OF_CAVITY, cavity)) };
}
