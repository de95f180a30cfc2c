import type { Finding } from "../../rules/rule.ts";
import "./severity.css";

export type Severity = Finding["severity"];
export const SEVERITIES: readonly Severity[] = ["danger", "fault", "weak", "tidy"];

const SHAPES: Readonly<Record<Severity, string>> = {
  danger: "M5 1h6l4 4v6l-4 4H5l-4-4V5z",
  fault: "M8 1.5 15 14H1z",
  weak: "M8 1 15 8 8 15 1 8z",
  tidy: "M8 1.5a6.5 6.5 0 1 0 .01 0z",
};

/** A severity's shape: eight corners, three, four, none. Each is told apart without its tint. */
export function SeverityMark(props: { readonly severity: Severity; readonly size?: number }) {
  const size = props.size ?? 16;
  return (
    <svg
      viewBox="0 0 16 16"
      width={size}
      height={size}
      className={`mark mark-${props.severity}`}
      aria-hidden="true"
    >
      <path d={SHAPES[props.severity]} />
    </svg>
  );
}
