import type { Harness, Run, RunId } from "../../graph/harness.ts";
import { makeRun, Names } from "../../graph/make.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import type { Take } from "./field-row.tsx";
import { FieldsList, makeEdit } from "./fields-list.tsx";
import { runFields, settingFields, sheetFields, titleFields, vehicleFields } from "./harness-fields.ts";

/** With nothing selected: what holds for the whole harness. */
export function HarnessDetails() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const settings: Take = (field, value) =>
    makeEdit(editor, { kind: "change-settings", changes: { [field.key]: value } });
  const sheet: Take = (field, value) =>
    makeEdit(editor, {
      kind: "change-settings",
      changes: { sheet: { ...harness.settings.sheet, [field.key]: value } },
    });
  const vehicle: Take = (field, value) =>
    makeEdit(editor, {
      kind: "change-settings",
      changes: { vehicle: { ...harness.settings.vehicle, [field.key]: value } },
    });
  const title: Take = (field, value) =>
    makeEdit(editor, { kind: "change-title-block", changes: { [field.key]: value } });
  return (
    <>
      <h2>The harness</h2>
      <p className="details-words">Select a part or a wire on the drawing to see its details here.</p>
      <FieldsList owner="title" fields={titleFields(harness)} take={title} />
      <h3>System</h3>
      <FieldsList owner="settings" fields={settingFields(harness)} take={settings} />
      <h3>Vehicle</h3>
      <FieldsList owner="vehicle" fields={vehicleFields(harness)} take={vehicle} />
      <h3>Sheet</h3>
      <FieldsList owner="sheet" fields={sheetFields(harness)} take={sheet} />
      <Runs harness={harness} />
    </>
  );
}

/** The physical stretches of the bundle. */
function Runs({ harness }: { readonly harness: Harness }) {
  const editor = useEditorStore();
  const runs = Object.values(harness.runs);
  const add = () => {
    const taken = new Set(runs.map((run) => run.designation));
    let number = 1;
    while (taken.has(`R${number}`)) number++;
    const run = makeRun(new Names(harness).id("runs") as RunId, `R${number}`);
    makeEdit(editor, { kind: "put-entry", section: "runs", entry: run });
  };
  return (
    <details className="details-section">
      <summary>Runs of the bundle ({runs.length})</summary>
      {runs.map((run) => (
        <OneRun key={run.id} harness={harness} run={run} />
      ))}
      <button type="button" className="button" onClick={add}>
        Add a run
      </button>
    </details>
  );
}

function OneRun({ harness, run }: { readonly harness: Harness; readonly run: Run }) {
  const editor = useEditorStore();
  const put = (changes: Partial<Run>) =>
    makeEdit(editor, { kind: "put-entry", section: "runs", entry: { ...run, ...changes } });
  return (
    <section className="switch-row" aria-label={`Run ${run.designation}`}>
      <FieldsList
        owner={run.id}
        fields={runFields(harness, run)}
        take={(field, value) => put({ [field.key]: value })}
      />
      <div className="details-buttons">
        <button
          type="button"
          className="button small-button"
          onClick={() => makeEdit(editor, { kind: "drop-entry", section: "runs", id: run.id })}
        >
          Remove run {run.designation}
        </button>
      </div>
    </section>
  );
}
