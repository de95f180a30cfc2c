import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Points, pointsOf } from "../../src/electrical/points.ts";
import { feedsOf, groundsOf, type Reach } from "../../src/electrical/reach.ts";
import { trace } from "../../src/graph/trace.ts";
import { type Build, build } from "../build.ts";

function reach(harness: Build): { points: Points; feeds: Reach; grounds: Reach } {
  const points = pointsOf(harness.harness, trace(harness.harness));
  return { points, feeds: feedsOf(harness.harness, points), grounds: groundsOf(harness.harness, points) };
}

/** What feeds a contact: the sources by key, when, and through which fuses. */
function fed(harness: Build, name: string) {
  const { points, feeds } = reach(harness);
  const { part, contact } = harness.at(name);
  return feeds.feeds(points.circuitAt(part, contact)).map((feed) => ({
    from: `${feed.source.part.designation}.${feed.source.contact.label}`,
    live: feed.live,
    fuses: feed.fuses.map((id) => id.slice(2)),
    protection: feed.protection,
  }));
}

function states(harness: Build, name: string) {
  const { points, feeds } = reach(harness);
  const { part, contact } = harness.at(name);
  const circuit = points.circuitAt(part, contact);
  return { live: feeds.liveAt(circuit), unattended: feeds.unattendedAt(circuit) };
}

const lamp = () => build().part("supply", "G1").part("load", "E1");

describe("feeds", () => {
  test("a circuit nobody feeds is not live", () => {
    expect(fed(lamp(), "E1.+")).toEqual([]);
    expect(states(lamp(), "E1.+").live).toEqual([]);
  });

  test("fuses are listed in the order in which current meets them", () => {
    const [feed] = fed(lamp().path("G1.+", "F1", "F2", "E1.+"), "E1.+");
    expect(feed).toMatchObject({ from: "G1.+", fuses: ["F1", "F2"], protection: "fuse" });
    expect(feed!.live).toContain("off");
  });

  test("a way without a fuse counts before a way with one", () => {
    const [feed] = fed(lamp().path("G1.+", "F1", "E1.+").path("G1.+", "S1", "E1.+"), "E1.+");
    expect(feed).toMatchObject({ fuses: [], protection: "none" });
  });

  test.each([
    ["constant-feed fuse:15", "far-side"],
    ["constant-feed no-fuse", "none"],
    ["constant-feed", "unknown"],
  ])("a vehicle's %s lead is protected: %s", (line, protection) => {
    expect(fed(build().vehicle("X1", { A4: line }), "X1.A4")[0]).toMatchObject({ protection });
  });

  test("the worst of several sources comes first", () => {
    const harness = build()
      .part("supply", "G1")
      .vehicle("X1", { A6: "illumination", A4: "constant-feed fuse:15" })
      .wire("X1.A6", "X1.A4")
      .wire("G1.+", "X1.A6");
    expect(fed(harness, "X1.A6").map(({ from }) => from)).toEqual(["G1.+", "X1.A4", "X1.A6"]);
  });

  test.each([
    ["hand", true, false],
    ["door", true, false],
    ["key", true, true],
    ["lights", true, true],
  ] as const)("a %s switch lets through; without anybody near: %s, %s", (operatedBy, live, unattended) => {
    const found = states(lamp().part("switch", "S1", { operatedBy }).path("G1.+", "S1", "E1.+"), "E1.+");
    expect(found.live.length > 0).toBe(live);
    expect(found.unattended.length > 0).toBe(unattended);
  });

  test("a switch that the gear lever works is live in reverse and in no other state", () => {
    const harness = lamp().part("switch", "S1", { operatedBy: "reverse-gear" }).path("G1.+", "S1", "E1.+");
    expect(states(harness, "E1.+").live).toEqual(["reverse"]);
  });

  test("a key switch takes away what is live with the key off", () => {
    const harness = lamp().part("switch", "S1", { operatedBy: "key" }).path("G1.+", "S1", "E1.+");
    expect(states(harness, "E1.+").live).toEqual(["accessory", "run", "crank", "unit-on"]);
  });

  test("a diode lets through one way, a resistor under 1 kΩ or not stated both ways", () => {
    const through = (harness: Build) => states(harness, "E1.+").live.length > 0;
    expect(through(lamp().part("diode", "R1").path("G1.+", "R1", "E1.+"))).toBe(true);
    expect(through(lamp().part("diode", "R1").wire("G1.+", "R1.K").wire("R1.A", "E1.+"))).toBe(false);
    expect(through(lamp().part("resistor", "R1", { resistance_ohm: 999 }).path("G1.+", "R1", "E1.+"))).toBe(
      true,
    );
    expect(through(lamp().part("resistor", "R1", { resistance_ohm: 1000 }).path("G1.+", "R1", "E1.+"))).toBe(
      false,
    );
    expect(through(lamp().part("resistor", "R1").path("G1.+", "R1", "E1.+"))).toBe(true);
    expect(through(lamp().part("capacitor", "C1").path("G1.+", "C1", "E1.+"))).toBe(false);
  });

  test("a lead that gives voltage at times that no word names is live at times", () => {
    expect(states(build().vehicle("X1", { L: "indicator-left" }), "X1.L").live).toEqual(["at-times"]);
  });
});

