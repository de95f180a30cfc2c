import { expect, test, vi } from "vitest";
import { createDesk } from "../../../src/editor/charts/desk.ts";
import { READY } from "../../../src/editor/charts/desk-harness.ts";
import {
  chartOf,
  connectorsFor,
  emptyDesk,
  endsOf,
  isBare,
  needsOf,
  viewOf,
  withLine,
} from "../../../src/editor/charts/desk-model.ts";
import type { Engine } from "../../../src/editor/charts/engine.ts";
import { createEditor } from "../../../src/editor/state/store.ts";
import type { PartId } from "../../../src/graph/harness.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { propose } from "../../../src/match/propose/propose.ts";
import { readCharts } from "../../../src/match/read-chart.ts";
import { acceptCertain } from "../../../src/match/review/items.ts";
import { addRow, changeRow } from "../../../src/match/review/mend.ts";
import { groupOf, unjoin } from "../../../src/match/review/review.ts";
import { build } from "../../build.ts";

/** Reads and proposes at once, on this thread. */
const direct: Engine = {
  readText: async (text, sizes) => ({ text: null, read: readCharts(text, { sizes }) }),
  readFile: async (bytes, sizes) => {
    const text = new TextDecoder().decode(bytes);
    return { text, read: readCharts(text, { sizes }) };
  },
  propose: async (left, right) => propose(left, right),
  stop: () => undefined,
};

const VAN = "1\tConstant feed\tRD\n2\tSwitched feed\tYE\n3\tGround\tBK\n";
const UNIT = "A\tConstant feed\tYE\nB\tSwitched feed\tRD\nC\tGround\tBK\n";

const settled = async () => {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
};

async function deskWith(left: string, right: string, editor = createEditor()) {
  const desk = createDesk(editor, direct);
  desk.setText("left", left, true);
  desk.setText("right", right, true);
  await settled();
  return { desk, editor, state: () => desk.store.getState() };
}

test("two pasted charts are read and joins are proposed", async () => {
  const { state } = await deskWith(VAN, UNIT);
  expect(chartOf(state().sides.left).chart.leads.map((lead) => lead.name)).toEqual(["1", "2", "3"]);
  expect(state().review?.proposal.joins).toHaveLength(3);
  expect(state().sides.left.showText).toBe(false);
});

test("a text that cannot be read stays in sight", async () => {
  const { state } = await deskWith("", UNIT);
  expect(state().sides.left.showText).toBe(true);
});

test("mending a row keeps decisions, under the row's new name", async () => {
  const { desk, state } = await deskWith(VAN, UNIT);
  desk.decide(acceptCertain);
  const { keys } = chartOf(state().sides.left);
  desk.setMends("left", changeRow(state().sides.left.mends, keys[0]!, { label: "30" }));
  await settled();
  expect(groupOf(state().review!, { side: "left", lead: "30" })?.right).toEqual(["A"]);
});

test("a line mended in the text is read with the rest, and loses nothing that was mended elsewhere", async () => {
  const { desk, state } = await deskWith(VAN, UNIT);
  const { keys } = chartOf(state().sides.left);
  desk.setMends("left", changeRow(state().sides.left.mends, keys[0]!, { label: "30" }));
  await desk.mendLine("left", 2, "2\tIllumination\tOG");
  await settled();
  expect(chartOf(state().sides.left).chart.leads.map((lead) => lead.name)).toEqual(["30", "2", "3"]);
  expect(state().sides.left.text).toContain("Illumination");
});

test("another chart on a side forgets what was decided of the one before", async () => {
  const { desk, state } = await deskWith(VAN, UNIT);
  desk.decide(acceptCertain);
  desk.setText("left", VAN.replace("1\tConstant", "1\tIllumination or constant"), true);
  await settled();
  expect(state().review?.groups).toEqual([]);
});

