import { describe, expect, test } from "vitest";
import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness, PartId, WaiverId } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { check, openFindings } from "../../src/rules/check.ts";
import { SEVERITIES } from "../../src/rules/rule.ts";
import { waiverFor } from "../../src/rules/waivers.ts";
import { build } from "../build.ts";
import { joined } from "./harnesses.ts";
import { namesOf } from "./test-rule.ts";

const untidy = () =>
  joined({ A6: "illumination GY" }, { "6": "illumination OG", "9": "parking-brake GN", "10": "mute PK" })
    .path("X2.9", "XE1")
    .wire("loose", "loose");

test("an adapter that is joined through has no finding, but that its colours are a trap", () => {
  expect(check(joined().harness).map(({ rule }) => rule)).toEqual(["colours-collide"]);
});

test("an empty harness has no finding", () => {
  expect(check(build().harness)).toEqual([]);
});

test("what hurts most comes first, and then the place", () => {
  const { harness } = build()
    .unit("X10", { "1": "mute PK", "2": "speed GN" })
    .unit("X2", { "1": "steering-key-1 OG" })
    .unit("X3", { "9": "parking-brake" })
    .path("X3.9", "XE1")
    .wire("loose", "loose");
  expect(check(harness).map((finding) => [finding.severity, namesOf(harness, finding)[0]])).toEqual([
    ["danger", "X3.9"],
    ["weak", "X2.1"],
    ["weak", "X10.1"],
    ["weak", "X10.2"],
    ["tidy", "W2"],
  ]);
});

test("a traced harness gives the same findings as an untraced one", () => {
  const { harness } = untidy();
  const keys = (list: readonly { key: string }[]) => list.map(({ key }) => key);
  expect(keys(check(harness, trace(harness)))).toEqual(keys(check(harness)));
});

test("where parts stand does not matter", () => {
  const { harness } = untidy();
  const places = Object.fromEntries(
    Object.keys(harness.parts).map((id, index) => [id, { x: index * 40, y: 8, pinned: true, turned: false }]),
  );
  const moved: Harness = { ...harness, layout: { places, paths: {} } };
  expect(check(moved)).toEqual(check(harness));
});

describe("a waiver", () => {
  const waive = (harness: Harness, rule: string) => {
    const finding = check(harness).find((one) => one.rule === rule)!;
    const waiver = waiverFor(finding, "  Bench lead only. ", "M. Okafor", "2026-03-02", "v:1" as WaiverId);
    const result = apply(harness, { kind: "put-entry", section: "waivers", entry: waiver });
    if (!result.ok) throw new Error(result.why);
    return result.harness;
  };

  test("takes its finding out of the open ones, keeps it last, and carries its reason", () => {
    const { harness } = untidy();
    const before = check(harness);
    const after = check(waive(harness, "parking-brake-grounded"));
    expect(after).toHaveLength(before.length);
    expect(after.at(-1)).toMatchObject({ rule: "parking-brake-grounded", severity: "danger" });
    expect(after.at(-1)!.waiver!.reason).toBe("Bench lead only.");
    expect(openFindings(after).map(({ rule }) => rule)).not.toContain("parking-brake-grounded");
    expect(openFindings(after)).toHaveLength(before.length - 1);
  });

  test("covers one finding and no other of its rule", () => {
    const { harness } = build().unit("X2", { "1": "mute PK", "2": "speed GN" });
    const open = openFindings(check(waive(harness, "spare-not-capped")));
    expect(open.map((finding) => namesOf(harness, finding))).toEqual([["X2.2"]]);
  });

  test("holds whatever the order of what it is about", () => {
    const { harness } = build()
      .unit("X4", { "2": "speaker-front-left-minus", "4": "speaker-front-right-minus" })
      .wire("X4.2", "X4.4");
    const waived = waive(harness, "speaker-negatives-commoned");
    const [waiver] = Object.values(waived.waivers);
    const turned = { ...waiver!, about: [...waiver!.about].reverse() };
    const again = { ...waived, waivers: { [turned.id]: turned } } as Harness;
    expect(openFindings(check(again)).map(({ rule }) => rule)).not.toContain("speaker-negatives-commoned");
  });

  test("without a reason is refused", () => {
    const { harness } = untidy();
    expect(() => waiverFor(check(harness)[0]!, "  ", "", "", "v:1" as WaiverId)).toThrow(/reason/);
  });
});

test("a finding keeps its key when something else is edited", () => {
  const { harness } = untidy();
  const result = apply(harness, { kind: "change-part", part: "p:X1" as PartId, changes: { name: "cab" } });
  if (!result.ok) throw new Error(result.why);
  expect(check(result.harness).map(({ key }) => key)).toEqual(check(harness).map(({ key }) => key));
});

test("a finding is plain data once it is copied, fix and all", () => {
  const finding = check(untidy().harness).find((one) => one.fix !== null)!;
  const copy = structuredClone(finding);
  expect(copy.fix!.edit).toEqual(finding.fix!.edit);
  expect(JSON.parse(JSON.stringify(finding))).toEqual(copy);
  expect(SEVERITIES).toContain(copy.severity);
});
