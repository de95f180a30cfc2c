import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ContactKey,
  contactKey,
  contactsOf,
  keyOfEnd,
  refOfKey,
  sameEnd,
} from "../../src/graph/contacts.ts";
import type { ContactRef, Harness, Wire } from "../../src/graph/harness.ts";
import { emptyHarness, makePart } from "../../src/graph/make.ts";
import { trace } from "../../src/graph/trace.ts";
import { Build } from "../build.ts";
import { allContacts, Dice, PART_KINDS, randomHarness } from "./random.ts";

/** Whether copper joins two contacts, one step: a wire between them, a splice's two sides, mated cavities. */
function joinedDirectly(harness: Harness, a: ContactRef, b: ContactRef): boolean {
  const left = harness.parts[a.part]!;
  const right = harness.parts[b.part]!;
  if (a.part === b.part && left.kind === "splice") return true;
  const mates = (one: typeof left, other: typeof right) =>
    one.kind === "connector" && one.matedWith === other.id;
  if (a.contact === b.contact && (mates(left, right) || mates(right, left))) return true;
  return Object.values(harness.wires).some(
    ({ ends: [p, q] }) => (sameEnd(p, a) && sameEnd(q, b)) || (sameEnd(p, b) && sameEnd(q, a)),
  );
}

/** Circuits by flooding from each contact over every other one: slow and plain. */
function flooded(harness: Harness): Set<string> {
  const left = allContacts(harness);
  const circuits = new Set<string>();
  while (left.length) {
    const group = [left.shift()!];
    for (let i = 0; i < group.length; i++) {
      for (let j = left.length - 1; j >= 0; j--) {
        if (joinedDirectly(harness, group[i]!, left[j]!)) group.push(...left.splice(j, 1));
      }
    }
    circuits.add(
      group
        .map(({ part, contact }) => contactKey(part, contact))
        .sort()
        .join(" "),
    );
  }
  return circuits;
}

const touching = (wire: Wire, key: ContactKey) => wire.ends.some((end) => keyOfEnd(end) === key);

test("circuits are those of a plain flood fill, and every look-up agrees with them", () => {
  let joined = 0;
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const harness = randomHarness(new Dice(seed), 16);
      const traced = trace(harness);
      const withContacts = traced.circuits.filter((circuit) => circuit.contacts.length);
      expect(new Set(withContacts.map((circuit) => [...circuit.contacts].sort().join(" ")))).toEqual(
        flooded(harness),
      );
      expect(withContacts.length).toBe(flooded(harness).size);
      joined += withContacts.filter((circuit) => circuit.contacts.length > 2).length;
      traced.circuits.forEach((circuit, index) => {
        expect(circuit.id).toBe(index);
        for (const key of circuit.contacts) expect(traced.circuitOf(key)).toBe(circuit);
        for (const id of circuit.wires) expect(traced.circuitOfWire(id)).toBe(circuit);
        const loose = circuit.wires.filter((id) => harness.wires[id]!.ends.includes("loose"));
        expect(circuit.loose).toEqual(loose);
        for (const id of circuit.wires) {
          for (const end of harness.wires[id]!.ends) {
            const key = keyOfEnd(end);
            if (key) expect(circuit.contacts).toContain(key);
          }
        }
      });
      expect(traced.circuits.flatMap((circuit) => circuit.wires).sort()).toEqual(
        Object.keys(harness.wires).sort(),
      );
      for (const { part, contact } of allContacts(harness)) {
        const key = contactKey(part, contact);
        expect(traced.wiresAt(key)).toEqual(
          Object.values(harness.wires).filter((wire) => touching(wire, key)),
        );
        expect(traced.partOf(key)).toBe(harness.parts[part]);
        expect(traced.contact(key)).toBe(contactsOf(harness.parts[part]!)[contact - 1]);
      }
    }),
    { numRuns: 150, seed: 10487 },
  );
  expect(joined).toBeGreaterThan(100);
});

