import { useMemo } from "react";
import { useStore } from "zustand";
import type { Path } from "../../graph/harness.ts";
import type { PlacedWire, Scene } from "../../layout/scene.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { canvasOf, type Rubber } from "./canvas-store.ts";
import { contactSpot } from "./nodes-model.ts";
import { PrimitiveSvg } from "./primitive-svg.tsx";
import { wireItems } from "./wire-painter.ts";

export function lineOf(path: Path): string {
  let d = `M${path[0]} ${path[1]}`;
  for (let i = 2; i + 1 < path.length; i += 2) d += `L${path[i]} ${path[i + 1]}`;
  return d;
}

/** Over the wires and under the parts: the circuit that is traced, and the wires that are selected. */
export function UnderParts({ scene }: { readonly scene: Scene }) {
  const canvas = canvasOf(useEditorStore());
  const lifted = useStore(canvas, (state) => state.lifted);
  const far = useStore(canvas, (state) => state.far);
  const harness = useEditor((state) => state.history.present);
  const selected = useEditor((state) => state.selection.wires);
  const taken = useStore(canvas, (state) => state.taken);
  const items = useMemo(() => wireItems(scene, harness), [scene, harness]);
  const shown: PlacedWire[] = [];
  for (const id of lifted?.wires ?? []) {
    const placed = scene.wires.get(id);
    if (placed) shown.push(placed);
  }
  const chosen: PlacedWire[] = [];
  for (const id of selected) {
    const placed = scene.wires.get(id);
    if (!placed) continue;
    chosen.push(placed);
    if (!lifted?.wires.has(id)) shown.push(placed);
  }
  const glowing = shown.length;
  for (const id of taken) {
    const placed = scene.wires.get(id);
    if (placed && !lifted?.wires.has(id) && !selected.has(id)) shown.push(placed);
  }
  if (!shown.length) return null;
  return (
    <svg className="under-parts" width="1" height="1" aria-hidden="true">
      {lifted && (
        <path
          className="lifted-glow"
          d={shown
            .slice(0, glowing)
            .map(({ path }) => lineOf(path))
            .join("")}
        />
      )}
      {chosen.length > 0 && (
        <path className="chosen-glow" d={chosen.map(({ path }) => lineOf(path)).join("")} />
      )}
      {/* A whole sheet of selected wires is told by its glow; drawing each again would only cost. */}
      {shown.length <= 80 && !far
        ? shown.map((placed) => <PrimitiveSvg key={placed.wire.id} items={items(placed)} />)
        : plainWires(shown)}
    </svg>
  );
}

/** Many wires as few elements: all outlines in one, then one for each colour. */
function plainWires(shown: readonly PlacedWire[]) {
  const byColour = new Map<string, string>();
  let all = "";
  for (const { wire, path } of shown) {
    const base = wire.colour?.base ?? "unknown";
    const line = lineOf(path);
    all += line;
    byColour.set(base, (byColour.get(base) ?? "") + line);
  }
  return (
    <>
      <path className="far-wire" d={all} stroke="var(--ink)" strokeWidth={5} />
      {[...byColour].map(([base, lines]) => (
        <path
          key={base}
          className="far-wire"
          d={lines}
          stroke={`var(--wire-${base}, var(--wire-unknown))`}
          strokeWidth={3.2}
        />
      ))}
    </>
  );
}

/** Over everything: what is selected, what is being drawn, where it would land. */
export function OverParts({ scene }: { readonly scene: Scene }) {
  const canvas = canvasOf(useEditorStore());
  const selection = useEditor((state) => state.selection);
  const pointed = useEditor((state) => state.pointed);
  const rubber = useStore(canvas, (state) => state.rubber);
  const box = useStore(canvas, (state) => state.box);
  const guides = useStore(canvas, (state) => state.guides);
  const outlines: string[] = [];
  for (const id of selection.parts) {
    const placed = scene.parts.get(id);
    if (!placed) continue;
    const { width, height } = placed.shape;
    outlines.push(`M${placed.x - 4} ${placed.y - 4}h${width + 8}v${height + 8}h${-width - 8}Z`);
  }
  const contact = selection.contact && contactSpot(scene, selection.contact.part, selection.contact.contact);
  const hovered = pointed && "part" in pointed ? contactSpot(scene, pointed.part, pointed.contact) : null;
  return (
    <svg className="over-parts" width="1" height="1" aria-hidden="true">
      {outlines.length > 0 && <path className="chosen-outline" d={outlines.join("")} />}
      {hovered && <circle className="contact-pointed" cx={hovered.x} cy={hovered.y} r={7} />}
      {contact && <circle className="contact-chosen" cx={contact.x} cy={contact.y} r={8} />}
      {guides.map(([x1, x2, y]) => (
        <path key={`${x1} ${x2} ${y}`} className="guide" d={`M${x1 - 24} ${y}H${x2 + 24}`} />
      ))}
      {rubber && <RubberLine rubber={rubber} scene={scene} />}
      {box && <rect className="selection-box" {...box} />}
    </svg>
  );
}

function RubberLine({ rubber, scene }: { readonly rubber: Rubber; readonly scene: Scene }) {
  const { start, end, target } = rubber;
  const middle = Math.round((start.x + end.x) / 2);
  const onWire = target && "wire" in target ? scene.wires.get(target.wire) : undefined;
  const onContact = target && !("wire" in target) ? contactSpot(scene, target.part, target.contact) : null;
  return (
    <>
      {onWire && <path className="target-wire" d={lineOf(onWire.path)} />}
      {onContact && <circle className="target-contact" cx={onContact.x} cy={onContact.y} r={11} />}
      <path className="rubber" d={`M${start.x} ${start.y}H${middle}V${end.y}H${end.x}`} />
      <circle className="rubber-end" cx={end.x} cy={end.y} r={4} />
    </>
  );
}
