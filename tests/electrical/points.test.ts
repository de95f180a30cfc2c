import { describe, expect, test } from "vitest";
import { directionOf } from "../../src/electrical/direction.ts";
import { pointsOf } from "../../src/electrical/points.ts";
import { contactsOf } from "../../src/graph/contacts.ts";
import { trace } from "../../src/graph/trace.ts";
import { type Build, build } from "../build.ts";

const points = ({ harness }: Build) => pointsOf(harness, trace(harness));
const names = (list: readonly { part: { designation: string }; contact: { label: string } }[]) =>
  list.map(({ part, contact }) => `${part.designation}.${contact.label}`).sort();

test("joints and caps are no points; a circuit names its caps", () => {
  const harness = build().unit("X2", { "1": "mute" }).path("X2.1", "XJ1", "XC1");
  const found = points(harness);
  expect(names(found.all)).toEqual(["X2.1"]);
  const { part, contact } = harness.at("X2.1");
  expect(found.circuitAt(part, contact).caps).toEqual(["p:XC1"]);
});

test("the receptacles of a module belong to it, its own cavities too", () => {
  const harness = build()
    .module("A1", { rows: { "1": "ground" } })
    .receptacle("X1", "A1", { "1": "constant-feed" })
    .unit("X2", { "1": "mute" });
  const { byUnit } = points(harness);
  expect(names(byUnit.get("p:A1")!)).toEqual(["A1.1", "X1.1"]);
  expect(names(byUnit.get("equipment")!)).toEqual(["X2.1"]);
});

describe("mated contacts", () => {
  const mated = (a: string, b: string) => {
    const harness = build().vehicle("X1", { "1": a }).vehicle("X2", { "1": b }).mate("X1", "X2");
    harness.unit("X3", { "1": "mute" }).wire("X2.1", "X3.1");
    return { harness, found: points(harness) };
  };

  test("that mean the same are one point, at the one that says more", () => {
    const { harness, found } = mated("constant-feed RD", "constant-feed");
    expect(names(found.all)).toEqual(["X1.1", "X3.1"]);
    const { part, contact } = harness.at("X2.1");
    const point = found.pointAt(part, contact)!;
    expect(point.part.designation).toBe("X1");
    expect(found.wiresAt(point).map((wire) => wire.designation)).toEqual(["W1"]);
    expect(names(found.partners(point))).toEqual(["X3.1"]);
  });

  test("of which one has no function are one point, at the other", () => {
    expect(names(mated("unknown", "constant-feed").found.all)).toEqual(["X2.1", "X3.1"]);
  });

  test("that mean different things are two", () => {
    expect(names(mated("switched-feed", "constant-feed").found.all)).toEqual(["X1.1", "X2.1", "X3.1"]);
  });
});

describe("a direction that no chart states", () => {
  const direction = (harness: Build, name: string) => {
    const { part, contact } = harness.at(name);
    const owner = harness.harness.parts[part]!;
    return directionOf(owner, contactsOf(owner)[contact - 1]!);
  };

  test.each([
    ["constant-feed", "gives", "takes"],
    ["ground", "gives", "takes"],
    ["illumination", "gives", "takes"],
    ["parking-brake", "gives", "takes"],
    ["speaker-front-left-plus", "takes", "gives"],
    ["amplifier-turn-on", "takes", "gives"],
    ["can-high", "both", "both"],
    ["mute", "unknown", "unknown"],
  ])("%s: the vehicle %s, a receiver %s", (name, vehicle, receiver) => {
    expect(direction(build().vehicle("X1", { "1": `${name} unknown` }), "X1.1")).toBe(vehicle);
    expect(direction(build().unit("X2", { "1": `${name} unknown` }), "X2.1")).toBe(receiver);
  });

  test("is not guessed for an amplifier's speaker leads, but a feed it surely takes", () => {
    const harness = build().module("A1", {
      role: "amplifier",
      rows: { "1": "speaker-front-left-plus unknown", "2": "constant-feed unknown" },
    });
    expect(direction(harness, "A1.1")).toBe("unknown");
    expect(direction(harness, "A1.2")).toBe("takes");
  });

  test("is left alone where the chart states one", () => {
    expect(direction(build().vehicle("X1", { "1": "constant-feed takes" }), "X1.1")).toBe("takes");
  });
});
