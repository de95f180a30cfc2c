import { expect, test } from "vitest";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Harness, PartId } from "../../../src/graph/harness.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { cavityOf, chartOfConnector, settledFunction } from "../../../src/match/review/cavities.ts";
import { acceptCertain } from "../../../src/match/review/items.ts";
import { readBack } from "../../../src/match/review/read-back.ts";
import {
  carryOver,
  decide,
  groupOf,
  join,
  type Review,
  startReview,
  unjoin,
} from "../../../src/match/review/review.ts";
import { type JobEnds, toEdit } from "../../../src/match/review/to-edit.ts";
import { sayConfidence, sayFunction, sharedFunction } from "../../../src/match/review/words.ts";
import { build } from "../../build.ts";
import { chart, ENDS, lead, PROPOSAL, pair, review, UNIT, VAN } from "./build-review.ts";

function made(harness: Harness, one: Review, ends: JobEnds = ENDS): Harness {
  const result = toEdit(harness, one, ends);
  if (!result.ok) throw new Error(result.why);
  const applied = apply(harness, result.edit);
  if (!applied.ok) throw new Error(applied.why);
  return applied.harness;
}

const parts = (harness: Harness, kind: string) =>
  Object.values(harness.parts).filter((part) => part.kind === kind);

test("two coloured leads meet in a joint made as was chosen; each keeps its own colour", () => {
  const harness = made(emptyHarness(), acceptCertain(review(VAN, UNIT, { joins: [pair("1", "A")] })));
  expect(parts(harness, "splice")).toMatchObject([{ method: "solder-and-sleeve", cover: "adhesive-sleeve" }]);
  expect(Object.values(harness.wires).map((wire) => wire.colour?.base)).toEqual(["RD", "YE"]);
});

test("where only one chart gives a colour, one lead runs through; asked for, there is a joint all the same", () => {
  const bare = review(chart("1 ground"), chart("A ground BK"), { joins: [pair("1", "A")] });
  const through = made(emptyHarness(), acceptCertain(bare));
  expect(parts(through, "splice")).toEqual([]);
  expect(Object.values(through.wires).map((wire) => wire.colour?.base)).toEqual(["BK"]);
  const accepted = acceptCertain(bare);
  const jointed = { ...accepted, groups: accepted.groups.map((one) => ({ ...one, joint: "crimped-butt" })) };
  expect(parts(made(emptyHarness(), jointed), "splice")).toMatchObject([{ method: "crimped-butt" }]);
});

test("one lead to two takers is one splice of three ends, the takers on its other side", () => {
  const harness = made(emptyHarness(), acceptCertain(review(VAN, UNIT, { splices: PROPOSAL.splices ?? [] })));
  const [splice] = parts(harness, "splice");
  const ends = Object.values(harness.wires).flatMap((wire) => wire.ends);
  const on = (contact: number) =>
    ends.filter((end) => end !== "loose" && end.part === splice?.id && end.contact === contact).length;
  expect([on(1), on(2)]).toEqual([1, 2]);
});

test("a cavity takes the chart's words, function, colour, and the direction that is usual for its side", () => {
  const cavity = cavityOf(lead("7 speaker-front-left-plus WH"), "equipment");
  expect(cavity).toMatchObject({
    label: "7",
    text: "speaker-front-left-plus as the chart has it",
    function: "speaker-front-left-plus",
    direction: "gives",
    lead: { colour: { base: "WH", tracer: null }, area_mm2: "unknown" },
  });
  expect(cavityOf(lead("7 speaker-front-left-plus"), "vehicle")).toMatchObject({
    direction: "takes",
    lead: null,
  });
  expect(cavityOf(lead("7 can-high"), "vehicle").direction).toBe("both");
  expect(cavityOf({ ...lead("7 ground"), direction: "takes" }, "vehicle").direction).toBe("takes");
  expect(cavityOf(lead("7 not-used"), "vehicle")).toMatchObject({ function: "not-used", use: "optional" });
});

test("an open function is settled by what it is joined to, and by nothing else", () => {
  const open = lead("6 illumination|switched-feed OG");
  expect(settledFunction(open, [])).toBe("unknown");
  expect(settledFunction(open, [lead("B switched-feed")])).toBe("switched-feed");
  expect(settledFunction(open, [lead("B ground")])).toBe("unknown");
  expect(settledFunction(lead("1 ground"), [lead("B speed")])).toBe("ground");
});

test("a designation that is taken is refused in words", () => {
  const harness = build().vehicle("X1", { 1: "ground" }).harness;
  expect(toEdit(harness, review(VAN, UNIT), ENDS)).toMatchObject({
    ok: false,
    why: "another part is called X1",
  });
});

test("the same connector on both sides is refused", () => {
  const harness = build().vehicle("X1", { 1: "ground" }).harness;
  const end = { part: "p:X1" as PartId };
  expect(
    toEdit(harness, review(chart("1 ground"), chart("1 ground")), { left: end, right: end }),
  ).toMatchObject({
    ok: false,
    why: expect.stringContaining("same connector"),
  });
});

test("a lead that something needs stays expected where it is left apart; any other becomes optional", () => {
  const apart = decide(
    decide(review(VAN, UNIT, PROPOSAL), { side: "right", lead: "E" }, "apart"),
    { side: "right", lead: "D" },
    "apart",
  );
  const [, unit] = parts(made(emptyHarness(), apart), "connector");
  if (unit?.kind !== "connector") throw new Error("no connector");
  expect(unit.cavities.map((cavity) => cavity.use)).toEqual([
    "expected",
    "expected",
    "expected",
    "optional",
    "expected",
  ]);
});

