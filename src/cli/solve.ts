import { nameContact } from "../catalogue/describe.ts";
import { sayAssumption } from "../electrical/operate/assumed.ts";
import {
  type Condition,
  conditionsOf,
  KEY_POSITIONS,
  type KeyState,
  readCondition,
  sayState,
} from "../electrical/operate/key-state.ts";
import { nameIn, operate } from "../electrical/operate/operate.ts";
import type { Readings, Volts } from "../electrical/operate/readings.ts";
import { writeSpice } from "../electrical/solve/spice-deck.ts";
import type { ContactKey } from "../graph/contacts.ts";
import type { Harness, PartId } from "../graph/harness.ts";
import { trace } from "../graph/trace.ts";
import { oneOf, readArguments } from "./arguments.ts";
import { byName, inColumns, rounded } from "./columns.ts";
import { fileName, readHarness } from "./files.ts";
import { EXIT, plain, say, Unusable } from "./unusable.ts";

export const usage = "pigtail solve FILE [--key off|accessory|run|crank] [--with WORDS] [--json | --spice]";

/** Prints volts and amperes of a harness in one state: as tables, as JSON, or as a deck for a circuit simulator. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    {
      key: { type: "string" },
      with: { type: "string", multiple: true },
      json: { type: "boolean" },
      spice: { type: "boolean" },
    },
    { usage, least: 1, most: 1 },
  );
  if (values.json && values.spice)
    throw new Unusable(`--json and --spice do not go together.\nUsage: ${usage}`);
  const [path] = positionals as [string];
  const key = oneOf("--key", values.key ?? "run", KEY_POSITIONS);
  const harness = readHarness(path).harness;
  const words = (values.with ?? []).flatMap((list) => list.split(",")).map((word) => word.trim());
  const state = readState(
    harness,
    key,
    words.filter((word) => word !== ""),
  );
  const readings = operate(harness, trace(harness), state);
  if (values.json) say(JSON.stringify(report(readings)));
  else if (values.spice) say(deck(readings, fileName(path)));
  else say(inWords(readings, fileName(path)));
  return EXIT.clean;
}

/** Conditions by their words, switches by their designations. */
function readState(harness: Harness, key: KeyState["key"], words: readonly string[]): KeyState {
  const conditions: Condition[] = [];
  const closed: PartId[] = [];
  for (const word of words) {
    const part = Object.values(harness.parts).find(
      (one) => one.kind === "switch" && one.designation === word,
    );
    const condition = readCondition(word);
    if (part) closed.push(part.id);
    else if (condition !== null) conditions.push(condition);
    else {
      const known = conditionsOf(harness).join(", ");
      throw new Unusable(
        `--with knows no "${plain(word)}". → ${known ? `In this harness it may be ${known}` : "No condition changes this harness"}, or a switch by its designation.`,
      );
    }
  }
  return { key, conditions, closed };
}

/** What `--json` prints. The shape is kept from version to version. */
export function report(readings: Readings) {
  const { harness } = readings.solved;
  const name = nameIn(harness);
  const contact = (key: ContactKey) => nameContact(harness, key);
  const volts = (value: Volts) => (value === "floating" ? null : rounded(value));
  const share = (value: number | null) => (value === null ? null : rounded(value));
  return {
    key: readings.state.key,
    with: [...readings.state.conditions, ...(readings.state.closed ?? []).map(name)],
    contacts: byName(
      [...readings.contacts].map(([key, value]) => [contact(key), key, { volts: volts(value) }]),
    ),
    wires: byName(
      [...readings.wires].map(([id, wire]) => [
        name(id),
        id,
        {
          amps: rounded(wire.amps),
          dropVolts: rounded(wire.drop_V),
          watts: rounded(wire.watts),
          percentOfAmpacity: share(wire.percentOfAmpacity),
        },
      ]),
    ),
    fuses: byName(
      [...readings.fuses].map(([id, fuse]) => [
        name(id),
        id,
        {
          amps: rounded(fuse.amps),
          ratingAmps: fuse.rating_A,
          percentOfRating: share(fuse.percentOfRating),
          verdict: fuse.verdict,
        },
      ]),
    ),
    relays: byName(
      [...readings.relays].map(([id, relay]) => [
        name(id),
        id,
        {
          pulled: relay.pulled,
          chatters: relay.chatters,
          holds: relay.holds,
          coilVolts: rounded(relay.coil_V),
          coilAmps: rounded(relay.coil_A),
        },
      ]),
    ),
    loads: byName(
      [...readings.loads].map(([key, load]) => [
        contact(key),
        key,
        {
          volts: rounded(load.volts),
          amps: rounded(load.amps),
          statedAmps: load.stated_A,
          works: load.works,
          reversed: load.reversed,
        },
      ]),
    ),
    sources: byName(
      [...readings.sources].map(([key, source]) => [
        contact(key),
        key,
        {
          volts: volts(source.volts),
          amps: rounded(source.amps),
          limitAmps: source.limit_A,
          percentOfLimit: share(source.percentOfLimit),
        },
      ]),
    ),
    warnings: readings.warnings.map(({ code, words, about }) => ({
      code,
      message: words,
      at: about.map(name),
    })),
    assumptions: readings.assumptions.map((one) => ({ words: sayAssumption(one, name), source: one.source })),
  };
}

