import { writeColour } from "../../catalogue/colours.ts";
import type { Colour } from "../../graph/harness.ts";
import "./swatch.css";

/** A piece of wire in its colours, outlined, with its letters beside it. Colour alone says nothing. */
export function Swatch(props: { readonly colour: Colour | null; readonly withoutLetters?: boolean }) {
  const { colour } = props;
  const base = colour ? `var(--wire-${colour.base})` : "var(--wire-unknown)";
  const tracer = colour?.base === "GNYE" ? "YE" : colour?.tracer;
  return (
    <span className="swatch">
      <svg viewBox="0 0 24 10" width="24" height="10" aria-hidden="true">
        <rect x="0.5" y="0.5" width="23" height="9" fill={base} stroke="var(--ink)" />
        {tracer && (
          <path d="M3 9 9 1 M10 9l6-8 M17 9l6-8" stroke={`var(--wire-${tracer})`} strokeWidth="2.4" />
        )}
        {!colour && <path d="M4 5h3 M10.5 5h3 M17 5h3" stroke="var(--ink)" />}
        <rect x="0.5" y="0.5" width="23" height="9" fill="none" stroke="var(--ink)" />
      </svg>
      {!props.withoutLetters && colour && <span>{writeColour(colour)}</span>}
    </span>
  );
}