describe("relays", () => {
  const relay = () =>
    lamp()
      .vehicle("X1", { "15": "ignition-feed", "3": "reverse" })
      .part("relay", "K1", { poles: "changeover" })
      .path("G1.+", "F1", "K1.30");

  test("a coil that nothing feeds leaves the make contact dead and the break contact live", () => {
    expect(states(relay(), "K1.87").live).toEqual([]);
    expect(states(relay(), "K1.87a").live).toContain("off");
  });

  test("the make contact is live when the coil is, the break contact when it is not", () => {
    const harness = relay().wire("X1.15", "K1.86");
    expect(states(harness, "K1.87").live).toEqual(["run", "crank", "unit-on"]);
    expect(states(harness, "K1.87a").live).not.toContain("run");
    expect(states(harness, "K1.87a").live).toContain("off");
  });

  test("a relay whose coil another relay feeds follows it", () => {
    const harness = relay()
      .wire("X1.3", "K1.86")
      .part("relay", "K2", { poles: "make" })
      .path("G1.+", "F2", "K2.30")
      .wire("K1.87", "K2.86")
      .wire("K2.87", "E1.+");
    expect(states(harness, "E1.+").live).toEqual(["reverse"]);
    expect(fed(harness, "E1.+")[0]).toMatchObject({ from: "G1.+", fuses: ["F2"] });
  });

  test("a relay that feeds its own coil comes to an end", () => {
    const harness = relay().wire("K1.87a", "K1.86");
    expect(() => states(harness, "K1.87")).not.toThrow();
  });
});

describe("grounds", () => {
  const grounded = (harness: Build, name: string) => {
    const { points, grounds } = reach(harness);
    const { part, contact } = harness.at(name);
    const circuit = points.circuitAt(part, contact);
    return [grounds.isLive(circuit), grounds.unattendedAt(circuit).length > 0];
  };
  const unit = () => build().unit("X2", { "3": "ground" });

  test("a stud, the battery's minus and the vehicle's ground lead are ground", () => {
    expect(grounded(unit().path("X2.3", "XE1"), "X2.3")).toEqual([true, true]);
    expect(grounded(unit().part("supply", "G1").wire("X2.3", "G1.−"), "X2.3")).toEqual([true, true]);
    expect(grounded(unit().vehicle("X1", { A8: "ground" }).wire("X2.3", "X1.A8"), "X2.3")).toEqual([
      true,
      true,
    ]);
  });

  test("another unit's ground input is none", () => {
    expect(
      grounded(
        unit()
          .module("A1", { rows: { "1": "ground" } })
          .wire("X2.3", "A1.1"),
        "X2.3",
      ),
    ).toEqual([false, false]);
  });

  test("through a switch it is ground only when somebody closes it", () => {
    expect(grounded(unit().path("X2.3", "S1", "XE1"), "X2.3")).toEqual([true, false]);
  });

  test("a diode is passed the way that return current flows", () => {
    expect(grounded(unit().part("diode", "R1").path("X2.3", "R1", "XE1"), "X2.3")).toEqual([true, true]);
    const against = unit().part("diode", "R1").wire("X2.3", "R1.K").path("R1.A", "XE1");
    expect(grounded(against, "X2.3")).toEqual([false, false]);
  });
});

test("many sources on one circuit: eight are named, and the states count them all", () => {
  const rows = Object.fromEntries(
    Array.from({ length: 20 }, (_, index) => [String(index + 1), "illumination"]),
  );
  const harness = build().vehicle("X1", { ...rows, R: "reverse" });
  for (let number = 1; number <= 20; number++) harness.wire(`X1.${number}`, "XJ1");
  harness.wire("X1.R", "XJ1");
  expect(fed(harness, "XJ1.1")).toHaveLength(8);
  expect(states(harness, "XJ1.1").live).toEqual(["lights-on", "reverse"]);
});

test("a chain of fuses, however long, is passed whole", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), (count) => {
      const fuses = Array.from({ length: count }, (_, index) => `F${index + 1}`);
      expect(fed(lamp().path("G1.+", ...fuses, "E1.+"), "E1.+")[0]!.fuses).toEqual(fuses);
    }),
    { numRuns: 15, seed: 7 },
  );
});
