import { expect, test } from "vitest";
import { writeColour } from "../../src/catalogue/colours.ts";
import { awgArea_mm2 } from "../../src/catalogue/conductors.ts";
import {
  BLADE_7_RV,
  BLADE_7_TRADITIONAL,
  FLAT_4,
  ISO_1185,
  ISO_1724,
  ISO_3732,
  type Pinout,
  SAE_J560,
} from "../../src/catalogue/pinouts.ts";

const rowOf = (pinout: Pinout, cavity: string) => pinout.rows.find((item) => item.cavity === cavity)!;
const at = (pinout: Pinout, cavity: string) => {
  const found = rowOf(pinout, cavity);
  return [found.function, writeColour(found.colour)];
};

// Source: a connector maker's allocation sheet for 12 V; caravan advice sites, "12S socket wiring" and "7 pin
// trailer plug 12S"; a vehicle-history society's page on trailer connections.
test.each([
  ["1", "reverse", "YE"],
  ["3", "ground-constant", "WH"],
  ["4", "constant-feed", "GN"],
  ["5", "not-used", "BN"],
  ["6", "ignition-feed", "RD"],
  ["7", "ground-switched", "BK"],
])("ISO 3732 pin %s is %s, %s", (cavity, ...published) => {
  expect(at(ISO_3732, cavity)).toEqual(published);
});

// Source: the same pages disagree on pins 2 and 7.
test("what differs between sources is marked, and says how", () => {
  for (const cavity of ["2", "7"]) {
    const found = rowOf(ISO_3732, cavity);
    expect(found.confidence).toBe("disputed");
    expect(found.note).toMatch(/spare/i);
  }
});

// Source: a trailer-technician training site's glossary, "Trailer 7-Way"; encyclopaedia article "Trailer
// connectors in Australia"; pin 7: a connector maker's standards page "SAE J560".
test.each([
  ["1", "ground", "WH"],
  ["2", "marker-lamps", "BK"],
  ["3", "indicator-left", "YE"],
  ["4", "stop-lamp", "RD"],
  ["5", "indicator-right", "GN"],
  ["6", "tail-lamps", "BN"],
  ["7", "anti-lock-feed", "BU"],
])("SAE J560 pin %s is %s, %s", (cavity, ...published) => {
  expect(at(SAE_J560, cavity)).toEqual(published);
});

// Source: encyclopaedia article "Trailer connectors in Australia" for the colours, which are those of SAE J560;
// left and right of the tail lamps from memory.
test("ISO 1185 has the colours of SAE J560, cavity by cavity, and tells left from right tail lamps", () => {
  expect(ISO_1185.rows.map(({ cavity, colour }) => [cavity, colour])).toEqual(
    SAE_J560.rows.map(({ cavity, colour }) => [cavity, colour]),
  );
  expect(rowOf(ISO_1185, "2")).toMatchObject({ function: "tail-left", confidence: "memory" });
  expect(rowOf(ISO_1185, "6")).toMatchObject({ function: "tail-right", confidence: "memory" });
});

// Source: a connector maker's standards page "SAE J560": its plug is that of ISO 1185; the voltages differ.
test("the 24 V and the 12 V heavy socket are one shell of two voltages, and each says so", () => {
  expect(ISO_1185.shell).toBe(SAE_J560.shell);
  expect([ISO_1185.voltage_V, SAE_J560.voltage_V]).toEqual([24, 12]);
  expect(ISO_1185.caution).toContain("SAE J560");
  expect(SAE_J560.caution).toContain("ISO 1185");
});

// Source: a trailer-parts shop, "What do the Colors on 7-Way Trailer Light Wiring Mean?"; a hobby note, "7-way
// trailer wiring colors".
test.each([
  ["ground", "ground", "WH", "WH"],
  ["brakes", "trailer-brake", "BU", "BU"],
  ["charge", "trailer-charge", "BK", "BK"],
  ["tail", "tail-lamps", "BN", "GN"],
  ["left", "stop-turn-left", "YE", "RD"],
  ["right", "stop-turn-right", "GN", "BN"],
  ["reverse", "reverse", "VT", "YE"],
])("7-way blade, %s: %s is %s in the traditional set and %s in the other", (cavity, name, old, rv) => {
  expect(at(BLADE_7_TRADITIONAL, cavity)).toEqual([name, old]);
  expect(at(BLADE_7_RV, cavity)).toEqual([name, rv]);
});

test("a blade whose colour differs between the sets is disputed in both", () => {
  for (const { cavity, colour } of BLADE_7_TRADITIONAL.rows) {
    const other = rowOf(BLADE_7_RV, cavity);
    const differs = writeColour(colour) !== writeColour(other.colour);
    expect(rowOf(BLADE_7_TRADITIONAL, cavity).confidence === "disputed", cavity).toBe(differs);
    expect(other.confidence === "disputed", cavity).toBe(differs);
  }
});

// Source: the same shop: 16 AWG at least for lamps, 12 AWG at least for ground, brake and battery.
test.each([
  ["ground", "12"],
  ["brakes", "12"],
  ["charge", "12"],
  ["tail", "16"],
  ["left", "16"],
  ["right", "16"],
] as const)("7-way blade, %s: %s AWG", (cavity, gauge) => {
  expect(rowOf(BLADE_7_RV, cavity).area_mm2).toBeCloseTo(awgArea_mm2(gauge), 1);
});

// Source: a trailer-parts shop's answers; a trailer-plan site that names SAE J2863.
test.each([
  ["ground", "ground", "WH"],
  ["tail", "tail-lamps", "BN"],
  ["left", "stop-turn-left", "YE"],
  ["right", "stop-turn-right", "GN"],
])("4-way flat, %s: %s, %s", (cavity, ...published) => {
  expect(at(FLAT_4, cavity)).toEqual(published);
});

// Source: encyclopaedia article "Trailer connectors in Australia": the brakes stand in pin 5 of that shell.
test("the lighting socket warns of the brakes that another country puts into it", () => {
  expect(ISO_1724.caution).toMatch(/Australia.*brakes in 5/);
});
