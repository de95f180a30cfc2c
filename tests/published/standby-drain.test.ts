import { expect, test } from "vitest";
import { isKnown } from "../../src/electrical/figure.ts";
import { daysToCharge } from "../../src/electrical/standby/drain.ts";

function days(capacity_Ah: number, usable_percent: number, drain_mA: number, self = 0): number {
  const state = { capacity_Ah, from_percent: 100, to_percent: 100 - usable_percent };
  const answer = daysToCharge({ ...state, selfDischarge_percentPerMonth: self }, drain_mA);
  if (!isKnown(answer)) throw new Error(answer.unknown);
  return answer.value;
}

// Source: capacity over current, ampere-hours × share × 1 000 / mA / 24.
test.each([
  [45, 40, 20, 37.5],
  [60, 40, 50, 20],
  [60, 50, 30, 41.67],
  [70, 40, 75, 15.56],
  [70, 40, 1000, 1.17],
])("%i Ah, %i %% usable, %i mA: %f days", (capacity, usable, drain, published) => {
  expect(days(capacity, usable, drain)).toBeCloseTo(published, 2);
});

// Source: Lessons In Electric Circuits, DC volume ch. 11: 70 Ah last 20 h at 3.5 A, and just under 8 years at 1 mA.
test("70 ampere-hours", () => {
  expect(days(70, 100, 3500) * 24).toBeCloseTo(20, 9);
  expect(days(70, 100, 1) / 365.25).toBeCloseTo(7.985, 2);
});

// Source: a battery guide: lead-acid loses 5 % a month; on 60 Ah that is 4.11 mA over a mean month (4.17 over 30 days).
test("self-discharge alone empties 5 % of a battery in a month", () => {
  expect(days(60, 5, 0, 5)).toBeCloseTo(365.25 / 12, 9);
});
