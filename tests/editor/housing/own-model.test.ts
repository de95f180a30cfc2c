import { expect, test } from "vitest";
import {
  connectorFileName,
  freeName,
  type OwnRecord,
  readOwn,
  sameName,
  sayKept,
} from "../../../src/editor/housing/own-model.ts";
import type { PartId } from "../../../src/graph/harness.ts";
import { makeCavity, makePart } from "../../../src/graph/make.ts";
import { keepConnector } from "../../../src/graph/own-connector/kept-connector.ts";
import { serialiseConnector } from "../../../src/graph/own-connector/parse-connector.ts";

const plug = makePart("connector", "p:1" as PartId, "X1", { cavities: [makeCavity("1")], rows: [[1]] });
const record = (id: string, name: string, keptAt = 0): OwnRecord => ({
  id,
  text: serialiseConnector(keepConnector(plug, name)),
  keptAt,
});
const list = (...names: readonly string[]) =>
  readOwn(names.map((name, index) => record(`k${index}`, name))).own;

test("they are listed by name, as a person counts, newest first among equals", () => {
  const { own } = readOwn([
    record("a", "Plug 10"),
    record("b", "plug 2"),
    record("c", "Plug 2", 5),
    record("d", "Aerial"),
  ]);
  expect(own.map((one) => one.id)).toEqual(["d", "c", "b", "a"]);
});

test("one that cannot be read is not lost and does not hide the others", () => {
  const damaged: OwnRecord = { id: "x", text: '{"format":"pigtail-connector"', keptAt: 1 };
  const { own, unreadable } = readOwn([damaged, record("a", "Plug")]);
  expect(own.map((one) => one.id)).toEqual(["a"]);
  expect(unreadable).toMatchObject([{ record: damaged, problems: [{ code: "not-json" }] }]);
});

test.each(["radio plug", " Radio  Plug ", "RADIO PLUG"])("%j is the same name as Radio plug", (name) => {
  expect(sameName(list("Radio plug"), name)?.id).toBe("k0");
});

test("an accent stored in two ways is one name, another letter is another, and one's own does not count", () => {
  expect(sameName(list("Caf\u00e9"), "Cafe\u0301")).not.toBeNull();
  expect(sameName(list("Café"), "Cafe")).toBeNull();
  expect(sameName(list("Plug"), "plug", "k0")).toBeNull();
});

test("a free name counts on, also from one that has a number", () => {
  expect(freeName(list("Plug"), "Plug")).toBe("Plug (2)");
  expect(freeName(list("Plug", "Plug (2)"), "Plug")).toBe("Plug (3)");
  expect(freeName(list("Plug", "Plug (2)"), "Plug (2)")).toBe("Plug (3)");
  expect(freeName([], "x".repeat(400)).length).toBeLessThanOrEqual(400);
});

test("a file is named after the connector, without what a file system refuses", () => {
  expect(connectorFileName("Wren: radio/plug")).toBe("Wren-radio-plug.connector.json");
  expect(connectorFileName("…/..")).toMatch(/\.connector\.json$/);
});

test("what is kept is said with its side and view", () => {
  expect(sayKept(keepConnector(plug, "Plug"))).toBe("1 cavity of the vehicle, seen from the wire side");
});
