import fc from "fast-check";
import { expect, test } from "vitest";
import { type Circuit, type CircuitElement, nodesOf } from "../../../src/electrical/solve/circuit.ts";
import { prepare } from "../../../src/electrical/solve/prepare.ts";
import { type Solution, solve, solvePrepared, wattsOf } from "../../../src/electrical/solve/solve.ts";
import { powerLoad } from "./elements.ts";
import { randomCircuit, type Wish } from "./random-circuit.ts";

const RUNS = { numRuns: 80, seed: 60617 };
const anyCircuit = (wish: Partial<Wish> = {}) =>
  fc
    .record({
      seed: fc.integer(),
      wires: fc.integer({ min: 1, max: 80 }),
      nonlinear: fc.boolean(),
      ideal: fc.boolean(),
    })
    .map(({ seed, ...of }) => randomCircuit(seed, { ...of, ...wish }));

const isSource = ({ kind }: CircuitElement) => kind === "supply" || kind === "output";

/** Amperes that leave each node, and the sum of their sizes. */
function balance(circuit: Circuit, { amps }: Solution): { left: Float64Array; passed: Float64Array } {
  const left = new Float64Array(circuit.nodeCount);
  const passed = new Float64Array(circuit.nodeCount);
  circuit.elements.forEach((element, index) => {
    const through = isSource(element) ? -amps[index]! : amps[index]!;
    const [a, b] = nodesOf(element);
    left[a]! += through;
    left[b]! -= through;
    passed[a]! += Math.abs(through);
    passed[b]! += Math.abs(through);
  });
  return { left, passed };
}

test("what flows into a node flows out of it", () => {
  fc.assert(
    fc.property(anyCircuit(), (circuit) => {
      const { left, passed } = balance(circuit, solve(circuit));
      const most = Math.max(...passed);
      // A wire of half a milliohm at 12 V rounds at 5 pA.
      const astray = left.findIndex(
        (amps, node) => !(Math.abs(amps) <= 1e-9 * passed[node]! + 1e-12 * most + 1e-11),
      );
      expect(astray).toBe(-1);
    }),
    RUNS,
  );
});

test("supplies deliver what everything else takes up, to a thousand-millionth", () => {
  fc.assert(
    fc.property(anyCircuit(), (circuit) => {
      const watts = wattsOf(circuit, solve(circuit));
      const supplied = watts.filter((_, index) => circuit.elements[index]!.kind === "supply");
      const taken = watts.filter((_, index) => circuit.elements[index]!.kind !== "supply");
      const sum = (of: Float64Array) => of.reduce((total, value) => total + value, 0);
      const turnedOver = watts.reduce((total, value) => total + Math.abs(value), 0);
      expect(Math.abs(sum(supplied) + sum(taken))).toBeLessThanOrEqual(1e-9 * turnedOver);
    }),
    RUNS,
  );
});

test("every figure is a number, and the same again", () => {
  fc.assert(
    fc.property(anyCircuit(), (circuit) => {
      const solution = solve(circuit);
      expect([...solution.volts, ...solution.amps].every(Number.isFinite)).toBe(true);
      expect(solution.warnings.map(({ kind }) => kind)).not.toContain("not-settled");
      expect(solve(circuit)).toEqual(solution);
    }),
    RUNS,
  );
});

test("elements obey their own laws", () => {
  fc.assert(
    fc.property(anyCircuit(), (circuit) => {
      const { volts, amps } = solve(circuit);
      circuit.elements.forEach((element, index) => {
        const [a, b] = nodesOf(element);
        const across = volts[a]! - volts[b]!;
        if (element.kind === "resistance")
          expect(amps[index]! * element.resistance_ohm).toBeCloseTo(across, 9);
        if (element.kind === "supply")
          expect(element.emf_V - amps[index]! * element.resistance_ohm).toBeCloseTo(across, 9);
        if (element.kind === "power-load" && across >= element.minimum_V)
          expect(across * amps[index]!).toBeCloseTo(element.power_W, 8);
        if (element.kind === "lamp" && element.filament === "hot" && across > 1)
          expect(amps[index]! / (element.rated_W / element.rated_V)).toBeCloseTo((across / 12) ** 0.55, 9);
        if (element.kind === "output") expect(amps[index]).toBeLessThanOrEqual(element.limit_A * 1.001);
        if (element.kind === "switch" && !element.closed) expect(amps[index]).toBe(0);
      });
    }),
    RUNS,
  );
});

