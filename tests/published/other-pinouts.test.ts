import { describe, expect, test } from "vitest";
import { writeColour } from "../../src/catalogue/colours.ts";
import {
  ISO_10487_C,
  type Pinout,
  RCA_LEFT,
  RCA_RIGHT,
  RCA_VIDEO,
  RECEIVER_FLYING_LEADS,
  RELAY_CHANGEOVER,
  RELAY_MAKE,
  SAE_J1962_A,
  SAE_J1962_B,
  USB_2,
} from "../../src/catalogue/pinouts.ts";
import { contactsOf } from "../../src/graph/contacts.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makePart } from "../../src/graph/make.ts";

const rowOf = (pinout: Pinout, cavity: string) => pinout.rows.find((item) => item.cavity === cavity)!;

// Source: encyclopaedia article "Connectors for car audio"; radio pin tables of a pocket electronics reference.
test.each([
  ["C1", "line-rear-left-signal", "gives"],
  ["C2", "line-rear-right-signal", "gives"],
  ["C3", "audio-ground", "takes"],
  ["C4", "line-front-left-signal", "gives"],
  ["C5", "line-front-right-signal", "gives"],
  ["C6", "amplifier-turn-on", "gives"],
  ["C7", "data-receive", "takes"],
  ["C8", "data-transmit", "gives"],
  ["C9", "ground", "takes"],
  ["C10", "switched-feed", "gives"],
  ["C11", "remote-control", "takes"],
  ["C13", "data-receive", "takes"],
  ["C14", "data-transmit", "gives"],
  ["C15", "constant-feed", "gives"],
  ["C16", "switched-feed", "gives"],
  ["C19", "aux-left", "takes"],
  ["C20", "aux-right", "takes"],
])("ISO 10487 %s is %s, which the receiver %s", (cavity, name, direction) => {
  expect(rowOf(ISO_10487_C, cavity)).toMatchObject({ function: name, direction });
});

describe("SAE J1962", () => {
  // Source: a logger maker's documentation, "OBD-II J1962 Connector Pinout"; "OBD II diagnostic connector pin
  // assignment"; a tool retailer's article; a diagnostic tool's manual; article "SAE J1962-2016".
  test.each([
    ["2", "j1850-plus"],
    ["4", "ground"],
    ["5", "sense-ground"],
    ["6", "can-high"],
    ["7", "k-line"],
    ["10", "j1850-minus"],
    ["14", "can-low"],
    ["15", "l-line"],
    ["16", "constant-feed"],
  ])("pin %s is %s", (cavity, name) => {
    for (const pinout of [SAE_J1962_A, SAE_J1962_B]) expect(rowOf(pinout, cavity).function).toBe(name);
  });

  // Source: the same pages: seven cavities are left to the maker.
  test("the maker's cavities claim nothing", () => {
    const free = SAE_J1962_A.rows.filter((item) => item.function === "unknown");
    expect(free.map((item) => item.cavity)).toEqual(["1", "3", "8", "9", "11", "12", "13"]);
  });

  // Source: the logger maker's documentation: type A 12 V, 4 A; type B 24 V, 2 A.
  test("types A and B differ in voltage and in what pin 16 gives", () => {
    expect([SAE_J1962_A.voltage_V, rowOf(SAE_J1962_A, "16").current_A]).toEqual([12, 4]);
    expect([SAE_J1962_B.voltage_V, rowOf(SAE_J1962_B, "16").current_A]).toEqual([24, 2]);
    expect(SAE_J1962_A.shell).not.toBe(SAE_J1962_B.shell);
  });
});

describe("relay sockets", () => {
  // Source: DIN 72552 through a UK technical blog, "Automotive Relays", and copies of a relay guide.
  test.each([
    ["30", "relay-common"],
    ["85", "relay-coil-return"],
    ["86", "relay-control"],
    ["87", "relay-output"],
    ["87a", "relay-output-at-rest"],
  ])("%s is %s", (cavity, name) => {
    expect(rowOf(RELAY_CHANGEOVER, cavity).function).toBe(name);
  });

  test("they have the contacts of the relay part that goes in", () => {
    for (const [pinout, poles] of [
      [RELAY_MAKE, "make"],
      [RELAY_CHANGEOVER, "changeover"],
    ] as const) {
      const relay = makePart("relay", "p:1" as PartId, "K1", { poles });
      const labels = contactsOf(relay).map((contact) => contact.label);
      expect(new Set(pinout.rows.map((item) => item.cavity))).toEqual(new Set(labels));
    }
  });

  // Source: the same blog: two layouts with 30 and 86 exchanged.
  test("the two footprints are warned of", () => {
    expect(RELAY_MAKE.caution).toMatch(/30 and 86 are exchanged/);
  });
});

// Source: a mobile-video retailer's "Car Stereo Radio Power Wiring Guide"; a car-audio retailer's "Wiring Harness
// Color Standards"; a UK installer's "How to identify Aftermarket Car Stereo Wire Colours".
test.each([
  ["YE", "constant-feed", "takes"],
  ["RD", "switched-feed", "takes"],
  ["BK", "ground", "takes"],
  ["BU", "antenna-power", "gives"],
  ["BU/WH", "amplifier-turn-on", "gives"],
  ["OG/WH", "illumination", "takes"],
  ["WH", "speaker-front-left-plus", "gives"],
  ["WH/BK", "speaker-front-left-minus", "gives"],
  ["GY", "speaker-front-right-plus", "gives"],
  ["GN", "speaker-rear-left-plus", "gives"],
  ["VT/BK", "speaker-rear-right-minus", "gives"],
  ["GN light", "parking-brake", "takes"],
])("a receiver's lead %s is %s, which it %s", (cavity, name, direction) => {
  expect(rowOf(RECEIVER_FLYING_LEADS, cavity)).toMatchObject({ function: name, direction });
});

// Source: a video-connector tutorial; an AV-connector wiki page.
test.each([
  ["line-front-left-signal", "WH", RCA_LEFT],
  ["line-front-right-signal", "RD", RCA_RIGHT],
  ["video-signal", "YE", RCA_VIDEO],
])("the centre of an RCA plug is %s where it is marked %s", (name, letters, pinout) => {
  expect(rowOf(pinout, "centre")).toMatchObject({ function: name, note: `Plug marked ${letters}.` });
});

// Source: Hardware Book, page on USB; encyclopaedia article "Universal Serial Bus".
test.each([
  ["1", "usb-power", "RD"],
  ["2", "usb-data-minus", "WH"],
  ["3", "usb-data-plus", "GN"],
  ["4", "usb-ground", "BK"],
])("USB 2.0 contact %s is %s, %s", (cavity, name, letters) => {
  const found = rowOf(USB_2, cavity);
  expect([found.function, writeColour(found.colour)]).toEqual([name, letters]);
});
