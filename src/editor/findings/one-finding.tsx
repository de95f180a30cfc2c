import { useId, useState } from "react";
import type { Finding, Fix } from "../../rules/rule.ts";
import { showOnCanvas } from "../canvas/show.ts";
import { openDialog } from "../shell/dialogs.ts";
import { desk } from "../shell/preferences.ts";
import { isNarrow } from "../shell/use-narrow.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { placeOfFinding, sayWaived } from "./findings-model.ts";
import { SeverityMark } from "./severity.tsx";
import { WaiveForm } from "./waive-form.tsx";
import { WhySteps } from "./why-steps.tsx";

type Props = {
  readonly finding: Finding;
  /** What follows from it: its cure cures them too. */
  readonly following: readonly Finding[];
  readonly isCurrent: boolean;
};

/** One finding: what is wrong, what will happen, what to do, and what can be done about it here. */
export function OneFinding({ finding, following, isCurrent }: Props) {
  const harness = useEditor((state) => state.history.present);
  const { severity, message, consequence, remedy, waiver } = finding;
  return (
    <li
      className={`finding finding-${severity}`}
      data-rule={finding.rule}
      data-key={finding.key}
      aria-current={isCurrent || undefined}
    >
      <p className="finding-head">
        <SeverityMark severity={severity} />
        <strong>{severity}</strong>
        <span className="finding-place">{placeOfFinding(harness, finding.about)}</span>
      </p>
      <p className="finding-message">{message}</p>
      {waiver ? (
        <p className="finding-quiet">{sayWaived(waiver)}</p>
      ) : (
        <>
          <p className="finding-quiet">{consequence}</p>
          <p>{remedy}</p>
        </>
      )}
      {following.length > 0 && (
        <details className="finding-following">
          <summary>
            {following.length === 1 ? "One more finding follows" : `${following.length} more findings follow`}{" "}
            from it
          </summary>
          <ul>
            {following.map((one) => (
              <li key={one.key}>
                <SeverityMark severity={one.severity} size={12} /> <strong>{one.severity}</strong>{" "}
                {one.message}
              </li>
            ))}
          </ul>
        </details>
      )}
      <FindingActions finding={finding} />
    </li>
  );
}

function FindingActions({ finding }: { readonly finding: Finding }) {
  const editor = useEditorStore();
  const why = useEditor((state) => state.why === finding.key);
  const [waiving, setWaiving] = useState(false);
  const steps = useId();
  const { message, fix, suggestions, waiver } = finding;
  const toDrawing = () => {
    if (isNarrow()) desk.setState({ phoneView: "drawing" });
  };
  const lookAt = ({ label, edit }: Fix) => {
    editor.getState().lookAt(finding.key, label, edit);
    toDrawing();
  };
  const turnWhy = () => {
    editor.getState().askWhy(why ? null : finding.key);
    if (!why) showOnCanvas(editor, finding.about);
  };
  if (waiving) return <WaiveForm finding={finding} onDone={() => setWaiving(false)} />;
  return (
    <>
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
        {!waiver &&
          suggestions.map((one) => (
            <button
              key={one.label}
              type="button"
              className="button"
              title="Shown on the drawing before it is taken"
              onClick={() => lookAt(one)}
            >
              Look at: {one.label}
            </button>
          ))}
        <button
          type="button"
          className="button"
          aria-label={`Show on the drawing: ${message}`}
          onClick={() => {
            toDrawing();
            showOnCanvas(editor, finding.about);
          }}
        >
          Show
        </button>
        <button
          type="button"
          className="button"
          aria-label={`Why: ${message}`}
          aria-expanded={why}
          aria-controls={steps}
          onClick={turnWhy}
        >
          Why
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
        <button
          type="button"
          className="button quiet-button finding-rule"
          aria-label={`About the rule ${finding.rule}`}
          onClick={() => openDialog({ kind: "rules", rule: finding.rule })}
        >
          {finding.rule}
        </button>
      </div>
      <div id={steps}>{why && <WhySteps />}</div>
    </>
  );
}
