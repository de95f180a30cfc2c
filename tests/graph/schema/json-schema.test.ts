import { readdirSync, readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { emptyHarness } from "../../../src/graph/make.ts";
import { parse } from "../../../src/graph/parse/parse.ts";
import { harnessJsonSchema } from "../../../src/graph/schema/json-schema.ts";
import { Dice, randomHarness } from "../random.ts";

const published = readFileSync(new URL("../../../src/graph/harness.schema.json", import.meta.url), "utf8");
const accepts = new Ajv2020({ strict: false }).compile(JSON.parse(published) as object);
const samples = new URL("../../../samples/", import.meta.url);
const kept = JSON.parse(readFileSync(new URL("../versions/v3.harness.json", import.meta.url), "utf8")) as {
  [section: string]: Record<string, Record<string, unknown>>;
};

test("the published schema is what the program reads by; `node src/tasks/make-schema.mjs` writes it", () => {
  expect(published).toBe(`${JSON.stringify(harnessJsonSchema(), null, 2)}\n`);
});

test("it accepts an empty harness, the kept file, unknown fields, and random harnesses", () => {
  expect(accepts(emptyHarness())).toBe(true);
  expect(accepts(kept)).toBe(true);
  expect(accepts({ ...kept, fromTheFuture: 1 })).toBe(true);
  fc.assert(
    fc.property(fc.integer(), (seed) => accepts(randomHarness(new Dice(seed)))),
    { numRuns: 100, seed: 60757 },
  );
});

test.each(readdirSync(samples).filter((name) => name.endsWith(".harness.json")))("it accepts %s", (name) => {
  expect(accepts(JSON.parse(readFileSync(new URL(name, samples), "utf8")))).toBe(true);
});

const cases: readonly (readonly [string, (file: typeof kept) => void])[] = [
  ["a missing section", (file) => delete file.runs],
  ["a part of no known kind", (file) => Object.assign(file.parts!["p:X1"]!, { kind: "plumbing" })],
  ["a connector that does not say from which side it is seen", (file) => delete file.parts!["p:X1"]!.view],
  ["two colours in one text", (file) => Object.assign(file.wires!["w:W1"]!, { colour: "BU/WH" })],
  ["an area below zero", (file) => Object.assign(file.wires!["w:W1"]!, { area_mm2: -1 })],
  ["three ends", (file) => Object.assign(file.wires!["w:W1"]!, { ends: ["loose", "loose", "loose"] })],
  [
    "contact 0",
    (file) => Object.assign(file.wires!["w:W1"]!, { ends: ["loose", { part: "p:X1", contact: 0 }] }),
  ],
  ["an id of another family", (file) => Object.assign(file.wires!["w:W1"]!, { id: "p:1" })],
  ["a waiver without a reason", (file) => Object.assign(file.waivers!["v:1"]!, { reason: "" })],
  [
    "a picture that may carry script",
    (file) => Object.assign(file.photos!["f:1"]!, { image: "data:image/svg+xml;base64,AAAA" }),
  ],
  ["a key that is no id", (file) => Object.assign(file.runs!, { "1": file.runs!["r:1"]! })],
  ["a system voltage that no vehicle has", (file) => Object.assign(file.settings!, { systemVoltage_V: 13 })],
];

test.each(cases)("schema and program both refuse %s", (_name, spoil) => {
  const file = structuredClone(kept);
  spoil(file);
  expect(accepts(file)).toBe(false);
  expect(parse(JSON.stringify(file)).ok).toBe(false);
});
