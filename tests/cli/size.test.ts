import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { Build } from "../build.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

/** 15 A over 3 m of 2.5 mm² out and back: see tests/electrical/operate/follows.test.ts for the sum. */
function thin(): string {
  const file = join(folder(), "thin.harness.json");
  const known = { area_mm2: 2.5, length_m: 3, insulation: "thin-wall-105" } as const;
  const build = new Build()
    .part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01, capacity_Ah: 60 })
    .part("fuse", "F1", { rating_A: 10, form: "regular" })
    .part("load", "E1", { current_A: 15, behaviour: "constant-current", type: "other" })
    .wire("G1.−", "XE1", "BK", { ...known, length_m: 0, area_mm2: 25 })
    .wire("G1.+", "F1.1", "RD", { ...known, length_m: 0, area_mm2: 6 })
    .wire("F1.2", "E1.+", "RD", known)
    .wire("E1.−", "XE2", "BK", known);
  writeFileSync(file, serialise(build.harness));
  return file;
}

describe("pigtail size", () => {
  test("--json gives sizes, ratings and what else follows, by designation", async () => {
    const { code, out, errors } = await pigtail(["size", thin(), "--json"]);
    expect([code, errors]).toEqual([0, ""]);
    const report = JSON.parse(out) as Record<string, never>;
    expect(Object.keys(report)).toEqual([
      "wires",
      "fuses",
      "branches",
      "drops",
      "standby",
      "turnOn",
      "channels",
      "unmet",
    ]);
    expect(report).toMatchObject({
      wires: {
        W3: {
          amps: 15,
          statedMm2: 2.5,
          smallestMm2: 6,
          smallest: "6 mm²",
          verdict: "grow",
          decidedBy: "drop",
        },
      },
      fuses: { F1: { loadAmps: 15, statedAmps: 10, ratingAmps: 20, colour: "yellow", weakestWire: "W3" } },
      drops: [{ within: false, limitVolts: 0.36 }],
      unmet: [],
    });
  });

  test("in words: a table with the reason of each", async () => {
    const { out } = await pigtail(["size", thin()]);
    expect(out).toMatch(/^.*thin\.harness\.json: 4 wires with current, 2 to be changed\n/);
    expect(out).toMatch(/\n {2}W3 +15\.00 +2\.5 mm² +6 mm² +too thin +6 mm² carries 60 A and loses /);
    expect(out).toContain("\nFuses\n  F1: load 15 A / 0.75 = 20 A → 20 A; W3 carries 35 A");
    expect(out).toMatch(/\n {2}! E1: \d\.\d\d V of 0\.36 V; \d\.\d\d V of it in (ground )?lead W[34]\n/);
  });

  test("-o writes the harness put right, once; what is there is not written over", async () => {
    const [from, to] = [thin(), join(folder(), "sized.harness.json")];
    const first = await pigtail(["size", from, "-o", to]);
    expect([first.code, first.errors]).toEqual([0, ""]);
    const result = parse(readFileSync(to, "utf8"));
    if (!result.ok) throw new Error("not a harness");
    const { parts, wires } = result.harness;
    expect([wires["w:W3" as never], wires["w:W1" as never], parts["p:F1" as never]]).toMatchObject([
      { area_mm2: 6 },
      { area_mm2: 25 },
      { rating_A: 20 },
    ]);
    const again = await pigtail(["size", from, "-o", to]);
    expect(again).toMatchObject({ code: 2, errors: expect.stringContaining("is there already") });
    const settled = await pigtail(["size", to]);
    expect(settled.out).toContain("0 to be changed");
    const piped = await pigtail(["size", from, "-o", "-"]);
    expect(piped.out).toBe(readFileSync(to, "utf8"));
  });

  test("the samples' speakers are within their channels' loads", async () => {
    const { out } = await pigtail(["size", sample("amplified-sound"), "--json"]);
    const { channels } = JSON.parse(out) as {
      channels: { ohms: number; belowLeast: boolean; trouble: string[] }[];
    };
    expect(channels.map(({ belowLeast, trouble }) => [belowLeast, trouble])).toEqual(
      Array.from({ length: 4 }, () => [false, []]),
    );
    // 4 Ω and 6 m of 1.5 mm² at 13.3 mΩ/m.
    expect(channels[0]!.ohms).toBeCloseTo(4.0798, 4);
  });
});
