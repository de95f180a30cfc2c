import { describe, expect, test } from "vitest";
import { isKnown } from "../../../src/electrical/figure.ts";
import { designOf } from "../../../src/electrical/operate/design.ts";
import { dropOf } from "../../../src/electrical/operate/drop.ts";
import { coordinateFuses, sizeFuse } from "../../../src/electrical/operate/protect.ts";
import { shortAt } from "../../../src/electrical/operate/short.ts";
import { sizeHarness } from "../../../src/electrical/operate/size-harness.ts";
import { sizeWires, sizingEdit, wiresOnPath } from "../../../src/electrical/operate/size-wires.ts";
import { standbyOf } from "../../../src/electrical/operate/standby.ts";
import { turnOnsOf } from "../../../src/electrical/operate/turn-on.ts";
import { sayVolts, whyVolts, whyWire } from "../../../src/electrical/operate/why.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import type { Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";
import { Build } from "../../build.ts";
import { ask } from "./ask.ts";

/** 12 V, 10 mΩ inside, its minus on the frame by a wire without length. */
const battery = (capacity_Ah: number | "unknown" = "unknown") =>
  new Build()
    .part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01, capacity_Ah })
    .wire("G1.−", "XE1", "BK", { area_mm2: 25, length_m: 0, insulation: "thin-wall-105" });
const wire = (area_mm2: number, length_m: number) => ({
  area_mm2,
  length_m,
  insulation: "thin-wall-105" as const,
});
const steady = (current_A: number) => ({ current_A, behaviour: "constant-current", type: "other" }) as const;

