import { type ReactNode, useId } from "react";

/** A choice of which each way says what it means. */
export function Choice<T extends string>(props: {
  readonly name: string;
  readonly value: T | null;
  readonly choices: readonly (readonly [value: T, name: string, meaning: string])[];
  readonly why?: string | undefined;
  readonly onChoose: (value: T) => void;
  readonly first?: boolean;
}) {
  const id = useId();
  return (
    <fieldset className="housing-choice" aria-describedby={`${id}-why`}>
      <legend>{props.name}</legend>
      <div className="housing-choices">
        {props.choices.map(([value, name, meaning], index) => (
          <label key={value}>
            <input
              type="radio"
              name={id}
              data-first={props.first && index === 0 ? "" : undefined}
              checked={props.value === value}
              aria-invalid={props.why !== undefined}
              onChange={() => props.onChoose(value)}
            />
            <span>
              {name}
              <small>{meaning}</small>
            </span>
          </label>
        ))}
      </div>
      <Why id={`${id}-why`}>{props.why}</Why>
    </fieldset>
  );
}

export function TextField(props: {
  readonly name: string;
  readonly value: string;
  readonly hint?: string;
  readonly why?: string | undefined;
  readonly numeric?: boolean;
  readonly first?: boolean;
  /** Takes the focus as it appears, in a dialog that stands open already. */
  readonly focused?: boolean;
  readonly onText: (text: string) => void;
}) {
  const id = useId();
  return (
    <div className="housing-field">
      <label htmlFor={id}>{props.name}</label>
      <input
        id={id}
        type="text"
        inputMode={props.numeric ? "numeric" : "text"}
        data-first={props.first ? "" : undefined}
        // biome-ignore lint/a11y/noAutofocus: it appears because a person asked to type into it
        autoFocus={props.focused}
        autoComplete="off"
        maxLength={400}
        placeholder={props.hint}
        value={props.value}
        aria-invalid={props.why !== undefined}
        aria-describedby={`${id}-why`}
        onChange={(event) => props.onText(event.target.value)}
      />
      <Why id={`${id}-why`}>{props.why}</Why>
    </div>
  );
}

function Why(props: { readonly id: string; readonly children: ReactNode }) {
  return (
    <p id={props.id} className="field-why" role="alert">
      {props.children}
    </p>
  );
}
