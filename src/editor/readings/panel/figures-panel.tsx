import { useEffect } from "react";
import { useStore } from "zustand";
import { sayState } from "../../../electrical/operate/key-state.ts";
import { useNarrow } from "../../shell/use-narrow.ts";
import { useEditor, useEditorStore } from "../../state/use-editor.ts";
import { readingsOf } from "../readings-store.ts";
import { useReadings } from "../use-readings.ts";
import { type PanelPage, panelView } from "./panel-view.ts";
import { SelectionPage } from "./selection-page.tsx";
import { SizesPage } from "./sizes-page.tsx";
import { StateFields } from "./state-fields.tsx";
import { WhatIfs } from "./what-if.tsx";
import { WholePage } from "./whole-page.tsx";
import "../../inspector/inspector.css";
import "./figures-panel.css";

const PAGES: readonly (readonly [PanelPage, string])[] = [
  ["selection", "Selection"],
  ["sizes", "Sizes"],
  ["whole", "Whole harness"],
];

/** Volts, amperes and all that follows from them, each of which can be asked why. */
export default function FiguresPanel() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const { view } = useStore(panelView);
  const readings = useReadings((state) => state.readings);
  const state = useReadings((one) => one.state);
  const problem = useReadings((one) => one.problem);
  const narrow = useNarrow();
  const busy = useReadings((one) => one.busy);
  useEffect(() => {
    const store = readingsOf(editor);
    if (store.getState().on) return;
    store.getState().turn(true);
    // What this panel turned on goes off with it; what somebody else turned on stays.
    return () => store.getState().turn(false);
  }, [editor]);
  return (
    <div className="figures">
      <h2 className="said-only">Figures</h2>
      <p className="figures-state">
        With the key at <strong>{sayState(state, harness)}</strong>
        {busy && <span className="figures-quiet"> (being worked out)</span>}
      </p>
      {narrow && <StateFields />}
      {readings && <WhatIfs readings={readings} />}
      <nav className="figures-pages" aria-label="Pages of figures">
        {PAGES.map(([page, name]) => (
          <button
            key={page}
            type="button"
            className="button quiet-button"
            aria-current={view === page ? "page" : undefined}
            onClick={() => panelView.setState({ view: page })}
          >
            {name}
          </button>
        ))}
      </nav>
      {problem && <p role="alert">{problem}</p>}
      {readings ? (
        view === "selection" ? (
          <SelectionPage readings={readings} />
        ) : view === "sizes" ? (
          <SizesPage />
        ) : (
          <WholePage readings={readings} />
        )
      ) : (
        !problem && <p className="figures-quiet">Being worked out.</p>
      )}
    </div>
  );
}
