import type { FuseColour } from "../../../electrical/fuse/blade.ts";

/** Letters of IEC 60757 where it has the colour; tan and clear have none there. */
const LETTERS: Readonly<Partial<Record<FuseColour, string>>> = {
  black: "BK",
  grey: "GY",
  violet: "VT",
  pink: "PK",
  brown: "BN",
  red: "RD",
  blue: "BU",
  yellow: "YE",
  green: "GN",
  "blue-green": "TQ",
  orange: "OG",
};

const TINT: Readonly<Partial<Record<FuseColour, string>>> = { tan: "#c9a877", clear: "var(--paper)" };

/** A blade fuse in its colour, with the colour's name and letters beside it. */
export function FuseSwatch({ colour }: { readonly colour: FuseColour }) {
  const letters = LETTERS[colour];
  return (
    <span className="fuse-swatch">
      <svg viewBox="0 0 18 18" width="16" height="16" aria-hidden="true">
        <path
          d="M2 2h14v8h-2v6h-3v-6H7v6H4v-6H2z"
          fill={TINT[colour] ?? `var(--wire-${letters})`}
          stroke="var(--ink)"
        />
      </svg>
      {colour}
      {letters && ` ${letters}`}
    </span>
  );
}
