import { expect, test } from "vitest";
import {
  addRow,
  changeRow,
  mend,
  NO_MENDS,
  renames,
  setAside,
  takeBack,
} from "../../../src/match/review/mend.ts";
import { statedView } from "../../../src/match/review/stated-view.ts";
import { chart } from "./build-review.ts";

const READ = {
  ...chart("1 ground BK", "2 constant-feed RD", "2 constant-feed RD"),
  notes: [{ line: 1, text: "Radio plug" }],
  unread: [{ line: 5, text: "?? 7" }],
};

test("a correction stays with its row when the text is read again around it", () => {
  const first = mend(READ, NO_MENDS);
  const mends = changeRow(NO_MENDS, first.keys[1]!, { label: "2a" });
  const again = mend({ ...READ, leads: [...chart("0 speed PK").leads, ...READ.leads] }, mends);
  expect(again.chart.leads.map((lead) => lead.label)).toEqual(["0", "1", "2a", "2"]);
  expect(again.chart.leads.map((lead) => lead.name)).toEqual(["0", "1", "2a", "2"]);
});

test("two rows of one label have names of their own", () => {
  expect(mend(READ, NO_MENDS).chart.leads.map((lead) => lead.name)).toEqual(["1", "2", "2 (2)"]);
});

test("a row set aside is a note, and can be taken back", () => {
  const aside = setAside(NO_MENDS, "=1 ground BK", "1 ground BK");
  const { chart } = mend(READ, aside);
  expect(chart.leads.map((lead) => lead.label)).toEqual(["2", "2"]);
  expect(chart.notes.map((note) => note.text)).toContain("1 ground BK");
  expect(mend(READ, takeBack(aside, "1 ground BK")).chart.leads).toHaveLength(3);
});

test("an unread line set aside is a note and no longer unread", () => {
  const { chart } = mend(READ, setAside(NO_MENDS, "=?? 7", "?? 7"));
  expect(chart.unread).toEqual([]);
  expect(chart.notes.map((note) => note.text)).toEqual(["Radio plug", "?? 7"]);
});

test("taking a typed row away keeps what was corrected in the rows after it", () => {
  let mends = addRow(addRow(NO_MENDS, READ), READ);
  mends = changeRow(mends, "+1", { text: "horn" });
  const left = setAside(mends, "+0", "");
  const { chart, keys } = mend(READ, left);
  expect(keys.at(-1)).toBe("+0");
  expect(chart.leads.at(-1)?.text).toBe("horn");
  expect(chart.leads).toHaveLength(4);
});

test("renaming says which name became which, also when two rows exchange their labels", () => {
  const before = mend(READ, NO_MENDS);
  const swapped = changeRow(changeRow(NO_MENDS, before.keys[0]!, { label: "2" }), before.keys[1]!, {
    label: "1",
  });
  const after = mend(READ, swapped);
  expect(renames(before, after).get("1")).toBe("2");
  expect(renames(before, after).get("2")).toBe("1");
});

test("a lead without a label is called by its colour, and by its new one when that is corrected", () => {
  const [lead] = chart("x ground BK").leads;
  const leads = { ...READ, leads: [{ ...lead!, label: null, name: "BK" }] };
  const { keys } = mend(leads, NO_MENDS);
  const after = mend(leads, changeRow(NO_MENDS, keys[0]!, { colour: { base: "BN", tracer: null } }));
  expect(after.chart.leads[0]?.name).toBe("BN");
});

test.each([
  ["Radio plug, seen from the wire side", "wire-side"],
  ["Connector C12 (mating face view)", "mating-face"],
  ["Stecker, Ansicht Leitungsseite", "wire-side"],
  ["Buchse, Steckseite", "mating-face"],
  ["Front view of the dash: wire side not shown, mating face", null],
  ["Driver's side door harness", null],
  ["Passenger side, front speaker", null],
] as const)("%s: %s", (title, view) => {
  expect(statedView({ ...READ, notes: [], title })).toBe(view);
});
