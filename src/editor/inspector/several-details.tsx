import { nameKind } from "../../catalogue/describe.ts";
import { type Edit, group } from "../../graph/edits/edit.ts";
import type { Cable, Part, Wire } from "../../graph/harness.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { CableDetails } from "./cable-details.tsx";
import { CABLE_WORDS, cableOfWire, canMake, makeCable } from "./cable-edits.ts";
import type { Take } from "./field-row.tsx";
import { FieldsList, makeEdit } from "./fields-list.tsx";
import { partFields } from "./part-fields.ts";
import { commonFields, sameOf } from "./several-model.ts";
import { WireColours } from "./wire-details.tsx";
import { materialFields, metalFields } from "./wire-fields.ts";

const OFFERED: readonly Cable["kind"][] = ["twisted-pair", "shielded-pair", "shielded", "multicore"];

/** What several parts or wires have in common; a change is made to all of them as one step. */
export function SeveralDetails(props: { readonly parts: readonly Part[]; readonly wires: readonly Wire[] }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const { parts, wires } = props;
  const ids = wires.map((wire) => wire.id);
  const owner = [...parts, ...wires].map((one) => one.id).join(" ");
  const changeWires = (name: string, changes: (wire: Wire) => Partial<Wire> | null, mergeKey?: string) => {
    const edits = wires.flatMap((wire): Edit[] => {
      const changed = changes(wire);
      return changed ? [{ kind: "change-wire", wire: wire.id, changes: changed }] : [];
    });
    return edits.length ? makeEdit(editor, group(name, edits), mergeKey) : null;
  };
  const takeWires: Take = (field, value) =>
    changeWires(`change ${wires.length} wires`, () => ({ [field.key]: value }));
  const takeParts: Take = (field, value) =>
    makeEdit(
      editor,
      group(
        `change ${parts.length} parts`,
        parts.map((part) => ({ kind: "change-part", part: part.id, changes: { [field.key]: value } })),
      ),
    );
  const cable = sameOf(wires, (wire) => cableOfWire(harness, wire.id));
  const shared = cable.same ? cable.value : null;
  const base = sameOf(wires, (wire) => wire.colour?.base ?? null);
  const tracer = sameOf(wires, (wire) => wire.colour?.tracer ?? null);
  return (
    <>
      <h2>{words(parts, wires)}</h2>
      {parts.length > 0 && wires.length === 0 && (
        <FieldsList
          owner={owner}
          fields={commonFields(parts.map((part) => ({ kind: part.kind, fields: partFields(harness, part) })))}
          take={takeParts}
        />
      )}
      {wires.length > 0 && parts.length === 0 && (
        <>
          <WireColours
            base={base.same ? base.value : null}
            tracer={tracer.same ? tracer.value : null}
            mixed={!base.same || !tracer.same}
            onBase={(code) =>
              changeWires(
                `recolour ${wires.length} wires`,
                ({ colour }) => ({ colour: code ? { base: code, tracer: colour?.tracer ?? null } : null }),
                `base ${owner}`,
              )
            }
            onTracer={(code) =>
              changeWires(
                `recolour ${wires.length} wires`,
                ({ colour }) => (colour ? { colour: { ...colour, tracer: code } } : null),
                `tracer ${owner}`,
              )
            }
          />
          <FieldsList
            owner={owner}
            fields={commonFields(
              wires.map((wire) => ({
                kind: "wire",
                fields: [...materialFields(harness, wire), ...metalFields(wire)],
              })),
            )}
            take={takeWires}
          />
        </>
      )}
      {wires.length > 1 && parts.length === 0 && !shared && (
        <div className="details-buttons">
          {OFFERED.filter((kind) => canMake(kind, wires.length)).map((kind) => (
            <button
              key={kind}
              type="button"
              className="button"
              onClick={() => editor.getState().dispatch(makeCable(harness, ids, kind))}
            >
              Make a {CABLE_WORDS[kind]}
            </button>
          ))}
        </div>
      )}
      {shared && parts.length === 0 && <CableDetails key={shared.id} cable={shared} />}
      {parts.length > 0 && wires.length > 0 && (
        <p className="details-words">Select only parts, or only wires, to change what they have in common.</p>
      )}
    </>
  );
}

function words(parts: readonly Part[], wires: readonly Wire[]): string {
  const kinds = new Set(parts.map((part) => part.kind));
  const [kind] = kinds;
  const partWord = kinds.size === 1 && kind ? `${nameKind(kind)}s` : "parts";
  return [
    parts.length === 1 ? "1 part" : parts.length > 1 ? `${parts.length} ${partWord}` : "",
    wires.length === 1 ? "1 wire" : wires.length > 1 ? `${wires.length} wires` : "",
  ]
    .filter(Boolean)
    .join(" and ");
}
