import { createRoot } from "react-dom/client";
import { type Edge, type Node, ReactFlow } from "reactflow";
import "reactflow/dist/style.css";
import { makeScene } from "../../../src/layout/scene.ts";
import { atLifeSize, buildOf, countAsked } from "./harness.ts";

/**
 * React Flow as its first example shows it: plain boxes with two handles, right-angled edges, nothing of ours. As
 * many nodes as the harness has parts, where they stand, and as many edges as it has wires.
 */
const harness = buildOf(countAsked());
const scene = makeScene(harness);
const nodes: Node[] = [...scene.parts.values()].map(({ part, shape, x, y }) => ({
  id: part.id,
  position: { x, y },
  data: { label: part.designation },
  style: { width: shape.width, height: shape.height },
}));
const edges: Edge[] = Object.values(harness.wires).flatMap((wire) => {
  const [a, b] = wire.ends;
  return a === "loose" || b === "loose"
    ? []
    : [{ id: wire.id, source: a.part, target: b.part, type: "smoothstep" }];
});
createRoot(document.getElementById("page")!).render(
  <ReactFlow
    defaultNodes={nodes}
    defaultEdges={edges}
    {...(atLifeSize() ? { defaultViewport: { x: 0, y: 0, zoom: 1 } } : { fitView: true })}
    minZoom={0.05}
    proOptions={{ hideAttribution: true }}
  />,
);
