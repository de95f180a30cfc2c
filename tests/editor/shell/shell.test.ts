import { describe, expect, test } from "vitest";
import { passesText } from "../../../src/editor/shell/keys.ts";
import { readPreferences, SIDE_WIDTH } from "../../../src/editor/shell/preferences.ts";
import { traceWords } from "../../../src/editor/shell/trace-words.ts";
import { NOTHING } from "../../../src/editor/state/store.ts";
import type { WireId } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";
import { build } from "../../build.ts";

describe("preferences", () => {
  test.each([[null], [""], ["{"], ["[1]"], ["null"], ['{"sideWidth":"wide","theme":"pink","panel":7}']])(
    "%j reads as usual",
    (text) => {
      expect(readPreferences(text)).toMatchObject({
        sideWidth: SIDE_WIDTH.usual,
        theme: "system",
        panel: "findings",
        wireTable: false,
      });
    },
  );

  test("a width is kept within what a screen can show", () => {
    expect(readPreferences('{"sideWidth":99999}').sideWidth).toBe(SIDE_WIDTH.most);
    expect(readPreferences('{"sideWidth":-5,"theme":"workshop"}')).toMatchObject({
      sideWidth: SIDE_WIDTH.least,
      theme: "workshop",
    });
  });
});

test.each([
  ["Mod+k", true],
  ["Mod+s", true],
  ["F1", true],
  ["F2", false],
  ["Mod+z", false],
  ["Mod+c", false],
  ["Mod+ArrowLeft", false],
  ["Delete", false],
  ["/", false],
  ["a", false],
])("while a field has the focus %s reaches a command: %s", (keys, passes) => {
  expect(passesText(keys)).toBe(passes);
});

describe("the words at the foot", () => {
  const { harness } = build()
    .vehicle("X1", { A4: "constant-feed RD", A7: "unknown" }, { name: "Wren radio plug" })
    .unit("X2", { 1: "constant-feed YE" })
    .path("X1.A4", "XJ1", "X2.1");
  const traced = trace(harness);
  const w1 = "w:W1" as WireId;

  test("say what a wire pointed at joins, before what is selected", () => {
    const words = traceWords(
      harness,
      traced,
      { wire: w1 },
      { ...NOTHING, parts: new Set(["p:X1" as never]) },
    );
    expect(words).toMatch(/^W1, red\. /);
    expect(words).toContain("X1.A4");
    expect(words).toContain("X2.1");
  });
  test("name the one part that is selected", () => {
    const selection = { ...NOTHING, parts: new Set(["p:X1" as never]) };
    expect(traceWords(harness, traced, null, selection)).toBe("X1, Wren radio plug");
  });
  test("count several", () => {
    const selection = { ...NOTHING, wires: new Set([w1, "w:W2" as WireId]) };
    expect(traceWords(harness, traced, null, selection)).toBe("2 wires selected");
  });
  test("are empty with nothing", () => {
    expect(traceWords(harness, traced, null, NOTHING)).toBe("");
  });
});
