import { describe, expect, test } from "vitest";
import { writeColour } from "../../../src/catalogue/colours.ts";
import { nameContact } from "../../../src/catalogue/describe.ts";
import { contactKey, contactsOf } from "../../../src/graph/contacts.ts";
import type { ContactRef, Harness } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";
import { connectorTable, switchTable } from "../../../src/sheets/tables/connector-table.ts";
import { jointTable } from "../../../src/sheets/tables/joint-table.ts";
import { partTable } from "../../../src/sheets/tables/part-table.ts";
import { spareTable } from "../../../src/sheets/tables/spare-table.ts";
import { type Table, textAt } from "../../../src/sheets/tables/table.ts";
import { wireTable } from "../../../src/sheets/tables/wire-table.ts";
import { build } from "../../build.ts";
import { Dice, randomHarness } from "../../graph/random.ts";

const source = (harness: Harness) => ({ harness, traced: trace(harness) });
const column = (table: Table, id: string) => table.rows.map((row) => textAt(table, row, id));

/** What copper joins to a contact, found by walking the wires, splices and mated housings one step at a time. */
function walk(harness: Harness, from: ContactRef): Set<string> {
  const seen = new Set<string>();
  const waiting: ContactRef[] = [from];
  for (let at = waiting.pop(); at; at = waiting.pop()) {
    const key = contactKey(at.part, at.contact);
    if (seen.has(key)) continue;
    seen.add(key);
    for (const wire of Object.values(harness.wires)) {
      for (const [here, there] of [wire.ends, [wire.ends[1], wire.ends[0]]] as const) {
        if (here === "loose" || there === "loose") continue;
        if (here.part === at.part && here.contact === at.contact) waiting.push(there);
      }
    }
    const part = harness.parts[at.part]!;
    if (part.kind === "splice") waiting.push({ part: part.id, contact: 3 - at.contact });
    for (const other of Object.values(harness.parts)) {
      const mated =
        (part.kind === "connector" && part.matedWith === other.id) ||
        (other.kind === "connector" && other.matedWith === part.id);
      if (mated && contactsOf(other).length >= at.contact)
        waiting.push({ part: other.id, contact: at.contact });
    }
  }
  return seen;
}

const random = Array.from({ length: 60 }, (_, seed) => [seed, randomHarness(new Dice(seed), 14)] as const);

