import { type Own, sayKept } from "./own-model.ts";

/** Asks what becomes of two connectors of one name; neither is lost unasked. */
export function SameName(props: {
  readonly there: Own;
  readonly otherName: string;
  readonly onReplace: () => void;
  readonly onKeepBoth: () => void;
  readonly onLeave: () => void;
}) {
  const { there } = props;
  return (
    <div className="own-question" role="alert">
      <p>
        “{there.connector.name}” is kept already: {sayKept(there.connector)}.
      </p>
      <div className="own-buttons">
        {/* biome-ignore lint/a11y/noAutofocus: it answers what a person has just done, and loses nothing */}
        <button type="button" className="button" autoFocus onClick={props.onKeepBoth}>
          Keep both, this one as “{props.otherName}”
        </button>
        <button type="button" className="button" onClick={props.onReplace}>
          Replace the one that is there
        </button>
        <button type="button" className="button" onClick={props.onLeave}>
          Keep only that one
        </button>
      </div>
    </div>
  );
}
