import { expect, test } from "vitest";
import type { Source } from "./import-directions.ts";
import { readSources } from "./sources.ts";

const LIMIT = 400;

function tooLong(sources: readonly Source[]): string[] {
  return sources
    .map(({ path, text }) => ({ path, lines: text.replace(/\n$/, "").split("\n").length }))
    .filter(({ lines }) => lines > LIMIT)
    .map(({ path, lines }) => `${path} has ${lines} lines`);
}

test("no file of src or tests is longer than 400 lines", () => {
  expect(tooLong(readSources(["src", "tests"], [".ts", ".tsx", ".mjs", ".css"]))).toEqual([]);
});

test("the check finds a file of 401 lines and passes one of 400", () => {
  const lines = (count: number) => `${"x\n".repeat(count)}`;
  expect(tooLong([{ path: "long.ts", text: lines(401) }])).toEqual(["long.ts has 401 lines"]);
  expect(tooLong([{ path: "full.ts", text: lines(400) }])).toEqual([]);
});
