import { useId } from "react";
import { COLOUR_NAMES } from "../../catalogue/colours.ts";
import type { ColourCode } from "../../graph/harness.ts";
import { useEditorStore } from "../state/use-editor.ts";

const CODES = Object.keys(COLOUR_NAMES) as ColourCode[];

/** The letter codes as a row of buttons with their pigments: one press recolours. Arrows move between them. */
export function ColourPicker(props: {
  readonly name: string;
  readonly value: ColourCode | null;
  /** What stands for "none": "no tracer", "not stated". */
  readonly none: string;
  readonly onPick: (code: ColourCode | null) => void;
  /** Several are selected and differ. */
  readonly mixed?: boolean;
}) {
  const id = useId();
  const editor = useEditorStore();
  // Going through the colours with the arrows is one step; each press of a pointer is a step of its own.
  const endStep = () => editor.getState().closeStep();
  return (
    <fieldset className="colours" onPointerDown={endStep} onBlur={endStep}>
      <legend>
        {props.name}
        <span className="colours-word">
          {props.mixed ? "several" : props.value ? COLOUR_NAMES[props.value] : props.none}
        </span>
      </legend>
      {[null, ...CODES].map((code) => (
        <label key={code ?? "none"} title={code ? COLOUR_NAMES[code] : props.none}>
          <input
            type="radio"
            name={id}
            checked={!props.mixed && props.value === code}
            aria-label={code ? `${COLOUR_NAMES[code]}, ${code}` : props.none}
            onChange={() => props.onPick(code)}
          />
          <span
            className="colour-chip"
            style={code ? { background: `var(--wire-${code})` } : undefined}
            aria-hidden="true"
          >
            {code === "GNYE" && <i />}
            {!code && "–"}
          </span>
          <span aria-hidden="true">{code === "GNYE" ? "GN+YE" : (code ?? "none")}</span>
        </label>
      ))}
    </fieldset>
  );
}