function edited(harness: Harness, edit: Edit | null): Harness {
  if (!edit) throw new Error("no edit");
  const result = apply(harness, edit);
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

describe("the drop on the way to a load and back", () => {
  // 20 A and 1.5 A share W6: 4 mm² × 2 m × 4.95 mΩ/m = 9.9 mΩ, 21.5 A: 0.213 V. Lead of E2: 1.5 mm² × 1 m = 13.3 mΩ.
  const harness = battery()
    .part("load", "E1", steady(20))
    .part("load", "E2", steady(1.5))
    .part("splice", "XJ1", { method: "solder-and-sleeve" })
    .wire("G1.+", "E1.+", "RD", wire(4, 1))
    .wire("G1.+", "E2.+", "RD", wire(1.5, 1))
    .wire("E1.−", "XJ1.1", "BK", wire(4, 0))
    .wire("E2.−", "XJ1.1", "BK", wire(4, 0))
    .wire("XJ1.2", "XE2", "BK", wire(4, 2)).harness;
  const is = ask(harness);
  const drop = dropOf(is.readings, "p:E2#1")!;

  test("names the stretch that takes most, and that it is shared", () => {
    expect(drop.words).toBe("E2: 0.25 V of 0.36 V; 0.21 V of it in the shared ground lead W6");
    const { load, source, steps } = drop.path;
    expect([load, source]).toEqual(["p:E2#1", "p:G1#1"]);
    expect(steps.map(({ name }) => name)).toEqual([
      "lead W3",
      "ground lead W5",
      "joint XJ1",
      "the shared ground lead W6",
      "ground XE2",
      "ground XE1",
      "the shared ground lead W1",
    ]);
  });

  test("adds up to what the load misses of the battery's posts", () => {
    const posts_V = (is.volts("G1.+") as number) - (is.volts("G1.−") as number);
    expect(posts_V - is.load("E2.+").volts).toBeCloseTo(drop.budget.total_V, 9);
  });

  test("a load that draws nothing has none", () => {
    expect(dropOf(ask(harness, undefined, { broken: ["w:W3"] }).readings, "p:E2#1")).toBeNull();
  });
});

describe("sizing", () => {
  // 15 A over 3 m out and 3 m back. 3 % of 12 V is 0.36 V; two studs of 0.2 mΩ take 6 mV. The two wires share 0.354 V:
  // 0.177 V over 3 m at 15 A is 3.93 mΩ/m. 6 mm² has 3.30 mΩ/m, 5 mm² lies between it and the 4.95 of 4 mm².
  const harness = battery()
    .part("load", "E1", steady(15))
    .part("fuse", "F1", { rating_A: 30, form: "regular" })
    .wire("G1.+", "F1.1", "RD", wire(6, 0))
    .wire("F1.2", "E1.+", "RD", wire(2.5, 3))
    .wire("E1.−", "XE2", "BK", wire(2.5, 3)).harness;
  const design = designOf(harness, trace(harness));

  test("the smallest size that keeps the drop, with what decided it", () => {
    const [w3] = sizeWires(design, ["w:W3" as WireId]);
    // F1 of 30 A takes 1.97 mΩ × 15 A = 30 mV more: 0.162 V for each wire, 3.61 mΩ/m: 6 mm² all the same.
    expect(w3).toMatchObject({
      verdict: "grow",
      stated_mm2: 2.5,
      current_A: expect.closeTo(15, 6),
      load: "p:E1#1",
    });
    expect(w3!.allowed_V).toBeCloseTo((0.36 - 0.006 - 15 * 0.00197) / 2, 4);
    expect(w3!.sized).toMatchObject({ ok: true, size: { area_mm2: 6 }, decidedBy: "drop" });
    expect(w3!.why).toMatch(/^6 mm² carries .* 5 mm² loses .* for E1$/);
  });

  test("as one edit, after which the load keeps its budget", () => {
    const path = design.paths.get("p:E1#1")!.path;
    const onPath = wiresOnPath(path);
    expect(onPath).toEqual(["w:W2", "w:W3", "w:W4", "w:W1"]);
    const after = edited(harness, sizingEdit(harness, sizeWires(design, onPath)));
    expect(after.wires["w:W3" as WireId]!.area_mm2).toBe(6);
    expect(after.wires["w:W1" as WireId]!.area_mm2).toBe(25);
    expect(dropOf(ask(after).readings, "p:E1#1")!.budget.within).toBe(true);
    expect(dropOf(ask(harness).readings, "p:E1#1")!.budget.within).toBe(false);
  });

  test("a fuse from its load and the weakest wire: 15 A / 0.75 is 20 A", () => {
    const sizing = sizeFuse(design, "p:F1" as PartId);
    expect(sizing).toMatchObject({
      load_A: expect.closeTo(15, 6),
      choice: { ok: true, blade: { rating_A: 20 } },
    });
    expect(sizing.wires).toEqual(["w:W3"]);
  });

  test("where no rating fits, the wire that must grow is named, and to what", () => {
    const thin = edited(harness, { kind: "change-wire", wire: "w:W3" as WireId, changes: { area_mm2: 0.5 } });
    const sizing = sizeFuse(designOf(thin, trace(thin)), "p:F1" as PartId);
    expect(sizing.choice).toMatchObject({ ok: false, grow: "wire" });
    // Unless told, a fuse is at most what its wire bears (AC 43.13-1B par. 11-47): for 20 A that is 1.5 mm².
    expect(sizing.grow).toEqual([{ wire: "w:W3", area_mm2: 1.5 }]);
    // Thin-wall sheet: 0.5 mm² 11 A, 0.75 mm² 14 A; more than 15 A (the rating below 20) is 16 AWG and up by the CFR.
    const electrical = { ...thin.settings.electrical, fuseRule: "next-size" as const };
    const next = { ...thin, settings: { ...thin.settings, electrical } };
    expect(sizeFuse(designOf(next, trace(next)), "p:F1" as PartId).grow).toEqual([
      { wire: "w:W3", area_mm2: 1 },
    ]);
    expect(sizing.why).toContain("W3 carries 11 A");
  });

  test("the whole harness comes to rest with nothing unmet and no budget overdrawn", () => {
    const unsized = edited(harness, {
      kind: "change-wire",
      wire: "w:W4" as WireId,
      changes: { area_mm2: "unknown" },
    });
    const sizing = sizeHarness(unsized, trace(unsized));
    expect(sizing.wires.find(({ wire: id }) => id === "w:W4")!.verdict).toBe("state");
    expect(sizing.unmet).toEqual([]);
    const after = edited(unsized, sizing.edit);
    expect(sizeHarness(after, trace(after)).edit).toBeNull();
    expect(dropOf(ask(after).readings, "p:E1#1")!.budget.within).toBe(true);
    // 30 A is over what the load needs, but the wire bears it: a person's choice, kept.
    expect(after.parts["p:F1" as PartId]).toMatchObject({ rating_A: 30 });
  });
});

describe("faults", () => {
  // 12 V / (10 mΩ + 0.2 m × 4.95 + 2.52 mΩ (25 A regular) + 1 m × 4.95 mΩ), back through the frame to XE1 0.2 mΩ.
  const harness = battery()
    .part("fuse", "F1", { rating_A: 25, form: "regular" })
    .part("load", "E1", steady(10))
    .wire("G1.+", "F1.1", "RD", wire(4, 0.2))
    .wire("F1.2", "E1.+", "RD", wire(4, 1))
    .wire("E1.−", "XE2", "BK", wire(4, 1)).harness;

  test("the prospective current at the end of a lead, and that the fuse clears", () => {
    const short = shortAt(ask(harness).readings, "p:E1#1")!;
    const loop_ohm = 0.01 + 0.00099 + 0.00252 + 0.00495 + 0.0002;
    if (!isKnown(short.current)) throw new Error(short.current.unknown);
    // The load itself still draws its 10 A beside the fault while its volts last: they are gone.
    expect(short.current.value).toBeCloseTo(12 / loop_ohm, 0);
    expect(short).toMatchObject({ verdict: "clears", fuse: { name: "fuse F1", part: "p:F1" } });
    expect(short.wires.map(({ wire: id }) => id)).toEqual(["w:W2", "w:W3"]);
    expect(short.words).toMatch(
      /^E1\.\+ touching the frame: 64\d A; fuse F1 opens before a wire is too hot\.$/,
    );
  });

  test("before the fuse there is none; on the ground side nothing flows", () => {
    expect(shortAt(ask(harness).readings, "p:F1#1")).toMatchObject({ verdict: "no fuse" });
    expect(shortAt(ask(harness).readings, "p:XE2#1")).toMatchObject({ verdict: "nothing flows" });
    expect(shortAt(ask(harness).readings, "p:none#1")).toBeNull();
  });

  test("two fuses in line are held against one another, the vehicle's own too", () => {
    const two = new Build()
      .vehicle("X1", { "1": "constant-feed RD 2.5 fuse:30", "2": "ground BN 2.5" })
      .part("fuse", "F1", { rating_A: 25, form: "regular" })
      .part("fuse", "F2", { rating_A: 5, form: "regular" })
      .part("load", "E1", steady(2))
      .wire("X1.1", "F1.1", "RD", wire(2.5, 1))
      .wire("F1.2", "F2.1", "RD", wire(2.5, 1))
      .wire("F2.2", "E1.+", "RD", wire(1, 1))
      .wire("E1.−", "X1.2", "BK", wire(1, 1)).harness;
    const branches = coordinateFuses(designOf(two, trace(two)));
    expect(branches.map(({ upper, lower }) => [upper, lower])).toEqual([
      ["p:X1#1", "p:F1"],
      ["p:F1", "p:F2"],
    ]);
    // 30 A and 25 A of one make overlap at every current that opens both; 5 A is gone long before 25 A.
    expect(branches[0]!.coordination!.verdict).toBe("not proven");
    expect(branches[1]!.coordination!.stretches[0]!.opens).toBe("neither");
    expect(branches[1]!.why).toMatch(/^F1 and F2: /);
  });
});

describe("with the key off", () => {
  const harness = battery(60)
    .module("A1", {
      role: "receiver",
      wakes: "by-lead",
      standby_A: 0.02,
      rows: { "+B": "constant-feed 2A", "+S": "switched-feed 0.1A", "−": "ground" },
    })
    .part("load", "E1", { ...steady(1), standby_A: 0.01, function: "constant-feed" })
    .wire("G1.+", "A1.+B", "RD", wire(1, 1))
    .wire("G1.+", "E1.+", "RD", wire(1, 1))
    .wire("E1.−", "XE2", "BK", wire(1, 1))
    .wire("A1.−", "XE2", "BK", wire(1, 1)).harness;

  test("20 mA and 10 mA are 30 mA, within 50 mA; 60 Ah at 40 % last 33.3 days but for what the battery loses itself", () => {
    const standby = standbyOf(harness, trace(harness));
    expect(standby.drains.map(({ name, drain_mA }) => [name, Math.round(drain_mA * 1e6) / 1e6])).toEqual([
      ["A1.+B", 20],
      ["E1", 10],
    ]);
    expect(standby.total.value).toBeCloseTo(30, 6);
    expect([standby.within, standby.limit.value]).toEqual([true, 50]);
    const [days] = standby.days;
    if (!days || !isKnown(days.days)) throw new Error("no days");
    // 24 Ah over 30 mA and 5 % of 60 Ah in 730.5 h, 4.107 mA, by itself.
    expect(days.days.value).toBeCloseTo(24_000 / (30 + 3000 / 730.5) / 24, 6);
  });

  test("the settings say what is acceptable", () => {
    const strict = new Build(harness).settings({
      electrical: { ...harness.settings.electrical, standbyLimit_mA: 25, chargeFloor_percent: 80 },
    }).harness;
    const standby = standbyOf(strict, trace(strict));
    expect([standby.within, standby.limit.value]).toEqual([false, 25]);
    expect(standby.total.doubt).toBeNull();
  });

  test("a standby current that nobody has stated stands as a doubt beside the total", () => {
    const unstated = edited(harness, {
      kind: "change-part",
      part: "p:A1" as PartId,
      changes: { standby_A: "unknown" },
    });
    expect(standbyOf(unstated, trace(unstated)).total.doubt).toBe(
      "A1: standby current not stated: 5 mA assumed",
    );
  });
});

test("what hangs on a turn-on lead is told in full, also where the output cannot give it", () => {
  const harness = new Build()
    .vehicle("X1", {
      "1": "constant-feed RD 1.5 fuse:15",
      "2": "switched-feed YE fuse:5",
      "3": "ground BN 1.5",
    })
    .unit("X2", {
      "1": "constant-feed 3A",
      "2": "switched-feed 0.1A",
      "3": "ground",
      "4": "amplifier-turn-on gives 0.3A",
    })
    .part("load", "E1", { ...steady(0.1), function: "amplifier-turn-on" })
    .part("load", "E2", { ...steady(0.25), function: "amplifier-turn-on" })
    .path("X1.1", "X2.1")
    .path("X1.2", "X2.2")
    .path("X1.3", "X2.3")
    .path("X2.4", "XJ1")
    .wire("XJ1.2", "E1.+")
    .wire("XJ1.2", "E2.+")
    .wire("E1.−", "XE1")
    .wire("E2.−", "XE1").harness;
  const [found, ...rest] = turnOnsOf(designOf(harness, trace(harness)));
  expect(rest).toEqual([]);
  expect(found!.output).toBe("p:X2#4");
  expect(found!.check.total.value).toBeCloseTo(350, 6);
  expect(found!.check.within).toBe(false);
});

describe("why", () => {
  const is = ask(
    battery()
      .part("fuse", "F1", { rating_A: 10, form: "regular" })
      .part("load", "E1", steady(5))
      .wire("G1.+", "F1.1", "RD", wire(1.5, 2))
      .wire("F1.2", "E1.+", "RD", wire(1.5, 3))
      .wire("E1.−", "XE2", "BK", wire(2.5, 1))
      .wire("F1.2", "loose", "RD", wire(1.5, 1))
      .part("capacitor", "C1").harness,
  );

  test("a contact's volts, stretch by stretch from the source", () => {
    const why = whyVolts(is.readings, "p:E1#1");
    expect(why).toMatchObject({
      unit: "V",
      formula: "11.949 V at G1.+ − 0.133 V in lead W2 − 0.0385 V in fuse F1 − 0.1995 V in lead W3 = 11.578 V",
      source: "Kirchhoff's laws over the whole circuit",
      doubt: expect.stringContaining("F1: cold resistance 7.7 mΩ"),
    });
    expect(whyVolts(is.readings, "p:C1#1")).toEqual({
      unknown: "C1.1 floats: nothing that gives volts reaches it",
    });
    expect(whyVolts(is.readings, "p:nobody#1")).toHaveProperty("unknown");
  });

  test("a wire's figures, each with its table", () => {
    const why = whyWire(is.readings, "w:W3" as WireId)!;
    expect(why.resistance).toMatchObject({
      value: expect.closeTo(0.0399, 9),
      table: expect.stringContaining("IEC 60228"),
    });
    expect(why.drop.value).toBeCloseTo(0.1995, 9);
    expect(why.percent.value).toBeCloseTo(1.6625, 6);
    expect(why.heat.formula).toBe("P = U · I = 0.1995 V × 5 A = 0.9975 W");
    expect(why.percentOfAmpacity).toMatchObject({
      value: expect.closeTo(20, 6),
      formula: "I / ampacity = 5 A / 25 A = 20 %",
    });
    expect(whyWire(is.readings, "w:none" as WireId)).toBeNull();
  });

  test("volts in words", () => {
    expect(sayVolts(is.readings, "p:E1#1")).toBe("11.6 V");
    expect(sayVolts(is.readings, "p:E1#2")).toBe("41 mV");
    expect(sayVolts(is.readings, "p:C1#1")).toBe("floating: nothing that gives volts reaches it");
  });
});
