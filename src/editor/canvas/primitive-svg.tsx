import { memo, useMemo } from "react";
import type { Primitive } from "../../layout/drawing.ts";
import { cssInk } from "./ink-css.ts";
import { type Mark, mergeMarks } from "./merge-model.ts";

/** Primitives as SVG elements, for standing inside an `svg`. Drawn again only for another list of primitives. */
export const PrimitiveSvg = memo(function PrimitiveSvg({ items }: { readonly items: readonly Primitive[] }) {
  const marks = useMemo(() => mergeMarks(items), [items]);
  return marks.map((mark, index) => <MarkSvg key={`${mark.kind}${index.toString()}`} mark={mark} />);
});

function MarkSvg({ mark }: { readonly mark: Mark }) {
  if (mark.kind === "text") return <TextSvg mark={mark} />;
  const { d, fill, stroke } = mark;
  if (!stroke) return <path d={d} fill={cssInk(fill)} />;
  return (
    <path
      d={d}
      fill={cssInk(fill)}
      stroke={cssInk(stroke.colour)}
      strokeWidth={stroke.width}
      strokeDasharray={stroke.dash?.join(" ")}
      strokeLinecap={stroke.cap}
    />
  );
}

const ANCHORS = { start: undefined, middle: "middle", end: "end" } as const;

function TextSvg({ mark }: { readonly mark: Extract<Mark, { kind: "text" }> }) {
  const { item, dx, dy } = mark;
  const x = item.x + dx;
  const y = item.y + dy;
  return (
    <text
      x={x}
      y={y}
      fontSize={item.size}
      fontWeight={item.weight === "bold" ? 700 : undefined}
      textAnchor={ANCHORS[item.align ?? "start"]}
      fill={cssInk(item.colour)}
      transform={item.turn === 90 ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {item.text}
    </text>
  );
}
