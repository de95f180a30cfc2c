import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LEAST_SCALE, LEAST_TEXT_pt, OVERLAP, planDiagram, textSize_pt } from "../../src/sheets/tiling.ts";

const side = fc.integer({ min: 1, max: 20_000 });
const problem = fc.record({
  drawing: fc.record({
    x: fc.integer({ min: -5000, max: 5000 }),
    y: fc.integer({ min: -5000, max: 5000 }),
    width: side,
    height: side,
  }),
  area: fc.record({
    width: fc.integer({ min: 500, max: 2000 }),
    height: fc.integer({ min: 300, max: 2000 }),
  }),
  fit: fc.constantFrom("one-page" as const, "tiles" as const),
});
const near = 1e-6;

describe("planDiagram", () => {
  test("tiles cover the whole drawing, neighbours overlap by 10 mm, and no text is under 6 points", () => {
    fc.assert(
      fc.property(problem, ({ drawing, area, fit }) => {
        const plan = planDiagram(drawing, area, fit);
        expect(plan.text_pt).toBeGreaterThanOrEqual(LEAST_TEXT_pt - near);
        expect(plan.tiles).toHaveLength(plan.rows * plan.columns);
        const at = (row: number, column: number) => plan.tiles[row * plan.columns + column]!.window;
        const [first, last] = [at(0, 0), at(plan.rows - 1, plan.columns - 1)];
        expect(first.x).toBeLessThanOrEqual(drawing.x + near);
        expect(first.y).toBeLessThanOrEqual(drawing.y + near);
        expect(last.x + last.width).toBeGreaterThanOrEqual(drawing.x + drawing.width - near);
        expect(last.y + last.height).toBeGreaterThanOrEqual(drawing.y + drawing.height - near);
        for (const { row, column, window } of plan.tiles) {
          expect(window.width * plan.scale).toBeCloseTo(area.width, 6);
          expect(window.height * plan.scale).toBeCloseTo(area.height, 6);
          if (column > 0) {
            const left = at(row, column - 1);
            expect((left.x + left.width - window.x) * plan.scale).toBeCloseTo(OVERLAP, 6);
          }
          if (row > 0) {
            const above = at(row - 1, column);
            expect((above.y + above.height - window.y) * plan.scale).toBeCloseTo(OVERLAP, 6);
          }
        }
      }),
      { seed: 5, numRuns: 400 },
    );
  });

  test("one page stays one page exactly as long as its text can be read", () => {
    fc.assert(
      fc.property(problem, ({ drawing, area }) => {
        const plan = planDiagram(drawing, area, "one-page");
        expect(plan.tooSmall).toBe(plan.onePage_pt < LEAST_TEXT_pt - 1e-9);
        expect(plan.tiles.length === 1 || plan.tooSmall).toBe(true);
        if (!plan.tooSmall) expect(plan.text_pt).toBe(plan.onePage_pt);
      }),
      { seed: 6, numRuns: 400 },
    );
  });

  test("11.5 units at scale 1:1 are 8.15 points", () => {
    // 11.5 × 0.25 mm = 2.875 mm; a point is 25.4 / 72 mm.
    expect(textSize_pt(1)).toBeCloseTo(8.15, 3);
    expect(LEAST_SCALE).toBeCloseTo(0.7362, 4);
  });

  test("tiles shift so that a part is not cut where they have room to", () => {
    const drawing = { x: 0, y: 0, width: 900, height: 1000 };
    const area = { width: 900, height: 600 };
    // At scale 1 the first tile ends at 600; this part lies across it.
    const part = { x: 0, y: 420, width: 200, height: 165 };
    const whole = (parts: { x: number; y: number; width: number; height: number }[]) =>
      planDiagram(drawing, area, "tiles", parts).tiles.some(
        ({ window }) => window.y <= part.y && window.y + window.height >= part.y + part.height,
      );
    const cut = { x: 0, y: 500, width: 200, height: 165 };
    const plan = planDiagram(drawing, area, "tiles", [cut]);
    expect(plan.rows).toBe(2);
    expect(
      plan.tiles.some(({ window }) => window.y <= cut.y && window.y + window.height >= cut.y + cut.height),
    ).toBe(true);
    expect(whole([part])).toBe(true);
  });
});
