import { describe, expect, test } from "vitest";
import { shownWhy } from "../../../src/editor/findings/shown-why.ts";
import { createEditor, documentOf } from "../../../src/editor/state/store.ts";
import { BOOK } from "../../../src/editor/state/whole-book.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import { build } from "../../build.ts";

const harness = build()
  .vehicle("X1", { "1": "mute BN spare", "2": "illumination GY spare" })
  .wire("X1.2", "XC2").harness;

function opened() {
  const editor = createEditor(harness, BOOK);
  const finding = editor.getState().derived.findings.find(({ rule }) => rule === "spare-not-capped")!;
  return { editor, finding, edit: finding.fix!.edit };
}

describe("a cure that is shown before it is taken", () => {
  test("is on the drawing and in the findings, and not in what is kept", () => {
    const { editor, finding, edit } = opened();
    const before = documentOf(editor.getState());
    editor.getState().lookAt(finding.key, "Cap X1.1", edit);
    const shown = editor.getState();
    expect(Object.keys(shown.history.present.parts)).toHaveLength(3);
    expect(shown.preview?.marked.parts.size).toBeGreaterThan(0);
    expect(shown.derived.findings.map(({ key }) => key)).not.toContain(finding.key);
    expect(documentOf(shown)).toBe(before);
  });

  test("left, all is as it was and nothing can be redone", () => {
    const { editor, finding, edit } = opened();
    const before = editor.getState().history;
    editor.getState().lookAt(finding.key, "Cap X1.1", edit);
    editor.getState().endPreview(false);
    expect(editor.getState().history).toEqual(before);
    expect(editor.getState().preview).toBeNull();
    expect(editor.getState().derived.findings.map(({ key }) => key)).toContain(finding.key);
  });

  test("taken, it is one step that undo takes back", () => {
    const { editor, finding, edit } = opened();
    editor.getState().lookAt(finding.key, "Cap X1.1", edit);
    editor.getState().endPreview(true);
    expect(Object.keys(documentOf(editor.getState()).parts)).toHaveLength(3);
    editor.getState().undo();
    expect(Object.keys(documentOf(editor.getState()).parts)).toHaveLength(2);
  });

  test("meanwhile nothing else is edited, and undo leaves it", () => {
    const { editor, finding, edit } = opened();
    const other: Edit = { kind: "change-settings", changes: { ambient_degC: 40 } };
    editor.getState().lookAt(finding.key, "Cap X1.1", edit);
    expect(editor.getState().dispatch(other)).toBe(false);
    expect(editor.getState().notice?.text).toContain("take it or leave it");
    editor.getState().undo();
    expect(editor.getState().preview).toBeNull();
    expect(editor.getState().dispatch(other)).toBe(true);
  });

  test("another document ends it", () => {
    const { editor, finding, edit } = opened();
    editor.getState().lookAt(finding.key, "Cap X1.1", edit);
    editor.getState().open(build().harness);
    expect(editor.getState().preview).toBeNull();
  });
});

describe("the rule book", () => {
  test("is fetched after the page stands: until then nothing is found, then all of it", () => {
    const editor = createEditor(harness);
    expect(editor.getState().derived).toMatchObject({ checked: null, findings: [] });
    editor.getState().takeBook(BOOK);
    expect(editor.getState().derived.findings.length).toBeGreaterThan(0);
  });

  test("a finding keeps its place while others come and go; sorting puts the worst first again", () => {
    const { editor } = opened();
    const [first] = editor.getState().derived.findings;
    const worse: Edit = {
      kind: "add-wire",
      wire: Object.values(build().vehicle("X1", { "1": "mute" }).wire("X1.1", "loose").harness.wires)[0]!,
    };
    editor.getState().dispatch({ ...worse, wire: { ...worse.wire, id: "w:9" as never, designation: "W9" } });
    const after = editor.getState().derived.findings;
    expect(after.length).toBeGreaterThan(0);
    const kept = after.find(({ key }) => key === first!.key);
    if (kept) expect(after.indexOf(kept)).toBe(0);
    editor.getState().sortFindings();
    expect(editor.getState().derived.findings).toEqual(editor.getState().derived.checked!.findings);
  });

  test("the way of a finding is taken off the drawing when the finding is gone", () => {
    const { editor, finding, edit } = opened();
    editor.getState().askWhy(finding.key);
    expect(shownWhy(editor.getState())?.ways.length).toBeGreaterThan(0);
    expect(shownWhy(editor.getState())).toBe(shownWhy(editor.getState()));
    editor.getState().dispatch(edit);
    expect(editor.getState().why).toBeNull();
    expect(shownWhy(editor.getState())).toBeNull();
  });
});
