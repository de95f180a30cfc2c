import { type FormEvent, useEffect, useMemo, useState } from "react";
import { type Ready, readyOfKept } from "../../catalogue/ready.ts";
import type { JobSide } from "../../graph/harness.ts";
import type { ColumnRole } from "../../match/read-columns.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog, openDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { Choice, TextField } from "./form-fields.tsx";
import {
  addConnector,
  type ConnectorDraft,
  type DraftProblems,
  emptyDraft,
  fromReady,
} from "./new-connector.ts";
import { ownConnectors, useOwn } from "./own-connectors.ts";
import { type ConnectorFile, OwnTools } from "./own-tools.tsx";
import { CATALOGUE, ReadyField } from "./ready-field.tsx";
import { RowsField, useRows } from "./rows-preview.tsx";
import "./housing.css";

type Way = "count" | "ready" | "rows";

/** Asks for everything a new connector must state. */
export default function AddConnector(props: {
  readonly side: JobSide | null;
  readonly at: { readonly x: number; readonly y: number } | null;
  readonly next: JobSide | null;
  /** A connector file that the page was given. */
  readonly file: ConnectorFile | null;
}) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const [draft, setDraft] = useState<ConnectorDraft>(() => emptyDraft(harness, props.side));
  const [way, setWay] = useState<Way>(props.file ? "ready" : "count");
  // A file that is dropped while the dialog stands open is wanted at once.
  useEffect(() => {
    if (props.file) setWay("ready");
  }, [props.file]);
  const { own } = useOwn();
  const [readyId, setReadyId] = useState(CATALOGUE[0]!.id);
  const [text, setText] = useState("");
  const [columns, setColumns] = useState<readonly ColumnRole[] | null>(null);
  const [problems, setProblems] = useState<DraftProblems>({});
  const { sizes, systemVoltage_V } = harness.settings;
  const ownReady = useMemo(() => own.map(({ id, connector }) => readyOfKept(id, connector)), [own]);
  const ready = [...CATALOGUE, ...ownReady].find((one) => one.id === readyId) ?? CATALOGUE[0]!;
  const read = useRows(text, sizes, columns);
  const set = (changes: Partial<ConnectorDraft>) => {
    setDraft({ ...draft, ...changes });
    const left = { ...problems };
    for (const key of Object.keys(changes)) delete left[key as keyof DraftProblems];
    setProblems(left);
  };
  const pick = (next: Ready) => {
    setReadyId(next.id);
    if (next.group !== "own") return;
    // Its owner has said once which side and which view it is; what is said here already stands.
    set({
      side: draft.side ?? next.side,
      view: draft.view ?? next.face?.view ?? null,
      name: draft.name.trim() === "" ? next.title : draft.name,
    });
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { history, derived, dispatch, select } = editor.getState();
    const { side, view } = draft;
    const filled =
      way === "rows"
        ? { cavities: read.rows.map((row) => row.cavity) }
        : way === "ready"
          ? // Without a side or a view the draft is refused; which ones are stood in for does not matter then.
            fromReady(ready, side ?? ready.side, view ?? "wire-side")
          : {};
    const result = addConnector(history.present, derived.scene, { ...draft, ...filled }, props.at);
    if (!result.ok) {
      setProblems(result.problems);
      const form = event.currentTarget;
      requestAnimationFrame(() => form.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
      return;
    }
    if (!dispatch(result.edit)) return;
    select({ parts: new Set([result.part]) });
    if (props.next) openDialog({ kind: "add-connector", side: props.next, at: null, next: null });
    else closeDialog();
  };
  return (
    <Dialog heading={headingOf(props.side)} onClose={closeDialog} wide={way !== "count"}>
      <form onSubmit={submit} noValidate>
        <Choice
          name="It belongs to"
          value={draft.side}
          why={problems.side}
          choices={[
            ["vehicle", "the vehicle", "what is there already"],
            ["equipment", "the new equipment", "what is being fitted"],
          ]}
          onChoose={(side) => set({ side })}
          first={props.side === null}
        />
        <div className="housing-pair">
          <TextField
            name="Designation"
            value={draft.designation}
            why={problems.designation}
            onText={(designation) => set({ designation })}
          />
          <TextField
            name="Name"
            hint="Receiver plug, 16-way"
            value={draft.name}
            onText={(name) => set({ name })}
            first={props.side !== null}
          />
        </div>
        <Choice
          name="You see its cavities from"
          value={draft.view}
          why={problems.view}
          choices={[
            ["mating-face", "the mating face", "the side that meets its partner"],
            ["wire-side", "the wire side", "the side the leads go in"],
          ]}
          onChoose={(view) => set({ view })}
        />
        <Choice<Way>
          name="Its cavities"
          value={way}
          choices={[
            ["count", "counted", "numbered from 1; fill them in later"],
            ["ready", "of a ready connector", "radio, trailer, diagnostics, relay, your own"],
            ["rows", "pasted", "rows of a spreadsheet or a chart"],
          ]}
          onChoose={setWay}
        />
        {way === "ready" && (
          <>
            <ReadyField
              ready={ready}
              own={ownReady}
              side={draft.side}
              system_V={systemVoltage_V}
              onReady={pick}
            />
            <OwnTools
              picked={own.find((one) => one.id === ready.id) ?? null}
              file={props.file}
              onPick={(id) => {
                const found = ownConnectors.getState().own.find((one) => one.id === id);
                if (found) pick(readyOfKept(id, found.connector));
              }}
              onGone={() => setReadyId(CATALOGUE[0]!.id)}
            />
          </>
        )}
        {way === "rows" && (
          <RowsField
            text={text}
            onText={(next) => {
              setText(next);
              setColumns(null);
            }}
            read={read}
            sizes={sizes}
            onColumns={setColumns}
          />
        )}
        <div className="housing-pair">
          {way === "count" && (
            <TextField
              name="Number of cavities"
              value={draft.count}
              why={problems.count}
              numeric
              onText={(count) => set({ count })}
            />
          )}
          {!(way === "ready" && ready.face) && (
            <TextField
              name="Rows of the face"
              value={draft.rows}
              why={problems.rows}
              numeric
              onText={(rows) => set({ rows })}
            />
          )}
        </div>
        {way === "rows" && problems.count && (
          <p className="field-why" role="alert">
            Paste the rows of its cavities first.
          </p>
        )}
        <div className="sheet-buttons">
          <button type="submit" className="button strong-button">
            {props.next ? `Add ${draft.designation}, then the other side` : `Add ${draft.designation}`}
          </button>
          <button type="button" className="button" onClick={closeDialog}>
            Leave it
          </button>
        </div>
      </form>
    </Dialog>
  );
}

function headingOf(side: JobSide | null): string {
  if (side === "vehicle") return "The vehicle's connector";
  if (side === "equipment") return "The new equipment's connector";
  return "A connector";
}
