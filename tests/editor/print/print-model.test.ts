import { expect, test } from "vitest";
import { fileStem, sayPlan } from "../../../src/editor/print/print-model.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { previewPlan } from "../../../src/sheets/diagram-sheets.ts";

const box = (width: number, height: number) => ({ x: 0, y: 0, width, height });

test("a small diagram says the size of its text", () => {
  expect(sayPlan(previewPlan(box(400, 200), "A4", "landscape", "one-page"))).toMatch(
    /^Smallest text \d+\.\d pt, scale \d+ %\.$/,
  );
});

test("a large one on one page says that it will not be readable, and what happens instead", () => {
  const words = sayPlan(previewPlan(box(6000, 4000), "A4", "landscape", "one-page"));
  expect(words).toMatch(/too small to read, so it goes over \d+ pages/);
});

test.each([
  ["", "", "Untitled harness", "Untitled-harness"],
  ["TML-W-014", "B", "Receiver adapter", "TML-W-014-Receiver-adapter-rev-B"],
  ["", "A", "../a:b*c?", "a-b-c"],
  ["", "", "...", "harness"],
])("number %j, revision %j, name %j: %s", (documentNumber, revision, name, stem) => {
  const harness = emptyHarness();
  const titled = { ...harness, titleBlock: { ...harness.titleBlock, documentNumber, revision } };
  expect(fileStem(titled, name)).toBe(stem);
});
