import fc from "fast-check";
import { expect, test } from "vitest";
import { apply } from "../../../src/graph/edits/apply.ts";
import { edit, startHistory, undo } from "../../../src/graph/history.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { trace } from "../../../src/graph/trace.ts";
import type { Proposal } from "../../../src/match/propose/proposal.ts";
import { chartOfConnector } from "../../../src/match/review/cavities.ts";
import { acceptCertain, SECTIONS, sectionsOf, subjectsOf } from "../../../src/match/review/items.ts";
import { readBack } from "../../../src/match/review/read-back.ts";
import * as model from "../../../src/match/review/review.ts";
import { toEdit } from "../../../src/match/review/to-edit.ts";
import { ENDS, lead, pair } from "./build-review.ts";

const COLOURS = ["", " RD", " BK", " YE", " BU/WH", " GN"];
const FUNCTIONS = ["constant-feed", "ground", "switched-feed|ground", "unknown", "not-used", "speed"];

const chartOf = (prefix: string) =>
  fc
    .array(fc.tuple(fc.constantFrom(...FUNCTIONS), fc.constantFrom(...COLOURS)), {
      minLength: 1,
      maxLength: 9,
    })
    .map((rows) => ({
      title: "",
      notes: [],
      unread: [],
      leads: rows.map(([name, colour], index) => lead(`${prefix}${index + 1} ${name}${colour}`)),
    }));

/** Any proposal, sensible or not: the model must hold whatever is proposed. */
const proposalFor = (left: readonly string[], right: readonly string[]): fc.Arbitrary<Proposal> => {
  const l = fc.constantFrom(...left);
  const r = fc.constantFrom(...right);
  const some = (from: readonly string[]) =>
    fc.subarray([...from], { minLength: 1, maxLength: Math.min(3, from.length) });
  return fc.record({
    joins: fc.array(
      fc.tuple(l, r).map(([a, b]) => pair(a, b)),
      { maxLength: 6 },
    ),
    ask: fc.array(fc.record({ left: some(left), right: some(right), why: fc.constant("either") }), {
      maxLength: 3,
    }),
    splices: fc.array(
      fc.record({
        function: fc.constant("ground"),
        left: l.map((one) => [one]),
        right: some(right),
        ends: fc.constant(3),
        current_A: fc.constant(null),
      }),
      { maxLength: 2 },
    ),
    capLeft: fc.subarray([...left]),
    capRight: fc.subarray([...right]),
    missing: fc.array(
      fc.record({ side: fc.constant("left" as const), lead: l, why: fc.constant("needed") }),
      { maxLength: 2 },
    ),
  });
};

const charts = fc.tuple(chartOf("L"), chartOf("R"));
const problem = charts.chain(([left, right]) =>
  proposalFor(
    left.leads.map((one) => one.name),
    right.leads.map((one) => one.name),
  ).map((proposal) => model.startReview({ left, right }, proposal, "crimped-butt")),
);

type Move = readonly [what: number, a: number, b: number];
const moves = fc.array(fc.tuple(fc.nat(9), fc.nat(8), fc.nat(8)), { maxLength: 24 });

function play(review: model.Review, list: readonly Move[]): model.Review {
  return list.reduce((now, [what, a, b]) => {
    const at = (side: model.SideName, index: number): model.LeadRef => {
      const { leads } = now.charts[side];
      return { side, lead: leads[index % leads.length]!.name };
    };
    const group = now.groups[a % Math.max(1, now.groups.length)];
    const other = now.groups[b % Math.max(1, now.groups.length)];
    switch (what) {
      case 0:
        return acceptCertain(now);
      case 1:
      case 2:
        return model.join(now, at("left", a), at("right", b));
      case 3:
        return model.join(now, at("right", a), at("left", b));
      case 4:
        return group ? model.unjoin(now, group) : now;
      case 5:
        return group && other ? model.swap(now, group, other) : now;
      case 6:
        return model.decide(now, at(b % 2 ? "left" : "right", a), "capped");
      case 7:
        return model.decide(now, at(b % 2 ? "left" : "right", a), "apart");
      case 8:
        return group ? model.setJoint(now, group, b % 2 ? "bullet-pair" : null) : now;
      default:
        return model.release(now, at(b % 2 ? "left" : "right", a));
    }
  }, review);
}

function expectConsistent(review: model.Review): void {
  for (const side of model.SIDES) {
    const joined = review.groups.flatMap((group) => group[side]);
    expect(new Set(joined).size, "a lead is in one joint at most").toBe(joined.length);
    for (const name of joined) expect(review.fates[side]).not.toHaveProperty([name]);
  }
  for (const group of review.groups)
    expect(Math.min(group.left.length, group.right.length)).toBeGreaterThan(0);
  const sections = sectionsOf(review);
  const shown = SECTIONS.flatMap((name) =>
    sections[name].flatMap((item) => subjectsOf(item).map(model.keyOf)),
  );
  const all = model.SIDES.flatMap((side) => review.charts[side].leads.map(({ name }) => `${side}:${name}`));
  expect(shown.sort(), "each lead is shown once").toEqual(all.sort());
  const keys = SECTIONS.flatMap((name) => sections[name].map((item) => item.key));
  expect(new Set(keys).size).toBe(keys.length);
}

test("any run of decisions keeps each lead in one state, shown once", () => {
  fc.assert(
    fc.property(problem, moves, (review, list) => expectConsistent(play(review, list))),
    { seed: 31, numRuns: 300 },
  );
});

