import { nameContact } from "../../catalogue/describe.ts";
import type { ColourCode, Wire } from "../../graph/harness.ts";
import { showOnCanvas } from "../canvas/show.ts";
import { Swatch } from "../shell/swatch.tsx";
import { wireWords } from "../shell/trace-words.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { CableDetails } from "./cable-details.tsx";
import { cableOfWire } from "./cable-edits.ts";
import { ColourPicker } from "./colour-picker.tsx";
import type { Take } from "./field-row.tsx";
import { FieldsList, makeEdit } from "./fields-list.tsx";
import { wireFields } from "./wire-fields.ts";

/** Everything about one wire. */
export function WireDetails({ wire }: { readonly wire: Wire }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const traced = useEditor((state) => state.derived.traced);
  const change = (changes: Partial<Wire>, mergeKey?: string) =>
    makeEdit(editor, { kind: "change-wire", wire: wire.id, changes }, mergeKey);
  const take: Take = (field, value) => change({ [field.key]: value });
  const cable = cableOfWire(harness, wire.id);
  const fields = wireFields(harness, wire);
  return (
    <>
      <h2>
        {wire.designation} <span className="details-kind">wire</span> <Swatch colour={wire.colour} />
      </h2>
      <p className="details-words">{wireWords(harness, traced, wire)}</p>
      <FieldsList owner={wire.id} fields={fields.slice(0, 4)} take={take} />
      <div className="details-go">
        {wire.ends.map((end, index) =>
          end === "loose" ? null : (
            <button
              // biome-ignore lint/suspicious/noArrayIndexKey: a wire has two ends, in order
              key={index}
              type="button"
              className="button small-button"
              onClick={() => showOnCanvas(editor, [end])}
            >
              Go to {nameContact(harness, end)}
            </button>
          ),
        )}
      </div>
      <WireColours
        base={wire.colour?.base ?? null}
        tracer={wire.colour?.tracer ?? null}
        onBase={(base) =>
          change({ colour: base ? { base, tracer: wire.colour?.tracer ?? null } : null }, `base ${wire.id}`)
        }
        onTracer={(tracer) => {
          if (wire.colour) change({ colour: { ...wire.colour, tracer } }, `tracer ${wire.id}`);
        }}
      />
      <FieldsList owner={wire.id} fields={fields.slice(4)} take={take} />
      {cable && <CableDetails key={cable.id} cable={cable} />}
      <WireRuns wire={wire} />
    </>
  );
}

export function WireColours(props: {
  readonly base: ColourCode | null;
  readonly tracer: ColourCode | null;
  readonly mixed?: boolean;
  readonly onBase: (code: ColourCode | null) => void;
  readonly onTracer: (code: ColourCode | null) => void;
}) {
  const mixed = props.mixed ? { mixed: true } : {};
  return (
    <>
      <ColourPicker name="Base" none="not stated" value={props.base} onPick={props.onBase} {...mixed} />
      {(props.base || props.mixed) && (
        <ColourPicker name="Tracer" none="none" value={props.tracer} onPick={props.onTracer} {...mixed} />
      )}
    </>
  );
}

/** Which runs of the bundle the wire follows. */
function WireRuns({ wire }: { readonly wire: Wire }) {
  const editor = useEditorStore();
  const runs = useEditor((state) => state.history.present.runs);
  const list = Object.values(runs);
  if (list.length === 0) return null;
  return (
    <fieldset className="view">
      <legend>Follows the runs</legend>
      {list.map((run) => (
        <label key={run.id} className="flag-row">
          <input
            type="checkbox"
            checked={wire.runs.includes(run.id)}
            onChange={(event) =>
              makeEdit(editor, {
                kind: "change-wire",
                wire: wire.id,
                changes: {
                  runs: event.target.checked
                    ? [...wire.runs, run.id]
                    : wire.runs.filter((id) => id !== run.id),
                },
              })
            }
          />
          {run.designation} {[run.from, run.to].filter(Boolean).join(" to ")}
        </label>
      ))}
    </fieldset>
  );
}
