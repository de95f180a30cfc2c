import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  fileNameOf,
  type Kept,
  mayWrite,
  nameOf,
  sayWhen,
  sortRecent,
} from "../../../src/editor/files/files-model.ts";
import { emptyHarness } from "../../../src/graph/make.ts";

const kept = (revision: number): Kept => ({ id: "a", name: "", text: "", revision, keptAt: 0, tab: "t" });

describe("mayWrite", () => {
  test("a harness nobody has kept may be written", () => expect(mayWrite(undefined, 0)).toBe(true));
  test("the revision last seen may be written over", () => expect(mayWrite(kept(4), 4)).toBe(true));
  test("a later one of another tab may not", () => expect(mayWrite(kept(5), 4)).toBe(false));
  test("nor an earlier one, which means the storage was put back", () =>
    expect(mayWrite(kept(3), 4)).toBe(false));
});

describe("nameOf", () => {
  const titled = {
    ...emptyHarness(),
    titleBlock: { ...emptyHarness().titleBlock, title: " Wren receiver " },
  };
  test("the title first", () => expect(nameOf(titled, "x.harness.json")).toBe("Wren receiver"));
  test("then the file's name", () => expect(nameOf(emptyHarness(), "Camera.harness.json")).toBe("Camera"));
  test("then a plain word", () => expect(nameOf(emptyHarness(), null)).toBe("Untitled harness"));
});

describe("fileNameOf", () => {
  test.each([
    ["Wren receiver adapter", "Wren-receiver-adapter.harness.json"],
    ['a/b\\c:d*e?"<>|', "a-b-c-d-e.harness.json"],
    ["", "harness.harness.json"],
    ["...", "harness.harness.json"],
    ["Ω Фургон", "Ω-Фургон.harness.json"],
  ])("%j becomes %j", (title, name) => expect(fileNameOf(title)).toBe(name));

  test("no title makes a name that a file system refuses", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (title) => {
        const name = fileNameOf(title);
        expect(name).toMatch(/^[^\p{Cc}<>:"/\\|?*]+\.harness\.json$/u);
        expect(name.length).toBeLessThan(120);
      }),
      { seed: 7 },
    );
  });
});

test("sayWhen gives the day only when it is not today", () => {
  const noon = new Date(2026, 10, 25, 12, 0).getTime();
  expect(sayWhen(new Date(2026, 10, 25, 9, 5).getTime(), noon)).toBe("09:05");
  expect(sayWhen(new Date(2026, 10, 23, 9, 5).getTime(), noon)).toBe("23 Nov 09:05");
});

test("sortRecent puts the newest first and stops at the limit", () => {
  const list = [1, 3, 2].map((keptAt) => ({
    id: String(keptAt),
    name: "",
    keptAt,
    partCount: 0,
    wireCount: 0,
  }));
  expect(sortRecent(list, 2).map((one) => one.keptAt)).toEqual([3, 2]);
});
