import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { Refused } from "../../graph/edits/edit.ts";
import { FieldName } from "./field-name.tsx";
import type { Field } from "./fields.ts";
import { Ticks } from "./ticks.tsx";

/** A value was read: make the edit. Returns why it was refused, or nothing. */
export type Take = (field: Field, value: unknown) => Refused | null;

/**
 * One field of the details. It is taken on Enter or when it is left, as one step; Escape puts the old value back;
 * what was refused stays in sight with why.
 */
export function FieldRow(props: { readonly field: Field; readonly take: Take }) {
  const { field, take } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [why, setWhy] = useState("");
  const shown = draft ?? field.text;
  const latest = useRef({ field, take, draft });
  latest.current = { field, take, draft };
  // Another selection takes the fields away before they are left: what was typed is taken then.
  useEffect(
    () => () => {
      const { field, take, draft } = latest.current;
      if (draft === null || draft === field.text) return;
      const read = field.read(draft);
      if (read.ok) take(field, read.value);
    },
    [],
  );
  const commit = (text: string) => {
    if (text === field.text) return putBack();
    const read = field.read(text);
    const refusal = read.ok ? take(field, read.value) : read;
    if (refusal) {
      setDraft(text);
      setWhy(refusal.why);
    } else putBack();
  };
  const putBack = () => {
    setDraft(null);
    setWhy("");
  };
  const press = (event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) => {
    if (event.key === "Escape" && draft !== null) {
      event.stopPropagation();
      putBack();
    } else if (event.key === "Enter" && field.look !== "lines") commit(event.currentTarget.value);
    else if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) commit(event.currentTarget.value);
  };
  if (field.look === "flag") {
    return (
      <label className="flag-row">
        <input
          type="checkbox"
          checked={field.text === "yes"}
          onChange={(event) => commit(event.target.checked ? "yes" : "")}
        />
        {field.name}
      </label>
    );
  }
  if (field.look === "ticks") return <Ticks field={field} commit={commit} />;
  const common = {
    id,
    "aria-invalid": why !== "",
    "aria-describedby": why ? `${id}-why` : undefined,
  };
  return (
    <div className="field-row">
      <FieldName htmlFor={id} name={field.name} help={field.help} />
      {field.look === "choice" ? (
        <select {...common} value={field.text} onChange={(event) => commit(event.target.value)}>
          {field.choices?.map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
      ) : field.look === "lines" ? (
        <textarea
          {...common}
          rows={2}
          value={shown}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={(event) => commit(event.target.value)}
          onKeyDown={press}
        />
      ) : (
        <span className="field-with-unit">
          <input
            {...common}
            type="text"
            autoComplete="off"
            spellCheck={false}
            list={field.look === "function" ? "functions" : undefined}
            placeholder={field.hint ?? ""}
            value={shown}
            onChange={(event) => setDraft(event.target.value)}
            onBlur={(event) => commit(event.target.value)}
            onKeyDown={press}
          />
          {field.unit && <span>{field.unit}</span>}
        </span>
      )}
      <p id={`${id}-why`} className="field-why" role="alert">
        {why}
      </p>
    </div>
  );
}
