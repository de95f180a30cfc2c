import { useEffect, useMemo, useRef } from "react";
import type { Scene } from "../../layout/scene.ts";
import type { Sight } from "./sight.ts";
import { seenBox } from "./view-model.ts";

const WIDTH = 160;
const HEIGHT = 112;

/**
 * The whole drawing in small, and what of it is seen. Pressing it goes there. The keyboard has its own ways.
 * It stands aside while the whole drawing is in sight, where it would only cover a part of it.
 */
export function Minimap({ scene, sight }: { readonly scene: Scene; readonly sight: Sight }) {
  const frame = useRef<SVGRectElement>(null);
  const { x, y, width, height } = scene.bounds;
  const margin = Math.max(width, height) * 0.05 + 1;
  const viewBox = `${x - margin} ${y - margin} ${width + 2 * margin} ${height + 2 * margin}`;
  const shapes = useMemo(() => {
    let parts = "";
    for (const { x: left, y: top, shape } of scene.parts.values()) {
      parts += `M${left} ${top}h${shape.width}v${shape.height}h${-shape.width}Z`;
    }
    let wires = "";
    for (const { path } of scene.wires.values()) {
      for (let i = 0; i + 1 < path.length; i += 2) wires += `${i ? "L" : "M"}${path[i]} ${path[i + 1]}`;
    }
    return { parts, wires };
  }, [scene]);
  useEffect(
    () =>
      sight.listen((view, page) => {
        const seen = seenBox(view, page);
        const element = frame.current;
        if (!element) return;
        element.ownerSVGElement?.toggleAttribute("data-idle", sight.seesAll(scene));
        element.setAttribute("x", String(seen.x));
        element.setAttribute("y", String(seen.y));
        element.setAttribute("width", String(Math.max(0, seen.width)));
        element.setAttribute("height", String(Math.max(0, seen.height)));
      }),
    [sight, scene],
  );
  if (width === 0) return null;
  const go = (event: React.PointerEvent<SVGSVGElement>) => {
    if (event.type === "pointermove" && event.buttons === 0) return;
    const matrix = event.currentTarget.getScreenCTM()?.inverse();
    if (!matrix) return;
    const spot = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    sight.centreOn({ x: spot.x, y: spot.y });
  };
  return (
    <svg
      className="minimap"
      width={WIDTH}
      height={HEIGHT}
      viewBox={viewBox}
      aria-hidden="true"
      onPointerDown={go}
      onPointerMove={go}
    >
      <path className="minimap-wires" d={shapes.wires} />
      <path className="minimap-parts" d={shapes.parts} />
      <rect ref={frame} className="minimap-seen" />
    </svg>
  );
}
