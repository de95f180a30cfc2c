import { describe, expect, test } from "vitest";
import { isKnown } from "../../src/electrical/figure.ts";
import { blade } from "../../src/electrical/fuse/blade.ts";
import { blowTime } from "../../src/electrical/fuse/blow-time.ts";
import { letThrough } from "../../src/electrical/fuse/let-through.ts";

// Source: makers' datasheets naming ISO 8820-3: opening time in seconds, least and most, by per cent of rating.
describe("opening times", () => {
  test.each([
    ["regular", 10, 160, 0.25, 50],
    ["regular", 10, 200, 0.15, 5],
    ["mini", 10, 135, 0.75, 600],
    ["regular", 40, 135, 0.75, 600],
    ["regular", 40, 200, 0.15, 5],
    ["regular", 40, 350, 0.08, 0.5],
    ["maxi", 40, 135, 60, 1800],
    ["maxi", 40, 200, 2, 50],
    ["maxi", 40, 350, 0.2, 7],
    ["maxi", 40, 600, 0.04, 1],
  ] as const)("%s %i A at %i %%: %f to %f s", (form, rating_A, percent, least_s, most_s) => {
    const time = blowTime(blade(form, rating_A)!, (rating_A * percent) / 100);
    expect(time.promised).toEqual({ least_s, most_s });
    expect(time.between).toEqual({ least_s, most_s });
  });

  test.each([
    ["mini", 10, 110],
    ["regular", 40, 100],
    ["maxi", 40, 100],
  ] as const)("%s %i A at %i %% holds 100 hours", (form, rating_A, percent) => {
    const time = blowTime(blade(form, rating_A)!, (rating_A * percent) / 100);
    expect(time.promised).toEqual({ least_s: 360_000, most_s: "unknown" });
  });

  // Source: the same table: 180 % lies between the points of 160 % (0.25 to 50 s) and 200 % (0.15 to 5 s).
  test("a 10 A blade at 18 A may take up to 50 s, and no time between is promised", () => {
    const { promised, between } = blowTime(blade("regular", 10)!, 18);
    expect(promised).toEqual({ least_s: 0.15, most_s: 50 });
    expect(between.most_s).toBeGreaterThan(5);
    expect(between.most_s).toBeLessThan(50);
  });
});

// Source: makers' datasheets: typical I²t in A²s. What we reckon a fuse may let pass must never be less.
test.each([
  ["regular", 40, 3300],
  ["maxi", 30, 4100],
  ["maxi", 40, 8500],
] as const)(
  "the %s %i A blade's printed I²t of %i A²s is within what is reckoned",
  (form, rating_A, printed) => {
    const passed = letThrough(blade(form, rating_A)!, 900);
    expect(isKnown(passed) && passed.value).toBeGreaterThan(printed);
  },
);