describe("where copper ends", () => {
  test.each(["fuse", "switch", "resistor", "capacitor", "diode", "load", "speaker", "supply"] as const)(
    "it does not run through a %s",
    (kind) => {
      const { traced, at } = bench(kind);
      expect(traced.circuitOf(at("X1.1"))!.id).not.toBe(traced.circuitOf(at("X1.2"))!.id);
    },
  );

  test("it runs through a splice", () => {
    const { traced, at } = bench("splice");
    expect(traced.circuitOf(at("X1.1"))).toBe(traced.circuitOf(at("X1.2")));
  });

  test("not through a relay's contacts or its coil", () => {
    const build = new Build().part("relay", "K1");
    expect(trace(build.harness).circuits).toHaveLength(5);
  });

  test("it runs from cavity to cavity of mated connectors, as far as both have them", () => {
    const build = new Build()
      .vehicle("X1", { "1": "ground", "2": "ground", "3": "ground" })
      .unit("X2", { a: "ground", b: "ground" })
      .mate("X1", "X2");
    const traced = trace(build.harness);
    expect(traced.circuits.map((circuit) => circuit.contacts.length)).toEqual([2, 2, 1]);
  });

  test("a wire that is loose at both ends is a circuit without contacts", () => {
    const [circuit] = trace(new Build().wire("loose", "loose").harness).circuits;
    expect(circuit).toEqual({ id: 0, contacts: [], wires: ["w:W1"], loose: ["w:W1"] });
  });

  test("an empty harness has none, and what is not there has no circuit", () => {
    const traced = trace(emptyHarness());
    expect(traced.circuits).toEqual([]);
    expect(traced.circuitOf("p:1#1")).toBeUndefined();
    expect(traced.wiresAt("p:1#1")).toEqual([]);
    expect(traced.contact("p:1#1")).toBeUndefined();
  });

  function bench(
    kind: "splice" | "fuse" | "switch" | "resistor" | "capacitor" | "diode" | "load" | "speaker" | "supply",
  ) {
    const build = new Build().vehicle("X1", { "1": "unknown", "2": "unknown" }).part(kind, "Z1");
    const part = Object.values(build.harness.parts).find((one) => one.designation === "Z1")!;
    const labels = contactsOf(part).map((contact) => `Z1.${contact.label}`);
    build.wire("X1.1", labels[0]!).wire("X1.2", labels[1]!);
    return { traced: trace(build.harness), at: (name: string) => keyOfEnd(build.at(name))! };
  }
});

describe("contacts", () => {
  test("of every kind are numbered from 1, labelled once each, and the same array every time", () => {
    for (const kind of PART_KINDS) {
      const part = makePart(kind, "p:1" as Parameters<typeof makePart>[1], "Z1");
      const contacts = contactsOf(part);
      expect(contacts.map((contact) => contact.number)).toEqual(contacts.map((_, index) => index + 1));
      expect(new Set(contacts.map((contact) => contact.label)).size).toBe(contacts.length);
      expect(contactsOf(part)).toBe(contacts);
    }
  });

  test("of a relay are the terminals of DIN 72552: 30, 85, 86, 87, 87a, 87b", () => {
    const labels = (["make", "changeover", "double-make"] as const).map((poles) =>
      contactsOf(makePart("relay", "p:1" as Parameters<typeof makePart>[1], "K1", { poles })).map(
        (one) => one.label,
      ),
    );
    expect(labels).toEqual([
      ["30", "85", "86", "87"],
      ["30", "85", "86", "87", "87a"],
      ["30", "85", "86", "87", "87b"],
    ]);
  });

  test("a key names its contact there and back", () => {
    const key = contactKey("p:a-b_9" as Parameters<typeof contactKey>[0], 12);
    expect(refOfKey(key)).toEqual({ part: "p:a-b_9", contact: 12 });
  });
});
