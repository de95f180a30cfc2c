import { expect, test } from "vitest";
import { cavitiesOf, ISO_11446, RECEIVER_FLYING_LEADS } from "../../src/catalogue/pinouts.ts";
import { readyCavities, readyOfKept, readyOfPinout } from "../../src/catalogue/ready.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makeCavity, makePart } from "../../src/graph/make.ts";
import { keepConnector } from "../../src/graph/own-connector/kept-connector.ts";

test("a pinout of the catalogue brings its edition, how sure each cavity is, and both sides", () => {
  const ready = readyOfPinout(ISO_11446);
  expect(ready.source).toContain("Edition: 2012, parts 1 and 2.");
  expect(ready.chart).toEqual({
    title: ISO_11446.title,
    edition: ISO_11446.edition,
    date: "",
    measured: false,
  });
  expect(ready.confidence?.[11]).toBe("disputed");
  for (const side of ["vehicle", "equipment"] as const)
    expect(readyCavities(ready, side)).toEqual(cavitiesOf(ISO_11446, side));
});

test("flying leads have no shell, so that no two of them are taken for one shape", () => {
  expect(readyOfPinout(RECEIVER_FLYING_LEADS)).toMatchObject({ shell: null, form: "flying-leads" });
});

test("a person's own says whether it was measured, and names its chart", () => {
  const part = makePart("connector", "p:1" as PartId, "X1", {
    cavities: [makeCavity("1")],
    rows: [[1]],
    view: "mating-face",
    chart: { title: "Workshop sheet 12", edition: "3", date: "2026-02-03", measured: true },
  });
  const measured = readyOfKept("k1", keepConnector(part, "Wren, radio"));
  expect(measured.source).toBe("Your own chart: Workshop sheet 12, edition 3, 2026-02-03.");
  expect(measured.caution).toMatch(/measured on one vehicle/);
  expect(measured.face).toEqual({ view: "mating-face", rows: [[1]] });
  const bare = readyOfKept("k2", keepConnector({ ...part, chart: null, rows: [] }, "Wren, radio"));
  expect(bare.source).toMatch(/names no source/);
  expect(bare.caution).toMatch(/nobody has noted a measurement/);
  expect(bare.face).toBeNull();
});
