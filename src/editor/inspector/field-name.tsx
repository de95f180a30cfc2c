import { useId, useState } from "react";

/** The name beside a field; where a beginner would not know what is asked, a mark that opens a sentence about it. */
export function FieldName(props: {
  readonly htmlFor: string;
  readonly name: string;
  readonly help: string | undefined;
}) {
  const { htmlFor, name, help } = props;
  const id = useId();
  const [open, setOpen] = useState(false);
  if (!help) return <label htmlFor={htmlFor}>{name}</label>;
  return (
    <>
      <span className="field-name">
        <label htmlFor={htmlFor}>{name}</label>
        <button
          type="button"
          className="help-button"
          aria-label={`What is asked: ${name}`}
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
        >
          ?
        </button>
      </span>
      <p id={id} className="field-help" hidden={!open}>
        {help}
      </p>
    </>
  );
}
