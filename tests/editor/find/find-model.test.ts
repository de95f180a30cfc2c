import { expect, test } from "vitest";
import { findInHarness } from "../../../src/editor/find/find-model.ts";
import { build } from "../../build.ts";

const { harness } = build()
  .vehicle("X1", { A4: "constant-feed RD", A6: "illumination BU/WH" }, { name: "Wren radio plug" })
  .unit("X10", { 1: "illumination OG" })
  .part("fuse", "F1", { name: "radio" })
  .wire("X1.A6", "X10.1", "BU/WH")
  .wire("X1.A4", "loose", "RD");

const names = (typed: string) => findInHarness(harness, typed).map((hit) => hit.name);

test.each([
  ["x1", ["X1", "X1.A4", "X1.A6", "X10", "X10.1"]],
  ["X10", ["X10", "X10.1"]],
  ["W1", ["W1"]],
  ["illum", ["X1.A6", "X10.1"]],
  ["dash lights", ["X1.A6", "X10.1"]],
  ["BU/WH", ["X1.A6", "W1"]],
  ["blue", ["X1.A6", "W1"]],
  ["blue/white", ["X1.A6", "W1"]],
  ["red", ["X1.A4", "W2"]],
  ["radio", ["X1", "F1"]],
  ["zebra", []],
  ["  ", []],
])("%j finds %j", (typed, found) => {
  expect(names(typed)).toEqual(found);
});

test("a list is never longer than asked for", () => {
  expect(findInHarness(harness, "x", 2)).toHaveLength(2);
});
