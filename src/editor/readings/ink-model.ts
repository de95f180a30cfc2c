import type { Readings, WireReading } from "../../electrical/operate/readings.ts";
import { keyOfEnd } from "../../graph/contacts.ts";
import type { Wire } from "../../graph/harness.ts";
import type { Ink } from "../../layout/drawing.ts";
import type { Overlay } from "./readings-store.ts";
import { NO_AMPS, writeAmps, writeDrop, writePercent } from "./say-readings.ts";

/** A band behind a wire. Bands are told apart by width and dash as well as by tint. */
export type Band = {
  readonly words: string;
  readonly ink: Ink;
  readonly opacity: number;
  /** Drawn width, the wire in its middle. */
  readonly width: number;
  readonly dash: readonly number[];
};

/** How a wire stands in a state: its line is drawn accordingly, whatever is shown. */
export type Standing = "carries" | "live" | "dead" | "floating";

/** Under this a contact is taken as having no volts of its own. */
const NO_VOLTS = 0.5;

/** Lower edges in per cent of ampacity. */
export const LOAD_BANDS: readonly (Band & { readonly from: number })[] = [
  { from: 25, words: "25 to 60 %", ink: "tidy", opacity: 0.45, width: 8, dash: [] },
  { from: 60, words: "60 to 80 %", ink: "weak", opacity: 0.6, width: 10, dash: [12, 2] },
  { from: 80, words: "80 to 100 %", ink: "fault", opacity: 0.75, width: 12, dash: [6, 2.5] },
  { from: 100, words: "over 100 %", ink: "danger", opacity: 0.9, width: 14, dash: [2.5, 2.5] },
];

/** Lower edges in per cent of the system's volts. A path may drop 3 % in all as a rule: a wire is one piece of it. */
export const DROP_BANDS: readonly (Band & { readonly from: number })[] = [
  { from: 0.25, words: "0.25 to 0.5 %", ink: "tidy", opacity: 0.45, width: 8, dash: [] },
  { from: 0.5, words: "0.5 to 1 %", ink: "weak", opacity: 0.6, width: 10, dash: [12, 2] },
  { from: 1, words: "1 to 3 %", ink: "fault", opacity: 0.75, width: 12, dash: [6, 2.5] },
  { from: 3, words: "over 3 %", ink: "danger", opacity: 0.9, width: 14, dash: [2.5, 2.5] },
];

/** Line weights of currents; between two of them the weight grows with the root of the current. */
export const AMPS_SHOWN = [1, 5, 20] as const;
const BARE = 5;
const HEAVIEST = 15;

export function ampsBand(amps: number): Band | null {
  const size = Math.abs(amps);
  if (size < 0.05) return null;
  const width = Math.min(HEAVIEST, BARE + 1.5 + 1.9 * Math.sqrt(size));
  return { words: writeAmps(amps), ink: "ink", opacity: 0.26, width, dash: [] };
}

/** The band behind a wire in an overlay; `null` where it stays bare. */
export function bandOf(overlay: Overlay, reading: WireReading, nominal_V: number): Band | null {
  switch (overlay) {
    case "volts":
      return null;
    case "amps":
      return ampsBand(reading.amps);
    case "load":
      return reading.percentOfAmpacity === null ? null : highest(LOAD_BANDS, reading.percentOfAmpacity);
    case "drop":
      return highest(DROP_BANDS, (reading.drop_V / nominal_V) * 100);
  }
}

function highest(bands: readonly (Band & { readonly from: number })[], value: number): Band | null {
  let found: Band | null = null;
  for (const band of bands) if (value > band.from) found = band;
  return found;
}

/** The figure that stands in a wire; "" where there is nothing to say. */
export function figureOf(overlay: Overlay, reading: WireReading): string {
  if (overlay === "volts" || Math.abs(reading.amps) < NO_AMPS) return "";
  if (overlay === "amps") return writeAmps(reading.amps);
  if (overlay === "drop") return writeDrop(reading.drop_V);
  if (reading.percentOfAmpacity === null) return "no table";
  return reading.percentOfAmpacity > 100
    ? `over: ${writePercent(reading.percentOfAmpacity)}`
    : writePercent(reading.percentOfAmpacity);
}

/** Whether a wire carries current, only stands at volts, has none, or hangs in the air. */
export function standingOf(readings: Readings, wire: Wire): Standing {
  const reading = readings.wires.get(wire.id);
  if (reading && Math.abs(reading.amps) >= NO_AMPS) return "carries";
  let floats = true;
  for (const end of wire.ends) {
    const key = keyOfEnd(end);
    const volts = key === null ? undefined : readings.contacts.get(key);
    if (volts === undefined || volts === "floating") continue;
    if (Math.abs(volts) >= NO_VOLTS) return "live";
    floats = false;
  }
  return floats ? "floating" : "dead";
}
