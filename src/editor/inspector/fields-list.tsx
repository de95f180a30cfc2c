import { type ReactNode, useState } from "react";
import type { Edit } from "../../graph/edits/edit.ts";
import type { Editor } from "../state/store.ts";
import { FieldRow, type Take } from "./field-row.tsx";
import { type Field, isStated } from "./fields.ts";

/**
 * Fields under one another, those that are seldom stated under "More". `owner` keeps a half-typed value with the
 * thing it belongs to.
 */
export function FieldsList(props: {
  readonly owner: string;
  readonly fields: readonly Field[];
  readonly take: Take;
}) {
  const { owner, fields } = props;
  const more = fields.filter((field) => field.more);
  const rows = (some: readonly Field[]) =>
    some.map((field) => (
      <FieldRow key={`${owner} ${field.key} ${field.name}`} field={field} take={props.take} />
    ));
  if (more.length === 0) return rows(fields);
  return (
    <>
      {rows(fields.filter((field) => !field.more))}
      <MoreFields key={owner} stated={more.filter(isStated).length}>
        {rows(more)}
      </MoreFields>
    </>
  );
}

/** Whether "More" was left open: it is then open for the next part too, until the page is left. */
let wantsMore = false;

function MoreFields(props: { readonly stated: number; readonly children: ReactNode }) {
  const { stated, children } = props;
  const [open, setOpen] = useState(wantsMore);
  return (
    <details
      className="more-fields"
      open={open}
      onToggle={(event) => {
        // A list of ticks inside opens and closes too, and its news comes by here.
        if (event.target !== event.currentTarget) return;
        wantsMore = event.currentTarget.open;
        setOpen(wantsMore);
      }}
    >
      <summary>
        More <span className="details-kind">{stated === 0 ? "nothing stated" : `${stated} stated`}</span>
      </summary>
      {children}
    </details>
  );
}

/** Makes an edit; what the document refuses is told beside the field. */
export function makeEdit(editor: Editor, edit: Edit, mergeKey?: string): { ok: false; why: string } | null {
  const before = editor.getState().notice;
  if (editor.getState().dispatch(edit, mergeKey)) return null;
  const { notice } = editor.getState();
  return { ok: false, why: notice && notice !== before ? notice.text : "That could not be done." };
}