test("of linear circuits, the supplies' effects add up", () => {
  fc.assert(
    fc.property(anyCircuit({ nonlinear: false }), (circuit) => {
      const both = solve(circuit);
      const summed = new Float64Array(circuit.nodeCount);
      circuit.elements.forEach((one, index) => {
        if (one.kind !== "supply") return;
        const elements = circuit.elements.map((element, other) => {
          if (element.kind === "supply" && other !== index) return { ...element, emf_V: 0 };
          // Relays are held as they are: the sum is of one state of theirs.
          return element.kind === "coil" ? { ...element, pullIn_V: 1e9, dropOut_V: 0 } : element;
        });
        const { volts } = solve({ ...circuit, elements }, { pulled: both.pulled });
        for (let node = 0; node < volts.length; node++) summed[node]! += volts[node]!;
      });
      summed.forEach((volts, node) => {
        expect(volts).toBeCloseTo(both.volts[node]!, 8);
      });
    }),
    { ...RUNS, numRuns: 40 },
  );
});

const passive = anyCircuit({ passive: true, ideal: false });
const within = (amount: number): number => amount + 1e-9;

test("on a passive feed, a load more raises no other's voltage", () => {
  const wide = fc.tuple(passive, fc.nat(), fc.double({ min: 0.1, max: 60, noNaN: true }));
  fc.assert(
    fc.property(wide, ([circuit, where, power_W]) => {
      // All return to the frame. Over a shared ground lead one load's sag lets another's return sink, and it can gain.
      const elements = circuit.elements.map((element): CircuitElement => {
        const isLoad =
          element.kind === "lamp" || element.kind === "power-load" || element.kind === "current-load";
        return isLoad ? { ...element, to: 0 } : element;
      });
      const more = [...elements, powerLoad(1 + (where % (circuit.nodeCount - 1)), 0, power_W)];
      const [before, after] = [solve({ ...circuit, elements }), solve({ ...circuit, elements: more })];
      const raised = after.volts.findIndex((volts, node) => volts > within(before.volts[node]!));
      expect(raised).toBe(-1);
    }),
    RUNS,
  );
});

test("on a passive feed, a thicker wire never drops more between battery and loads of constant current", () => {
  const choice = fc.tuple(passive, fc.nat(), fc.double({ min: 0.05, max: 0.95, noNaN: true }));
  fc.assert(
    fc.property(choice, ([circuit, which, share]) => {
      const wires = circuit.elements.flatMap((element, index) =>
        element.kind === "resistance" && element.resistance_ohm < 0.5 ? [index] : [],
      );
      if (wires.length === 0) return;
      const chosen = wires[which % wires.length]!;
      // What each load draws is fixed, so that only the wire's own drop can change.
      const fixed = circuit.elements.map((element): CircuitElement => {
        const isLoad =
          element.kind === "lamp" || element.kind === "power-load" || element.kind === "current-load";
        if (!isLoad) return element;
        return { kind: "current-load", from: element.from, to: element.to, amps: 0.5, minimum_V: 0.001 };
      });
      const thick = fixed.map((element, index) =>
        index === chosen && element.kind === "resistance"
          ? { ...element, resistance_ohm: element.resistance_ohm * share }
          : element,
      );
      const [from, to] = nodesOf(fixed[chosen]!);
      const drop = ({ volts }: Solution) => Math.abs(volts[from]! - volts[to]!);
      const [thin, wide] = [solve({ ...circuit, elements: fixed }), solve({ ...circuit, elements: thick })];
      expect(drop(wide)).toBeLessThanOrEqual(within(drop(thin)));
    }),
    RUNS,
  );
});

test("a prepared circuit gives the same bits for other values as a fresh one, from whatever start", () => {
  const change = fc.tuple(
    anyCircuit({ ideal: false }),
    fc.nat(),
    fc.double({ min: 0.2, max: 5, noNaN: true }),
  );
  fc.assert(
    fc.property(change, ([circuit, which, factor]) => {
      const prepared = prepare(circuit);
      const first = solvePrepared(prepared, circuit);
      const changed = circuit.elements.map((element, index) => {
        if (index !== which % circuit.elements.length) return element;
        if (element.kind === "switch") return { ...element, closed: !element.closed };
        return "resistance_ohm" in element
          ? { ...element, resistance_ohm: element.resistance_ohm * factor }
          : element;
      });
      const next = { ...circuit, elements: changed };
      expect(solvePrepared(prepared, next)).toEqual(solve(next));
      const warm = solvePrepared(prepared, next, { volts: first.volts });
      const cold = solve(next);
      const apart = warm.volts.map((volts, node) => Math.abs(volts - cold.volts[node]!));
      expect(Math.max(...apart)).toBeLessThan(1e-8);
    }),
    RUNS,
  );
});