test("what is accepted is in the harness: every lead, what it is joined with, every cap; undo takes all of it back", () => {
  fc.assert(
    fc.property(problem, moves, (review, list) => {
      const played = play(review, list);
      const empty = emptyHarness();
      const result = toEdit(empty, played, ENDS);
      if (!result.ok) throw new Error(result.why);
      const done = edit(startHistory(empty), result.edit);
      if (!done.ok) throw new Error(done.why);
      const harness = done.history.present;
      for (const side of model.SIDES) {
        const part = harness.parts[result.parts[side]];
        if (part?.kind !== "connector") throw new Error("no connector was made");
        expect(part.cavities.map((cavity) => cavity.label)).toEqual(
          played.charts[side].leads.map((one) => one.label),
        );
        expect(part.cavities.map((cavity) => cavity.text)).toEqual(
          played.charts[side].leads.map((one) => one.text),
        );
      }
      const traced = trace(harness);
      const contact = (ref: model.LeadRef) => {
        const index = played.charts[ref.side].leads.findIndex((one) => one.name === ref.lead);
        return `${result.parts[ref.side]}#${index + 1}` as const;
      };
      for (const group of played.groups) {
        const refs = model.SIDES.flatMap((side) => group[side].map((name) => ({ side, lead: name })));
        const circuits = new Set(refs.map((ref) => traced.circuitOf(contact(ref))));
        expect(circuits.size, "one joint is one circuit").toBe(1);
        const [circuit] = circuits;
        const housed = circuit?.contacts.filter((key) =>
          Object.values(result.parts).some((id) => key.startsWith(`${id}#`)),
        );
        expect(housed?.length, "and nothing else of the two is in it").toBe(refs.length);
      }
      expect(undo(done.history).present).toBe(empty);
      return true;
    }),
    { seed: 32, numRuns: 200 },
  );
});

test("a review opened on its own result finds everything decided, and has nothing to change", () => {
  fc.assert(
    fc.property(problem, moves, (review, list) => {
      const played = play(review, list);
      const result = toEdit(emptyHarness(), played, ENDS);
      if (!result.ok) throw new Error(result.why);
      const applied = apply(emptyHarness(), result.edit);
      if (!applied.ok) throw new Error(applied.why);
      const { harness } = applied;
      const again = reopened(harness, result.parts);
      const names = (one: model.Review) =>
        one.groups.map(({ left, right }) => JSON.stringify([[...left].sort(), [...right].sort()])).sort();
      expect(names(again)).toEqual(names(played));
      for (const side of model.SIDES) {
        for (const { name } of played.charts[side].leads) {
          const was = model.stateOf(played, { side, lead: name });
          // A lead that something needs is asked for again, also where it was left apart.
          if (was === "apart") continue;
          expect(model.stateOf(again, { side, lead: name }), `${side} ${name}`).toBe(was);
        }
      }
      const nothing = toEdit(harness, again, {
        left: { part: result.parts.left },
        right: { part: result.parts.right },
      });
      expect(nothing).toMatchObject({ ok: false, why: expect.stringContaining("already") });
    }),
    { seed: 33, numRuns: 200 },
  );
});

test("decisions changed after coming back are made, and leave no bare copper behind", () => {
  fc.assert(
    fc.property(problem, moves, moves, (review, first, then) => {
      const played = play(review, first);
      const result = toEdit(emptyHarness(), played, ENDS);
      if (!result.ok) throw new Error(result.why);
      const applied = apply(emptyHarness(), result.edit);
      if (!applied.ok) throw new Error(applied.why);
      const again = play(reopened(applied.harness, result.parts), then);
      const ends = { left: { part: result.parts.left }, right: { part: result.parts.right } };
      const changed = toEdit(applied.harness, again, ends);
      if (!changed.ok) {
        expect(changed.why).toContain("already");
        return;
      }
      const after = apply(applied.harness, changed.edit);
      if (!after.ok) throw new Error(after.why);
      const wires = Object.values(after.harness.wires);
      expect(wires.filter((wire) => wire.ends.includes("loose"))).toEqual([]);
      for (const part of Object.values(after.harness.parts)) {
        if (part.kind !== "cap" && part.kind !== "splice") continue;
        const count = wires.filter((wire) =>
          wire.ends.some((end) => end !== "loose" && end.part === part.id),
        ).length;
        expect(count, part.designation).toBeGreaterThanOrEqual(part.kind === "cap" ? 1 : 2);
      }
      const last = reopened(after.harness, result.parts);
      const names = (one: model.Review) =>
        one.groups.map(({ left, right }) => JSON.stringify([[...left].sort(), [...right].sort()])).sort();
      expect(names(last)).toEqual(names(again));
    }),
    { seed: 34, numRuns: 200 },
  );
});

function reopened(
  harness: Parameters<typeof readBack>[0],
  parts: Readonly<Record<model.SideName, keyof (typeof harness)["parts"]>>,
): model.Review {
  const housing = (side: model.SideName) => {
    const part = harness.parts[parts[side]];
    if (part?.kind !== "connector") throw new Error("the connector is gone");
    const chart = chartOfConnector(part);
    return { part, chart, names: chart.leads.map((one) => one.name) };
  };
  const [left, right] = [housing("left"), housing("right")];
  const { groups, fates, elsewhere } = readBack(harness, left, right);
  return model.startReview({ left: left.chart, right: right.chart }, model.NO_PROPOSAL, "crimped-butt", {
    groups,
    fates,
    elsewhere,
  });
}
