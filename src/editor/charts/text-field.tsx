import { type ClipboardEvent, useId } from "react";

/** More than this is read, but not put into a field to be edited: a page cannot show it. */
export const MOST_SHOWN = 200_000;

/** What a paste holds: its text, or where it has none, its markup. */
export function pastedText(data: DataTransfer): string {
  return data.getData("text/plain") || data.getData("text/html");
}

/** The field a chart is pasted or typed into. A paste into the empty field is read at once. */
export function ChartText(props: {
  readonly name: string;
  readonly need: string;
  readonly text: string;
  readonly first: boolean;
  readonly onPaste: (text: string) => void;
  readonly onType: (text: string) => void;
}) {
  const id = useId();
  const { text } = props;
  if (text.length > MOST_SHOWN) {
    return (
      <p className="chart-long">
        The text is {(text.length / 1_000_000).toFixed(1)} MB long: it was read, and is not shown here. Its
        rows are mended in the table.
      </p>
    );
  }
  const paste = (event: ClipboardEvent<HTMLTextAreaElement>) => {
    const pasted = pastedText(event.clipboardData);
    if (pasted === "") return;
    const { value, selectionStart, selectionEnd } = event.currentTarget;
    const replacesAll = selectionStart === 0 && selectionEnd === value.length;
    if (!replacesAll && pasted.length + value.length <= MOST_SHOWN) return;
    event.preventDefault();
    props.onPaste(replacesAll ? pasted : value.slice(0, selectionStart) + pasted + value.slice(selectionEnd));
  };
  return (
    <div className="chart-text">
      <label htmlFor={id}>{props.name}</label>
      <textarea
        id={id}
        rows={7}
        spellCheck={false}
        data-first={props.first ? "" : undefined}
        data-need={props.need}
        placeholder={"A4: +12V constant (yellow)\nA7  ignition  red  0.75"}
        value={text}
        onPaste={paste}
        onChange={(event) => props.onType(event.target.value)}
      />
    </div>
  );
}