test("an answer that was overtaken is dropped", async () => {
  const waiting: (() => void)[] = [];
  const slow: Engine = {
    ...direct,
    readText: (text, sizes) =>
      new Promise((resolve) => {
        waiting.push(() => resolve({ text: null, read: readCharts(text, { sizes }) }));
      }),
  };
  const desk = createDesk(createEditor(), slow);
  desk.setText("left", VAN, true);
  desk.setText("left", "9\tIllumination\tOG\n", true);
  waiting[1]?.();
  await settled();
  waiting[0]?.();
  await settled();
  expect(chartOf(desk.store.getState().sides.left).chart.leads.map((lead) => lead.name)).toEqual(["9"]);
  expect(desk.store.getState().reading.left).toBe(false);
});

test("what is typed is read after a pause, once", async () => {
  vi.useFakeTimers();
  const readText = vi.fn(direct.readText);
  const desk = createDesk(createEditor(), { ...direct, readText });
  for (const text of ["1", "1\tGro", VAN]) desk.setText("left", text, false);
  expect(readText).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(200);
  expect(readText).toHaveBeenCalledTimes(1);
  expect(chartOf(desk.store.getState().sides.left).chart.leads).toHaveLength(3);
  vi.useRealTimers();
});

test("undo takes back decisions one by one", async () => {
  const { desk, state } = await deskWith(VAN, UNIT);
  desk.decide(acceptCertain);
  desk.decide((review) => unjoin(review, review.groups[0]!));
  expect(state().review?.groups).toHaveLength(2);
  expect(desk.undo()).toBe(true);
  expect(state().review?.groups).toHaveLength(3);
  expect(desk.undo()).toBe(true);
  expect(state().review?.groups).toEqual([]);
  expect(desk.undo()).toBe(false);
});

test("a kept desk is taken up with texts, mends and decisions", async () => {
  const { desk, state } = await deskWith(VAN, UNIT);
  desk.set("left", { name: "radio plug", view: "wire-side" });
  desk.decide(acceptCertain);
  desk.set("right", { view: "wire-side" });
  desk.toReview();
  expect(state().step).toBe("review");
  const kept = JSON.parse(JSON.stringify(desk.asKept())) as ReturnType<typeof desk.asKept>;
  const other = createDesk(createEditor(), direct);
  other.resume(kept);
  // Left again before the joins are proposed anew, it is kept with all its decisions.
  expect(other.store.getState().review).toBeNull();
  expect(other.asKept()).toEqual(kept);
  await settled();
  expect(other.store.getState().step).toBe("review");
  expect(other.store.getState().sides.left).toMatchObject({
    name: "radio plug",
    view: "wire-side",
    text: VAN,
  });
  expect(other.store.getState().review?.groups).toHaveLength(3);
});

test("a kept desk whose connector is gone from the harness asks for a chart again", async () => {
  const harness = build().vehicle("X1", { 1: "ground BK" }).unit("X2", { 1: "ground BK" }).harness;
  const desk = createDesk(createEditor(harness), direct);
  desk.takeConnector("left", "p:X1" as PartId);
  desk.takeConnector("right", "p:X2" as PartId);
  await settled();
  const { step, sides, review } = desk.store.getState();
  const other = createDesk(createEditor(build().unit("X2", { 1: "ground BK" }).harness), direct);
  other.resume({ step, sides, review });
  await settled();
  expect(other.store.getState().sides.left.source.kind).toBe("none");
  expect(other.store.getState().sides.right.source.kind).toBe("connector");
});

test("one text with two charts side by side fills the empty side too", async () => {
  const desk = createDesk(createEditor(), direct);
  const lines = [
    "1\tConstant feed\tRD\t\tA4\tConstant feed\tYE",
    "2\tGround\tBK\t\tA8\tGround\tBK",
    "3\tIllumination\tOG\t\tA6\tIllumination\tOG/WH",
  ];
  desk.setText("left", lines.join("\n"), true);
  await settled();
  const { sides } = desk.store.getState();
  expect(chartOf(sides.left).chart.leads.map((lead) => lead.name)).toEqual(["1", "2", "3"]);
  expect(chartOf(sides.right).chart.leads.map((lead) => lead.name)).toEqual(["A4", "A8", "A6"]);
  expect(sides.right.source.kind).toBe("beside");
});

