import type { Colour } from "../../graph/harness.ts";
import type { SideName } from "../../match/review/review.ts";
import { CAPS, JOINTS } from "../../sheets/part-drawing/joint.ts";

type Strand = { readonly colour: Colour | null; readonly dashed?: boolean };

/**
 * The joins of one row, drawn between its leads: each lead in its colours from its own height to the joint in
 * the middle. What is only proposed or asked is dashed and has an open joint. The letters stand beside the leads.
 */
export function JoinDrawing(props: {
  readonly left: readonly Strand[];
  readonly right: readonly Strand[];
  /** What stands in the middle: a way of making a joint, a cap, or nothing yet. */
  readonly middle:
    | { readonly joint: string; readonly made: boolean }
    | { readonly cap: SideName; readonly made: boolean }
    | null;
}) {
  const { left, right, middle } = props;
  const at = (index: number, count: number) => `${((index + 0.5) / count) * 100}%`;
  return (
    <svg className="join-drawing" aria-hidden="true">
      {left.map((strand, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a strand is known by its height
        <StrandLine key={`l${index}`} strand={strand} x1="0" y1={at(index, left.length)} x2="50%" />
      ))}
      {right.map((strand, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a strand is known by its height
        <StrandLine key={`r${index}`} strand={strand} x1="100%" y1={at(index, right.length)} x2="50%" />
      ))}
      {middle && (
        <svg x="50%" y="50%" overflow="visible" aria-hidden="true">
          {"cap" in middle ? (
            <CapMark made={middle.made} right={middle.cap === "right"} />
          ) : (
            <JointMark {...middle} />
          )}
        </svg>
      )}
    </svg>
  );
}

function StrandLine(props: {
  readonly strand: Strand;
  readonly x1: string;
  readonly y1: string;
  readonly x2: string;
}) {
  const { strand, ...ends } = props;
  const { colour, dashed } = strand;
  const place = { ...ends, y2: "50%" };
  if (dashed) return <line {...place} stroke="var(--ink)" strokeWidth="1.5" strokeDasharray="4 4" />;
  const base = colour ? `var(--wire-${colour.base})` : "var(--wire-unknown)";
  const tracer = colour?.base === "GNYE" ? "YE" : colour?.tracer;
  return (
    <>
      <line {...place} stroke="var(--ink)" strokeWidth="6" />
      <line {...place} stroke={base} strokeWidth="4" />
      {tracer && <line {...place} stroke={`var(--wire-${tracer})`} strokeWidth="4" strokeDasharray="3 7" />}
    </>
  );
}

function JointMark({ joint, made }: { readonly joint: string; readonly made: boolean }) {
  const known = Object.entries(JOINTS).find(([method]) => method === joint)?.[1] ?? JOINTS.unknown;
  return (
    <>
      <rect
        x="-13"
        y="-9"
        width="26"
        height="18"
        rx="9"
        className={made ? "join-mark" : "join-mark join-mark-open"}
      />
      <text y="4" textAnchor="middle" className="join-letter">
        {made ? known.letter : "?"}
      </text>
    </>
  );
}

function CapMark({ made, right }: { readonly made: boolean; readonly right: boolean }) {
  return (
    <>
      <path
        d="M-10-8H4C10-8 10 8 4 8H-10Z"
        transform={right ? "scale(-1 1)" : undefined}
        className={made ? "join-mark" : "join-mark join-mark-open"}
      />
      <text y="4" textAnchor="middle" className="join-letter">
        {made ? CAPS["end-cap"].letter : "?"}
      </text>
    </>
  );
}
