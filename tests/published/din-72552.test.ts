import { expect, test } from "vitest";
import { FUNCTIONS } from "../../src/catalogue/functions.ts";
import { DIN_72552, terminalOf } from "../../src/catalogue/terminals.ts";
import { contactsOf } from "../../src/graph/contacts.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makePart } from "../../src/graph/make.ts";

// Source: encyclopaedia article "DIN 72552"; "Terminal Designations (Excerpts from DIN Standard 72 552)" in an
// automotive handbook, 3rd edition; kfz-tech.de, "Klemmenbezeichnungen".
test.each([
  ["15", /switched plus/],
  ["30", /direct from the battery/],
  ["31", /minus.*ground/],
  ["31b", /through a switch or relay/],
  ["49a", /flasher unit, output/],
  ["50", /starter control/],
  ["53a", /park/],
  ["54", /stop lamps/],
  ["55", /front fog/],
  ["56a", /main beam/],
  ["56b", /dipped beam/],
  ["58L", /tail lamps, left/],
  ["58R", /tail lamps, right/],
  ["61", /charge tell-tale/],
  ["85", /coil, output/],
  ["86", /coil, input/],
])("terminal %s", (terminal, meaning) => {
  expect(terminalOf(terminal)).toMatchObject({ confidence: "several" });
  expect(terminalOf(terminal)!.meaning).toMatch(meaning);
});

test("no terminal is listed twice", () => {
  expect(new Set(DIN_72552.map((item) => item.terminal)).size).toBe(DIN_72552.length);
});

test("the terminal numbers of the vocabulary are in the list, and mean the same there", () => {
  for (const { id, din72552 } of FUNCTIONS) {
    if (din72552 === null) continue;
    const found = terminalOf(din72552);
    expect(found, `${id}: ${din72552}`).not.toBeNull();
    if (!id.startsWith("ground-")) expect(found!.function).toBe(id);
  }
});

// Source: a relay maker's data sheet for plug-in relays; kfz-tech.de. 30 common, 87 make, 87a break, 85 and 86 coil.
test("relay contacts bear the terminal numbers of common relays", () => {
  const labels = (poles: "make" | "changeover" | "double-make") =>
    contactsOf(makePart("relay", "p:1" as PartId, "K1", { poles })).map((contact) => contact.label);
  expect(labels("make")).toEqual(["30", "85", "86", "87"]);
  expect(labels("changeover")).toEqual(["30", "85", "86", "87", "87a"]);
  expect(labels("double-make")).toEqual(["30", "85", "86", "87", "87b"]);
});

test("a terminal is read as charts write it, and a stranger is none", () => {
  expect(terminalOf("Kl. 30")?.terminal).toBe("30");
  expect(terminalOf("KL15")?.terminal).toBe("15");
  expect(terminalOf("999")).toBeNull();
});
