import { expect, test } from "vitest";
import {
  ampereCell,
  colourCell,
  functionCell,
  functionNamed,
  labelCell,
  sayRest,
  sizeCell,
} from "../../../src/editor/charts/cells-model.ts";
import { lead } from "../../match/review/build-review.ts";

const one = lead("4 constant-feed RD");

test.each([
  ["constant feed", "constant-feed"],
  ["Dauerplus", "constant-feed"],
  ["speaker front left +", "speaker-front-left-plus"],
  ["not used", "not-used"],
  ["remote", null],
  ["qwertz", null],
] as const)("a function typed as %s", (typed, id) => {
  expect(functionNamed(typed)).toBe(id);
});

test("a function that is chosen is certain; an empty field is not known", () => {
  expect(functionCell(one).read("ground")).toEqual({
    ok: true,
    value: { isUnused: false, reading: { candidates: [{ function: "ground", share: 1 }], certain: true } },
  });
  expect(functionCell(one).read(" ")).toMatchObject({
    value: { reading: { candidates: [], certain: false } },
  });
  expect(functionCell(one).read("remote")).toMatchObject({
    ok: false,
    why: expect.stringContaining("more than one"),
  });
});

test("an open function shows none, and says that more than one fits", () => {
  expect(functionCell(lead("4 ground|speed"))).toMatchObject({ text: "", hint: "more than one fits" });
});

test("colours, sizes, labels and amperes are read as they are written", () => {
  expect(colourCell(one).read("blue/white")).toMatchObject({
    value: { colour: { base: "BU", tracer: "WH" } },
  });
  expect(colourCell(one).read("")).toMatchObject({ value: { colour: null } });
  expect(colourCell(one).read("mud")).toMatchObject({ ok: false });
  expect(sizeCell(one, "metric").read("0,75")).toMatchObject({ value: { area_mm2: 0.75 } });
  expect(sizeCell(one, "metric").read("thick")).toMatchObject({ ok: false });
  expect(labelCell(one).read(" A4 ")).toMatchObject({ value: { label: "A4" } });
  expect(labelCell(one).read("")).toMatchObject({ value: { label: null } });
  expect(ampereCell(one, "fuse_A", "Fuse").read("7,5 A")).toMatchObject({ value: { fuse_A: 7.5 } });
  expect(ampereCell(one, "fuse_A", "Fuse").read("-3")).toMatchObject({ ok: false });
});

test("the rest of a row in a line", () => {
  expect(sayRest({ ...one, direction: "gives", current_A: 3, fuse_A: 10 })).toBe("gives, 3 A, fuse 10 A");
  expect(sayRest(one)).toBe("");
});
