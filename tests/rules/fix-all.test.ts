import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apply } from "../../src/graph/edits/apply.ts";
import { trace } from "../../src/graph/trace.ts";
import { check, openFindings, recheck } from "../../src/rules/check.ts";
import { fixAll, tryFix } from "../../src/rules/fix-all.ts";
import { SEVERITIES } from "../../src/rules/rule.ts";
import { build } from "../build.ts";
import { feeds } from "./harnesses.ts";
import { telling } from "./telling.ts";

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });

describe("all that is certain at once", () => {
  const crossed = feeds({ B1: "illumination GY spare lead", B2: "mute BN spare lead" })
    .path("X1.A4", "XJ1", "X2.2")
    .path("X1.A7", "XJ2", "X2.1")
    .path("X1.A8", "XJ3", "X2.3");

  test("is one edit, and what it cured is gone", () => {
    const { edit, fixed, left } = fixAll(crossed.harness);
    expect(fixed.map(({ rule }) => rule).sort()).toEqual([
      "feeds-swapped",
      "spare-not-capped",
      "spare-not-capped",
    ]);
    expect(left).toEqual([]);
    const result = apply(crossed.harness, edit!);
    if (!result.ok) throw new Error(result.why);
    const rules = check(result.harness).map(({ rule }) => rule);
    expect(rules).not.toContain("feeds-swapped");
    expect(rules).not.toContain("spare-not-capped");
  });

  test("is nothing where nothing is certain, and a waived finding is let stand", () => {
    expect(fixAll(build().harness).edit).toBeNull();
    const [finding] = check(crossed.harness).filter(({ rule }) => rule === "feeds-swapped");
    const waived = crossed.waive({
      id: "v:1" as never,
      covers: "finding",
      rule: finding!.rule,
      about: [...finding!.about],
      reason: "Tried out on the bench",
      by: "",
      date: "",
    });
    expect(fixAll(waived.harness).fixed.map(({ rule }) => rule)).not.toContain("feeds-swapped");
  });

  test("what a cure would bring is told before it is taken", () => {
    const { harness } = build().vehicle("X1", { "1": "constant-feed RD fuse:10 spare lead" });
    const checked = recheck(null, harness, trace(harness));
    const finding = checked.findings.find(({ rule }) => rule === "spare-not-capped")!;
    const bad = {
      label: "Cut it off and let it hang",
      edit: { kind: "add-wire", wire: looseWire() } as const,
    };
    const outcome = tryFix(checked, finding, bad);
    expect(outcome.ok && outcome.worse.map(({ rule }) => rule)).toContain("loose-live-lead");
    expect(tryFix(checked, finding, finding.fix!)).toMatchObject({ ok: true, worse: [] });
  });
});

function looseWire() {
  const { wires } = build().vehicle("X1", { "1": "constant-feed" }).wire("X1.1", "loose").harness;
  return Object.values(wires)[0]!;
}

test("leaves no finding that is new and as bad as one it cured, on random harnesses", () => {
  let cured = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const { harness } = telling(seed);
      const before = new Set(check(harness).map(({ key }) => key));
      const { fixed, harness: after, edit } = fixAll(harness);
      cured += fixed.length;
      if (!edit) {
        expect(after).toBe(harness);
        return;
      }
      const worst = Math.max(...fixed.map(({ severity }) => SEVERITIES.indexOf(severity)));
      const bad = openFindings(check(after)).filter(
        ({ key, severity }) => !before.has(key) && SEVERITIES.indexOf(severity) <= 0 && worst >= 0,
      );
      expect(bad.map(({ message }) => message)).toEqual([]);
    }),
    { numRuns: 40, seed: 20261102 },
  );
  expect(cured).toBeGreaterThan(20);
});
