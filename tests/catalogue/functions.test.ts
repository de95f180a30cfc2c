import { describe, expect, test } from "vitest";
import { findContact, nameContact, nameKind } from "../../src/catalogue/describe.ts";
import { FUNCTIONS, functionOf, isGround, partnerOf } from "../../src/catalogue/functions.ts";
import { contactsOf } from "../../src/graph/contacts.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { functionName } from "../../src/graph/schema/values.ts";
import { Build } from "../build.ts";
import { PART_KINDS } from "../graph/random.ts";

describe("the vocabulary of functions", () => {
  test("each id is one the document can hold, and stands once; each name too", () => {
    for (const { id } of FUNCTIONS) expect(functionName.safeParse(id).success, id).toBe(true);
    expect(new Set(FUNCTIONS.map((item) => item.id)).size).toBe(FUNCTIONS.length);
    expect(new Set(FUNCTIONS.map((item) => item.name)).size).toBe(FUNCTIONS.length);
  });

  test("no word is a synonym of two functions, and each is lower case, so that a chart reads one way", () => {
    const owner = new Map<string, string>();
    for (const { id, synonyms } of FUNCTIONS) {
      for (const word of synonyms) {
        expect(word).toBe(word.toLowerCase().trim());
        expect(owner.get(word), `${word} of ${id}`).toBeUndefined();
        owner.set(word, id);
      }
    }
  });

  test("an unheard-of function reads as not known, also one named like a method", () => {
    for (const id of ["teleport", "", "constructor", "__proto__"]) expect(functionOf(id).id).toBe("unknown");
  });

  test("partners are mutual, of one channel, and of opposite polarity", () => {
    for (const item of FUNCTIONS) {
      const partner = partnerOf(item.id);
      if (item.polarity === null) expect(partner).toBeNull();
      else {
        expect(partner, item.id).not.toBeNull();
        expect(partnerOf(partner!)).toBe(item.id);
        expect(functionOf(partner!).channel).toBe(item.channel);
        expect(functionOf(partner!).polarity).not.toBe(item.polarity);
      }
    }
  });

  test("every ground is one by its group", () => {
    expect(FUNCTIONS.filter((item) => isGround(item.id)).every((item) => item.active === "ground")).toBe(
      true,
    );
    expect(isGround("ground")).toBe(true);
    expect(isGround("speaker-front-left-minus")).toBe(false);
  });

  // Terminal designations: DIN 72552, through published copies of its list (none of them the standard itself).
  test.each([
    ["constant-feed", "30"],
    ["ignition-feed", "15"],
    ["ground", "31"],
    ["illumination", "58"],
    ["stop-lamp", "54"],
    ["indicator-left", "L"],
    ["indicator-right", "R"],
    ["tail-left", "58L"],
    ["tail-right", "58R"],
    ["main-beam", "56a"],
    ["relay-control", "86"],
  ])("%s is terminal %s", (id, terminal) => {
    expect(functionOf(id).din72552).toBe(terminal);
  });

  test("the functions of the parts that have their own are in it", () => {
    const build = new Build().part("supply", "G1").part("ground", "XE1");
    for (const position of [
      "front-left",
      "front-right",
      "rear-left",
      "rear-right",
      "centre",
      "subwoofer",
    ] as const)
      build.part("speaker", `P-${position}`, { position });
    for (const part of Object.values(build.harness.parts)) {
      for (const contact of contactsOf(part)) expect(functionOf(contact.function).id).toBe(contact.function);
    }
  });
});

describe("naming contacts", () => {
  const build = new Build()
    .vehicle("X1", { A4: "constant-feed", "1": "ground" })
    .vehicle("X1.A", { "4": "ground" })
    .part("supply", "G1")
    .wire("X1.1", "XE1");

  test("by designation and label, one-contact parts by designation alone", () => {
    const names = ["X1.A4", "X1.1", "XE1", "G1.+", "G1.−", "X1.A.4"];
    for (const name of names)
      expect(nameContact(build.harness, findContact(build.harness, name)!)).toBe(name);
    expect(findContact(build.harness, "G1.-")).toEqual(findContact(build.harness, "G1.−"));
  });

  test("finds nothing where there is nothing, and still names what is gone", () => {
    for (const name of ["", "X1", "X1.", "X1.A9", "X9.1", "G1"])
      expect(findContact(build.harness, name)).toBeNull();
    expect(nameContact(build.harness, { part: "p:gone" as PartId, contact: 2 })).toBe("p:gone.2");
  });

  test("every kind has a word", () => {
    expect(new Set(PART_KINDS.map(nameKind)).size).toBe(PART_KINDS.length);
  });
});
