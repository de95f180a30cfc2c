import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { trace } from "../../src/graph/trace.ts";
import { check } from "../../src/rules/check.ts";
import { whyOf } from "../../src/rules/why/why.ts";
import { type Build, build } from "../build.ts";
import { feeds } from "./harnesses.ts";
import { telling } from "./telling.ts";

function why(of: Build, rule: string): string[] {
  const { harness } = of;
  const finding = check(harness).find((one) => one.rule === rule);
  if (!finding) throw new Error(`${rule} is not found`);
  return whyOf(harness, trace(harness), finding).ways.map(
    ({ title, steps }) => `${title}: ${steps.map(({ words }) => words).join(" > ")}`,
  );
}

describe("the way that shows how a finding comes about", () => {
  test("from the battery through everything to the bare end", () => {
    const loose = build()
      .part("supply", "G1")
      .part("fuse", "F1", { rating_A: 15 })
      .path("G1.+", "F1", "XJ1")
      .wire("XJ1", "loose", "RD");
    expect(why(loose, "loose-live-lead")).toEqual([
      "How G1.+ reaches it, live at all times: G1.+ constant feed > W1 > fuse F1, 15 A > W2 > splice XJ1 > W3 (red), which ends loose",
    ]);
  });

  test("from what feeds one lead to it, and on to the other", () => {
    const swapped = feeds()
      .path("X1.A4", "XJ1", "X2.2")
      .path("X1.A7", "XJ2", "X2.1")
      .path("X1.A8", "XJ3", "X2.3");
    const [first] = why(swapped, "feeds-swapped");
    expect(first).toContain("X1.A7 switched feed > W3 (yellow) > splice XJ2");
    expect(first).toMatch(/X2\.1 constant feed$/);
  });

  test("nothing feeds it: what it is joined to", () => {
    const spare = build().vehicle("X1", { "1": "mute BN spare lead" });
    expect(why(spare, "spare-not-capped")).toEqual(["What X1.1 mute is joined to: X1.1 mute"]);
  });

  test("every finding of a random harness has one, and all that it touches is there", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const { harness } = telling(seed);
        const traced = trace(harness);
        for (const finding of check(harness, traced)) {
          const { ways, parts, wires } = whyOf(harness, traced, finding);
          expect(ways.length).toBeGreaterThan(0);
          for (const way of ways) {
            expect(way.steps.length).toBeGreaterThan(0);
            expect(`${way.title} ${way.steps.map(({ words }) => words).join(" ")}`).not.toMatch(
              /undefined|\[object/,
            );
          }
          for (const id of parts) expect(harness.parts[id]).toBeDefined();
          for (const id of wires) expect(harness.wires[id]).toBeDefined();
        }
      }),
      { numRuns: 40, seed: 20261104 },
    );
  });
});
