import { type FormEvent, useState } from "react";
import type { PartId } from "../../graph/harness.ts";
import { keepConnector } from "../../graph/own-connector/kept-connector.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { TextField } from "./form-fields.tsx";
import { ownConnectors, putOwn, refreshOwn, useOwn } from "./own-connectors.ts";
import { freeName, sameName, sayKept } from "./own-model.ts";
import { SameName } from "./same-name.tsx";
import "./housing.css";

/** Keeps a connector of the harness under a name, to be used again in another one. */
export default function KeepConnector(props: { readonly part: PartId }) {
  const editor = useEditorStore();
  const part = useEditor((state) => state.history.present.parts[props.part]);
  const { own, trouble } = useOwn();
  const [name, setName] = useState(() =>
    part?.kind === "connector" ? part.name || part.chart?.title || part.designation : "",
  );
  const [why, setWhy] = useState<string | undefined>(undefined);
  const [asking, setAsking] = useState(false);
  if (part?.kind !== "connector") return null;
  const there = asking ? sameName(own, name) : null;
  const keep = async (as: string, replaces: string | null) => {
    const id = await putOwn(keepConnector(part, as.trim()), replaces);
    if (id === null) return;
    editor
      .getState()
      .say(`Kept ${part.designation} as “${as.trim()}”. It is offered where a connector is added.`);
    closeDialog();
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === "") return setWhy("It needs a name by which you find it again.");
    // Another tab may have kept one of this name since the dialog opened.
    await refreshOwn();
    if (sameName(ownConnectors.getState().own, name)) setAsking(true);
    else await keep(name, null);
  };
  return (
    <Dialog heading={`Keep ${part.designation} as a connector`} onClose={closeDialog}>
      <form onSubmit={submit} noValidate>
        <TextField
          name="Name"
          value={name}
          why={why}
          first
          onText={(text) => {
            setName(text);
            setWhy(undefined);
            setAsking(false);
          }}
        />
        <p className="housing-words own-said">
          {sayKept(keepConnector(part, name))}, with functions, leads and chart. The wires stay with this
          harness. This browser keeps it; saved as a file it can be shared.
        </p>
        {there && (
          <SameName
            there={there}
            otherName={freeName(own, name)}
            onReplace={() => void keep(name, there.id)}
            onKeepBoth={() => void keep(freeName(own, name), null)}
            onLeave={closeDialog}
          />
        )}
        {trouble && (
          <p className="field-why" role="alert">
            The browser's storage cannot be used: {trouble}
          </p>
        )}
        <div className="sheet-buttons">
          <button type="submit" className="button strong-button" disabled={there !== null}>
            Keep it
          </button>
          <button type="button" className="button" onClick={closeDialog}>
            Leave it
          </button>
        </div>
      </form>
    </Dialog>
  );
}