test("what is needed is asked for in order: charts, designations, views", async () => {
  const harness = emptyHarness();
  const bare = emptyDesk(harness);
  expect(isBare(bare)).toBe(true);
  expect(needsOf(bare, harness).map(({ side, what }) => `${side} ${what}`)).toEqual([
    "left chart",
    "right chart",
    "left view",
    "right view",
  ]);
  const { desk, state } = await deskWith(VAN, UNIT);
  desk.set("right", { designation: "X1" });
  desk.set("left", { view: "wire-side" });
  expect(needsOf(state(), harness).map(({ side, what }) => `${side} ${what}`)).toEqual([
    "right designation",
    "right view",
  ]);
  expect(endsOf(state(), harness)).toBeNull();
  expect(isBare(state())).toBe(false);
});

test("the view is not asked where the chart says it, the harness knows it, or there is no face", async () => {
  const harness = build().vehicle("X1", { 1: "ground BK" }, { view: "mating-face" }).harness;
  const { desk, state } = await deskWith(
    `Radio plug, wire side\n${VAN}`,
    "yellow - constant 12 V\nred - ignition\nblack - ground\n",
    createEditor(harness),
  );
  expect(viewOf(state().sides.left, harness)).toEqual({ view: "wire-side", from: "chart" });
  expect(viewOf(state().sides.right, harness)?.from).toBe("leads");
  desk.takeConnector("left", "p:X1" as PartId);
  expect(viewOf(state().sides.left, harness)).toEqual({ view: "mating-face", from: "harness" });
  await settled();
  expect(endsOf(state(), harness)).toMatchObject({ left: { part: "p:X1" }, right: { form: "flying-leads" } });
});

test("a ready connector brings its face, seen from the chosen view", async () => {
  const desk = createDesk(createEditor(), direct);
  const ready = READY.find((one) => one.id === "iso-10487-a")!;
  desk.takeReady("right", ready);
  desk.setText("left", VAN, true);
  await settled();
  desk.set("left", { view: "wire-side" });
  const rowsSeen = (view: "wire-side" | "mating-face") => {
    desk.set("right", { view });
    const ends = endsOf(desk.store.getState(), emptyHarness());
    return ends?.right.part === null ? ends.right.rows : null;
  };
  expect(rowsSeen("wire-side")).toEqual([
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ]);
  expect(rowsSeen("mating-face")).toEqual([
    [7, 5, 3, 1],
    [8, 6, 4, 2],
  ]);
  desk.setMends(
    "right",
    addRow(desk.store.getState().sides.right.mends, chartOf(desk.store.getState().sides.right).chart),
  );
  expect(rowsSeen("wire-side")).toBe(1);
});

test("it starts on the selected connectors, the vehicle's left; or on the only one of each side", () => {
  const harness = build()
    .unit("X2", { 1: "ground" })
    .vehicle("X1", { 1: "ground" })
    .vehicle("X3", { 1: "ground" }).harness;
  const ids = (...names: string[]) => new Set(names.map((name) => `p:${name}` as PartId));
  expect(connectorsFor(harness, ids("X2", "X3"))).toEqual({ left: "p:X3", right: "p:X2" });
  expect(connectorsFor(harness, ids())).toEqual({ left: null, right: "p:X2" });
  expect(connectorsFor(harness, ids("X1"))).toEqual({ left: "p:X1", right: "p:X2" });
});

test("a line is replaced where it stands, whatever ends the lines", () => {
  expect(withLine("a\r\nb\nc", 2, "x")).toBe("a\r\nx\nc");
  expect(withLine("a", 1, "x")).toBe("x");
  expect(withLine("a", 9, "x")).toBe("a\nx");
});
