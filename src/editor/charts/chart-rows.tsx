import { memo, useState } from "react";
import { FUNCTIONS, functionOf } from "../../catalogue/functions.ts";
import type { Direction, Settings } from "../../graph/harness.ts";
import type { Lead } from "../../match/chart.ts";
import type { LeadChanges, MendedChart } from "../../match/review/mend.ts";
import { Swatch } from "../shell/swatch.tsx";
import {
  ampereCell,
  colourCell,
  DIRECTIONS,
  functionCell,
  labelCell,
  sayRest,
  sizeCell,
  wordsCell,
} from "./cells-model.ts";
import { Cell } from "./row-cell.tsx";
import "./rows.css";

/** So many rows are drawn at once; a long chart shows more on asking. */
const PAGE = 50;
const FUNCTION_LIST = "chart-functions";

/** The vocabulary, once for all rows. */
export function FunctionList() {
  return (
    <datalist id={FUNCTION_LIST}>
      {FUNCTIONS.filter(({ id }) => id !== "unknown").map(({ id, name }) => (
        <option key={id} value={name} />
      ))}
    </datalist>
  );
}

/** The rows as they were understood, each cell to be corrected in place. */
export function ChartRows(props: {
  readonly name: string;
  readonly mended: MendedChart;
  readonly sizes: Settings["sizes"];
  readonly mayDrop: boolean;
  readonly onChange: (key: string, changes: LeadChanges) => void;
  readonly onAside: (key: string, source: string) => void;
}) {
  const [most, setMost] = useState(PAGE);
  const { keys, chart } = props.mended;
  return (
    <>
      <table className="chart-rows">
        <caption className="said-only">{props.name}: rows as they were read</caption>
        <thead>
          <tr>
            <th scope="col">Cavity</th>
            <th scope="col">Function</th>
            <th scope="col">Colour</th>
            <th scope="col">Size</th>
            <th scope="col">
              <span className="said-only">More</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {chart.leads.slice(0, most).map((lead, index) => (
            <Row
              key={keys[index]}
              rowKey={keys[index]!}
              lead={lead}
              sizes={props.sizes}
              mayDrop={props.mayDrop || keys[index]!.startsWith("+")}
              onChange={props.onChange}
              onAside={props.onAside}
            />
          ))}
        </tbody>
      </table>
      {chart.leads.length > most && (
        <button type="button" className="button" onClick={() => setMost(most + PAGE)}>
          Show more of {chart.leads.length} rows
        </button>
      )}
    </>
  );
}

const Row = memo(function Row(props: {
  readonly rowKey: string;
  readonly lead: Lead;
  readonly sizes: Settings["sizes"];
  readonly mayDrop: boolean;
  readonly onChange: (key: string, changes: LeadChanges) => void;
  readonly onAside: (key: string, source: string) => void;
}) {
  const { rowKey, lead, sizes } = props;
  const [open, setOpen] = useState(false);
  const take = (changes: LeadChanges) => props.onChange(rowKey, changes);
  const rest = sayRest(lead);
  const { candidates, certain } = lead.reading;
  const isDoubtful = !certain && candidates.length > 0 && !lead.isUnused;
  return (
    <>
      <tr className={open ? "chart-row chart-row-open" : "chart-row"}>
        <td className="chart-label">
          <Cell cell={labelCell(lead)} onTake={take} />
        </td>
        <td className="chart-function">
          <Cell cell={functionCell(lead)} onTake={take} list={FUNCTION_LIST} />
          {isDoubtful && (
            <span className="chart-either">
              {candidates.slice(0, 3).map(({ function: id }, index) => (
                <span key={id}>
                  {index > 0 && " or "}
                  <button
                    type="button"
                    className="text-button"
                    onClick={() =>
                      take({ reading: { candidates: [{ function: id, share: 1 }], certain: true } })
                    }
                  >
                    {functionOf(id).name}
                  </button>
                </span>
              ))}
              ?
            </span>
          )}
          <span className="chart-words">
            {lead.text && <q>{lead.text}</q>}
            {rest && ` ${rest}`}
          </span>
        </td>
        <td className="chart-colour">
          <Swatch colour={lead.colour} withoutLetters />
          <Cell cell={colourCell(lead)} onTake={take} />
        </td>
        <td className="chart-size">
          <Cell cell={sizeCell(lead, sizes)} onTake={take} />
        </td>
        <td className="chart-more">
          <button
            type="button"
            className="button quiet-button small-button"
            aria-expanded={open}
            aria-label={`More of ${lead.name}`}
            onClick={() => setOpen(!open)}
          >
            <svg viewBox="0 0 10 10" width="10" height="10" aria-hidden="true">
              <path
                d={open ? "M1.5 6.5 5 3l3.5 3.5" : "M1.5 3.5 5 7l3.5-3.5"}
                fill="none"
                stroke="currentColor"
                strokeWidth="1.5"
              />
            </svg>
          </button>
        </td>
      </tr>
      {open && (
        <tr className="chart-rest">
          <td colSpan={5} className="chart-rest-cell">
            <div className="chart-rest-fields">
              <span className="chart-rest-words">
                Words <Cell cell={wordsCell(lead)} onTake={take} />
              </span>
              <label>
                Direction{" "}
                <select
                  value={lead.direction}
                  onChange={(event) => take({ direction: event.target.value as Direction })}
                >
                  {DIRECTIONS.map(([value, name]) => (
                    <option key={value} value={value}>
                      {name}
                    </option>
                  ))}
                </select>
              </label>
              <span>
                Current, A <Cell cell={ampereCell(lead, "current_A", "Current")} onTake={take} />
              </span>
              <span>
                Fuse, A <Cell cell={ampereCell(lead, "fuse_A", "Fuse")} onTake={take} />
              </span>
              {props.mayDrop && (
                <button
                  type="button"
                  className="button small-button"
                  onClick={() => props.onAside(rowKey, lead.source)}
                >
                  {rowKey.startsWith("+") ? "Take the row away" : "It is no row: set it aside"}
                </button>
              )}
            </div>
          </td>
        </tr>
      )}
    </>
  );
});
