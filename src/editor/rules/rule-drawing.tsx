import { useEffect, useState } from "react";
import type { Harness } from "../../graph/harness.ts";
import type { Drawing } from "../../layout/drawing.ts";
import { PrimitiveSvg } from "../canvas/primitive-svg.tsx";
import { drawExample } from "./example-drawing.ts";

/** Below this its letters cannot be read; it is scrolled instead. */
const LEAST_SCALE = 0.72;

/** A small harness, drawn. While it is arranged its place is kept. */
export function RuleDrawing(props: {
  readonly harness: Harness;
  readonly name: string;
  readonly label: string;
}) {
  const { harness, name, label } = props;
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
  const wide = width + 16;
  return (
    <section
      className="rule-drawing"
      style={{ maxWidth: wide }}
      aria-label={name}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it is wider than the page and scrolled by key as well
      tabIndex={0}
    >
      <svg
        viewBox={`${x - 8} ${y - 8} ${wide} ${height + 16}`}
        style={{ minWidth: wide * LEAST_SCALE }}
        role="img"
        aria-label={label}
      >
        <PrimitiveSvg items={drawing.items} />
      </svg>
    </section>
  );
}
