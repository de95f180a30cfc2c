import { type FormEvent, useEffect, useState } from "react";
import type { ChartLine } from "../../match/chart.ts";

/** Lines that could not be read: each is written anew, or set aside as a note. Nothing is dropped. */
export function UnreadLines(props: {
  readonly lines: readonly ChartLine[];
  readonly onMend: (line: ChartLine, text: string) => void;
  readonly onAside: (line: ChartLine) => void;
}) {
  const { lines } = props;
  if (lines.length === 0) return null;
  return (
    <section className="chart-unread" aria-label="Lines that could not be read">
      <h4>
        {lines.length === 1 ? "One line" : `${lines.length} lines`} could not be read. Write{" "}
        {lines.length === 1 ? "it" : "them"} anew, or set {lines.length === 1 ? "it" : "them"} aside.
      </h4>
      <ul>
        {lines.slice(0, 50).map((line) => (
          <li key={`${line.line} ${line.text}`}>
            <UnreadLine line={line} onMend={props.onMend} onAside={props.onAside} />
          </li>
        ))}
      </ul>
      {lines.length > 50 && <p>And {lines.length - 50} more, after these.</p>}
    </section>
  );
}

function UnreadLine(props: {
  readonly line: ChartLine;
  readonly onMend: (line: ChartLine, text: string) => void;
  readonly onAside: (line: ChartLine) => void;
}) {
  const { line } = props;
  const [text, setText] = useState(line.text);
  useEffect(() => setText(line.text), [line.text]);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text !== line.text) props.onMend(line, text);
  };
  return (
    <form onSubmit={submit}>
      <input
        type="text"
        aria-label={`Line ${line.line}`}
        autoComplete="off"
        spellCheck={false}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit" className="button small-button" aria-disabled={text === line.text}>
        Read it again
      </button>
      <button type="button" className="button small-button" onClick={() => props.onAside(line)}>
        It is a note
      </button>
    </form>
  );
}

/** What the chart says besides its rows. */
export function Notes(props: {
  readonly notes: readonly ChartLine[];
  readonly aside: readonly string[];
  readonly onTakeBack: (text: string) => void;
}) {
  const { notes } = props;
  if (notes.length === 0) return null;
  const aside = new Set(props.aside);
  return (
    <details className="chart-notes">
      <summary>{notes.length === 1 ? "One line is" : `${notes.length} lines are`} kept as notes</summary>
      <ul>
        {notes.slice(0, 100).map((note) => (
          <li key={`${note.line} ${note.text}`}>
            {note.text}{" "}
            {aside.has(note.text) && (
              <button type="button" className="text-button" onClick={() => props.onTakeBack(note.text)}>
                It is a row after all
              </button>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}
