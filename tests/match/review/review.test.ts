import { expect, test } from "vitest";
import {
  acceptCertain,
  countOf,
  questionsOf,
  sectionsOf,
  subjectsOf,
} from "../../../src/match/review/items.ts";
import {
  decide,
  groupOf,
  join,
  type LeadRef,
  release,
  setAllJoints,
  setJoint,
  stateOf,
  swap,
  unjoin,
  withCharts,
} from "../../../src/match/review/review.ts";
import { chart, lead, PROPOSAL, pair, review, UNIT, VAN } from "./build-review.ts";

const left = (name: string): LeadRef => ({ side: "left", lead: name });
const right = (name: string): LeadRef => ({ side: "right", lead: name });
const start = () => review(VAN, UNIT, PROPOSAL);
const same = () => new Map<string, string>();

test("before anything is decided, what is proposed, asked and missing stands in its section", () => {
  expect(countOf(sectionsOf(start()))).toEqual({
    missing: 1,
    questions: 1,
    offers: 3,
    offeredCaps: 1,
    joined: 0,
    capped: 0,
    apart: 0,
    open: 0,
  });
});

test("accepting what is certain leaves questions and needed leads alone", () => {
  const accepted = acceptCertain(start());
  expect(accepted.groups.map(({ left, right }) => [left, right])).toEqual([
    [["3"], ["C", "D"]],
    [["1"], ["A"]],
    [["2"], ["B"]],
  ]);
  expect(stateOf(accepted, left("4"))).toBe("capped");
  expect(stateOf(accepted, left("6"))).toBe("open");
  expect(stateOf(accepted, right("E"))).toBe("open");
  expect(sectionsOf(accepted).missing.map((item) => subjectsOf(item))).toEqual([[right("E")]]);
});

test("a question offers free candidates first, and says which are in a joint already", () => {
  const [question] = questionsOf(acceptCertain(start()));
  expect(question?.ref).toEqual(left("6"));
  expect(question?.candidates.map(({ lead, taken }) => [lead, taken])).toEqual([
    ["E", false],
    ["B", true],
  ]);
});

test("choosing a candidate that is joined makes a splice of three", () => {
  const chosen = join(acceptCertain(start()), left("6"), right("B"));
  expect(groupOf(chosen, left("6"))).toMatchObject({ left: ["2", "6"], right: ["B"], from: "person" });
  expect(questionsOf(chosen)).toEqual([]);
});

test("choosing a needed lead takes it out of the missing ones", () => {
  const chosen = join(start(), left("6"), right("E"));
  expect(sectionsOf(chosen).missing).toEqual([]);
});

test("what is taken apart is open, and not proposed again", () => {
  const accepted = acceptCertain(start());
  const apart = unjoin(accepted, groupOf(accepted, left("1"))!);
  expect(stateOf(apart, left("1"))).toBe("open");
  expect(stateOf(apart, right("A"))).toBe("open");
  expect(acceptCertain(apart).groups.some((group) => group.left.includes("1"))).toBe(false);
  expect(groupOf(join(apart, left("1"), right("A")), left("1"))).toMatchObject({ right: ["A"] });
});

test("two joints exchange their right sides; doing it twice is as before", () => {
  const accepted = acceptCertain(start());
  const one = groupOf(accepted, left("1"))!;
  const swapped = swap(accepted, one, groupOf(accepted, left("2"))!);
  expect(groupOf(swapped, left("1"))?.right).toEqual(["B"]);
  const back = swap(swapped, groupOf(swapped, left("1"))!, groupOf(swapped, left("2"))!);
  expect(back.groups.map(({ left, right }) => [left, right])).toEqual(
    accepted.groups.map(({ left, right }) => [left, right]),
  );
});

test("capping a lead of a splice leaves the rest of the splice", () => {
  const capped = decide(acceptCertain(start()), right("D"), "capped");
  expect(groupOf(capped, left("3"))?.right).toEqual(["C"]);
  expect(stateOf(capped, right("D"))).toBe("capped");
});

test("a joint whose one side is released is no joint", () => {
  const released = release(acceptCertain(start()), right("A"));
  expect(stateOf(released, left("1"))).toBe("open");
});

test("a lead that the harness joins elsewhere cannot be decided", () => {
  const busy = { ...start(), elsewhere: { left: { "1": "X9.1" }, right: {} } };
  expect(join(busy, left("1"), right("A"))).toBe(busy);
  expect(decide(busy, left("1"), "capped")).toBe(busy);
  expect(acceptCertain(busy).groups.some((group) => group.left.includes("1"))).toBe(false);
});

test("one joint may be made another way; setting all sets that one too", () => {
  const accepted = acceptCertain(start());
  const one = setJoint(accepted, groupOf(accepted, left("1"))!, "bullet-pair");
  expect(groupOf(one, left("1"))?.joint).toBe("bullet-pair");
  const all = setAllJoints(one, "crimped-butt");
  expect(all.joint).toBe("crimped-butt");
  expect(all.groups.every((group) => group.joint === null)).toBe(true);
});

test("other charts keep what was decided of leads that are still there, under their new names", () => {
  const accepted = acceptCertain(start());
  const renamed = chart("1a constant-feed RD", "2 switched-feed YE", "3 ground BK", "4 speed PK");
  const next = withCharts(accepted, { left: renamed, right: UNIT }, accepted.proposal, {
    left: new Map([["1", "1a"]]),
    right: same(),
  });
  expect(groupOf(next, left("1a"))?.right).toEqual(["A"]);
  expect(stateOf(next, left("4"))).toBe("capped");
  const gone = withCharts(
    next,
    { left: { ...renamed, leads: [lead("4 speed PK")] }, right: UNIT },
    next.proposal,
    {
      left: same(),
      right: same(),
    },
  );
  expect(gone.groups).toEqual([]);
  expect(stateOf(gone, right("A"))).toBe("open");
});

test("a question whose other side is the smaller one is asked from there", () => {
  const asked = review(VAN, UNIT, { ask: [{ left: ["1", "2"], right: ["E"], why: "either" }] });
  expect(questionsOf(asked).map(({ ref }) => ref)).toEqual([right("E")]);
});

test("a lead that is in a splice and in a join is offered once", () => {
  const doubled = review(VAN, UNIT, {
    joins: [pair("3", "C")],
    splices: [{ function: "ground", left: ["3"], right: ["C", "D"], ends: 3, current_A: null }],
  });
  expect(countOf(sectionsOf(doubled)).offers).toBe(1);
});

test("a candidate that no question wants any more is offered as a spare", () => {
  const asked = review(VAN, UNIT, { ask: [{ left: ["6"], right: ["E", "B"], why: "either" }] });
  const chosen = join(asked, left("6"), right("B"));
  expect(sectionsOf(asked).caps).toEqual([]);
  expect(sectionsOf(chosen).caps.map((item) => [item.kind, subjectsOf(item)])).toEqual([
    ["offer-cap", [right("E")]],
  ]);
});
