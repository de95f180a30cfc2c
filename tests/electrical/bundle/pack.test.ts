import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bundleDiameter, ruleOfThumb } from "../../../src/electrical/bundle/bundle-diameter.ts";
import { type Packing, packCircles } from "../../../src/electrical/bundle/pack/pack.ts";
import { seeded } from "../../../src/electrical/bundle/pack/random.ts";
import { isKnown } from "../../../src/electrical/figure.ts";

const WIRES_mm = [1.2, 1.4, 1.7, 1.9, 2.1, 2.4, 3, 3.7, 4.3, 6, 11.4];

/** Deepest overlap of two circles, and the furthest that one reaches over the edge; 0 or less in a true packing. */
function faults({ diameter_mm, places }: Packing): { overlap_mm: number; over_mm: number } {
  let overlap_mm = Number.NEGATIVE_INFINITY;
  let over_mm = Number.NEGATIVE_INFINITY;
  places.forEach((one, i) => {
    over_mm = Math.max(over_mm, Math.hypot(one.x_mm, one.y_mm) + one.diameter_mm / 2 - diameter_mm / 2);
    for (const other of places.slice(0, i)) {
      const apart_mm = Math.hypot(one.x_mm - other.x_mm, one.y_mm - other.y_mm);
      overlap_mm = Math.max(overlap_mm, (one.diameter_mm + other.diameter_mm) / 2 - apart_mm);
    }
  });
  return { overlap_mm, over_mm };
}

function mix(count: number, seed: number): number[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => WIRES_mm[Math.floor(random() ** 2 * WIRES_mm.length)]!);
}

describe("packing", () => {
  test("nothing overlaps, nothing sticks out, and no smaller than can be", () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.constantFrom(...WIRES_mm), fc.double({ min: 0.5, max: 20, noNaN: true })), {
          minLength: 1,
          maxLength: 30,
        }),
        (diameters_mm) => {
          const packing = packCircles(diameters_mm);
          const { overlap_mm, over_mm } = faults(packing);
          expect(overlap_mm).toBeLessThan(1e-9);
          expect(over_mm).toBeLessThan(1e-9);
          expect(packing.places.map(({ diameter_mm }) => diameter_mm)).toEqual(diameters_mm);
          const [first = 0, second = 0] = [...diameters_mm].sort((a, b) => b - a);
          expect(packing.diameter_mm).toBeGreaterThanOrEqual(first + second - 1e-9);
          const area = diameters_mm.reduce((sum, diameter_mm) => sum + diameter_mm ** 2, 0);
          expect(packing.diameter_mm).toBeGreaterThanOrEqual(Math.sqrt(area) - 1e-9);
        },
      ),
      { seed: 37, numRuns: 60 },
    );
  });

  test.each([60, 61, 150, 300, 400, 401, 900])("%i wires of many sizes lie within 1.13 √Σd²", (count) => {
    const diameters_mm = mix(count, count);
    const packing = packCircles(diameters_mm);
    const { overlap_mm, over_mm } = faults(packing);
    expect(overlap_mm).toBeLessThan(1e-9);
    expect(over_mm).toBeLessThan(1e-9);
    const area = diameters_mm.reduce((sum, diameter_mm) => sum + diameter_mm ** 2, 0);
    // The trade's rule is 1.2; the best that any mix of few sizes reaches is about 1.05.
    expect(packing.diameter_mm / Math.sqrt(area)).toBeLessThan(1.13);
    expect(packing.diameter_mm / Math.sqrt(area)).toBeGreaterThan(1.03);
  });

  test("the order of the list does not matter, and the answer is always the same", () => {
    const diameters_mm = mix(25, 5);
    const { diameter_mm } = packCircles(diameters_mm);
    expect(packCircles([...diameters_mm].reverse()).diameter_mm).toBe(diameter_mm);
    expect(packCircles(diameters_mm)).toEqual(packCircles(diameters_mm));
  });

  test("twice as thick wires need twice the room", () => {
    const diameters_mm = mix(12, 9);
    const twice = packCircles(diameters_mm.map((one) => one * 2)).diameter_mm;
    expect(twice / packCircles(diameters_mm).diameter_mm).toBeCloseTo(2, 6);
  });

  test("thin wires find the gaps between thick ones", () => {
    // Six thin ones fit in the six gaps between one wire and its ring of six: not a hair more room.
    const ring = Array<number>(7).fill(6);
    expect(packCircles([...ring, ...Array<number>(6).fill(0.9)]).diameter_mm).toBeCloseTo(18, 3);
  });

  test("no wire, one wire", () => {
    expect(packCircles([])).toEqual({ diameter_mm: 0, places: [] });
    expect(packCircles([2.4])).toEqual({
      diameter_mm: 2.4,
      places: [{ index: 0, x_mm: 0, y_mm: 0, diameter_mm: 2.4 }],
    });
  });

  test.each([
    ["a diameter of 0", [1, 0]],
    ["a negative diameter", [-1]],
    ["no number", [Number.NaN]],
    ["an endless wire", [Number.POSITIVE_INFINITY]],
    ["too many", Array<number>(2001).fill(1)],
  ])("refuses %s", (_name, diameters_mm) => {
    expect(() => packCircles(diameters_mm)).toThrow(RangeError);
  });
});

describe("diameter of a bundle", () => {
  test("a few wires: the packing counts, for the rule is too small", () => {
    const { packed, rule, reckoned } = bundleDiameter([2, 2]);
    expect(isKnown(packed) && packed.value).toBeCloseTo(4, 9);
    expect(rule.value).toBeCloseTo(3.394, 3);
    expect(reckoned).toBe(packed);
    expect(isKnown(packed) && packed.formula).toBe("smallest circle found around 2 × 2 mm = 4 mm");
  });

  test("many wires: the rule counts, for hands lay looser than a search", () => {
    const { packed, rule, reckoned } = bundleDiameter(mix(80, 3));
    expect(reckoned).toBe(rule);
    expect(isKnown(packed) && packed.value).toBeLessThan(rule.value);
  });

  test("one wire is as thick as it is", () => {
    expect(bundleDiameter([2.4]).reckoned.value).toBe(2.4);
    expect(bundleDiameter([]).reckoned.value).toBe(0);
  });

  test("more wires than are packed: the rule stands alone, and says so", () => {
    const { packed, reckoned } = bundleDiameter(Array<number>(2001).fill(1));
    expect(isKnown(packed)).toBe(false);
    expect(reckoned.doubt).toContain("too many to pack");
  });

  test("refuses a wire of no thickness", () => {
    expect(() => ruleOfThumb([0])).toThrow(RangeError);
    expect(() => bundleDiameter([Number.NaN])).toThrow(RangeError);
  });
});
