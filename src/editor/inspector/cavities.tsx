import { useEffect, useRef, useState } from "react";
import type { Connector, Module } from "../../graph/harness.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { cavityFields } from "./cavity-fields.ts";
import type { Take } from "./field-row.tsx";
import { FieldsList, makeEdit } from "./fields-list.tsx";

/** So many cavities are drawn at once; a large housing shows more on asking. */
const PAGE = 40;

/** The cavities of a housing, one a row; the one the keyboard stands on is open. */
export function Cavities(props: { readonly part: Connector | Module; readonly open: number | null }) {
  const { part } = props;
  const [open, setOpen] = useState<number | null>(props.open);
  const [most, setMost] = useState(PAGE);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    if (props.open === null) return;
    const wanted = props.open;
    setOpen(wanted);
    setMost((before) => Math.max(before, wanted + 5));
    requestAnimationFrame(() => list.current?.children[wanted - 1]?.scrollIntoView({ block: "nearest" }));
  }, [props.open]);
  return (
    <section className="details-section" aria-label="Cavities">
      <ol ref={list} className="cavities">
        {part.cavities.slice(0, most).map((cavity, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a cavity is known by its number
          <li key={index}>
            <OneCavity
              part={part}
              index={index}
              open={open === index + 1}
              onOpen={() => setOpen(open === index + 1 ? null : index + 1)}
              label={cavity.label}
            />
          </li>
        ))}
      </ol>
      {part.cavities.length > most && (
        <button type="button" className="button" onClick={() => setMost(most + PAGE)}>
          Show more of {part.cavities.length} cavities
        </button>
      )}
    </section>
  );
}

function OneCavity(props: {
  readonly part: Connector | Module;
  readonly index: number;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly label: string;
}) {
  const editor = useEditorStore();
  const sizes = useEditor((state) => state.history.present.settings.sizes);
  const { part, index, label } = props;
  const fields = cavityFields(part, index, sizes);
  const take: Take = (field, value) =>
    makeEdit(editor, {
      kind: "change-cavity",
      part: part.id,
      contact: index + 1,
      changes: { [field.key]: value },
    });
  const owner = `${part.id}#${index + 1}`;
  const named = fields.row.map((field) => ({ ...field, name: `${field.name} of ${label}` }));
  return (
    <div className={props.open ? "cavity cavity-open" : "cavity"}>
      <div className="cavity-row">
        <FieldsList owner={owner} fields={named} take={take} />
        <button
          type="button"
          className="button quiet-button cavity-more"
          aria-expanded={props.open}
          aria-label={`More of cavity ${label}`}
          onClick={props.onOpen}
        >
          <svg viewBox="0 0 10 10" width="10" height="10" aria-hidden="true">
            <path
              d={props.open ? "M1.5 6.5 5 3l3.5 3.5" : "M1.5 3.5 5 7l3.5-3.5"}
              fill="none"
              stroke="currentColor"
              strokeWidth="1.5"
            />
          </svg>
        </button>
      </div>
      {props.open && (
        <div className="cavity-fields">
          <FieldsList owner={owner} fields={fields.more} take={take} />
        </div>
      )}
    </div>
  );
}
