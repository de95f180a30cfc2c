import { describe, expect, test } from "vitest";
import {
  alike,
  countBySeverity,
  partFindings,
  placeOfFinding,
  previewWords,
  sayChange,
  sayWaived,
  waiveEdit,
  withFollowing,
} from "../../../src/editor/findings/findings-model.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import { trace } from "../../../src/graph/trace.ts";
import { check } from "../../../src/rules/check.ts";
import { build } from "../../build.ts";

const { harness } = build()
  .vehicle("X1", { A4: "constant-feed gives RD 1.5 fuse:15", A6: "illumination gives BU fuse:5" })
  .wire("X1.A4", "loose")
  .wire("X1.A6", "loose");
const findings = check(harness, trace(harness));

test("a loose live lead is found, placed and counted", () => {
  expect(findings.length).toBeGreaterThan(0);
  const counts = countBySeverity(findings);
  expect(counts.danger + counts.fault + counts.weak + counts.tidy).toBe(findings.length);
  expect(placeOfFinding(harness, [{ wire: findings[0]!.about[0]! as never }])).toBe("a wire that is gone");
  expect(placeOfFinding(harness, [{ part: "p:X1" as never, contact: 1 }])).toBe("X1.A4");
});

describe("waiving", () => {
  const [finding] = findings;
  test("without a reason is refused", () => {
    expect(waiveEdit(harness, finding!, "  ", "", "2026-03-02")).toMatchObject({ ok: false });
  });

  test("moves a finding to the waived ones, with the reason", () => {
    const edit = waiveEdit(harness, finding!, "goes to the bench first", "M. Penrose", "2026-03-02") as Edit;
    const next = apply(harness, edit);
    if (!next.ok) throw new Error(next.why);
    const { open, waived } = partFindings(check(next.harness, trace(next.harness)));
    expect(waived.map((one) => [one.key, one.waiver?.reason])).toEqual([
      [finding!.key, "goes to the bench first"],
    ]);
    expect(open).toHaveLength(findings.length - 1);
    expect(sayChange(findings, [...open, ...waived])).toContain("One finding gone.");
  });
});

describe("what is said of a change", () => {
  test("nothing where nothing changed", () => {
    expect(sayChange(findings, [...findings].reverse())).toBe("");
  });
  test("one new finding in its own words", () => {
    expect(sayChange(findings.slice(1), findings)).toBe(
      `Found, ${findings[0]!.severity}: ${findings[0]!.message}`,
    );
  });
  test("many are counted; the last one gone is news", () => {
    expect(sayChange([], findings)).toBe(
      findings.length > 1 ? `${findings.length} new findings.` : expect.any(String),
    );
    expect(sayChange(findings, [])).toMatch(/gone\. Nothing more is found\.$/);
  });
});

describe("findings under their cause", () => {
  const one = (key: string, under: string | null = null) => ({ ...findings[0]!, key, under, waiver: null });

  test("what follows from a finding stands under it, in the order given", () => {
    const rooted = withFollowing([one("a"), one("b", "c"), one("c"), one("d", "c")]);
    expect(rooted.map(({ finding, following }) => [finding.key, following.map(({ key }) => key)])).toEqual([
      ["a", []],
      ["c", ["b", "d"]],
    ]);
  });

  test("one whose cause is not open stands by itself", () => {
    expect(withFollowing([one("b", "gone")]).map(({ finding }) => finding.key)).toEqual(["b"]);
  });

  test("a cure that is shown says what would go and what would come", () => {
    const list = [one("a"), one("b")];
    expect(previewWords(list, [one("b")], "a")).toBe("One finding gone. None new.");
    expect(previewWords(list, [one("c")], "a")).toBe("2 findings gone. One finding new: danger.");
    expect(previewWords(list, list, "a")).toBe("The finding would still be there. None new.");
  });

  test("a waiver of a whole rule or group says so, and counts what it would cover", () => {
    const { ofRule, ofGroup } = alike(findings, findings[0]!);
    expect(ofRule).toBe(2);
    expect(ofGroup).toBe(0);
    const waiver = { id: "v:1" as never, about: [], reason: "On the bench", by: "", date: "2026-03-02" };
    expect(sayWaived({ ...waiver, covers: "rule", rule: "loose-lead" })).toBe(
      "Waived on 2026-03-02, with all of the rule loose-lead: On the bench",
    );
    expect(sayWaived({ ...waiver, covers: "group", rule: "spares", date: "" })).toBe(
      "Waived, with all of “Loose ends and spares”: On the bench",
    );
  });
});
