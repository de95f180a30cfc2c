import type { ConfigurationSwitch, Module } from "../../graph/harness.ts";
import { useEditorStore } from "../state/use-editor.ts";
import { choiceField, lineField } from "./fields.ts";
import { FieldsList, makeEdit } from "./fields-list.tsx";

/** A module's configuration switches: how each stands, how its chart wants it, what it means. */
export function Switches({ part }: { readonly part: Module }) {
  const editor = useEditorStore();
  const put = (switches: readonly ConfigurationSwitch[]) =>
    makeEdit(editor, { kind: "change-part", part: part.id, changes: { switches } });
  return (
    <details className="details-section" open={part.switches.length > 0}>
      <summary>Configuration switches ({part.switches.length})</summary>
      {part.switches.map((one, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a switch is known by its place in the row
        <div key={index} className="switch-row">
          <FieldsList
            owner={`${part.id} switch ${index}`}
            fields={[
              lineField("label", "Switch", one.label),
              choiceField("position", "Stands", one.position, ["on", "off", "unset"]),
              choiceField("wanted", "Wanted", one.wanted, ["on", "off", "either", "unknown"]),
              lineField("meaning", "Meaning", one.meaning),
            ]}
            take={(field, value) =>
              put(part.switches.map((old, at) => (at === index ? { ...old, [field.key]: value } : old)))
            }
          />
          <button
            type="button"
            className="button small-button"
            onClick={() => put(part.switches.filter((_, at) => at !== index))}
          >
            Remove switch {one.label}
          </button>
        </div>
      ))}
      <button
        type="button"
        className="button"
        onClick={() =>
          put([
            ...part.switches,
            { label: String(part.switches.length + 1), position: "unset", wanted: "unknown", meaning: "" },
          ])
        }
      >
        Add a switch
      </button>
    </details>
  );
}
