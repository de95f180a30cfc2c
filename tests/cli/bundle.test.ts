import { describe, expect, test, vi } from "vitest";
import { pigtail, sample } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

const sound = sample("amplified-sound");

describe("pigtail bundle", () => {
  test("--json gives runs and cut lengths by designation", async () => {
    const { code, out, errors } = await pigtail(["bundle", sound, "--json"]);
    expect([code, errors]).toEqual([0, ""]);
    const report = JSON.parse(out) as Record<string, Record<string, object>>;
    expect(Object.keys(report)).toEqual(["runs", "lengths", "bySize", "totalMetres", "cost", "currency"]);
    // One wire of 10 mm²: 6.0 mm, through a grommet, in conduit; 5 m and 40 mm for its ends.
    expect(report.runs!.B2).toMatchObject({
      wires: ["W2"],
      diameterMm: 6,
      packedMm: 6,
      covering: "split loom 7.5 mm inside",
      grommet: "grommet 6 mm bore",
      bendRadiusMm: 60,
    });
    expect(report.lengths!.W2).toEqual({ cutMetres: 5.04, cost: null });
  });

  test("in words: runs, what to cut, and how much of each size", async () => {
    const { code, out } = await pigtail(["bundle", sound]);
    expect(code).toBe(0);
    expect(out).toMatch(/^.*amplified-sound\.harness\.json: 2 runs, 26 wires\n\nRuns\n/);
    expect(out).toMatch(
      /\n {2}B2 +1 +6\.0 +6\.0 +7\.2 +\d+ +60 +split loom 7\.5 mm inside; grommet 6 mm bore/,
    );
    expect(out).toMatch(/\nOf each size\n +wires +m\n/);
  });

  test("needs one file", async () => {
    expect((await pigtail(["bundle"])).code).toBe(2);
    expect((await pigtail(["bundle", sound, sound])).code).toBe(2);
  });
});
