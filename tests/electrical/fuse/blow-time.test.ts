import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isKnown } from "../../../src/electrical/figure.ts";
import { BLADES, type Blade, BREAKING_CAPACITY_A, blade } from "../../../src/electrical/fuse/blade.ts";
import { blowTime, type Seconds, sayBand } from "../../../src/electrical/fuse/blow-time.ts";
import { letThrough } from "../../../src/electrical/fuse/let-through.ts";

const ten = blade("regular", 10)!;
const every: readonly Blade[] = Object.values(BLADES).flat();
const least = (seconds: Seconds) => (seconds === "unknown" ? 0 : seconds);
const most = (seconds: Seconds) => (seconds === "unknown" ? Number.POSITIVE_INFINITY : seconds);

describe("what the table does not say is unknown", () => {
  test("below its first point a fuse holds, and need never open", () => {
    expect(blowTime(ten, 8).promised).toEqual({ least_s: 360_000, most_s: "unknown" });
    expect(blowTime(ten, 8).between).toEqual({ least_s: "unknown", most_s: "unknown" });
    expect(blowTime(ten, 0).promised.least_s).toBe(360_000);
  });

  test("just above the current it holds, it may open at once or never", () => {
    expect(blowTime(ten, 12).promised).toEqual({ least_s: 0.75, most_s: "unknown" });
  });

  test("beyond the last point it opens no later than there, and nothing more is said", () => {
    expect(blowTime(ten, 200).promised).toEqual({ least_s: "unknown", most_s: 0.1 });
    expect(blowTime(ten, 200).between).toEqual({ least_s: "unknown", most_s: "unknown" });
  });

  test("above what a blade can break it may not clear at all", () => {
    const time = blowTime(ten, 1001);
    expect(time.promised).toEqual({ least_s: "unknown", most_s: "unknown" });
    expect(time.doubt).toContain("more than the 1000 A that a blade can break");
    expect(letThrough(ten, 1001)).toHaveProperty("unknown");
  });
});

test("between two points the picture is a straight line on logarithmic paper", () => {
  // Half way from 160 % to 200 % on a logarithmic scale: √(1.6 × 2), and √(50 × 5) seconds.
  const { between } = blowTime(ten, 10 * Math.sqrt(1.6 * 2));
  expect(between.most_s).toBeCloseTo(Math.sqrt(50 * 5), 9);
  expect(between.least_s).toBeCloseTo(Math.sqrt(0.25 * 0.15), 9);
});

test("more current never takes longer, and the picture stays inside the promise", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...every),
      fc.double({ min: 0, max: 8, noNaN: true }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      (fuse, multiple, times) => {
        fc.pre(fuse.rating_A * multiple * times <= BREAKING_CAPACITY_A);
        const time = blowTime(fuse, fuse.rating_A * multiple);
        const more = blowTime(fuse, fuse.rating_A * multiple * times);
        expect(least(more.promised.least_s)).toBeLessThanOrEqual(least(time.promised.least_s));
        expect(most(more.promised.most_s)).toBeLessThanOrEqual(most(time.promised.most_s));
        const { promised, between } = time;
        if (between.most_s !== "unknown")
          expect(between.most_s).toBeLessThanOrEqual(most(promised.most_s) * 1.000001);
        if (between.least_s !== "unknown") {
          expect(between.least_s).toBeGreaterThanOrEqual(least(promised.least_s) * 0.999999);
        }
      },
    ),
    { seed: 360, numRuns: 500 },
  );
});

test("a band in words", () => {
  expect(sayBand({ least_s: 0.15, most_s: 5 })).toBe("0.15 to 5 s");
  expect(sayBand({ least_s: 360_000, most_s: "unknown" })).toBe("at least 360000 s");
  expect(sayBand({ least_s: "unknown", most_s: 0.1 })).toBe("at most 0.1 s");
  expect(sayBand({ least_s: "unknown", most_s: "unknown" })).toBe("not known");
});

test("let-through: current squared times the slowest time, level beyond the table", () => {
  expect(letThrough(ten, 20)).toMatchObject({ value: 20 ** 2 * 5, unit: "A²s" });
  expect(letThrough(ten, 60)).toMatchObject({ value: 60 ** 2 * 0.1 });
  const far = letThrough(ten, 400);
  expect(far).toMatchObject({ value: 60 ** 2 * 0.1, doubt: expect.stringContaining("the arc is left out") });
  const idle = letThrough(ten, 9);
  expect(isKnown(idle)).toBe(false);
  expect(idle).toEqual({ unknown: "90 % of rating: the fuse need never open" });
});

test("refuses a current that is none", () => {
  expect(() => blowTime(ten, -1)).toThrow(RangeError);
  expect(() => blowTime(ten, Number.NaN)).toThrow(RangeError);
  expect(() => letThrough(ten, Number.NaN)).toThrow(RangeError);
});