describe("tables of 60 random harnesses, against a walk over the wires", () => {
  test.each(random)(
    "seed %i: one row a wire, with its two ends, colour and designation",
    (_seed, harness) => {
      const table = wireTable(source(harness));
      expect(new Set(column(table, "wire"))).toEqual(
        new Set(Object.values(harness.wires).map((wire) => wire.designation)),
      );
      expect(table.rows).toHaveLength(Object.keys(harness.wires).length);
      for (const row of table.rows) {
        const wire = Object.values(harness.wires).find(
          (one) => one.designation === textAt(table, row, "wire"),
        )!;
        const ends = wire.ends.map((end) => (end === "loose" ? "loose" : nameContact(harness, end)));
        expect([textAt(table, row, "from"), textAt(table, row, "to")]).toEqual(ends);
        expect(textAt(table, row, "colour")).toBe(writeColour(wire.colour));
      }
    },
  );

  test.each(random)("seed %i: each cavity goes where copper goes", (_seed, harness) => {
    for (const part of Object.values(harness.parts)) {
      if (part.kind !== "connector" && part.kind !== "module") continue;
      const table = connectorTable(source(harness), part);
      expect(column(table, "cavity")).toEqual(part.cavities.map((cavity) => cavity.label));
      for (const [index, row] of table.rows.entries()) {
        const reached = walk(harness, { part: part.id, contact: index + 1 });
        const expected = Object.values(harness.parts)
          .filter((other) => other.kind !== "splice")
          .flatMap((other) =>
            contactsOf(other)
              .map((contact) => ({ part: other.id, contact: contact.number }))
              .filter((ref) => reached.has(contactKey(ref.part, ref.contact)))
              .filter((ref) => ref.part !== part.id || ref.contact !== index + 1)
              .map((ref) => (other.kind === "cap" ? `cap ${other.designation}` : nameContact(harness, ref))),
          );
        const said = textAt(table, row, "goes")
          .split(", ")
          .filter((word) => word !== "" && !/loose$|^not joined$|^empty$|^cavity plug$/.test(word));
        if (expected.length <= 24) expect(said.sort()).toEqual(expected.sort());
        else expect(said.at(-1)).toBe(`and ${expected.length - 24} more`);
      }
    }
  });

  test.each(random)(
    "seed %i: every lead of every joint is in the joint table, on its side",
    (_seed, harness) => {
      const table = jointTable(source(harness));
      const listed = { left: [] as string[], right: [] as string[] };
      let joint = "";
      for (const row of table.rows) {
        joint = textAt(table, row, "joint") || joint;
        for (const side of ["left", "right"] as const) {
          const text = textAt(table, row, side);
          if (text !== "") listed[side].push(`${joint} ${text.split(" ")[0]}`);
        }
      }
      for (const [side, contact] of [
        ["left", 1],
        ["right", 2],
      ] as const) {
        const expected = Object.values(harness.wires).flatMap((wire) =>
          [
            ...new Set(
              wire.ends.flatMap((end) => (end === "loose" ? [] : [contactKey(end.part, end.contact)])),
            ),
          ]
            .filter((key) => key.endsWith(`#${contact}`))
            .map((key) => harness.parts[key.slice(0, key.lastIndexOf("#")) as keyof Harness["parts"]]!)
            .filter((part) => part.kind === "splice")
            .map((part) => `${part.designation} ${wire.designation}`),
        );
        expect(listed[side].sort()).toEqual(expected.sort());
      }
    },
  );

  test.each(random)("seed %i: the parts list holds each part once and all wire", (_seed, harness) => {
    const table = partTable(source(harness));
    const where = table.rows.flatMap((row) => textAt(table, row, "designations").split(", "));
    const all = [...Object.values(harness.parts), ...Object.values(harness.wires)].map(
      (one) => one.designation,
    );
    expect(where.sort()).toEqual(all.sort());
    const parts = table.rows.filter((row) => textAt(table, row, "kind") !== "wire");
    const counted = parts.reduce((sum, row) => sum + Number(textAt(table, row, "quantity")), 0);
    expect(counted).toBe(Object.keys(harness.parts).length);
  });

  test.each(random)(
    "seed %i: every cavity that ends in a cap or in the air is among the spares",
    (_seed, harness) => {
      const { traced } = source(harness);
      const leads = column(spareTable({ harness, traced }), "lead");
      for (const part of Object.values(harness.parts)) {
        if (part.kind !== "connector" && part.kind !== "module") continue;
        for (const contact of contactsOf(part)) {
          const key = contactKey(part.id, contact.number);
          const circuit = traced.circuitOf(key)!;
          const capped = circuit.contacts.some((other) => traced.partOf(other)?.kind === "cap");
          const joined = circuit.contacts.length > 1 || traced.wiresAt(key).length > 0;
          const name = nameContact(harness, key);
          if (joined && (capped || circuit.loose.length > 0)) expect(leads).toContain(name);
          else if (joined && contact.cavity?.use === "expected") expect(leads).not.toContain(name);
        }
      }
    },
  );
});

describe("joint table", () => {
  const harness = build()
    .vehicle("X1", { "1": "constant-feed RD", "2": "switched-feed YE" })
    .unit("X2", { "1": "constant-feed YE", "2": "switched-feed RD" })
    .part("splice", "XJ1", { method: "crimped-butt" })
    .part("splice", "XJ2", { method: "bullet-pair" })
    .path("X1.1", "XJ1", "X2.1")
    .path("X1.2", "XJ2", "X2.2").harness;
  const table = jointTable(source(harness));

  test("says where the colours differ, and which lead of the other chart is the trap", () => {
    expect(column(table, "differ")).toEqual(["≠ differ", "≠ differ"]);
    expect(column(table, "trap")[0]).toBe(
      "Trap: X2.2 is RD too, switched feed; X1.2 is YE too, switched feed",
    );
    expect(column(table, "kind")[0]).toContain("crimped butt joint");
    expect(column(table, "function")).toEqual(["constant feed", "switched feed"]);
  });

  test("no trap where the same colour means the same", () => {
    const plain = build()
      .vehicle("X1", { "1": "constant-feed RD", "2": "ground BK" })
      .unit("X2", { "1": "constant-feed RD", "2": "ground BK" })
      .path("X1.1", "XJ1", "X2.1").harness;
    const joints = jointTable(source(plain));
    expect(column(joints, "differ")).toEqual([""]);
    expect(column(joints, "trap")).toEqual([""]);
  });
});

