import { type FormEvent, useId, useState } from "react";
import type { Waiver } from "../../graph/harness.ts";
import { nameGroup } from "../../rules/groups.ts";
import type { Finding } from "../../rules/rule.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { alike, waiveEdit } from "./findings-model.ts";

/** Asks why a finding may stand, and whether others like it may too. Without a reason it may not. */
export function WaiveForm(props: { readonly finding: Finding; readonly onDone: () => void }) {
  const editor = useEditorStore();
  const { finding } = props;
  const findings = useEditor((state) => state.derived.findings);
  const id = useId();
  const [reason, setReason] = useState("");
  const [covers, setCovers] = useState<Waiver["covers"]>("finding");
  const [why, setWhy] = useState("");
  const { ofRule, ofGroup } = alike(findings, finding);
  const waive = (event: FormEvent) => {
    event.preventDefault();
    const harness = editor.getState().history.present;
    const date = new Date().toISOString().slice(0, 10);
    const edit = waiveEdit(harness, finding, reason, harness.titleBlock.creator, date, covers);
    if ("ok" in edit) {
      setWhy(edit.why);
      return;
    }
    if (editor.getState().dispatch(edit)) props.onDone();
  };
  const scope = (value: Waiver["covers"], words: string) => (
    <label className="waive-scope">
      <input
        type="radio"
        name={`${id}-covers`}
        checked={covers === value}
        onChange={() => setCovers(value)}
      />
      {words}
    </label>
  );
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
      <fieldset className="waive-scopes">
        <legend>What is waived</legend>
        {scope("finding", "This one finding")}
        {scope("rule", `Whatever the rule ${finding.rule} finds (${ofRule} now)`)}
        {finding.severity !== "danger" &&
          scope("group", `All of “${nameGroup(finding.group)}” but dangers (${ofGroup} now)`)}
      </fieldset>
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
