import { expect, test } from "vitest";
import { ISO_1724, ISO_10487_A, SAE_J1962_A } from "../../src/catalogue/pinouts.ts";
import { readyOfPinout } from "../../src/catalogue/ready.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makeCavity, makeColour, makePart } from "../../src/graph/make.ts";
import { connectorChart, pinoutChart, readyChart } from "../../src/match/from-pinout.ts";

test("a pinout becomes a chart of certain leads, with its notes kept", () => {
  const chart = pinoutChart(ISO_10487_A, "equipment");
  expect(chart.leads[3]).toMatchObject({
    name: "A4",
    text: "constant feed",
    reading: { candidates: [{ function: "constant-feed", share: 1 }], certain: true },
    colour: { base: "YE", tracer: null },
    colourText: "YE",
    direction: "takes",
    kept: ["Exchanged with A7 on some vehicles."],
  });
  expect(pinoutChart(ISO_10487_A, "vehicle").leads[3]).toMatchObject({ direction: "gives", colour: null });
  expect(readyChart(readyOfPinout(ISO_10487_A), "equipment")).toEqual(chart);
});

test("what is disputed is left to be asked, and a maker's own cavity claims nothing", () => {
  const [, fog] = pinoutChart(ISO_1724, "vehicle").leads;
  expect(fog!.reading).toEqual({ candidates: [{ function: "fog-rear", share: 1 }], certain: false });
  const [own] = pinoutChart(SAE_J1962_A, "vehicle").leads;
  expect(own).toMatchObject({ text: "Maker's use.", reading: { candidates: [], certain: false } });
});

test("a connector of a harness keeps its chart's own words and figures", () => {
  const part = makePart("connector", "p:1" as PartId, "X1", {
    name: "radio plug",
    cavities: [
      makeCavity("1", {
        function: "constant-feed",
        text: "Dauerplus",
        lead: { colour: makeColour("RD", "YE"), area_mm2: 2.5 },
        current_A: 10,
        fuse_A: 15,
      }),
      makeCavity("2", { function: "not-used" }),
    ],
  });
  const chart = connectorChart(part);
  expect(chart.title).toBe("radio plug");
  expect(chart.leads[0]).toMatchObject({
    text: "Dauerplus",
    colourText: "RD/YE",
    area_mm2: 2.5,
    current_A: 10,
    fuse_A: 15,
    kept: [],
    isUnused: false,
  });
  expect(chart.leads[1]).toMatchObject({ isUnused: true, area_mm2: null, fuse_A: null });
});
