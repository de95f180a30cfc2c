import { type KeyboardEvent, useId, useState } from "react";
import type { LeadChanges } from "../../match/review/mend.ts";
import type { RowCell } from "./cells-model.ts";

/** A cell that is corrected in place: taken on Enter or when it is left, put back with Escape. */
export function Cell(props: {
  readonly cell: RowCell;
  readonly onTake: (changes: LeadChanges) => void;
  readonly list?: string;
  readonly className?: string;
}) {
  const { cell, onTake } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [why, setWhy] = useState("");
  const putBack = () => {
    setDraft(null);
    setWhy("");
  };
  const commit = (typed: string) => {
    if (typed === cell.text) {
      putBack();
      return;
    }
    const read = cell.read(typed);
    if (read.ok) {
      onTake(read.value);
      putBack();
    } else {
      setDraft(typed);
      setWhy(read.why);
    }
  };
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Enter" && !event.ctrlKey && !event.metaKey) {
      commit(event.currentTarget.value);
      event.preventDefault();
    } else if (event.key === "Escape" && draft !== null) {
      event.preventDefault();
      event.stopPropagation();
      putBack();
    }
  };
  return (
    <span className={`row-cell ${props.className ?? ""}`}>
      <input
        type="text"
        aria-label={cell.name}
        aria-invalid={why !== ""}
        aria-describedby={why ? `${id}-why` : undefined}
        autoComplete="off"
        spellCheck={false}
        list={props.list}
        placeholder={cell.hint}
        value={draft ?? cell.text}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={(event) => draft !== null && commit(event.target.value)}
        onKeyDown={press}
      />
      {why && (
        <span id={`${id}-why`} className="field-why" role="alert">
          {why}
        </span>
      )}
    </span>
  );
}
