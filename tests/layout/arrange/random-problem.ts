import fc from "fast-check";
import type { ArrangeBlock, ArrangeProblem } from "../../../src/layout/arrange/types.ts";

const side = fc.constantFrom("left" as const, "right" as const);

/** A block of any column, facing any way, off the grid in size, sometimes pinned. */
function randomBlock(index: number): fc.Arbitrary<ArrangeBlock> {
  return fc
    .record({
      width: fc.integer({ min: 24, max: 360 }),
      height: fc.integer({ min: 24, max: 400 }),
      sides: fc.array(side, { minLength: 1, maxLength: 6 }),
      column: fc.constantFrom(
        "vehicle" as const,
        "between" as const,
        "between" as const,
        "equipment" as const,
      ),
      pinned: fc.option(
        fc.record({ x: fc.integer({ min: -900, max: 900 }), y: fc.integer({ min: -900, max: 900 }) }),
        { freq: 3 },
      ),
      stub: fc.record({ left: fc.integer({ min: 0, max: 120 }), right: fc.integer({ min: 0, max: 120 }) }),
      mayTurn: fc.boolean(),
    })
    .map(({ sides, ...rest }) => ({
      ...rest,
      id: `block ${index}`,
      ports: sides.map((face, at) => ({
        contact: at + 1,
        x: face === "left" ? 0 : rest.width,
        y: Math.round(((at + 1) * rest.height) / (sides.length + 1)),
        side: face,
      })),
    }));
}

/** Up to 24 blocks, wired at random: cycles, wires within a column, several wires on one contact, parts with none. */
export function randomProblem(): fc.Arbitrary<ArrangeProblem> {
  return fc
    .integer({ min: 1, max: 24 })
    .chain((count) =>
      fc.record({
        blocks: fc.tuple(...Array.from({ length: count }, (_, index) => randomBlock(index))),
        pairs: fc.array(fc.tuple(fc.nat(count - 1), fc.nat(5), fc.nat(count - 1), fc.nat(5)), {
          maxLength: 40,
        }),
      }),
    )
    .map(({ blocks, pairs }) => ({
      blocks,
      wires: pairs.map(([a, m, b, n], index) => ({
        id: `wire ${index}`,
        from: { block: `block ${a}`, contact: (m % blocks[a]!.ports.length) + 1 },
        to: { block: `block ${b}`, contact: (n % blocks[b]!.ports.length) + 1 },
      })),
    }));
}
