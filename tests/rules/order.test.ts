import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inPlace } from "../../src/rules/order.ts";
import type { Finding } from "../../src/rules/rule.ts";

const finding = (key: string): Finding =>
  ({ key, waiver: key.endsWith("w") ? { reason: "so" } : null }) as unknown as Finding;
const keys = (before: string, after: string) =>
  inPlace([...before.split(" ")], after.split(" ").map(finding))
    .map(({ key }) => key)
    .join(" ");

describe("the list of findings keeps its order while a person works", () => {
  test("what is gone leaves no gap and nothing else moves", () => {
    expect(keys("a b c d", "a d c")).toBe("a c d");
  });

  test("what is new comes in after the one that the check puts before it", () => {
    expect(keys("a b c", "b x a c")).toBe("a b x c");
    expect(keys("a b c", "x y a b c")).toBe("x y a b c");
  });

  test("another harness is told in the check's own order", () => {
    expect(keys("a b", "z y x")).toBe("z y x");
  });

  test("what has been waived goes to the end", () => {
    expect(keys("a bw c", "c a bw")).toBe("a c bw");
  });

  test("nothing is lost and nothing comes twice, whatever was there before", () => {
    const list = fc.uniqueArray(fc.constantFrom(..."abcdefghij"), { minLength: 1 });
    fc.assert(
      fc.property(list, list, (before, after) => {
        const shown = inPlace(before, after.map(finding)).map(({ key }) => key);
        expect([...shown].sort()).toEqual([...after].sort());
        const kept = shown.filter((key) => before.includes(key));
        expect(kept).toEqual(before.filter((key) => after.includes(key)));
      }),
      { seed: 20261103 },
    );
  });
});
