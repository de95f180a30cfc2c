import { useState } from "react";
import { useEditorStore } from "../../state/use-editor.ts";
import { goToField } from "./basis.tsx";
import { sayAnswer, sayMoney } from "./figure-line.ts";
import { Because, ShowLink } from "./figure-rows.tsx";
import type { LengthRow, WholeView } from "./whole-model.ts";

const FIRST = 40;

/** What to cut, by wire and by size, and what it costs where prices are given. */
export function LengthTables({ lengths }: { readonly lengths: WholeView["lengths"] }) {
  const editor = useEditorStore();
  const [most, setMost] = useState(FIRST);
  return (
    <>
      <p>
        {lengths.total} of wire in all{lengths.cost === null ? "" : `, ${lengths.cost}`}.
      </p>
      {lengths.unknown > 0 && (
        <p className="figures-quiet">
          {lengths.unknown === 1 ? "1 wire has" : `${lengths.unknown} wires have`} no length: state it, or the
          lengths of the runs that it follows.
        </p>
      )}
      {lengths.cost === null && (
        <button type="button" className="figures-link" onClick={() => goToField(editor, "harness", "prices")}>
          State what a metre costs
        </button>
      )}
      <div className="figures-table-place">
        <table className="figures-table">
          <caption>By size</caption>
          <thead>
            <tr>
              <th scope="col">Size</th>
              <th scope="col" className="figures-number">
                Wires
              </th>
              <th scope="col" className="figures-number">
                Length
              </th>
            </tr>
          </thead>
          <tbody>
            {lengths.bySize.map((row) => (
              <tr key={row.size}>
                <th scope="row">{row.size}</th>
                <td className="figures-number">{row.count}</td>
                <td className="figures-number">{row.total}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="figures-table-place">
        <table className="figures-table">
          <caption>By wire</caption>
          <thead>
            <tr>
              <th scope="col">Wire</th>
              <th scope="col">Size</th>
              <th scope="col" className="figures-number">
                Cut
              </th>
              <th scope="col" className="figures-number">
                Cost
              </th>
              <th scope="col">
                <span className="said-only">Why</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {lengths.rows.slice(0, most).map((row) => (
              <Row key={row.wire} row={row} />
            ))}
          </tbody>
        </table>
      </div>
      {lengths.rows.length > most && (
        <button type="button" className="button" onClick={() => setMost(lengths.rows.length)}>
          Show {lengths.rows.length - most} more
        </button>
      )}
    </>
  );
}

function Row({ row }: { readonly row: LengthRow }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <tr>
        <th scope="row">
          <ShowLink about={row.about}>{row.wire}</ShowLink>
        </th>
        <td>{row.size}</td>
        <td className="figures-number">{sayAnswer(row.cut)}</td>
        <td className="figures-number">{row.cost ? sayMoney(row.cost) : ""}</td>
        <td>
          <button
            type="button"
            className="button quiet-button small-button figure-why"
            aria-label={`Why: length of ${row.wire}`}
            aria-expanded={open}
            onClick={() => setOpen(!open)}
          >
            why
          </button>
        </td>
      </tr>
      {open && (
        <tr>
          <td colSpan={5}>
            <div className="figure-because">
              <Because line={{ answer: row.cut }} />
            </div>
          </td>
        </tr>
      )}
    </>
  );
}
