import { useState } from "react";
import type { Finding } from "../../rules/rule.ts";
import { showOnCanvas } from "../canvas/show.ts";
import { desk } from "../shell/preferences.ts";
import { isNarrow } from "../shell/use-narrow.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { partFindings, placeOfFinding } from "./findings-model.ts";
import { SeverityMark } from "./severity.tsx";
import { WaiveForm } from "./waive-form.tsx";
import "./findings.css";

/** However many there are, this many are drawn at once; the rest follow on asking. */
const PAGE = 60;

/** What was found, the most hurtful first; then what a person has let stand, with the reason. */
export function FindingsList() {
  const findings = useEditor((state) => state.derived.findings);
  const empty = useEditor((state) => Object.keys(state.history.present.parts).length === 0);
  const [most, setMost] = useState(PAGE);
  const { open, waived } = partFindings(findings);
  return (
    <div className="findings">
      {open.length === 0 && (
        <p className="findings-calm">
          {empty
            ? "What is found in the harness will stand here, the most harmful first."
            : waived.length
              ? "Nothing is wrong but what has been waived."
              : "Nothing is wrong with what is drawn."}
        </p>
      )}
      <ul className="findings-list">
        {open.slice(0, most).map((finding) => (
          <OneFinding key={finding.key} finding={finding} />
        ))}
      </ul>
      {open.length > most && (
        <button type="button" className="button" onClick={() => setMost(most + PAGE)}>
          Show {Math.min(PAGE, open.length - most)} more of {open.length - most}
        </button>
      )}
      {waived.length > 0 && (
        <section aria-labelledby="waived">
          <h2 id="waived">Waived ({waived.length})</h2>
          <ul className="findings-list">
            {waived.map((finding) => (
              <OneFinding key={finding.key} finding={finding} />
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function OneFinding({ finding }: { readonly finding: Finding }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const [waiving, setWaiving] = useState(false);
  const { severity, message, consequence, remedy, fix, waiver } = finding;
  const show = () => {
    if (isNarrow()) desk.setState({ phoneView: "drawing" });
    showOnCanvas(editor, finding.about);
  };
  return (
    <li className={`finding finding-${severity}`} data-rule={finding.rule}>
      <p className="finding-head">
        <SeverityMark severity={severity} />
        <strong>{severity}</strong>
        <span className="finding-place">{placeOfFinding(harness, finding.about)}</span>
      </p>
      <p className="finding-message">{message}</p>
      {waiver ? (
        <p className="finding-quiet">
          Waived{waiver.by && ` by ${waiver.by}`}
          {waiver.date && ` on ${waiver.date}`}: {waiver.reason}
        </p>
      ) : (
        <>
          <p className="finding-quiet">{consequence}</p>
          <p>{remedy}</p>
        </>
      )}
      {waiving ? (
        <WaiveForm finding={finding} onDone={() => setWaiving(false)} />
      ) : (
        <div className="finding-buttons">
          {fix && !waiver && (
            <button
              type="button"
              className="button strong-button"
              onClick={() => {
                if (editor.getState().dispatch(fix.edit)) editor.getState().say(`Done: ${fix.label}.`);
              }}
            >
              {fix.label}
            </button>
          )}
          <button
            type="button"
            className="button"
            aria-label={`Show on the drawing: ${message}`}
            onClick={show}
          >
            Show
          </button>
          {waiver ? (
            <button
              type="button"
              className="button"
              onClick={() =>
                editor.getState().dispatch({ kind: "drop-entry", section: "waivers", id: waiver.id })
              }
            >
              Withdraw waiver
            </button>
          ) : (
            <button
              type="button"
              className="button"
              aria-label={`Waive: ${message}`}
              onClick={() => setWaiving(true)}
            >
              Waive…
            </button>
          )}
        </div>
      )}
    </li>
  );
}
