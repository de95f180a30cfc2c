import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { SAMPLE_LIST } from "../samples/list.ts";
import { makeSample } from "../samples/make/index.ts";
import { nameContact } from "../src/catalogue/describe.ts";
import { functionOf } from "../src/catalogue/functions.ts";
import { contactsOf } from "../src/graph/contacts.ts";
import type { Harness } from "../src/graph/harness.ts";
import { parse, serialise } from "../src/graph/parse/parse.ts";
import { check, openFindings } from "../src/rules/check.ts";

const folder = new URL("../samples/", import.meta.url);
const textOf = (id: string) => readFileSync(new URL(`${id}.harness.json`, folder), "utf8");

function load(id: string): Harness {
  const result = parse(textOf(id));
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return result.harness;
}

/** The findings that a sample is meant to show: the rule, and the first place that it speaks of. */
const MEANT: Readonly<Record<string, readonly string[]>> = {
  "wren-receiver-adapter-faults": [
    "loose-live-lead at W7",
    "loose-lead at W1",
    "loose-lead at W8",
    "feeds-swapped at X3.12",
    "several-spares-under-one-cap at XC2",
    "sides-swapped at X2.B1",
    "speaker-polarity-swapped at X2.B5",
    "spare-not-capped at X3.2",
  ],
};
/** Findings that carry a waiver with its reason. */
const WAIVED: Readonly<Record<string, readonly string[]>> = {
  "full-build": ["both-feeds-one-kind at A3.+B"],
};

describe.each(SAMPLE_LIST.map((entry) => entry.id))("%s", (id) => {
  const harness = load(id);
  const say = (finding: ReturnType<typeof check>[number]) => {
    const [first] = finding.about;
    if (!first) return finding.rule;
    if ("wire" in first) return `${finding.rule} at ${harness.wires[first.wire]!.designation}`;
    const place = "contact" in first ? nameContact(harness, first) : harness.parts[first.part]!.designation;
    return `${finding.rule} at ${place}`;
  };

  test("is what its maker makes; `node src/tasks/make-samples.mjs` writes it", async () => {
    expect(textOf(id)).toBe(await makeSample(id, textOf));
    expect(serialise(harness)).toBe(textOf(id));
  });

  test("shows the findings it is meant to show, and no others", () => {
    const findings = check(harness);
    expect(openFindings(findings).map(say)).toEqual(MEANT[id] ?? []);
    expect(findings.filter((finding) => finding.waiver).map(say)).toEqual(WAIVED[id] ?? []);
  });

  test("has a title block, no two parts or wires of one designation, functions of the vocabulary", () => {
    const { title, owner, documentNumber, revision, creator } = harness.titleBlock;
    expect([title, owner, documentNumber, revision, creator].filter((field) => field === "")).toEqual([]);
    for (const section of [harness.parts, harness.wires]) {
      const names = Object.values(section).map((entry) => entry.designation);
      expect(new Set(names).size).toBe(names.length);
    }
    for (const part of Object.values(harness.parts)) {
      for (const contact of contactsOf(part)) expect(functionOf(contact.function).id).toBe(contact.function);
    }
  });

  test("tells every wire's size and length, and every wire from a charted lead has its colour", () => {
    for (const wire of Object.values(harness.wires)) {
      expect(wire.area_mm2, wire.designation).not.toBe("unknown");
      expect(wire.length_m, wire.designation).not.toBe("unknown");
      expect(wire.colour, wire.designation).not.toBeNull();
    }
  });
});

test("the list names every file and each once", () => {
  const files = readdirSync(folder).filter((name) => name.endsWith(".harness.json"));
  expect(files.sort()).toEqual(SAMPLE_LIST.map((entry) => `${entry.id}.harness.json`).sort());
});

test("the whole build has over 300 wires", () => {
  expect(Object.keys(load("full-build").wires).length).toBeGreaterThan(300);
});

test("the adapter stands arranged: vehicle left, joints between, receiver right", () => {
  for (const id of ["wren-receiver-adapter", "wren-receiver-adapter-faults"]) {
    const harness = load(id);
    const x = (name: string) => {
      const part = Object.values(harness.parts).find((one) => one.designation === name)!;
      return harness.layout.places[part.id]!.x;
    };
    expect(x("X1")).toBeLessThan(x("XJ2"));
    expect(x("X2")).toBeLessThan(x("XJ2"));
    expect(x("XJ2")).toBeLessThan(x("X3"));
    expect(Object.keys(harness.layout.places).length).toBe(Object.keys(harness.parts).length);
  }
});