/** The circuit as it was solved, with the contact that each node is. */
function deck(readings: Readings, file: string): string {
  const { harness, built, solution } = readings.solved;
  const [title, ...rest] = writeSpice(built.circuit, solution.pulled, {
    title: `${file}, ${sayState(readings.state, harness)}`,
    guess_V: solution.volts,
  })
    .trimEnd()
    .split("\n");
  const ascii = (text: string) =>
    plain(text)
      .replaceAll("−", "-")
      .replace(/[^\x20-\x7e]/g, "?");
  const nodes = built.keyOf.map(
    (key, node) => `* n${node} = ${key === null ? "frame" : ascii(nameContact(harness, key))}`,
  );
  return [title, ...nodes, ...rest].join("\n");
}

function inWords(readings: Readings, file: string): string {
  const { harness } = readings.solved;
  const name = nameIn(harness);
  const lines = [`${plain(file)}: ${sayState(readings.state, harness)}`];
  const section = (title: string, head: readonly string[], rows: readonly (readonly string[])[]) => {
    if (rows.length)
      lines.push(
        "",
        title,
        ...inColumns(
          head,
          rows.map((row) => row.map(plain)),
        ),
      );
  };
  const percent = (value: number | null) => (value === null ? "–" : `${value.toFixed(0)} %`);
  if (readings.warnings.length)
    lines.push("", ...readings.warnings.map(({ words }) => `  ! ${plain(words)}`));
  section(
    "Sources",
    ["", "V", "A", "of limit"],
    [...readings.sources].map(([key, one]) => [
      nameContact(harness, key),
      sayVolts(one.volts),
      sayAmps(one.amps),
      percent(one.percentOfLimit),
    ]),
  );
  section(
    "Loads",
    ["", "V", "A", ""],
    [...readings.loads].map(([key, one]) => [
      nameContact(harness, key),
      one.volts.toFixed(2),
      sayAmps(one.amps),
      one.reversed ? "wrong way round" : one.works ? "works" : "off",
    ]),
  );
  section(
    "Fuses",
    ["", "A", "of rating", ""],
    [...readings.fuses].map(([id, one]) => [
      name(id),
      sayAmps(one.amps),
      percent(one.percentOfRating),
      one.verdict.replace("-", " "),
    ]),
  );
  section(
    "Relays",
    ["", "", "coil V"],
    [...readings.relays].map(([id, one]) => [
      name(id),
      one.chatters ? "chatters" : one.pulled ? "pulled" : "released",
      one.coil_V.toFixed(2),
    ]),
  );
  section(
    "Wires",
    ["", "A", "drop V", "W", "of ampacity"],
    [...readings.wires].map(([id, one]) => [
      name(id),
      sayAmps(one.amps),
      one.drop_V.toFixed(3),
      one.watts.toFixed(2),
      percent(one.percentOfAmpacity),
    ]),
  );
  section(
    "Contacts",
    ["", "V"],
    [...readings.contacts].map(([key, volts]) => [nameContact(harness, key), sayVolts(volts)]),
  );
  if (readings.assumptions.length)
    lines.push(
      "",
      "Taken for granted",
      ...readings.assumptions.map((one) => `  ${plain(sayAssumption(one, name))} (${one.source})`),
    );
  return lines.join("\n");
}

function sayVolts(volts: Volts): string {
  return volts === "floating" ? "floating" : (volts + 0).toFixed(2).replace(/^-(0\.0*)$/, "$1");
}

function sayAmps(amps: number): string {
  return amps.toFixed(3).replace(/^-(0\.0*)$/, "$1");
}
