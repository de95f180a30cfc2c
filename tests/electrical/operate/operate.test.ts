import { describe, expect, test } from "vitest";
import { Build } from "../../build.ts";
import { ask, RUN } from "./ask.ts";

/** 12 V exactly, 10 mΩ inside: figures that can be worked out on the back of an envelope. */
const battery = () =>
  new Build().part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01 }).wire("G1.−", "XE1", "BK", {
    area_mm2: 25,
    length_m: 0,
  });
/** IEC 60228 class 5: 1.5 mm² has 13.3 mΩ/m, 2.5 mm² 7.98 mΩ/m, at 20 °C. */
const wire = (area_mm2: number, length_m: number) => ({
  area_mm2,
  length_m,
  insulation: "thin-wall-105" as const,
});

describe("a battery, a fuse, a lamp of steady current, and back", () => {
  // 10 mΩ battery, W2 1.5 mm² × 2 m = 26.6 mΩ, 10 A regular fuse 7.7 mΩ, W3 1.5 mm² × 3 m = 39.9 mΩ, load 5 A,
  // W4 2.5 mm² × 1 m = 7.98 mΩ, two studs of 0.2 mΩ (XE2 into the frame, XE1 back to the battery).
  const harness = battery()
    .part("fuse", "F1", { rating_A: 10, form: "regular" })
    .part("load", "E1", { current_A: 5, behaviour: "constant-current", type: "other" })
    .wire("G1.+", "F1.1", "RD", wire(1.5, 2))
    .wire("F1.2", "E1.+", "RD", wire(1.5, 3))
    .wire("E1.−", "XE2", "BK", wire(2.5, 1)).harness;
  const is = ask(harness);

  test("volts at every contact", () => {
    expect(is.volts("XE1")).toBeCloseTo(-0.001, 9);
    expect(is.volts("G1.−")).toBeCloseTo(-0.001, 9);
    expect(is.volts("G1.+")).toBeCloseTo(12 - 0.001 - 5 * 0.01, 9);
    expect(is.volts("F1.1")).toBeCloseTo(11.949 - 5 * 0.0266, 9);
    expect(is.volts("F1.2")).toBeCloseTo(11.949 - 5 * (0.0266 + 0.0077), 9);
    expect(is.volts("E1.+")).toBeCloseTo(11.949 - 5 * (0.0266 + 0.0077 + 0.0399), 9);
    expect(is.volts("E1.−")).toBeCloseTo(5 * (0.00798 + 0.0002), 9);
  });

  test("amperes, drop, watts and share of ampacity of a wire", () => {
    const w3 = is.wire("W3");
    expect(w3.amps).toBeCloseTo(5, 9);
    expect(w3.drop_V).toBeCloseTo(0.1995, 9);
    expect(w3.watts).toBeCloseTo(0.9975, 9);
    // 33 CFR 183.425: 1.5 mm² counts as 16 AWG, 105 °C insulation: 25 A; it lies alone.
    expect(w3.percentOfAmpacity).toBeCloseTo(20, 9);
  });

  test("the fuse holds at half its rating, the load works, the source gives", () => {
    expect(is.fuse("F1")).toEqual({
      amps: expect.closeTo(5, 9),
      rating_A: 10,
      percentOfRating: expect.closeTo(50, 6),
      verdict: "holds",
    });
    expect(is.load("E1.+")).toMatchObject({ works: true, reversed: false, stated_A: 5 });
    expect(is.source("G1.+").amps).toBeCloseTo(5, 9);
    expect(is.codes()).toEqual([]);
  });

  test("what was not stated is listed, with what it is about", () => {
    expect(is.assumed()).toContain("wire-metal");
    expect(is.readings.assumptions).toContainEqual({
      code: "stud",
      value: 0.2,
      about: ["p:XE1", "p:XE2"],
      source: "from memory",
    });
    expect(is.assumed()).not.toContain("wire-length");
    const unstated = ask(new Build(harness).wire("G1.+", "loose").harness);
    expect(unstated.readings.assumptions).toContainEqual(
      expect.objectContaining({ code: "wire-length", value: 1, about: ["w:W5"] }),
    );
  });

  test("hot copper: 1 + 0.00393 × 30 at 50 °C", () => {
    const hot = ask(harness, RUN, { ambient_degC: 50 });
    expect(hot.wire("W3").drop_V).toBeCloseTo(0.1995 * 1.1179, 9);
  });

  test("other battery volts, a broken wire, a blown fuse", () => {
    expect(ask(harness, RUN, { battery_V: 14.4 }).volts("G1.+")).toBeCloseTo(14.4 - 0.001 - 0.05, 9);
    const cut = ask(harness, RUN, { broken: ["w:W4"] });
    expect(cut.wire("W3").amps).toBeCloseTo(0, 12);
    expect(cut.volts("E1.−")).toBeCloseTo(12, 9);
    const blown = ask(harness, RUN, { broken: ["p:F1"] });
    expect([blown.volts("F1.1"), blown.volts("E1.+")]).toEqual([expect.closeTo(12, 9), 0]);
  });

  test("a what-if that is not a number is refused, not spread", () => {
    expect(() => ask(harness, RUN, { battery_V: Number.NaN })).toThrow(RangeError);
    expect(() => ask(harness, RUN, { ambient_degC: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});

test("two loads on one ground lead: the large one lifts the ground of the small one", () => {
  // The textbook case: 20 A and 1.5 A come back together through W5, 4 mm² × 2 m = 2 × 4.95 mΩ = 9.9 mΩ.
  const is = ask(
    battery()
      .part("load", "E1", { current_A: 20, behaviour: "constant-current" })
      .part("load", "E2", { current_A: 1.5, behaviour: "constant-current" })
      .part("splice", "XJ1", { method: "solder-and-sleeve" })
      .wire("G1.+", "E1.+", "RD", wire(4, 1))
      .wire("G1.+", "E2.+", "RD", wire(1.5, 1))
      .wire("E1.−", "XJ1.1", "BK", wire(4, 0))
      .wire("E2.−", "XJ1.1", "BK", wire(4, 0))
      .wire("XJ1.2", "XE2", "BK", wire(4, 2)).harness,
  );
  const ground_ohm = 0.0002 + 0.0099 + 0.0002;
  expect(is.volts("E2.−")).toBeCloseTo(21.5 * ground_ohm, 9);
  expect(is.wire("W6").amps).toBeCloseTo(21.5, 9);
});

describe("the vehicle's feeds follow key and conditions", () => {
  const harness = new Build()
    .vehicle("X1", {
      "1": "constant-feed RD 1.5 fuse:15",
      "2": "switched-feed YE 0.75 fuse:10",
      "3": "illumination GY 0.5 fuse:5",
      "4": "ground BN 1.5",
      "5": "parking-brake GN 0.5 gives",
    })
    .module("A1", { role: "receiver", wakes: "by-lead", standby_A: 0.003 })
    .receptacle("X2", "A1", {
      "1": "constant-feed YE 1.5 4A",
      "2": "switched-feed RD 0.75 0.1A",
      "3": "illumination OG 0.5",
      "4": "ground BK 1.5",
      "5": "parking-brake GN 0.5 takes",
      "6": "amplifier-turn-on BU 0.5 gives 0.3A",
    })
    .part("load", "E1", { current_A: 0.1, behaviour: "constant-current", function: "amplifier-turn-on" })
    .path("X1.1", "X2.1")
    .path("X1.2", "X2.2")
    .path("X1.3", "X2.3")
    .path("X1.4", "X2.4")
    .path("X1.5", "X2.5")
    .wire("X2.6", "E1.+")
    .wire("E1.−", "XE1").harness;

  test.each([
    ["off", [], 0.003, 0, false],
    ["accessory", [], 4, 0.1, true],
    ["run", [], 4, 0.1, true],
    // The switched feed is off while the starter turns (DIN 72552 15R), so the box sleeps.
    ["crank", [], 0.003, 0, false],
    ["off", ["unit-on"], 0.003, 0, false],
  ] as const)("%s %j: the box draws %d A and %d A", (key, conditions, constant_A, switched_A, awake) => {
    const is = ask(harness, { key, conditions });
    expect(is.wire("W1").amps).toBeCloseTo(constant_A, 6);
    expect(is.wire("W2").amps).toBeCloseTo(switched_A, 6);
    expect(is.readings.awake.get("p:A1")).toBe(awake);
  });

  test("the turn-on lead is live while the unit is on and awake; its current comes out of the box's feed", () => {
    const on = ask(harness, { key: "run", conditions: ["unit-on"] });
    expect(on.load("E1.+")).toMatchObject({ works: true, amps: expect.closeTo(0.1, 6) });
    expect(on.wire("W1").amps).toBeCloseTo(4.1, 6);
    expect(ask(harness, RUN).load("E1.+").works).toBe(false);
  });

  test("lights give volts to the illumination lead, at rest it is held down by the box", () => {
    expect(ask(harness, { key: "off", conditions: ["lights-on"] }).volts("X2.3")).toBeCloseTo(12.6, 2);
    expect(ask(harness, RUN).volts("X2.3")).toBeLessThan(0.1);
  });

  test("the parking-brake lead floats, or is pulled to ground", () => {
    expect(ask(harness, RUN).volts("X2.5")).toBe("floating");
    expect(ask(harness, { key: "run", conditions: ["parking-brake-set"] }).volts("X2.5")).toBeCloseTo(0, 9);
  });

  test("without its switched lead the box does not wake, whatever the key", () => {
    const cut = ask(harness, { key: "run", conditions: ["unit-on"] }, { broken: ["w:W2"] });
    expect(cut.readings.awake.get("p:A1")).toBe(false);
    expect(cut.wire("W1").amps).toBeCloseTo(0.003, 6);
    expect(cut.load("E1.+").works).toBe(false);
  });

  test("without its ground nothing flows, and its case stands at the feed's volts", () => {
    const cut = ask(harness, RUN, { broken: ["w:W4"] });
    expect(cut.wire("W1").amps).toBeCloseTo(0, 9);
    expect(cut.volts("X2.4")).toBeCloseTo(12.6, 3);
  });

  test("a short on the turn-on lead is held at the output's limit", () => {
    const is = ask(new Build(harness).wire("X2.6", "XE1", "BU", wire(0.5, 0.1)).harness, {
      key: "run",
      conditions: ["unit-on"],
    });
    expect(is.source("X2.6").amps).toBeCloseTo(0.3, 1);
    expect(is.source("X2.6").amps).toBeLessThan(0.31);
    expect(is.codes()).toContain("output-at-limit");
  });

  test("cranking pulls the feeds down to 9.6 V", () => {
    expect(ask(harness, { key: "crank", conditions: [] }).source("X1.1").volts).toBeCloseTo(9.6, 3);
  });
});

test("a lead that joins the constant feed to the switched one feeds it from behind", () => {
  const is = ask(
    new Build()
      .vehicle("X1", {
        "1": "constant-feed RD 1.5 fuse:15",
        "2": "switched-feed YE 0.75 fuse:10",
        "3": "ground",
      })
      .wire("X1.1", "X1.2").harness,
    { key: "run", conditions: ["engine-running"] },
    { broken: [] },
  );
  // Both stand at the same volts: nothing flows. With the key off, the switched lead is live from the constant one.
  expect(is.wire("W1").amps).toBeCloseTo(0, 9);
  expect(ask(is.readings.solved.harness, { key: "off", conditions: [] }).volts("X1.2")).toBeCloseTo(12.6, 6);
});

describe("relays and switches", () => {
  const harness = battery()
    .part("relay", "K1", { poles: "changeover", coil_ohm: 90, suppression: "diode" })
    .part("switch", "S1", { operatedBy: "hand" })
    .part("load", "E1", { current_A: 2, behaviour: "resistance" })
    .part("load", "E2", { current_A: 2, behaviour: "resistance" })
    .wire("G1.+", "S1.1", "RD", wire(1.5, 0))
    .wire("S1.2", "K1.86", "RD", wire(1.5, 0))
    .wire("K1.85", "XE1", "BK", wire(1.5, 0))
    .wire("G1.+", "K1.30", "RD", wire(1.5, 0))
    .wire("K1.87", "E1.+", "RD", wire(1.5, 0))
    .wire("K1.87a", "E2.+", "RD", wire(1.5, 0))
    .wire("E1.−", "XE1", "BK", wire(1.5, 0))
    .wire("E2.−", "XE1", "BK", wire(1.5, 0)).harness;

  test("at rest the break contact feeds, pulled the make contact does", () => {
    const rest = ask(harness);
    expect([rest.relay("K1").pulled, rest.load("E1.+").works, rest.load("E2.+").works]).toEqual([
      false,
      false,
      true,
    ]);
    const pulled = ask(harness, { key: "off", conditions: [], closed: ["p:S1" as never] });
    expect([pulled.relay("K1").pulled, pulled.load("E1.+").works, pulled.load("E2.+").works]).toEqual([
      true,
      true,
      false,
    ]);
    // 2 A at 12 V is 6 Ω, behind the 5 mΩ of the contact, 10 mΩ of the battery and the coil's own current.
    expect(pulled.load("E1.+").amps).toBeCloseTo(12 / 6.0165, 2);
    expect(pulled.relay("K1").coil_A).toBeCloseTo(11.98 / 90, 3);
  });

  test("a coil that is wired the wrong way round is shorted by its diode", () => {
    const turned = battery()
      .part("relay", "K1", { poles: "make", coil_ohm: 90, suppression: "diode" })
      .wire("G1.+", "K1.85", "RD", wire(1.5, 1))
      .wire("K1.86", "XE1", "BK", wire(1.5, 1)).harness;
    expect(Math.abs(ask(turned).wire("W2").amps)).toBeGreaterThan(50);
  });

  test("one that cuts its own coil chatters, and says so", () => {
    const buzzer = battery()
      .part("relay", "K1", { poles: "changeover", coil_ohm: 90 })
      .wire("G1.+", "K1.30", "RD", wire(1.5, 1))
      .wire("K1.87a", "K1.86", "RD", wire(1.5, 1))
      .wire("K1.85", "XE1", "BK", wire(1.5, 1)).harness;
    const is = ask(buzzer);
    expect(is.relay("K1")).toMatchObject({ chatters: true, pulled: false });
    expect(is.readings.warnings[0]!.words).toBe(
      "K1 never comes to rest: pulled, it cuts its own coil. It is shown released.",
    );
  });
});

describe("fuses", () => {
  const loaded = (amps: number) =>
    ask(
      battery()
        .part("fuse", "F1", { rating_A: 10, form: "regular" })
        .part("load", "E1", { current_A: amps, behaviour: "constant-current" })
        .wire("G1.+", "F1.1", "RD", wire(4, 0.1))
        .wire("F1.2", "E1.+", "RD", wire(4, 0.1))
        .wire("E1.−", "XE1", "BK", wire(4, 0.1)).harness,
    );

  // Opening times of a regular blade: for good at 110 %, within 600 s at 135 % (a maker's datasheet naming ISO 8820-3).
  test.each([
    [7.5, "holds"],
    [9, "full"],
    [10, "full"],
    [12, "may-open"],
    [13.5, "opens"],
    [30, "opens"],
  ])("10 A at %d A: %s", (amps, verdict) => {
    expect(loaded(amps).fuse("F1").verdict).toBe(verdict);
  });

  test("a dead short is told with its amperes", () => {
    const short = ask(battery().wire("G1.+", "XE1", "RD", wire(4, 0.1)).harness);
    expect(short.codes()).toContain("dead-short");
    expect(short.codes()).toContain("wire-overloaded");
  });
});

describe("loads that have a right way round", () => {
  const lamp = (plus: string, minus: string, polarised: boolean) =>
    ask(
      battery()
        .part("load", "E1", { type: "lamp", current_A: 1, polarised })
        .wire("G1.+", `E1.${plus}`, "RD", wire(1.5, 1))
        .wire(`E1.${minus}`, "XE1", "BK", wire(1.5, 1)).harness,
    );

  test("turned round they pass nothing and say so; a filament does not care", () => {
    expect(lamp("+", "−", true).load("E1.+")).toMatchObject({ works: true, reversed: false });
    const turned = lamp("−", "+", true);
    expect(turned.load("E1.+")).toMatchObject({ works: false, reversed: true, amps: expect.closeTo(0, 9) });
    expect(turned.codes()).toEqual(["load-reversed"]);
    expect(lamp("−", "+", false).load("E1.+")).toMatchObject({ works: true, reversed: false });
  });

  test("a filament draws (12 / 12)^0.55 of its current at 12 V, and ten times that cold", () => {
    const is = lamp("+", "−", false);
    expect(is.load("E1.+").amps).toBeCloseTo((is.load("E1.+").volts / 12) ** 0.55, 6);
    const cold = ask(is.readings.solved.harness, RUN, { coldLamps: true });
    expect(cold.load("E1.+").amps).toBeCloseTo(cold.load("E1.+").volts / 1.2, 6);
  });
});

describe("mated connectors", () => {
  test("pass current cavity to cavity through 5 mΩ each; what gives counts once", () => {
    const harness = new Build()
      .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15", "2": "ground BN 1.5" })
      .vehicle("X2", { "1": "constant-feed takes", "2": "ground gives" })
      .part("load", "E1", { current_A: 2, behaviour: "constant-current" })
      .wire("X2.1", "E1.+", "RD", wire(1.5, 0))
      .wire("E1.−", "X2.2", "BK", wire(1.5, 0))
      .mate("X1", "X2").harness;
    const is = ask(harness);
    expect([...is.readings.sources.keys()]).toEqual(["p:X1#1"]);
    expect([...is.readings.loads.keys()]).toEqual(["p:E1#1"]);
    expect(is.volts("X1.1")).toBeCloseTo(12.6 - 2 * 0.04, 9);
    expect(is.volts("X2.1")).toBeCloseTo(12.52 - 2 * 0.005, 9);
    expect(is.volts("E1.−")).toBeCloseTo(2 * (0.005 + 0.005), 9);
  });

  test("a box plugged straight into the vehicle draws", () => {
    const is = ask(
      new Build()
        .vehicle("X1", { "1": "switched-feed RD 1.5 fuse:15", "2": "ground BN 1.5" })
        .unit("X2", { "1": "switched-feed 3A", "2": "ground" })
        .mate("X1", "X2").harness,
    );
    expect(is.load("X2.1")).toMatchObject({ amps: expect.closeTo(3, 6), works: true });
  });
});
