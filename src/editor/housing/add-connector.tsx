import { type FormEvent, type ReactNode, useId, useState } from "react";
import { PINOUTS, type Pinout } from "../../catalogue/pinouts.ts";
import type { JobSide } from "../../graph/harness.ts";
import type { ColumnRole } from "../../match/read-columns.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog, openDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import {
  addConnector,
  type ConnectorDraft,
  type DraftProblems,
  emptyDraft,
  fromPinout,
} from "./new-connector.ts";
import { PinoutField } from "./pinout-field.tsx";
import { RowsField, useRows } from "./rows-preview.tsx";
import "./housing.css";

type Way = "count" | "pinout" | "rows";

/** Asks for everything a new connector must state. */
export default function AddConnector(props: {
  readonly side: JobSide | null;
  readonly at: { readonly x: number; readonly y: number } | null;
  readonly next: JobSide | null;
}) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const [draft, setDraft] = useState<ConnectorDraft>(() => emptyDraft(harness, props.side));
  const [way, setWay] = useState<Way>("count");
  const [pinout, setPinout] = useState<Pinout>(PINOUTS[0]!);
  const [text, setText] = useState("");
  const [columns, setColumns] = useState<readonly ColumnRole[] | null>(null);
  const [problems, setProblems] = useState<DraftProblems>({});
  const { sizes } = harness.settings;
  const read = useRows(text, sizes, columns);
  const set = (changes: Partial<ConnectorDraft>) => {
    setDraft({ ...draft, ...changes });
    const left = { ...problems };
    for (const key of Object.keys(changes)) delete left[key as keyof DraftProblems];
    setProblems(left);
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { history, derived, dispatch, select } = editor.getState();
    const { side, view } = draft;
    const filled =
      way === "rows"
        ? { cavities: read.rows.map((row) => row.cavity) }
        : way === "pinout"
          ? // Without a side or a view the draft is refused; which ones are stood in for does not matter then.
            fromPinout(pinout, side ?? pinout.side, view ?? "wire-side")
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
            ["pinout", "of a usual pinout", "radio blocks and trailer sockets"],
            ["rows", "pasted", "rows of a spreadsheet or a chart"],
          ]}
          onChoose={setWay}
        />
        {way === "pinout" && <PinoutField pinout={pinout} side={draft.side} onPinout={setPinout} />}
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
          {!(way === "pinout" && pinout.face) && (
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

function Choice<T extends string>(props: {
  readonly name: string;
  readonly value: T | null;
  readonly choices: readonly (readonly [value: T, name: string, meaning: string])[];
  readonly why?: string | undefined;
  readonly onChoose: (value: T) => void;
  readonly first?: boolean;
}) {
  const id = useId();
  return (
    <fieldset className="housing-choice" aria-describedby={`${id}-why`}>
      <legend>{props.name}</legend>
      <div className="housing-choices">
        {props.choices.map(([value, name, meaning], index) => (
          <label key={value}>
            <input
              type="radio"
              name={id}
              data-first={props.first && index === 0 ? "" : undefined}
              checked={props.value === value}
              aria-invalid={props.why !== undefined}
              onChange={() => props.onChoose(value)}
            />
            <span>
              {name}
              <small>{meaning}</small>
            </span>
          </label>
        ))}
      </div>
      <Why id={`${id}-why`}>{props.why}</Why>
    </fieldset>
  );
}

function TextField(props: {
  readonly name: string;
  readonly value: string;
  readonly hint?: string;
  readonly why?: string | undefined;
  readonly numeric?: boolean;
  readonly first?: boolean;
  readonly onText: (text: string) => void;
}) {
  const id = useId();
  return (
    <div className="housing-field">
      <label htmlFor={id}>{props.name}</label>
      <input
        id={id}
        type="text"
        inputMode={props.numeric ? "numeric" : "text"}
        data-first={props.first ? "" : undefined}
        autoComplete="off"
        placeholder={props.hint}
        value={props.value}
        aria-invalid={props.why !== undefined}
        aria-describedby={`${id}-why`}
        onChange={(event) => props.onText(event.target.value)}
      />
      <Why id={`${id}-why`}>{props.why}</Why>
    </div>
  );
}

function Why(props: { readonly id: string; readonly children: ReactNode }) {
  return (
    <p id={props.id} className="field-why" role="alert">
      {props.children}
    </p>
  );
}
