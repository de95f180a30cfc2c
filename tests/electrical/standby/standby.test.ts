import fc from "fast-check";
import { expect, test } from "vitest";
import { isKnown } from "../../../src/electrical/figure.ts";
import { daysToCharge, totalDrain } from "../../../src/electrical/standby/drain.ts";
import {
  STANDBY_LIMITS,
  USUAL_STANDBY_LIMIT,
  withinStandby,
} from "../../../src/electrical/standby/limits.ts";
import { turnOnCheck } from "../../../src/electrical/standby/turn-on.ts";

const battery = { capacity_Ah: 60, from_percent: 100, to_percent: 60, selfDischarge_percentPerMonth: 0 };

test("the total names its parts, the largest first", () => {
  const total = totalDrain([
    { name: "A1 radio", drain_mA: 3 },
    { name: "A2 amplifier", drain_mA: 18 },
  ]);
  expect(total).toMatchObject({
    value: 21,
    unit: "mA",
    formula: "18 mA A2 amplifier + 3 mA A1 radio = 21 mA",
  });
  expect(totalDrain([])).toMatchObject({ value: 0, formula: "nothing draws = 0 mA" });
  expect(() => totalDrain([{ name: "A1", drain_mA: -1 }])).toThrow(RangeError);
  expect(() => totalDrain([{ name: "A1", drain_mA: Number.NaN }])).toThrow(/drain of A1/);
});

test("days to a state of charge, with the sum in words", () => {
  const answer = daysToCharge(battery, 50);
  expect(answer).toMatchObject({ value: 20, unit: "days" });
  expect(isKnown(answer) && answer.formula).toBe("60 Ah × (100 − 60) % / (50 mA) / 24 h = 20 days");
  const withSelf = daysToCharge({ ...battery, selfDischarge_percentPerMonth: 5 }, 50);
  expect(isKnown(withSelf) && withSelf.value).toBeLessThan(19);
  expect(isKnown(withSelf) && withSelf.doubt).toContain("4 to 6 % a month");
});

test("nothing drains it: unknown, not for ever", () => {
  expect(daysToCharge(battery, 0)).toEqual({ unknown: "nothing drains the battery" });
});

test("twice the battery or half the drain lasts twice as long", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 300, noNaN: true }),
      fc.double({ min: 1, max: 5000, noNaN: true }),
      (capacity_Ah, drain_mA) => {
        const days = (Ah: number, mA: number) => {
          const answer = daysToCharge({ ...battery, capacity_Ah: Ah }, mA);
          return isKnown(answer) ? answer.value : Number.NaN;
        };
        const once = days(capacity_Ah, drain_mA);
        expect(days(capacity_Ah * 2, drain_mA) / once).toBeCloseTo(2, 9);
        expect(days(capacity_Ah, drain_mA / 2) / once).toBeCloseTo(2, 9);
      },
    ),
    { seed: 7, numRuns: 100 },
  );
});

test("limits differ by who is asked, and each names its source", () => {
  expect(STANDBY_LIMITS.map((limit) => withinStandby(40, limit))).toEqual([false, false, true, true]);
  expect(withinStandby(50, USUAL_STANDBY_LIMIT)).toBe(true);
  expect(STANDBY_LIMITS.every(({ source }) => source !== "")).toBe(true);
});

test("a turn-on lead over its rating is to pull a relay", () => {
  const loads = [
    { name: "A2 amplifier", load_mA: 20 },
    { name: "K1 relay coil", load_mA: 140 },
  ];
  expect(turnOnCheck(loads, 300)).toMatchObject({
    within: true,
    total: { value: 160 },
    why: "160 mA of 300 mA",
  });
  const over = turnOnCheck(loads, 150);
  expect(over.within).toBe(false);
  expect(over.percentOfRating.value).toBeCloseTo(106.67, 2);
  expect(over.why).toContain("let it pull a relay");
  expect(turnOnCheck([], 300)).toMatchObject({ within: true, total: { value: 0 } });
});

test.each([
  ["a battery of 0 Ah", () => daysToCharge({ ...battery, capacity_Ah: 0 }, 50)],
  ["an end above the start", () => daysToCharge({ ...battery, from_percent: 50 }, 50)],
  ["a start above 100 %", () => daysToCharge({ ...battery, from_percent: 101 }, 50)],
  ["no drain", () => daysToCharge(battery, Number.NaN)],
  ["a limit asked of nothing", () => withinStandby(Number.NaN, USUAL_STANDBY_LIMIT)],
  ["a rating of 0", () => turnOnCheck([], 0)],
  ["a negative load", () => turnOnCheck([{ name: "A", load_mA: -1 }], 300)],
])("refuses %s", (_name, run) => {
  expect(run).toThrow(RangeError);
});
