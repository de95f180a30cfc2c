import { useEffect, useRef } from "react";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { previewWords } from "./findings-model.ts";
import "./preview-bar.css";

/** Over the drawing while a cure is shown on it: what it would do, and whether it is taken. */
export function PreviewBar() {
  const editor = useEditorStore();
  const preview = useEditor((state) => state.preview);
  const findings = useEditor((state) => state.derived.findings);
  const bar = useRef<HTMLElement>(null);
  const label = preview?.label;
  useEffect(() => {
    if (!label) return;
    bar.current?.querySelector("button")?.focus();
    const leave = (event: KeyboardEvent) => {
      if (event.key !== "Escape" || event.defaultPrevented) return;
      event.preventDefault();
      editor.getState().endPreview(false);
    };
    window.addEventListener("keydown", leave);
    return () => window.removeEventListener("keydown", leave);
  }, [label, editor]);
  if (!preview) return null;
  return (
    <section ref={bar} className="preview-bar" aria-label="A cure, shown before it is taken">
      <p>
        <strong>{preview.label}</strong>
        <span>{previewWords(preview.was, findings, preview.finding)}</span>
      </p>
      <div className="finding-buttons">
        <button
          type="button"
          className="button strong-button"
          onClick={() => {
            editor.getState().endPreview(true);
            editor.getState().say(`Done: ${preview.label}.`);
          }}
        >
          Take it
        </button>
        <button type="button" className="button" onClick={() => editor.getState().endPreview(false)}>
          Leave it
        </button>
      </div>
    </section>
  );
}
