import { useMemo } from "react";
import { useStore } from "zustand";
import { nameContact } from "../../catalogue/describe.ts";
import type { Harness } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import type { About } from "../../rules/rule.ts";
import { SeverityMark } from "../findings/severity.tsx";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { canvasOf } from "./canvas-store.ts";
import { type FindingMark, farMarks, marksOf } from "./marks-model.ts";
import { selectAbout } from "./show.ts";

/** Beside each thing that a finding is about: its severity, told by shape and letter. */
export function FindingMarks({ scene }: { readonly scene: Scene }) {
  const editor = useEditorStore();
  const canvas = canvasOf(editor);
  const findings = useEditor((state) => state.derived.findings);
  const region = useStore(canvas, (state) => state.region);
  const far = useStore(canvas, (state) => state.far);
  const marks = useMemo(() => {
    const near = marksOf(scene, findings);
    return far ? farMarks(scene, near) : near;
  }, [scene, findings, far]);
  const shown = marks.filter(
    ({ x, y }) =>
      x >= region.x && y >= region.y && x <= region.x + region.width && y <= region.y + region.height,
  );
  return shown.map((mark) => <OneMark key={mark.key} mark={mark} far={far} />);
}

function OneMark({ mark, far }: { readonly mark: FindingMark; readonly far: boolean }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const first = mark.findings[0]!;
  const count = mark.findings.length;
  const about = first.about[0]!;
  const name = `${count === 1 ? first.severity : `${count} findings, the worst ${first.severity}`} at ${nameAbout(harness, about)}: ${first.message}`;
  return (
    <button
      type="button"
      tabIndex={-1}
      className={far ? "finding-mark finding-mark-far" : "finding-mark"}
      style={{ translate: `${mark.x}px ${mark.y}px` }}
      aria-label={name}
      title={first.message}
      onClick={() => {
        editor.getState().set({ panel: "findings" });
        selectAbout(editor, first.about);
      }}
    >
      <SeverityMark severity={first.severity} size={18} />
      <span aria-hidden="true" className={`mark-letter mark-letter-${first.severity}`}>
        {first.severity.slice(0, 1).toUpperCase()}
      </span>
    </button>
  );
}

function nameAbout(harness: Harness, about: About): string {
  if ("wire" in about) return harness.wires[about.wire]?.designation ?? "a wire";
  if ("contact" in about) return nameContact(harness, about);
  return harness.parts[about.part]?.designation ?? "a part";
}
