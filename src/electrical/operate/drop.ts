import { nameContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { type ContactKey, contactsOf, refOfKey } from "../../graph/contacts.ts";
import type { Harness } from "../../graph/harness.ts";
import { type DropBudget, dropBudget } from "../conductor/drop-budget.ts";
import { digits, type Figure } from "../figure.ts";
import { type LoadPath, pathOf } from "./path.ts";
import type { Readings } from "./readings.ts";

export type LoadDrop = {
  readonly path: LoadPath;
  readonly budget: DropBudget;
  /** How much may be lost, and who says so. */
  readonly limit: Figure;
  /** "A2.+12: 0.31 V of 0.40 V; 0.18 V of it in the shared ground lead W7" */
  readonly words: string;
};

/**
 * What is lost on the way to a load and back, as a budget. What is inside the source is left out: thicker wire
 * does not mend it.
 * @returns `null` for a load that draws nothing
 */
export function dropOf(readings: Readings, load: ContactKey): LoadDrop | null {
  const path = pathOf(readings, load);
  if (!path) return null;
  const { harness } = readings.solved;
  const limit = dropLimit(harness, load);
  const shares = path.steps.map(({ name, drop_V }) => ({ name, drop_V }));
  const budget = dropBudget(shares, limit.value);
  return { path, budget, limit, words: `${nameLoad(harness, load)}: ${budget.words}` };
}

/** Every load that draws, the one that overdraws its budget most first. */
export function dropsOf(readings: Readings): readonly LoadDrop[] {
  const found = [...readings.loads.keys()].flatMap((key) => dropOf(readings, key) ?? []);
  return found.sort((a, b) => b.budget.total_V / b.budget.limit_V - a.budget.total_V / a.budget.limit_V);
}

/** A load part by its designation, a box by its contact. */
export function nameLoad(harness: Pick<Harness, "parts">, load: ContactKey): string {
  const part = harness.parts[refOfKey(load).part];
  return part?.kind === "load" ? part.designation : nameContact(harness, load);
}

/** What the harness's settings allow a load to lose: less for what must work than for what may run weak. */
export function dropLimit(harness: Harness, load: ContactKey): Figure {
  const { dropCritical_percent, dropOther_percent, systemVoltage_V } = harness.settings;
  const critical = isCritical(harness, load);
  const percent = critical ? dropCritical_percent : dropOther_percent;
  const value = (systemVoltage_V * percent) / 100;
  return {
    value,
    unit: "V",
    formula: `${digits(percent)} % of ${systemVoltage_V} V = ${digits(value)} V`,
    table: null,
    source: critical
      ? "the harness's settings, for what must work; ABYC E-11 takes 3 %"
      : "the harness's settings, for lamps, heaters and sounders; ABYC E-11 takes 10 %",
    doubt: null,
  };
}

const MAY_RUN_WEAK = new Set(["lamp", "heater", "sounder"]);

function isCritical(harness: Pick<Harness, "parts">, load: ContactKey): boolean {
  const { part: id, contact } = refOfKey(load);
  const part = harness.parts[id];
  if (part?.kind === "load") return !MAY_RUN_WEAK.has(part.type);
  const means = part ? functionOf(contactsOf(part)[contact - 1]?.function ?? "unknown") : null;
  return means?.group !== "lighting";
}
