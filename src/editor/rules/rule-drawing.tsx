import { useEffect, useState } from "react";
import type { Harness } from "../../graph/harness.ts";
import type { Drawing } from "../../layout/drawing.ts";
import { PrimitiveSvg } from "../canvas/primitive-svg.tsx";
import { drawExample } from "./example-drawing.ts";

/** A small harness, drawn. While it is arranged its place is kept. */
export function RuleDrawing(props: { readonly harness: Harness; readonly label: string }) {
  const { harness, label } = props;
  const [drawing, setDrawing] = useState<Drawing | "failed" | null>(null);
  useEffect(() => {
    let gone = false;
    setDrawing(null);
    drawExample(harness).then(
      (made) => gone || setDrawing(made),
      () => gone || setDrawing("failed"),
    );
    return () => {
      gone = true;
    };
  }, [harness]);
  if (drawing === "failed") return <p className="finding-quiet">The example could not be drawn.</p>;
  if (!drawing) return <div className="rule-drawing rule-drawing-waiting" aria-hidden="true" />;
  const { x, y, width, height } = drawing;
  return (
    <svg
      className="rule-drawing"
      viewBox={`${x - 8} ${y - 8} ${width + 16} ${height + 16}`}
      style={{ maxWidth: width + 16 }}
      role="img"
      aria-label={label}
    >
      <PrimitiveSvg items={drawing.items} />
    </svg>
  );
}
