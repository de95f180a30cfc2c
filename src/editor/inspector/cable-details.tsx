import type { Cable } from "../../graph/harness.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { CABLE_WORDS, partCable } from "./cable-edits.ts";
import { choiceField, designationField, type Field, noteField } from "./fields.ts";
import { FieldsList, makeEdit } from "./fields-list.tsx";

/** The cable that a wire is part of. */
export function CableDetails({ cable }: { readonly cable: Cable }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const taken = new Set(Object.values(harness.cables).map((other) => other.designation));
  const names = cable.wires.map((id) => harness.wires[id]?.designation ?? "").join(", ");
  const shield: Field = {
    ...choiceField("shield", "Drain of the shield", cable.shield ?? "", [""]),
    choices: [
      ["", "none drawn"],
      ...cable.wires.map((id) => [id, harness.wires[id]?.designation ?? id] as const),
      ...(cable.shield && !cable.wires.includes(cable.shield)
        ? [[cable.shield, harness.wires[cable.shield]?.designation ?? cable.shield] as const]
        : []),
    ],
    read: (typed) => ({ ok: true, value: typed === "" ? null : typed }),
  };
  const fields = [
    { ...designationField(cable.designation, taken), name: "Cable" },
    choiceField(
      "kind",
      "Kind",
      cable.kind,
      ["twisted-pair", "shielded", "shielded-pair", "coax", "multicore"],
      CABLE_WORDS,
    ),
    ...(cable.kind === "twisted-pair" || cable.kind === "multicore" ? [] : [shield]),
    noteField(cable.note),
  ];
  return (
    <section className="details-section" aria-label="Cable">
      <p className="details-words">
        In {cable.designation}, {CABLE_WORDS[cable.kind]} of {names}.
      </p>
      <FieldsList
        owner={cable.id}
        fields={fields}
        take={(field, value) =>
          makeEdit(editor, {
            kind: "put-entry",
            section: "cables",
            entry: { ...cable, [field.key]: value },
          })
        }
      />
      <button type="button" className="button" onClick={() => makeEdit(editor, partCable(cable))}>
        Take {cable.designation} apart
      </button>
    </section>
  );
}
