import { expect, test } from "vitest";
import { actionOf, actionsOn } from "../../../src/editor/charts/review-keys.ts";
import { applyAction, leftToDo, sayCertain, sayMake } from "../../../src/editor/charts/review-model.ts";
import { acceptCertain, countOf, type Item, SECTIONS, sectionsOf } from "../../../src/match/review/items.ts";
import { groupOf, stateOf } from "../../../src/match/review/review.ts";
import { PROPOSAL, review, UNIT, VAN } from "../../match/review/build-review.ts";

const start = () => review(VAN, UNIT, PROPOSAL);
const itemOf = (kind: Item["kind"], one = start()): Item => {
  const found = SECTIONS.flatMap((name) => sectionsOf(one)[name]).find((item) => item.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
};
const press = (key: string, item: Item | null = null, more: Partial<KeyboardEvent> = {}) =>
  actionOf({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...more }, item);

test.each([
  ["ArrowDown", { do: "move", by: 1 }],
  ["ArrowUp", { do: "move", by: -1 }],
  ["Home", { do: "first" }],
  ["A", { do: "accept-all" }],
  ["n", { do: "next-question" }],
  ["u", null],
  ["x", null],
  ["Tab", null],
] as const)("%s, whatever row it is", (key, action) => {
  expect(press(key)).toEqual(action);
});

test("letters mean something only where they can be done", () => {
  expect(press("Enter", itemOf("offer"))).toEqual({ do: "accept" });
  expect(press("s", itemOf("offer"))).toBeNull();
  expect(press("s", itemOf("joined", acceptCertain(start())))).toEqual({ do: "swap" });
  expect(press("Delete", itemOf("joined", acceptCertain(start())))).toEqual({ do: "undo-decision" });
  expect(press("c", itemOf("missing"))).toEqual({ do: "cap" });
});

test("numbers choose among the candidates that there are", () => {
  const question = itemOf("question");
  expect(press("2", question)).toEqual({ do: "choose", index: 1 });
  expect(press("3", question)).toBeNull();
  expect(press("1", itemOf("offer"))).toBeNull();
});

test("keys with Ctrl or Alt keep their meaning, but for undo", () => {
  expect(press("z", null, { ctrlKey: true })).toEqual({ do: "undo" });
  expect(press("a", null, { ctrlKey: true })).toBeNull();
  expect(press("c", itemOf("missing"), { altKey: true })).toBeNull();
});

test("everything that a row offers does something to it", () => {
  for (const one of [start(), acceptCertain(start())]) {
    for (const item of SECTIONS.flatMap((name) => sectionsOf(one)[name])) {
      for (const action of actionsOn(item)) {
        // These three open something first.
        if (["pick", "swap", "joint"].includes(action)) continue;
        expect(applyAction(one, item, { do: action }), `${action} on ${item.kind}`).not.toBe(one);
      }
    }
  }
});

test("answers and refusals do what they say", () => {
  const chosen = applyAction(start(), itemOf("question"), { do: "choose", index: 0 });
  expect(groupOf(chosen, { side: "left", lead: "6" })?.right).toEqual(["E"]);
  const offer = itemOf("offer");
  const refused = applyAction(start(), offer, { do: "undo-decision" });
  expect(countOf(sectionsOf(refused)).offers).toBe(2);
  const left = applyAction(start(), itemOf("question"), { do: "leave" });
  expect(stateOf(left, { side: "left", lead: "6" })).toBe("apart");
});

test("what waits for a person: needed leads, then questions", () => {
  expect(leftToDo(sectionsOf(acceptCertain(start()))).map((item) => item.kind)).toEqual([
    "missing",
    "question",
  ]);
});

test("buttons say what they will do", () => {
  const before = countOf(sectionsOf(start()));
  expect(sayCertain(before)).toBe("Accept 3 joins and 1 cap");
  expect(sayMake(before)).toBe("Put down both connectors");
  expect(sayMake(countOf(sectionsOf(acceptCertain(start()))))).toBe("Make 3 joints and 1 cap");
});
