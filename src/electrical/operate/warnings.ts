import { nameContact } from "../../catalogue/describe.ts";
import { type ContactKey, refOfKey } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import { digits } from "../figure.ts";
import type { Solution } from "../solve/solve.ts";
import { type Built, partOfElement } from "./built.ts";
import type { Readings, ReadingWarning, WarningCode, WireReading } from "./readings.ts";

/** What warnings are read from: all of a harness, or a part of it that nothing joins to the rest. */
export type Judged = Pick<Readings, "sources" | "fuses" | "loads"> & {
  readonly wires: ReadonlyMap<WireId, Pick<WireReading, "amps" | "percentOfAmpacity">>;
  readonly solved: {
    readonly harness: Pick<Harness, "parts" | "wires">;
    readonly built: Pick<Built, "owners" | "boxes" | "nominal_V">;
    readonly solution: Pick<Solution, "warnings">;
  };
};
type Id = PartId | WireId;

/** Current that a feed takes in from here on is no rounding and no gauge's leak. */
const BACK_FED_A = 0.02;

const volts = (value: number): string => `${value.toFixed(Math.abs(value) < 1 ? 2 : 1)} V`;
const amps = (value: number): string => `${digits(value, 3)} A`;

/**
 * What to know about a state before its figures are believed, in words that name designations; what harms most first.
 * @param restless boxes that wake and sleep without end
 */
export function warningsOf(readings: Judged, restless: readonly number[]): readonly ReadingWarning[] {
  const found = [
    ...ofSolution(readings),
    ...ofSources(readings),
    ...ofFuses(readings),
    ...ofWires(readings),
    ...ofLoads(readings),
    ...ofBoxes(readings, restless),
  ];
  return worstFirst(found);
}

/** What harms most first; of one kind, in the order given. */
export function worstFirst(found: readonly ReadingWarning[]): readonly ReadingWarning[] {
  return [...found].sort((a, b) => ORDER.indexOf(a.code) - ORDER.indexOf(b.code));
}

const ORDER: readonly WarningCode[] = [
  "dead-short",
  "conflicting-supplies",
  "fuse-opens",
  "wire-overloaded",
  "source-overloaded",
  "back-fed",
  "load-reversed",
  "output-at-limit",
  "load-starved",
  "relay-chatters",
  "relays-race",
  "relay-holds",
  "fuse-full",
  "box-restless",
  "not-settled",
];

function ofSolution(readings: Judged): readonly ReadingWarning[] {
  const { built, solution, harness } = readings.solved;
  const { owners } = built;
  const partsOf = (elements: readonly number[]): PartId[] => [
    ...new Set(elements.flatMap((element) => partOfElement(owners, element) ?? [])),
  ];
  const contactsAt = (elements: readonly number[]) =>
    elements.flatMap((element) => {
      const part = partOfElement(owners, element);
      if (part === null) return [];
      const contact = owners.contact[element]!;
      return [contact > 0 ? nameContact(harness, { part, contact }) : harness.parts[part]!.designation];
    });
  const list = (elements: readonly number[]) => [...new Set(contactsAt(elements))].join(" and ");
  const found: ReadingWarning[] = [];
  for (const warning of solution.warnings) {
    switch (warning.kind) {
      case "dead-short":
        found.push({
          code: "dead-short",
          about: partsOf(warning.elements),
          words: `${list(warning.elements)} is shorted: ${amps(warning.amps)} would flow.`,
        });
        break;
      case "conflicting-supplies": {
        // An output that is fed back is told of as a source; its own zero volts fight nobody.
        if (warning.elements.every((element) => owners.role[element] === "output")) break;
        found.push({
          code: "conflicting-supplies",
          about: partsOf(warning.elements),
          words: `${list(warning.elements)} are joined and fight: ${amps(warning.amps)} flows from one into the other.`,
        });
        break;
      }
      case "relays-chatter":
        found.push({
          code: "relay-chatters",
          about: partsOf(warning.coils),
          words: `${list(warning.coils)} never comes to rest: pulled, it cuts its own coil. It is shown released.`,
        });
        break;
      case "relays-race":
        found.push({
          code: "relays-race",
          about: partsOf(warning.coils),
          words: `${list(warning.coils)} race: which pulls first decides what comes of it.`,
        });
        break;
      case "relays-hold":
        found.push({
          code: "relay-holds",
          about: partsOf(warning.coils),
          words: `${list(warning.coils)} would stay as it was: pulled once, it stays pulled. It is shown as from a fresh start.`,
        });
        break;
      case "not-settled":
        found.push({
          code: "not-settled",
          about: [],
          words: `The sums did not come to rest; ${amps(warning.astray_A)} goes astray.`,
        });
        break;
      default:
        break;
    }
  }
  return found;
}