test("what is stated of joints, ground points and holders stands in the tables; what is not, says nothing", () => {
  const { harness } = build()
    .part("splice", "XJ1", {
      method: "crimped-butt",
      barrel: "blue",
      cover: "cloth-over-tape",
      zone: "engine-bay",
    })
    .part("splice", "XJ2", { method: "bullet-pair", liveHalf: "shrouded" })
    .part("splice", "XJ3", { method: "tap" })
    .part("ground", "XE1", { where: "kick panel", surface: "bare-metal", serves: "safety-system" })
    .part("fuse", "F1", { rating_A: 10, holder: "tap" });
  expect(column(jointTable(source(harness)), "kind")).toEqual([
    "C  crimped butt joint, blue barrel, covered by tape under cloth tape; in the engine bay",
    "B  bullet pair, can be parted, feed in the shrouded half",
    "T  tap",
  ]);
  const parts = column(partTable(source(harness)), "description");
  expect(parts).toContain("ring on a stud, kick panel, bare metal, a point of a safety system");
  expect(parts).toContain("10 A, in a fuse tap");
});

describe("spares", () => {
  test("say how each is made safe, and what is not", () => {
    const harness = build()
      .vehicle("X1", {
        "1": "mute BN spare",
        "2": "speed BU spare",
        "3": "not-used plugged",
        "4": "illumination GY spare",
        "5": "reverse GN",
        "6": "ground BK",
      })
      .part("cap", "XC1", { method: "sleeve-folded-back" })
      .path("X1.1", "XC1")
      .wire("X1.5", "loose")
      .path("X1.6", "XE1").harness;
    const table = spareTable(source(harness));
    expect(column(table, "lead")).toEqual(["X1.1", "X1.2", "X1.3", "X1.4", "X1.5"]);
    expect(column(table, "state")).toEqual([
      "XC1 folded back in a sleeve",
      "lead of the chart, nothing joined, no cap drawn",
      "cavity plugged",
      "lead of the chart, nothing joined, no cap drawn",
      "W2 hangs loose, not capped",
    ]);
  });
});

describe("sizes and lengths", () => {
  test("follow the harness's own way of writing, and add up by colour and size", () => {
    const made = build()
      .vehicle("X1", { "1": "constant-feed RD", "2": "ground RD" })
      .wire("X1.1", "loose", "RD", { area_mm2: 0.75, length_m: 1.25 })
      .wire("X1.2", "loose", "RD", { area_mm2: 0.75, length_m: 0.5 })
      .wire("X1.2", "loose", "RD", { area_mm2: 0.75 });
    const stock = partTable(source(made.harness)).rows.at(-1)!;
    expect(stock.map((one) => one.text)).toEqual([
      "2",
      "3 pieces",
      "wire",
      "RD, 0.75 mm², 1.75 m and 1 of unstated length",
      "W1, W2, W3",
    ]);
    const awg = wireTable(source(made.settings({ sizes: "awg" }).harness));
    expect(column(awg, "size")).toEqual(["18 AWG", "18 AWG", "18 AWG"]);
    expect(column(awg, "length")).toEqual(["1.25 m", "0.5 m", ""]);
  });
});

test("configuration switches are listed as set and as wanted", () => {
  const harness = build().module("A1", {
    switches: [
      { label: "1", position: "on", wanted: "on", meaning: "bus at 100 kbit/s" },
      { label: "2", position: "unset", wanted: "off", meaning: "camera" },
    ],
  }).harness;
  const part = Object.values(harness.parts)[0]!;
  if (part.kind !== "module") throw new Error("not a module");
  const table = switchTable(part);
  expect(column(table, "position")).toEqual(["on", "not set"]);
  expect(column(table, "differs")).toEqual(["", "differs from the chart"]);
});
