import { describe, expect, test } from "vitest";
import { operate } from "../../../src/electrical/operate/operate.ts";
import type { Harness, Part, PartId, Wire, WireId } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";
import { Build } from "../../build.ts";
import { RUN } from "./ask.ts";

const battery = () =>
  new Build()
    .part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01 })
    .wire("G1.−", "XE1", "BK", { area_mm2: 25, length_m: 0 });
const wire = (area_mm2: number, length_m: number) => ({
  area_mm2,
  length_m,
  insulation: "thin-wall-105" as const,
});

test("readings of another state, and of an edited harness, are the same with and without what was known before", () => {
  const harness = new Build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15", "2": "reverse GN 0.75", "3": "ground BN 1.5" })
    .part("load", "E1", { type: "lamp", current_A: 1.75, function: "reverse" })
    .path("X1.2", "F1", "E1.+")
    .wire("E1.−", "X1.3").harness;
  const traced = trace(harness);
  const first = operate(harness, traced, RUN);
  const state = { key: "run", conditions: ["reverse"] } as const;
  const again = operate(harness, traced, state, { before: first });
  const fresh = operate(harness, traced, state);
  expect(again.solved.prepared).toBe(first.solved.prepared);
  for (const [id, wire] of fresh.wires) expect(again.wires.get(id)!.amps).toBeCloseTo(wire.amps, 9);
  const thicker = {
    ...harness,
    wires: { ...harness.wires, "w:W1": { ...harness.wires["w:W1" as never], area_mm2: 4 } },
  } as typeof harness;
  expect(operate(thicker, trace(thicker), state, { before: again }).solved.prepared).toBe(
    first.solved.prepared,
  );
});

describe("after an edit of wires alone", () => {
  const harness = battery()
    .part("fuse", "F1", { rating_A: 10, form: "regular" })
    .part("load", "E1", { current_A: 5, behaviour: "constant-current", type: "other" })
    .wire("G1.+", "F1.1", "RD", wire(1.5, 2))
    .wire("F1.2", "E1.+", "RD", wire(1.5, 3))
    .wire("E1.−", "XE2", "BK", wire(2.5, 1)).harness;
  const changed = (id: string, changes: object): Harness => {
    const wires = { ...harness.wires, [id]: { ...harness.wires[id as WireId]!, ...changes } };
    return { ...harness, wires };
  };
  const before = operate(harness, trace(harness), RUN);
  const same = (edited: Harness, state = RUN, options = {}) => {
    const { solved: _, ...warm } = operate(edited, trace(edited), state, { ...options, before });
    const { solved: __, ...fresh } = operate(edited, trace(edited), state, options);
    expect(rounded(warm)).toEqual(rounded(fresh));
  };

  test.each([
    ["a size", "w:W3", { area_mm2: 4 }],
    ["a length", "w:W3", { length_m: 12 }],
    ["a length that is no longer stated", "w:W3", { length_m: "unknown" }],
    ["a size that is no longer stated", "w:W4", { area_mm2: "unknown" }],
    ["a metal", "w:W2", { material: "cca-10" }],
    ["an insulation", "w:W2", { insulation: "unknown" }],
    ["an end", "w:W4", { ends: [{ part: "p:E1", contact: 2 }, "loose"] }],
    ["a note", "w:W4", { note: "seen" }],
  ])("%s: the readings are those from scratch", (_, id, changes) => same(changed(id, changes)));

  test("another state, other volts, a broken wire, a wire more, a wire less, a part that changed", () => {
    same(harness, { key: "crank", conditions: [] });
    same(changed("w:W3", { area_mm2: 4 }), RUN, { battery_V: 13.8 });
    same(changed("w:W3", { area_mm2: 4 }), RUN, { broken: ["w:W3"] });
    same(new Build(harness).wire("F1.2", "XE2", "BK", wire(0.5, 1)).harness);
    const { "w:W4": gone, ...left } = harness.wires as Record<string, Wire>;
    expect(gone!.designation).toBe("W4");
    same({ ...harness, wires: left as Harness["wires"] });
    const load = { ...harness.parts["p:E1" as PartId]!, current_A: 7 } as Part;
    same({ ...harness, parts: { ...harness.parts, [load.id]: load } });
  });

  test("a wire that was broken stays so, whatever its size", () => {
    const broken = operate(harness, trace(harness), RUN, { broken: ["w:W3"] });
    const edited = changed("w:W3", { area_mm2: 4 });
    const after = operate(edited, trace(edited), RUN, { broken: ["w:W3"], before: broken });
    expect(after.wires.get("w:W3" as WireId)!.amps).toBeCloseTo(0, 12);
  });
});

/** Plain data with numbers to nine digits: where a search began leaves its mark behind the twelfth. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(9));
  if (value instanceof Map) return [...value].map(rounded);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}
