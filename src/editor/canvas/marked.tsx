import type { PartId, WireId } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import { shownWhy } from "../findings/shown-why.ts";
import { useEditor } from "../state/use-editor.ts";
import { lineOf } from "./overlay.tsx";
import "./marked.css";

/** Under the parts: what a cure would change, and the way that shows how a finding comes about. */
export function Marked({ scene }: { readonly scene: Scene }) {
  const preview = useEditor((state) => state.preview);
  const why = useEditor(shownWhy);
  if (!preview && !why) return null;
  return (
    <svg className="under-parts" width="1" height="1" aria-hidden="true">
      {why && <Marks scene={scene} parts={why.parts} wires={why.wires} kind="why" />}
      {preview && <Marks scene={scene} {...preview.marked} kind="preview" />}
    </svg>
  );
}

type Props = {
  readonly scene: Scene;
  readonly kind: "why" | "preview";
  readonly parts: Iterable<PartId>;
  readonly wires: Iterable<WireId>;
};

function Marks({ scene, kind, parts, wires }: Props) {
  const frames = [...parts].flatMap((id) => {
    const placed = scene.parts.get(id);
    if (!placed) return [];
    const { width, height } = placed.shape;
    return [`M${placed.x - 7} ${placed.y - 7}h${width + 14}v${height + 14}h${-width - 14}Z`];
  });
  return (
    <g className={`marked marked-${kind}`}>
      {[...wires].map((id) => {
        const path = scene.wires.get(id)?.path;
        return path && <path key={id} className="marked-wire" d={lineOf(path)} />;
      })}
      {frames.length > 0 && <path className="marked-part" d={frames.join("")} />}
    </g>
  );
}
