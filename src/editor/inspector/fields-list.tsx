import type { Edit } from "../../graph/edits/edit.ts";
import type { Editor } from "../state/store.ts";
import { FieldRow, type Take } from "./field-row.tsx";
import type { Field } from "./fields.ts";

/** Fields under one another. `owner` keeps a half-typed value with the thing it belongs to. */
export function FieldsList(props: {
  readonly owner: string;
  readonly fields: readonly Field[];
  readonly take: Take;
}) {
  return props.fields.map((field) => (
    <FieldRow key={`${props.owner} ${field.key} ${field.name}`} field={field} take={props.take} />
  ));
}

/** Makes an edit; what the document refuses is told beside the field. */
export function makeEdit(editor: Editor, edit: Edit, mergeKey?: string): { ok: false; why: string } | null {
  const before = editor.getState().notice;
  if (editor.getState().dispatch(edit, mergeKey)) return null;
  const { notice } = editor.getState();
  return { ok: false, why: notice && notice !== before ? notice.text : "That could not be done." };
}
