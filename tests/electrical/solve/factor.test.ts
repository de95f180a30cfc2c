import fc from "fast-check";
import { Matrix, solve as solveDense } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { factorise, makeFactor, solveFactor } from "../../../src/electrical/solve/factor.ts";
import { orderByDegree, slotOf } from "../../../src/electrical/solve/order.ts";
import { Dice } from "../../graph/random.ts";

type Network = { readonly size: number; readonly ends: Int32Array; readonly siemens: readonly number[] };

function randomNetwork(seed: number): Network {
  const dice = new Dice(seed);
  const size = 1 + Math.floor(dice.next() * 60);
  const count = Math.floor(size * (1 + dice.next() * 6));
  const ends = Int32Array.from({ length: count * 2 }, () => Math.floor(dice.next() * size));
  return { size, ends, siemens: Array.from({ length: count }, () => 10 ** (dice.next() * 4 - 2)) };
}

test("sparse elimination gives what a dense solver gives, on trees and on meshes", () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const { size, ends, siemens } = randomNetwork(seed);
      const pattern = orderByDegree(size, ends);
      expect([...pattern.place].sort((a, b) => a - b)).toEqual(Array.from({ length: size }, (_, at) => at));
      const factor = makeFactor(pattern);
      const dense = Matrix.zeros(size, size);
      const add = (row: number, column: number, value: number) =>
        dense.set(row, column, dense.get(row, column) + value);
      siemens.forEach((value, index) => {
        const [a, b] = [ends[index * 2]!, ends[index * 2 + 1]!];
        if (a === b) return;
        factor.joined_S[slotOf(pattern, a, b)]! += value;
        add(a, a, value);
        add(b, b, value);
        add(a, b, -value);
        add(b, a, -value);
      });
      for (let unknown = 0; unknown < size; unknown++) {
        factor.held_S[pattern.place[unknown]!] = 0.1;
        add(unknown, unknown, 0.1);
      }
      expect(factorise(factor)).toBe(true);
      const amps = Float64Array.from({ length: size }, (_, at) => Math.sin(at + 1));
      const volts = new Float64Array(size);
      solveFactor(factor, amps, volts);
      const expected = solveDense(dense, Matrix.columnVector([...amps])).to1DArray();
      const apart = volts.map((value, at) => Math.abs(value - expected[at]!));
      expect(Math.max(...apart)).toBeLessThan(1e-9);
    }),
    { numRuns: 200, seed: 31 },
  );
});

describe("the order of elimination", () => {
  const entriesOf = (size: number, pairs: readonly (readonly [number, number])[]) =>
    orderByDegree(size, Int32Array.from(pairs.flat())).rows.length;

  test("of a tree brings no new entry, whatever its shape", () => {
    const line = Array.from({ length: 999 }, (_, at) => [at, at + 1] as const);
    const star = Array.from({ length: 999 }, (_, at) => [0, at + 1] as const);
    const dice = new Dice(5);
    const tree = Array.from(
      { length: 999 },
      (_, at) => [Math.floor(dice.next() * (at + 1)), at + 1] as const,
    );
    expect([line, star, tree].map((pairs) => entriesOf(1000, pairs))).toEqual([999, 999, 999]);
  });

  test("of a ring brings one entry for each node but the last three", () => {
    const ring = Array.from({ length: 100 }, (_, at) => [at, (at + 1) % 100] as const);
    expect(entriesOf(100, ring)).toBe(99 + 98);
  });

  test("of chains between two rails costs a handful a chain", () => {
    const pairs = Array.from({ length: 1000 }, (_, at) => [
      [0, 2 + 2 * at],
      [2 + 2 * at, 3 + 2 * at],
      [3 + 2 * at, 1],
    ]).flat() as [number, number][];
    expect(entriesOf(2002, pairs)).toBeLessThanOrEqual(4 * 1000 + 1);
  });

  test("of a full mesh has every pair once", () => {
    const pairs: [number, number][] = [];
    for (let one = 0; one < 40; one++) for (let other = 0; other < one; other++) pairs.push([one, other]);
    expect(entriesOf(40, pairs)).toBe((40 * 39) / 2);
  });
});

test("milliohms beside megohms cost no digits", () => {
  // A line of 1 µS to the reference at one end, 1 MS between all the rest: 1 µA in lifts all by 1 V.
  const size = 200;
  const pattern = orderByDegree(
    size,
    Int32Array.from(Array.from({ length: size - 1 }, (_, at) => [at, at + 1]).flat()),
  );
  const factor = makeFactor(pattern);
  factor.joined_S.fill(1e6);
  factor.held_S[pattern.place[0]!] = 1e-6;
  expect(factorise(factor)).toBe(true);
  const amps = new Float64Array(size);
  amps[size - 1] = 1e-6;
  const volts = new Float64Array(size);
  solveFactor(factor, amps, volts);
  expect(Math.max(...volts.map((value) => Math.abs(value - 1)))).toBeLessThan(1e-9);
});

test("a matrix that is not positive definite is told", () => {
  const pattern = orderByDegree(2, Int32Array.of(0, 1));
  const factor = makeFactor(pattern);
  factor.joined_S.fill(-1);
  factor.held_S.fill(0.5);
  expect(factorise(factor)).toBe(false);
});
