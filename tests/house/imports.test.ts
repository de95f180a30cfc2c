import { describe, expect, test } from "vitest";
import { importsOf, wrongImports } from "./import-directions.ts";
import { readSources } from "./sources.ts";

describe("imports go one way through the house", () => {
  test("in every file of src", () => {
    const sources = readSources(["src"], [".ts", ".tsx", ".mjs"]);
    expect(sources.length).toBeGreaterThan(20);
    expect(wrongImports(sources)).toEqual([]);
  });
});

describe("the checker itself", () => {
  test("finds every form of import", () => {
    const text = [
      'import { a } from "./a.ts";',
      'import type {\n  B,\n} from "./b.ts";',
      'export * from "./c.ts";',
      'import "./d.css";',
      'const e = await import("./e.ts");',
      'const f = new URL("./f.ts", import.meta.url);',
      '// import { g } from "./g.ts";',
      '/* import "./h.ts"; */',
      'const note = "see // not a comment"; import { i } from "./i.ts";',
      'export { j } from "./j.ts"',
    ].join("\n");
    expect(importsOf(text)).toEqual([
      "./a.ts",
      "./b.ts",
      "./c.ts",
      "./d.css",
      "./e.ts",
      "./f.ts",
      "./i.ts",
      "./j.ts",
    ]);
  });

  test.each([
    ["src/graph/a.ts", 'import { check } from "../rules/check.ts";', "src/graph may not import src/rules"],
    ["src/layout/a.ts", 'import { x } from "../rules/x.ts";', "src/layout may not import src/rules"],
    ["src/layout/text/a.ts", 'import { x } from "../../sheets/x.ts";', "may not import src/sheets"],
    ["src/cli/a.ts", 'import { x } from "../editor/x.ts";', "src/cli may not import src/editor"],
    ["src/rules/a.ts", 'import { useState } from "react";', "neither React"],
    ["src/bench/a.ts", 'import { readFileSync } from "node:fs";', "nor Node"],
    ["src/electrical/a.ts", "const x = document.title;", "uses document"],
    ["src/match/a.ts", "export const width = () => window.innerWidth;", "uses window"],
    ["src/graph/a.ts", 'import { x } from "../../tests/x.ts";', "outside src"],
    ["src/somewhere/a.ts", "", "no room"],
    ["src/a.ts", "", "no room"],
  ])("refuses %s with %s", (path, text, why) => {
    const wrong = wrongImports([{ path, text }]);
    expect(wrong).toHaveLength(1);
    expect(wrong[0]).toContain(why);
  });

  test.each([
    ["src/rules/a.ts", 'import { trace } from "../graph/trace.ts"; import { z } from "zod";'],
    ["src/editor/a.tsx", 'import { x } from "../sheets/x.ts"; import "react"; document.title = "";'],
    ["src/editor/a.ts", 'import sample from "../../samples/a.harness.json?url";'],
    [
      "src/graph/a.ts",
      '// document.title is for the editor\nconst title = harness.document.title; const s = "window.x";',
    ],
  ])("allows %s with %s", (path, text) => {
    expect(wrongImports([{ path, text }])).toEqual([]);
  });
});
