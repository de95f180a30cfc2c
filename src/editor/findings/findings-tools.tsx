import type { Finding } from "../../rules/rule.ts";
import { openDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { countBySeverity } from "./findings-model.ts";
import { mendAll } from "./mend-all.ts";
import { SEVERITIES, SeverityMark } from "./severity.tsx";
import { stepFinding } from "./standing.ts";

/** Above the list: how many there are of each severity, and what can be done with all of them. */
export function FindingsTools({ open }: { readonly open: readonly Finding[] }) {
  const editor = useEditorStore();
  const sorted = useEditor(
    ({ derived }) =>
      derived.checked?.findings.every((finding, index) => finding === derived.findings[index]) ?? true,
  );
  const counts = countBySeverity(open);
  const certain = open.filter(({ fix }) => fix).length;
  return (
    <div className="findings-tools">
      {open.length > 0 && (
        <p className="findings-counts">
          {SEVERITIES.map((severity) => (
            <span key={severity} className={counts[severity] ? "count" : "count count-none"}>
              <SeverityMark severity={severity} size={14} />
              {counts[severity]} {severity}
            </span>
          ))}
        </p>
      )}
      <div className="finding-buttons">
        {certain > 0 && (
          <button type="button" className="button" onClick={() => mendAll(editor)}>
            Mend what is certain ({certain})
          </button>
        )}
        {open.length > 0 && (
          <button type="button" className="button" onClick={() => stepFinding(editor, 1)}>
            Next
          </button>
        )}
        {!sorted && (
          <button type="button" className="button" onClick={() => editor.getState().sortFindings()}>
            Worst first
          </button>
        )}
        <button type="button" className="button" onClick={() => openDialog({ kind: "rules", rule: null })}>
          Rules…
        </button>
      </div>
    </div>
  );
}
