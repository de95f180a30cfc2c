import { memo, useEffect, useId, useRef, useState } from "react";
import type { Edit } from "../../../graph/edits/edit.ts";
import { useEditor, useEditorStore } from "../../state/use-editor.ts";
import { ShowLink } from "./figure-rows.tsx";
import { FuseSwatch } from "./fuse-swatch.tsx";
import { type FuseRow, previewOf, scopesFor, type WireRow, withinScope } from "./sizes-model.ts";
import { useSurvey } from "./use-survey.ts";

/** What each wire and fuse needs, why, and taking it: one, a way, or all. */
export const SizesPage = memo(function SizesPage() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const selection = useEditor((state) => state.selection);
  const [shrink, setShrink] = useState(false);
  const [chosen, setChosen] = useState("whole");
  const [all, setAll] = useState(false);
  const { answer, busy } = useSurvey("sizes", shrink);
  const scopeId = useId();
  const view = answer?.sizes;
  if (answer?.problem) return <p role="alert">{answer.problem}</p>;
  if (!view) return <p className="figures-quiet sizes-calm">Every state is being worked out.</p>;
  const choices = scopesFor(harness, view, selection);
  const choice = choices.find(({ id }) => id === chosen) ?? choices[0]!;
  const scoped = withinScope(view, choice.scope);
  const few = choice.scope.kind !== "whole" || all;
  const wires = few
    ? scoped.wires
    : scoped.wires.filter((row) => row.changes || row.proposed === "none does");
  const left = scoped.wires.length - wires.length;
  const take = (edit: Edit, said: string) => {
    if (editor.getState().dispatch(edit)) editor.getState().say(said);
  };
  return (
    <>
      <h2>Sizes of wires and fuses</h2>
      <p className="figures-quiet">
        For every key position, with nothing on and with everything on; the harness as it is, what-ifs aside.
      </p>
      <div className="field-row">
        <label htmlFor={scopeId}>Size</label>
        <select id={scopeId} value={choice.id} onChange={(event) => setChosen(event.target.value)}>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      {choices.length === 1 && (
        <p className="figures-quiet">Select a wire or a load to size it, or its way, by itself.</p>
      )}
      <label className="flag-row">
        <input type="checkbox" checked={shrink} onChange={(event) => setShrink(event.target.checked)} />
        Also make thinner what is thicker than it need be
      </label>
      <TakeAll edit={scoped.edit} busy={busy} onTake={take} />
      {choice.scope.kind === "whole" && view.unmet.length > 0 && (
        <section className="figures-group">
          <h3>What no size or rating cures</h3>
          <ul className="figures-warnings">
            {view.unmet.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </section>
      )}
      {wires.length > 0 && <WireSizes rows={wires} busy={busy} onTake={take} />}
      {choice.scope.kind === "whole" && (left > 0 || all) && (
        <button type="button" className="button" onClick={() => setAll(!all)}>
          {all ? "Show only what changes" : sayLeft(left)}
        </button>
      )}
      {scoped.fuses.length > 0 && <FuseSizes rows={scoped.fuses} busy={busy} onTake={take} />}
    </>
  );
});

function sayLeft(left: number): string {
  return left === 1 ? "Show the wire that may stay" : `Show the ${left} wires that may stay`;
}

type Taking = { readonly busy: boolean; readonly onTake: (edit: Edit, said: string) => void };

/** First what would change, then the change: one step, which undo takes back. */
function TakeAll({ edit, busy, onTake }: Taking & { readonly edit: Edit | null }) {
  const harness = useEditor((state) => state.history.present);
  const [open, setOpen] = useState(false);
  const list = useRef<HTMLElement>(null);
  useEffect(() => {
    if (open) list.current?.focus();
  }, [open]);
  if (!edit) return <p className="sizes-calm">Every wire and fuse here is as large as it needs to be.</p>;
  const lines = previewOf(harness, edit);
  const changes = lines.length === 1 ? "1 change" : `${lines.length} changes`;
  if (!open) {
    return (
      <button type="button" className="button strong-button" disabled={busy} onClick={() => setOpen(true)}>
        Look at {changes}…
      </button>
    );
  }
  return (
    <section ref={list} tabIndex={-1} className="sizes-preview" aria-label="What would change">
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p className="details-buttons">
        <button
          type="button"
          className="button strong-button"
          disabled={busy}
          onClick={() => {
            setOpen(false);
            onTake(edit, `Done: ${changes}.`);
          }}
        >
          Make {changes}
        </button>
        <button type="button" className="button" onClick={() => setOpen(false)}>
          Leave it
        </button>
      </p>
    </section>
  );
}

function WireSizes({ rows, busy, onTake }: Taking & { readonly rows: readonly WireRow[] }) {
  return (
    <div className="figures-table-place">
      <table className="figures-table">
        <caption>Wires</caption>
        <thead>
          <tr>
            <th scope="col">Wire</th>
            <th scope="col">Is</th>
            <th scope="col">Needs</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.wire}>
              <th scope="row">
                <ShowLink about={[{ wire: row.wire }]}>{row.name}</ShowLink>
              </th>
              <td className="sizes-short">{row.now}</td>
              <td className="sizes-short">{row.changes ? <strong>{row.proposed}</strong> : row.proposed}</td>
              <td>
                <strong>{row.decided}</strong>: {row.why}
                <TakeOne row={row} busy={busy} onTake={onTake} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function FuseSizes({ rows, busy, onTake }: Taking & { readonly rows: readonly FuseRow[] }) {
  return (
    <div className="figures-table-place">
      <table className="figures-table">
        <caption>Fuses</caption>
        <thead>
          <tr>
            <th scope="col">Fuse</th>
            <th scope="col">Is</th>
            <th scope="col">Needs</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.fuse}>
              <th scope="row">
                <ShowLink about={[{ part: row.fuse }]}>{row.name}</ShowLink>
              </th>
              <td className="sizes-short">{row.now}</td>
              <td>
                {row.proposed ? (
                  <>
                    {row.changes ? <strong>{row.proposed.rating}</strong> : row.proposed.rating}
                    {row.proposed.colour && <FuseSwatch colour={row.proposed.colour} />}
                  </>
                ) : (
                  "none fits"
                )}
              </td>
              <td>
                {row.why}
                {row.grow.length > 0 && <p>Must grow first: {row.grow.join(", ")}.</p>}
                <TakeOne row={row} busy={busy} onTake={onTake} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function TakeOne(props: Taking & { readonly row: Pick<WireRow, "name" | "edit"> }) {
  const harness = useEditor((state) => state.history.present);
  const { row, busy, onTake } = props;
  const { edit } = row;
  if (!edit) return null;
  const lines = previewOf(harness, edit);
  return (
    <p>
      <button
        type="button"
        className="button small-button"
        disabled={busy}
        onClick={() => onTake(edit, `Done: ${lines.join(", ")}.`)}
      >
        Take {lines.join(", ")}
      </button>
    </p>
  );
}
