import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkFault, kFactor } from "../../../src/electrical/fuse/adiabatic.ts";
import { BLADES, type Blade, blade } from "../../../src/electrical/fuse/blade.ts";
import { blowTime } from "../../../src/electrical/fuse/blow-time.ts";
import { coordinate } from "../../../src/electrical/fuse/coordination.ts";
import { prospectiveCurrent } from "../../../src/electrical/fuse/short-circuit.ts";

const every: readonly Blade[] = Object.values(BLADES).flat();
const thin = { area_mm2: 0.5, material: "copper", insulation: "pvc", start_degC: 70 } as const;

describe("does the fuse open before the wire is too hot", () => {
  // 0.5 mm² PVC: (115 × 0.5)² = 3 306 A²s. A 10 A blade at 60 A: 60² × 0.1 s = 360 A²s.
  test("a 10 A blade saves 0.5 mm²", () => {
    const check = checkFault(blade("regular", 10)!, 60, thin);
    expect(check).toMatchObject({ verdict: "clears", passes: { value: 360 } });
    expect(check.bears.value).toBeCloseTo(3306, -1);
    expect(check.why).toMatch(/at most 360 A²s pass before the fuse opens; the wire bears 33\d\d A²s/);
  });

  // A 40 A maxi at 240 A holds at least 0.04 s: 2 304 A²s, above the 529 A²s of 0.2 mm².
  test("a 40 A maxi blade burns a hair-thin wire even at its fastest", () => {
    const check = checkFault(blade("maxi", 40)!, 240, { ...thin, area_mm2: 0.2 });
    expect(check.verdict).toBe("overheats");
    expect(check.why).toContain("even the fastest fuse lets 2304 A²s pass");
  });

  test("where a slow fuse might not save the wire, nothing is proven", () => {
    const check = checkFault(blade("maxi", 40)!, 240, { ...thin, area_mm2: 1.5 });
    expect(check).toMatchObject({ verdict: "not proven", passes: { value: 240 ** 2 } });
  });

  test("a fault too small to open the fuse proves nothing, and names no energy", () => {
    const check = checkFault(blade("regular", 30)!, 30, thin);
    expect(check).toMatchObject({ verdict: "not proven", passes: null });
    expect(check.why).toContain("need never open");
  });

  test("cross-linked insulation and a cool start bear more; clad aluminium less", () => {
    const bears = (change: object) => checkFault(blade("mini", 10)!, 60, { ...thin, ...change }).bears.value;
    expect(bears({ insulation: "xlpe" })).toBeGreaterThan(bears({}));
    expect(bears({ start_degC: 30 })).toBeGreaterThan(bears({}));
    expect(bears({ material: "cca-15" })).toBeLessThan(bears({}) / 2);
  });

  test("what a fuse saves it saves in thicker wire too", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...every),
        fc.double({ min: 1, max: 900, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (fuse, fault_A, area_mm2) => {
          const check = checkFault(fuse, fault_A, { ...thin, area_mm2 });
          const thicker = checkFault(fuse, fault_A, { ...thin, area_mm2: area_mm2 * 1.5 });
          if (check.verdict === "clears") expect(thicker.verdict).toBe("clears");
          if (thicker.verdict === "overheats") expect(check.verdict).toBe("overheats");
        },
      ),
      { seed: 60364, numRuns: 300 },
    );
  });

  test("refusals", () => {
    const fuse = blade("mini", 10)!;
    expect(() => kFactor("copper", "pvc", 160)).toThrow(RangeError);
    expect(() => kFactor("copper", "xlpe", Number.NaN)).toThrow(RangeError);
    expect(() => checkFault(fuse, Number.NaN, thin)).toThrow(RangeError);
    expect(() => checkFault(fuse, 50, { ...thin, area_mm2: 0 })).toThrow(RangeError);
  });
});

describe("prospective current", () => {
  test("is the volts over everything in the loop", () => {
    const figure = prospectiveCurrent(12.6, 0.01, 0.05);
    expect(figure.value).toBeCloseTo(210, 9);
    expect(figure.formula).toBe("I = U / (R source + R loop) = 12.6 V / (10 mΩ + 50 mΩ) = 210 A");
  });

  test("cannot be named without any resistance", () => {
    expect(() => prospectiveCurrent(12, 0, 0)).toThrow(RangeError);
    expect(() => prospectiveCurrent(12, -0.01, 1)).toThrow(RangeError);
    expect(() => prospectiveCurrent(Number.NaN, 0.01, 1)).toThrow(RangeError);
  });
});

describe("two fuses in series", () => {
  const small = blade("mini", 5)!;
  const maxi = blade("maxi", 60)!;

  test("a 5 A mini below a 60 A maxi opens alone", () => {
    const order = coordinate(maxi, small, 600);
    expect(order).toMatchObject({ verdict: "selective", why: "the 5 A mini blade opens alone up to 600 A" });
    expect(order.stretches).toEqual([
      { from_A: 0, to_A: 5.5, opens: "neither" },
      { from_A: 5.5, to_A: 600, opens: "lower" },
    ]);
    expect(order.doubt).toContain("I²t is taken as constant");
  });

  test("the other way about the upper opens first, and it says where", () => {
    const order = coordinate(small, maxi, 600);
    expect(order.verdict).toBe("not selective");
    expect(order.why).toContain("the 5 A mini blade opens first");
  });

  test("two of one kind are not told apart by their tables", () => {
    const order = coordinate(blade("regular", 15)!, blade("regular", 10)!, 300);
    expect(order.verdict).toBe("not proven");
    expect(order.stretches.some(({ opens }) => opens === "either")).toBe(true);
  });

  test("above what blades can break nothing is known", () => {
    const order = coordinate(maxi, small, 1500);
    expect(order.stretches.at(-1)).toEqual({ from_A: 1000, to_A: 1500, opens: "not known" });
  });

  test("the stretches join from 0 to the largest current, and hold at every current between", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...every),
        fc.constantFrom(...every),
        fc.double({ min: 1, max: 1500, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (upper, lower, largest_A, share) => {
          const { stretches } = coordinate(upper, lower, largest_A);
          expect(stretches[0]!.from_A).toBe(0);
          expect(stretches.at(-1)!.to_A).toBe(largest_A);
          stretches.slice(1).forEach((stretch, index) => {
            expect(stretch.from_A).toBe(stretches[index]!.to_A);
            expect(stretch.opens).not.toBe(stretches[index]!.opens);
          });
          const at_A = largest_A * share;
          const here = stretches.find(({ from_A, to_A }) => from_A < at_A && at_A < to_A);
          const [up, low] = [upper, lower].map((fuse) => blowTime(fuse, at_A).promised);
          // Nothing the tables themselves settle is told otherwise.
          const settled = low!.most_s !== "unknown" && up!.least_s !== "unknown" && low!.most_s < up!.least_s;
          if (here && settled && upper.rating_A * 3 > at_A) expect(here.opens).not.toBe("upper");
          if (here?.opens === "neither") expect([up!.least_s, low!.least_s]).toEqual([360_000, 360_000]);
        },
      ),
      { seed: 46, numRuns: 300 },
    );
  });

  test("refuses a largest current that is none", () => {
    expect(() => coordinate(maxi, small, 0)).toThrow(RangeError);
    expect(() => coordinate(maxi, small, Number.NaN)).toThrow(RangeError);
  });
});
