import { useState } from "react";
import { writeRows } from "../../graph/edits/housing.ts";
import type { PartId } from "../../graph/harness.ts";
import type { ColumnRole } from "../../match/read-columns.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { RowsField, useRows } from "./rows-preview.tsx";
import "./housing.css";

/** Writes pasted rows into a connector or a module that is there already. */
export default function PasteRows(props: { readonly part: PartId; readonly text: string }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const [text, setText] = useState(props.text);
  const [columns, setColumns] = useState<readonly ColumnRole[] | null>(null);
  const { sizes } = harness.settings;
  const read = useRows(text, sizes, columns);
  const part = harness.parts[props.part];
  if (!part) return null;
  const take = () => {
    const edit = writeRows(
      harness,
      part.id,
      read.rows.map((row) => row.cavity),
    );
    if (editor.getState().dispatch(edit)) closeDialog();
  };
  const count = read.rows.length;
  return (
    <Dialog heading={`Paste rows into ${part.designation}`} onClose={closeDialog} wide>
      <p className="housing-words">
        A row goes to the cavity of its label, one without a label to the next. What a row does not state
        stays as it is.
      </p>
      <RowsField
        text={text}
        onText={(next) => {
          setText(next);
          setColumns(null);
        }}
        read={read}
        sizes={sizes}
        onColumns={setColumns}
        first
      />
      <div className="sheet-buttons">
        <button type="button" className="button strong-button" disabled={count === 0} onClick={take}>
          {count === 0
            ? "Write rows"
            : `Write ${count} ${count === 1 ? "row" : "rows"} into ${part.designation}`}
        </button>
        <button type="button" className="button" onClick={closeDialog}>
          Leave it
        </button>
      </div>
    </Dialog>
  );
}
