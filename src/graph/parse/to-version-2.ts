import { each, filled, isRaw, type Raw } from "./raw.ts";

/** What version 2 asks of loads, boxes and wires, and of the settings; version 1 said nothing of it. */
const OF_LOAD: Raw = { behaviour: "unknown", standby_A: "unknown" };
const OF_MODULE: Raw = { leastLoad_ohm: "unknown", channelPower_W: "unknown", standby_A: "unknown" };
const OF_WIRE: Raw = { material: "unknown" };
const ELECTRICAL: Raw = {
  rest_V: "unknown",
  running_V: "unknown",
  cranking_V: "unknown",
  engineBay_degC: "unknown",
  ampacityBook: "unknown",
  fuseRule: "unknown",
  standbyLimit_mA: "unknown",
  chargeFloor_percent: "unknown",
  slack_percent: "unknown",
  terminations_mm: "unknown",
  currency: "",
  prices: [],
};

/** Adds the fields that the electrical sums read, each as not stated. What a file has of them already stays. */
export function toVersion2(raw: Raw): Raw {
  const settings = isRaw(raw.settings)
    ? { ...raw.settings, electrical: filled(ELECTRICAL, raw.settings.electrical) }
    : raw.settings;
  return {
    ...raw,
    settings,
    parts: each(raw.parts, part),
    wires: each(raw.wires, (wire) => filled(OF_WIRE, wire)),
  };
}

function part(value: unknown): unknown {
  if (!isRaw(value)) return value;
  if (value.kind === "load") return filled(OF_LOAD, value);
  return value.kind === "module" ? filled(OF_MODULE, value) : value;
}
