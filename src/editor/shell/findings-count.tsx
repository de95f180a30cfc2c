import { countBySeverity } from "../findings/findings-model.ts";
import { SEVERITIES, SeverityMark } from "../findings/severity.tsx";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { desk } from "./preferences.ts";

/** How many findings of each severity there are; opens the list. */
export function FindingsCount() {
  const editor = useEditorStore();
  const findings = useEditor((state) => state.derived.findings);
  const empty = useEditor((state) => Object.keys(state.history.present.parts).length === 0);
  const panel = useEditor((state) => state.panel);
  const counts = countBySeverity(findings);
  const shown = SEVERITIES.filter((severity) => counts[severity] > 0);
  const words = shown.map((severity) => `${counts[severity]} ${severity}`).join(", ");
  return (
    <button
      type="button"
      className="button findings-count"
      aria-label={words ? `Findings: ${words}` : "Findings: none"}
      title={words ? `Findings: ${words}` : "Nothing found"}
      aria-pressed={panel === "findings"}
      onClick={() => {
        editor.getState().set({ panel: panel === "findings" ? "none" : "findings" });
        desk.setState({ phoneView: "findings" });
      }}
    >
      {shown.length === 0 ? (
        <span>{empty ? "Findings" : "Nothing found"}</span>
      ) : (
        shown.map((severity) => (
          <span key={severity} className="count">
            <SeverityMark severity={severity} size={14} />
            {counts[severity]}
          </span>
        ))
      )}
    </button>
  );
}