function ofSources(readings: Judged): readonly ReadingWarning[] {
  const { harness } = readings.solved;
  const found: ReadingWarning[] = [];
  const say = (key: ContactKey, code: WarningCode, words: string) =>
    found.push({ code, about: [refOfKey(key).part], words: `${nameContact(harness, key)} ${words}` });
  for (const [key, source] of readings.sources) {
    const part = harness.parts[refOfKey(key).part]!;
    if (part.kind === "supply") continue;
    if (source.amps < -BACK_FED_A) {
      say(key, "back-fed", `is fed from behind: ${amps(-source.amps)} flows into it.`);
      continue;
    }
    if (source.limit_A === null) continue;
    if (source.limitedBy === "output" && source.amps >= source.limit_A * (1 - 1e-6))
      say(key, "output-at-limit", `gives no more than ${amps(source.limit_A)}; more is asked of it.`);
    else if (source.limitedBy !== "output" && source.amps > source.limit_A) {
      const behind =
        source.limitedBy === "fuse"
          ? `its fuse is ${amps(source.limit_A)}`
          : `it is for ${amps(source.limit_A)}`;
      say(key, "source-overloaded", `gives ${amps(source.amps)}; ${behind}.`);
    }
  }
  return found;
}

function ofFuses(readings: Judged): readonly ReadingWarning[] {
  const { harness } = readings.solved;
  const found: ReadingWarning[] = [];
  for (const [id, fuse] of readings.fuses) {
    const name = harness.parts[id]!.designation;
    const load = `${amps(fuse.amps)} through ${amps(fuse.rating_A ?? 0)}`;
    if (fuse.verdict === "opens" || fuse.verdict === "may-open")
      found.push({
        code: "fuse-opens",
        about: [id],
        words: `${name} ${fuse.verdict === "opens" ? "opens" : "may open in time"}: ${load}.`,
      });
    else if (fuse.verdict === "full")
      found.push({
        code: "fuse-full",
        about: [id],
        words: `${name} carries ${Math.round(fuse.percentOfRating!)} % of its rating; for good, three quarters is the habit.`,
      });
  }
  return found;
}

export function ofWires({
  wires,
  solved: { harness },
}: {
  readonly wires: Judged["wires"];
  readonly solved: Pick<Judged["solved"], "harness">;
}): readonly ReadingWarning[] {
  const found: ReadingWarning[] = [];
  for (const [id, wire] of wires) {
    if (wire.percentOfAmpacity === null || wire.percentOfAmpacity <= 100) continue;
    found.push({
      code: "wire-overloaded",
      about: [id],
      words: `${harness.wires[id]!.designation} carries ${amps(Math.abs(wire.amps))}, ${Math.round(wire.percentOfAmpacity)} % of what it may carry for good.`,
    });
  }
  return found;
}

function ofLoads(readings: Judged): readonly ReadingWarning[] {
  const { harness, built } = readings.solved;
  const found: ReadingWarning[] = [];
  for (const [key, load] of readings.loads) {
    const part = harness.parts[load.part]!;
    const name = part.kind === "load" ? part.designation : nameContact(harness, key);
    if (load.reversed)
      found.push({
        code: "load-reversed",
        about: [load.part],
        words: `${name} has ${volts(-load.volts)} the wrong way round.`,
      });
    // What has no volts at all is switched off; what has some, but too few, is starved.
    else if (
      !load.works &&
      Math.abs(load.volts) > built.nominal_V / 12 &&
      load.amps !== 0 &&
      load.stated_A !== null
    )
      found.push({
        code: "load-starved",
        about: [load.part],
        words: `${name} has ${volts(Math.abs(load.volts))} of ${digits(built.nominal_V)} V.`,
      });
  }
  return found;
}

function ofBoxes(readings: Judged, restless: readonly number[]): readonly ReadingWarning[] {
  const { harness, built } = readings.solved;
  return restless.map((index): ReadingWarning => {
    const box = built.boxes[index]!;
    const about: readonly Id[] = box.parts;
    const name = harness.parts[box.key as PartId]?.designation ?? harness.parts[box.parts[0]!]!.designation;
    return {
      code: "box-restless",
      about,
      words: `${name} wakes and sleeps without end: awake, it takes away what woke it.`,
    };
  });
}