const TWO = () =>
  build()
    .vehicle("X1", { 1: "constant-feed RD", 2: "ground BK", 3: "speed PK", 4: "illumination OG" })
    .unit("X2", { 1: "constant-feed YE", 2: "ground BK" })
    .module("A1", { rows: { 9: "speed" } })
    .path("X1.1", "XJ1", "X2.1")
    .wire("X1.3", "A1.9").harness;

const ON_TWO: JobEnds = { left: { part: "p:X1" as PartId }, right: { part: "p:X2" as PartId } };

function reopened(harness: Harness): Review {
  const [left, right] = ["p:X1", "p:X2"].map((id) => {
    const part = harness.parts[id as PartId];
    if (part?.kind !== "connector") throw new Error(`no ${id}`);
    const own = chartOfConnector(part);
    return { part, chart: own, names: own.leads.map((one) => one.name) };
  });
  const { groups, fates, elsewhere } = readBack(harness, left!, right!);
  const proposal = { ...review(VAN, UNIT).proposal, joins: [pair("1", "1"), pair("2", "2"), pair("3", "2")] };
  return startReview({ left: left!.chart, right: right!.chart }, proposal, "crimped-butt", {
    groups,
    fates,
    elsewhere,
  });
}

test("coming back to drawn connectors shows their joints, and what goes elsewhere is not proposed", () => {
  const back = reopened(TWO());
  expect(back.groups).toMatchObject([{ left: ["1"], right: ["1"], from: "harness" }]);
  expect(back.elsewhere.left).toEqual({ 3: "A1.9" });
  const accepted = acceptCertain(back);
  expect(accepted.groups.map(({ left, right }) => [left, right])).toEqual([
    [["1"], ["1"]],
    [["2"], ["2"]],
  ]);
});

test("accepting on drawn connectors adds what is new and leaves the rest as the same objects", () => {
  const before = TWO();
  const after = made(before, acceptCertain(reopened(before)), ON_TWO);
  expect(parts(after, "splice")).toHaveLength(2);
  for (const [id, wire] of Object.entries(before.wires))
    expect(after.wires[id as keyof typeof after.wires]).toBe(wire);
  expect(after.parts["p:X1" as PartId]).toBe(before.parts["p:X1" as PartId]);
});

test("a joint taken apart after coming back takes its wires and its splice with it, and nothing else", () => {
  const before = TWO();
  const back = reopened(before);
  const apart = unjoin(back, groupOf(back, { side: "left", lead: "1" })!);
  const after = made(before, apart, ON_TWO);
  expect(parts(after, "splice")).toEqual([]);
  expect(Object.values(after.wires).map((wire) => wire.designation)).toEqual(
    Object.values(before.wires)
      .filter((wire) => wire.ends.every((end) => end !== "loose" && !end.part.includes("XJ1")))
      .map((wire) => wire.designation),
  );
});

test("where a third lead shares a splice, taking the pair apart leaves that lead and the splice", () => {
  const before = build(TWO()).vehicle("X3", { 1: "constant-feed RD" }).wire("X3.1", "XJ1").harness;
  const back = reopened(before);
  const after = made(before, unjoin(back, groupOf(back, { side: "left", lead: "1" })!), ON_TWO);
  expect(parts(after, "splice")).toHaveLength(1);
  const third = Object.values(after.wires).filter((wire) =>
    wire.ends.some((end) => end !== "loose" && end.part === "p:X3"),
  );
  expect(third).toHaveLength(1);
  expect(third[0]?.ends).not.toContain("loose");
});

test("what was decided before is put on top of what the harness says by now", () => {
  const old = decide(
    join(reopened(TWO()), { side: "left", lead: "2" }, { side: "right", lead: "2" }),
    { side: "left", lead: "4" },
    "capped",
  );
  const now = reopened(build(TWO()).part("cap", "XC1").wire("X1.2", "XC1").harness);
  const carried = carryOver(now, old);
  expect(groupOf(carried, { side: "left", lead: "2" })).toBeUndefined();
  expect(carried.fates.left).toEqual({ 2: "capped", 4: "capped" });
  const undone = carryOver(reopened(TWO()), unjoin(old, groupOf(old, { side: "left", lead: "1" })!));
  expect(groupOf(undone, { side: "left", lead: "1" })).toBeUndefined();
  expect(groupOf(undone, { side: "left", lead: "2" })).toMatchObject({ right: ["2"] });
});

test("words for how sure it is, and for what a lead may be", () => {
  expect([0.95, 0.8, 0.6, 0.4, null].map(sayConfidence)).toEqual([
    "certain",
    "nearly certain",
    "likely",
    "possible",
    "likely",
  ]);
  expect(sayFunction(lead("1 ground"))).toBe("ground");
  expect(sayFunction(lead("1 illumination|ground"))).toBe("illumination, or ground");
  expect(sayFunction(lead("1 unknown"))).toBe("function not known");
  expect(sayFunction(lead("1 not-used"))).toBe("not used");
  expect(sharedFunction([lead("1 illumination|ground"), lead("2 ground|speed")])).toBe("ground");
  expect(sharedFunction([lead("1 illumination"), lead("2 speed")])).toBe("unknown");
});
