import { nameKind } from "../../catalogue/describe.ts";
import { changeView } from "../../graph/edits/housing.ts";
import type { Connector, Module, Part } from "../../graph/harness.ts";
import { openDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { Cavities } from "./cavities.tsx";
import { countChanges, rowChanges } from "./cavity-fields.ts";
import { FieldRow, type Take } from "./field-row.tsx";
import { lineField } from "./fields.ts";
import { FieldsList, makeEdit } from "./fields-list.tsx";
import { belongsFields, partFields } from "./part-fields.ts";
import { Switches } from "./switches.tsx";

/** Everything about one part. */
export function PartDetails(props: { readonly part: Part; readonly contact: number | null }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const { part } = props;
  const take: Take = (field, value) =>
    makeEdit(editor, { kind: "change-part", part: part.id, changes: { [field.key]: value } });
  const housing = part.kind === "connector" || part.kind === "module";
  return (
    <>
      <h2>
        {part.designation} <span className="details-kind">{nameKind(part.kind)}</span>
      </h2>
      {part.kind === "connector" && <View part={part} />}
      <FieldsList owner={part.id} fields={partFields(harness, part)} take={take} />
      {part.kind === "connector" && (
        <FieldsList owner={part.id} fields={belongsFields(harness, part)} take={take} />
      )}
      {housing && <Counts part={part} />}
      {part.kind === "module" && <Switches part={part} />}
      {housing && <Cavities part={part} open={props.contact} />}
    </>
  );
}

function Counts({ part }: { readonly part: Connector | Module }) {
  const editor = useEditorStore();
  const take: Take = (_field, value) =>
    makeEdit(editor, {
      kind: "change-part",
      part: part.id,
      changes: value as Readonly<Record<string, unknown>>,
    });
  return (
    <div className="details-pair">
      <FieldRow
        field={{
          ...lineField("count", "Cavities", String(part.cavities.length)),
          read: (text) => countChanges(part, text),
        }}
        take={take}
      />
      {part.kind === "connector" && (
        <FieldRow
          field={{
            ...lineField("rows", "Rows of the face", String(part.rows.length)),
            read: (text) => rowChanges(part, text),
          }}
          take={take}
        />
      )}
      <button
        type="button"
        className="button"
        onClick={() => openDialog({ kind: "paste-rows", part: part.id, text: "" })}
      >
        Paste rows…
      </button>
      {part.kind === "connector" && (
        <button
          type="button"
          className="button"
          onClick={() => openDialog({ kind: "keep-connector", part: part.id })}
        >
          Keep as a connector…
        </button>
      )}
    </div>
  );
}

/** From which side the face is seen, and the face as it looks from there. */
function View({ part }: { readonly part: Connector }) {
  const editor = useEditorStore();
  const turn = () => {
    makeEdit(editor, asEdit(changeView(editor.getState().history.present, part.id)));
  };
  return (
    <fieldset className="view">
      <legend>Seen from</legend>
      {(
        [
          ["mating-face", "mating face"],
          ["wire-side", "wire side"],
        ] as const
      ).map(([value, name]) => (
        <label key={value} className="flag-row">
          <input
            type="radio"
            name={`view-${part.id}`}
            checked={part.view === value}
            onChange={() => {
              if (part.view !== value) turn();
            }}
          />
          {name}
        </label>
      ))}
      {part.cavities.length > 0 && part.cavities.length <= 60 && <Face part={part} />}
    </fieldset>
  );
}

function asEdit(result: ReturnType<typeof changeView>) {
  if ("ok" in result) throw new Error(result.why);
  return result;
}

/** The cavities as they lie, seen from the stated side. */
export function Face({ part }: { readonly part: Pick<Connector, "rows" | "cavities" | "view"> }) {
  return (
    <div className="face" role="img" aria-label={`Face, ${part.view.replace("-", " ")}: ${faceWords(part)}`}>
      {part.rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row of the face is its place
        <div key={index} className="face-row">
          {row.map((number, column) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a cavity of the face is its place
            <span key={column} className={number ? "face-cavity" : "face-gap"}>
              {number ? (part.cavities[number - 1]?.label ?? "") : ""}
            </span>
          ))}
        </div>
      ))}
    </div>
  );
}

function faceWords(part: Pick<Connector, "rows" | "cavities">): string {
  return part.rows
    .map((row) => row.flatMap((number) => part.cavities[number - 1]?.label ?? []).join(" "))
    .join("; ");
}
