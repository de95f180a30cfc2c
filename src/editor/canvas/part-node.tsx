import { memo, useMemo } from "react";
import type { NodeProps } from "reactflow";
import { useStore } from "zustand";
import { contactsOf } from "../../graph/contacts.ts";
import type { Harness, Part } from "../../graph/harness.ts";
import type { PlacedPart } from "../../layout/scene.ts";
import { drawPart } from "../../sheets/part-drawing/draw-part.ts";
import { sayReadings } from "../readings/say-readings.ts";
import { useReadings } from "../readings/use-readings.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { canvasOf } from "./canvas-store.ts";
import { handOf } from "./hand.ts";
import type { PartNodeType } from "./nodes-model.ts";
import { PrimitiveSvg } from "./primitive-svg.tsx";
import { sayContact } from "./say-model.ts";

/** A part of any kind as React Flow holds it: its drawing, and an element by name for each contact. */
export const PartNode = memo(function PartNode({ data }: NodeProps<PartNodeType>) {
  const { placed } = data;
  const canvas = canvasOf(useEditorStore());
  const { part, shape } = placed;
  const far = useStore(canvas, (state) => state.far);
  const near = useStore(canvas, (state) => state.contacts);
  const active = useEditor((state) => state.selection.contact?.part === part.id);
  const lifted = useStore(canvas, (state) => state.lifted?.parts.has(part.id) ?? false);
  return (
    <div className={lifted ? "part lifted" : "part"}>
      <svg width={shape.width} height={shape.height} aria-hidden="true">
        {far ? <FarPart placed={placed} /> : <NearPart placed={placed} />}
      </svg>
      {(near || active) && <Contacts placed={placed} />}
    </div>
  );
});

/** The designations that a housing writes in its head of parts other than itself. */
function namedOthers(harness: Harness, part: Part): string {
  if (part.kind !== "connector") return "";
  const name = (id: Part["id"] | null) => (id ? (harness.parts[id]?.designation ?? "") : "");
  return `${name(part.belongsTo.module)}|${name(part.matedWith)}`;
}

function NearPart({ placed }: { readonly placed: PlacedPart }) {
  const editor = useEditorStore();
  const others = useEditor((state) => namedOthers(state.history.present, placed.part));
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the harness only these names are read
  const items = useMemo(
    () => drawPart(placed, { harness: editor.getState().history.present }),
    [placed, others],
  );
  return <PrimitiveSvg items={items} />;
}

/** From afar: the outline, and the designation as large as it can be. */
function FarPart({ placed }: { readonly placed: PlacedPart }) {
  const { part, shape } = placed;
  const size = Math.min(
    64,
    Math.max(14, Math.min(shape.height * 0.5, (shape.width * 1.5) / part.designation.length)),
  );
  const housing = part.kind === "connector" || part.kind === "module";
  return (
    <>
      <rect
        x={1}
        y={1}
        width={shape.width - 2}
        height={shape.height - 2}
        className={housing ? "far-housing" : "far-symbol"}
      />
      <text
        x={shape.width / 2}
        y={shape.height / 2 + size * 0.34}
        fontSize={size}
        textAnchor="middle"
        className="far-name"
      >
        {part.designation}
      </text>
    </>
  );
}

const OUTWARD = 10;

/** The contacts by name: for a screen reader, for a test, and as the place the pointer is meant to hit. */
function Contacts({ placed }: { readonly placed: PlacedPart }) {
  const editor = useEditorStore();
  const traced = useEditor((state) => state.derived.traced);
  const { part, shape } = placed;
  // One text for all contacts: only a part of which a reading changed is named anew.
  const read = useReadings(({ readings }) => (readings ? sayReadings(readings, part) : "")).split("\n");
  const inward = part.kind === "connector" || part.kind === "module" ? 32 : 14;
  return contactsOf(part).map((contact) => {
    const port = shape.ports.find((one) => one.contact === contact.number);
    if (!port) return null;
    const ref = { part: part.id, contact: contact.number };
    return (
      <button
        key={contact.number}
        type="button"
        tabIndex={-1}
        className="contact"
        aria-label={sayContact(editor.getState().history.present, traced, ref, read[contact.number - 1])}
        style={{
          left: port.side === "left" ? port.x - OUTWARD : port.x - inward,
          top: port.y - 12,
          width: inward + OUTWARD,
        }}
        onClick={(event) => {
          // A press with the pointer is judged by where it lands; this is a screen reader's own click.
          if (event.detail === 0) handOf(editor)?.choose({ kind: "contact", ref, x: 0, y: 0 });
        }}
      />
    );
  });
}
