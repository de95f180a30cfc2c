import fc from "fast-check";
import { expect, test } from "vitest";
import { contactKey } from "../../src/graph/contacts.ts";
import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness, Part, PartId, Wire } from "../../src/graph/harness.ts";
import { makePlace } from "../../src/graph/make.ts";
import { trace } from "../../src/graph/trace.ts";
import { check } from "../../src/rules/check.ts";
import { sayCircuit } from "../../src/rules/say.ts";
import { allContacts, type Dice, randomEdit } from "../graph/random.ts";
import { telling } from "./telling.ts";
import { namesOf } from "./test-rule.ts";

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });

test("no edit makes check or the words for a circuit throw", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      let { dice, harness } = telling(seed);
      for (let step = 0; step < 6; step++) {
        const edit = randomEdit(dice, harness);
        if ("ok" in edit) continue;
        const result = apply(harness, edit);
        if (!result.ok) continue;
        harness = result.harness;
        const traced = trace(harness);
        for (const finding of check(harness, traced)) {
          expect(finding.message).not.toMatch(/undefined|NaN|\[object/);
          expect(finding.about.length).toBeGreaterThan(0);
          expect(namesOf(harness, finding).every((name) => name !== "")).toBe(true);
        }
        for (const { part, contact } of allContacts(harness))
          expect(sayCircuit(harness, traced, contactKey(part, contact))).toMatch(/^[A-Z0-9].*\.$/);
      }
    }),
    { numRuns: 40, seed: 20260301 },
  );
});

test("every fix that is offered can be made, and its finding is gone", () => {
  const cured = new Set<string>();
  fc.assert(
    fc.property(seeds, (seed) => {
      const { harness } = telling(seed);
      for (const finding of check(harness)) {
        if (!finding.fix) continue;
        const result = apply(harness, finding.fix.edit);
        if (!result.ok) throw new Error(`${finding.message} ${finding.fix.label}: ${result.why}`);
        const after = check(result.harness).map(({ key }) => key);
        expect(after, `${finding.rule}: ${finding.message} ${finding.fix.label}`).not.toContain(finding.key);
        cured.add(finding.rule);
      }
    }),
    { numRuns: 120, seed: 20260302 },
  );
  expect(cured.size).toBeGreaterThan(5);
});

/** What a person reads of the findings, without ids and in no order. */
function read(harness: Harness): string[] {
  return check(harness)
    .map((finding) =>
      [
        finding.rule,
        finding.severity,
        finding.message,
        finding.fix?.label,
        ...namesOf(harness, finding).sort(),
      ].join(" | "),
    )
    .sort();
}

function shuffled<T>(dice: Dice, items: readonly T[]): T[] {
  const left = [...items];
  return Array.from(items, () => left.splice(dice.below(left.length), 1)[0]!);
}

/** The same harness under other ids, its parts and wires in another order. */
function renamed(dice: Dice, harness: Harness): Harness {
  const ids = new Map<string, string>();
  for (const id of shuffled(dice, Object.keys(harness.parts))) ids.set(id, `p:n${ids.size}x`);
  for (const id of shuffled(dice, Object.keys(harness.wires))) ids.set(id, `w:n${ids.size}x`);
  const text = JSON.stringify({
    parts: shuffled(dice, Object.values(harness.parts)),
    wires: shuffled(dice, Object.values(harness.wires)),
  }).replace(/"([pw]:[A-Za-z0-9_-]+)"/g, (whole, id: string) => (ids.has(id) ? `"${ids.get(id)}"` : whole));
  const { parts, wires } = JSON.parse(text) as { parts: Part[]; wires: Wire[] };
  return {
    ...harness,
    parts: Object.fromEntries(parts.map((part) => [part.id, part])),
    wires: Object.fromEntries(wires.map((wire) => [wire.id, wire])),
    waivers: {},
  };
}

test("other ids and another order of parts and wires change nothing that a person reads", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { dice, harness } = telling(seed);
      const plain = { ...harness, waivers: {} };
      expect(read(renamed(dice, plain))).toEqual(read(plain));
    }),
    { numRuns: 100, seed: 20260303 },
  );
});

test("where parts stand on the drawing changes nothing", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { dice, harness } = telling(seed);
      const places = Object.fromEntries(
        (Object.keys(harness.parts) as PartId[]).map((id) => [
          id,
          makePlace(dice.below(900), dice.below(900)),
        ]),
      );
      const moved: Harness = { ...harness, layout: { places, paths: {} } };
      const keys = (one: Harness) => check(one).map(({ key, severity }) => `${severity} ${key}`);
      expect(keys(moved)).toEqual(keys(harness));
    }),
    { numRuns: 40, seed: 20260304 },
  );
});
