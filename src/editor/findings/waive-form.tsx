import { type FormEvent, useId, useState } from "react";
import type { Finding } from "../../rules/rule.ts";
import { useEditorStore } from "../state/use-editor.ts";
import { waiveEdit } from "./findings-model.ts";

/** Asks why a finding may stand. Without a reason it may not. */
export function WaiveForm(props: { readonly finding: Finding; readonly onDone: () => void }) {
  const editor = useEditorStore();
  const id = useId();
  const [reason, setReason] = useState("");
  const [why, setWhy] = useState("");
  const waive = (event: FormEvent) => {
    event.preventDefault();
    const harness = editor.getState().history.present;
    const date = new Date().toISOString().slice(0, 10);
    const edit = waiveEdit(harness, props.finding, reason, harness.titleBlock.creator, date);
    if ("ok" in edit) {
      setWhy(edit.why);
      return;
    }
    if (editor.getState().dispatch(edit)) props.onDone();
  };
  return (
    <form className="waive" onSubmit={waive}>
      <label htmlFor={id}>Why it may stay as it is</label>
      <textarea
        id={id}
        rows={2}
        maxLength={400}
        value={reason}
        // biome-ignore lint/a11y/noAutofocus: the person has just asked to write the reason
        autoFocus
        aria-invalid={why !== ""}
        aria-describedby={`${id}-why`}
        onChange={(event) => setReason(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Escape") props.onDone();
        }}
      />
      <p id={`${id}-why`} className="field-why">
        {why}
      </p>
      <div className="finding-buttons">
        <button type="submit" className="button strong-button">
          Waive it
        </button>
        <button type="button" className="button" onClick={props.onDone}>
          Leave it
        </button>
      </div>
    </form>
  );
}
