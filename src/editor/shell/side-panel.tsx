import { lazy, Suspense } from "react";
import { FindingsList } from "../findings/findings-list.tsx";
import type { Panel } from "../state/store.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";

const FiguresPanel = lazy(() => import("../readings/panel/figures-panel.tsx"));
const Inspector = lazy(() => import("../inspector/inspector.tsx"));

/** Beside the drawing: the details of the selection, or what was found. */
export function SidePanel() {
  const editor = useEditorStore();
  const panel = useEditor((state) => state.panel);
  const tab = (value: Exclude<Panel, "none">, name: string) => (
    <button
      type="button"
      className="button quiet-button side-tab"
      aria-pressed={panel === value}
      onClick={() => editor.getState().set({ panel: value })}
    >
      {name}
    </button>
  );
  return (
    <>
      <div className="side-head">
        {tab("inspector", "Details")}
        {tab("findings", "Findings")}
        {tab("figures", "Figures")}
        <button
          type="button"
          className="button quiet-button side-close"
          aria-label="Close the side panel"
          title="Close the side panel"
          onClick={() => editor.getState().set({ panel: "none" })}
        >
          <svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
            <path d="M5 2l6 6-6 6" fill="none" stroke="currentColor" strokeWidth="1.5" />
          </svg>
        </button>
      </div>
      <div className="side-body">
        {panel === "findings" ? (
          <FindingsList />
        ) : panel === "figures" ? (
          <Suspense fallback={null}>
            <FiguresPanel />
          </Suspense>
        ) : (
          <Suspense fallback={null}>
            <Inspector />
          </Suspense>
        )}
      </div>
    </>
  );
}

export function Figures() {
  return (
    <div className="side-body">
      <Suspense fallback={null}>
        <FiguresPanel />
      </Suspense>
    </div>
  );
}

export function Details() {
  return (
    <div className="side-body">
      <Suspense fallback={null}>
        <Inspector />
      </Suspense>
    </div>
  );
}
