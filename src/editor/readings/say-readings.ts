import { nameContact } from "../../catalogue/describe.ts";
import type { FuseReading, Readings, Volts, WireReading } from "../../electrical/operate/readings.ts";
import { contactKey, contactsOf } from "../../graph/contacts.ts";
import type { ContactRef, Harness, Part, Wire } from "../../graph/harness.ts";

/** Less than this is no current that anybody would look for. */
export const NO_AMPS = 0.0005;

/** "12.36", "0.04": to the hundredth, as a meter shows it; with a true minus. */
export function writeVolts(volts: number): string {
  return minus(Math.abs(volts) < 0.005 ? "0" : volts.toFixed(2));
}

/** "35 A", "3.2 A", "0.25 A", "4 mA": two or three figures, without a sign, for the arrow says which way. */
export function writeAmps(amps: number): string {
  const size = Math.abs(amps);
  if (size < NO_AMPS) return "0 A";
  if (size < 0.0995)
    return `${size < 0.00995 ? Number((size * 1000).toPrecision(1)) : Math.round(size * 1000)} mA`;
  return `${size < 9.95 ? Number(size.toPrecision(2)) : size < 999.5 ? Math.round(size) : Number(size.toPrecision(3))} A`;
}

/** "0.31 V", "38 mV", "0 V" for less than half a millivolt. */
export function writeDrop(drop_V: number): string {
  if (drop_V < 0.0005) return "0 V";
  return drop_V < 0.0995 ? `${Math.round(drop_V * 1000)} mV` : `${drop_V.toFixed(2)} V`;
}

/** "84 %", "under 1 %" */
export function writePercent(percent: number): string {
  if (percent > 0 && percent < 0.95) return "<1 %";
  return `${Math.round(percent)} %`;
}

function minus(text: string): string {
  return text.replace("-", "−");
}

export function sayVolts(volts: Volts): string {
  return volts === "floating" ? "floating" : `${writeVolts(volts)} V`;
}

/** What a contact shows, as a screen reader says it: "12.36 V, draws 3.2 A"; "" where nothing is known. */
export function sayContactReading(readings: Readings | null, part: Part, contact: number): string {
  const key = contactKey(part.id, contact);
  const volts = readings?.contacts.get(key);
  if (!readings || volts === undefined) return "";
  const words = [sayVolts(volts)];
  const load = readings.loads.get(key);
  if (load) {
    if (Math.abs(load.amps) >= NO_AMPS) words.push(`draws ${writeAmps(load.amps)}`);
    if (load.reversed) words.push("the wrong way round");
    else if (part.kind === "load") words.push(load.works ? "works" : "does not work");
  }
  const source = readings.sources.get(key);
  if (source && Math.abs(source.amps) >= NO_AMPS)
    words.push(`${source.amps < 0 ? "takes" : "gives"} ${writeAmps(source.amps)}`);
  const fuse = contact === 1 ? readings.fuses.get(part.id) : undefined;
  if (fuse) words.push(sayFuse(fuse));
  return words.filter((word) => word !== "").join(", ");
}

/** The same for all contacts of a part, a line each, in their order. */
export function sayReadings(readings: Readings, part: Part): string {
  return contactsOf(part)
    .map(({ number }) => sayContactReading(readings, part, number))
    .join("\n");
}

/** The same for a contact by reference; "" where there is no such contact, or readings are off. */
export function sayReadingAt(
  readings: Readings | null,
  harness: Pick<Harness, "parts">,
  { part, contact }: ContactRef,
): string {
  const found = harness.parts[part];
  return found ? sayContactReading(readings, found, contact) : "";
}

function sayFuse(fuse: FuseReading): string {
  if (fuse.verdict === "unknown") return "";
  if (fuse.verdict === "opens") return "opens";
  if (fuse.verdict === "may-open") return "may open in time";
  return fuse.percentOfRating === null ? "" : `carries ${writePercent(fuse.percentOfRating)} of its rating`;
}

/** "carries 3.2 A from X1.A4 to F1.1, 21 % of what it may, drops 38 mV"; "" where nothing is known. */
export function sayWireReading(
  harness: Pick<Harness, "parts">,
  wire: Wire,
  reading: WireReading | undefined,
): string {
  if (!reading) return "";
  if (Math.abs(reading.amps) < NO_AMPS) return "carries no current";
  const [from, to] = reading.amps > 0 ? wire.ends : [wire.ends[1], wire.ends[0]];
  const name = (end: ContactRef | "loose") => (end === "loose" ? "a loose end" : nameContact(harness, end));
  const share = reading.percentOfAmpacity;
  return [
    `carries ${writeAmps(reading.amps)} from ${name(from)} to ${name(to)}`,
    share === null ? "" : `${writePercent(share)} of what it may`,
    `drops ${writeDrop(reading.drop_V)}`,
  ]
    .filter((word) => word !== "")
    .join(", ");
}
