import { expect, test } from "vitest";
import { fits, type Listed, listCommands, withUsed } from "../../../src/editor/palette/command-list-model.ts";

const command = (id: string, name: string, possible = true): Listed => ({
  id,
  name,
  group: "edit",
  keys: "",
  possible,
});
const all = [
  command("undo", "Undo: cap spare"),
  command("cap", "Cap 3 spares"),
  command("arrange", "Arrange the drawing"),
  command("find", "Find a part or a wire…", false),
];
const ids = (typed: string, recent: string[] = []) => listCommands(all, typed, recent).map(({ id }) => id);

test("nothing typed: what was used last first, what is not possible last", () => {
  expect(ids("", ["arrange"])).toEqual(["arrange", "undo", "cap", "find"]);
});

test("a name that begins with the word comes before one that holds it", () => {
  expect(ids("cap")).toEqual(["cap", "undo"]);
});

test("every word must fit, in any order, without accents or capitals", () => {
  expect(ids("DRAWING arr")).toEqual(["arrange"]);
  expect(ids("arrange wire")).toEqual([]);
  expect(fits("é", "e")).not.toBeNull();
});

test("a command used again moves to the front, and the list stays short", () => {
  expect(withUsed(["a", "b", "c"], "b")).toEqual(["b", "a", "c"]);
  expect(withUsed(["a", "b"], "c", 2)).toEqual(["c", "a"]);
});
