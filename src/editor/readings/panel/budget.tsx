import { useState } from "react";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { refOfKey } from "../../../graph/contacts.ts";
import { type BudgetView, budgetsOf, budgetView } from "./budget-model.ts";
import { FigureRows, ShowLink } from "./figure-rows.tsx";
import type { Subject } from "./selection-model.ts";

const FIRST = 2;

/** What is lost on the way to each load that the selection has to do with, as budgets. */
export function Budgets(props: { readonly readings: Readings; readonly subject: Subject }) {
  const { readings, subject } = props;
  const [all, setAll] = useState(false);
  const budgets = budgetsOf(readings, subject);
  if (budgets.length === 0) return null;
  const shown = all ? budgets : budgets.slice(0, FIRST);
  return (
    <section className="figures-group">
      <h3>{subject.kind === "wire" ? "Drop of the loads it serves" : "Drop on the way and back"}</h3>
      {shown.map((budget) => (
        <Budget key={budget.path.load} view={budgetView(readings, budget)} />
      ))}
      {shown.length < budgets.length && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          Show {budgets.length - shown.length} more
        </button>
      )}
    </section>
  );
}

export function Budget({ view }: { readonly view: BudgetView }) {
  return (
    <article className="budget" aria-label={`Drop to ${view.name}`}>
      <p>
        <ShowLink about={[refOfKey(view.load)]}>{view.name}</ShowLink>: {view.words}
      </p>
      <Bar view={view} />
      <p className={view.within ? "figures-quiet" : "budget-over"}>{view.verdict}</p>
      <div className="figures-table-place">
        <table className="figures-table">
          <caption className="said-only">Drop to {view.name}, stretch by stretch</caption>
          <thead>
            <tr>
              <th scope="col">Stretch</th>
              <th scope="col">Way</th>
              <th scope="col" className="figures-number">
                Carries
              </th>
              <th scope="col" className="figures-number">
                Loses
              </th>
            </tr>
          </thead>
          <tbody>
            {view.rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">
                  {row.about.length > 0 ? <ShowLink about={row.about}>{row.name}</ShowLink> : row.name}
                </th>
                <td>{row.side}</td>
                <td className="figures-number">{row.amps}</td>
                <td className="figures-number">{row.drop}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <FigureRows lines={[view.limit]} />
    </article>
  );
}

/** The words and the table say the same; the bar is for the eye. Supply is solid, return is hatched. */
function Bar({ view }: { readonly view: BudgetView }) {
  return (
    <div className="budget-bar" aria-hidden="true">
      {view.rows.map((row) => (
        <span
          key={row.id}
          className={`budget-piece budget-${row.side}`}
          title={`${row.name}: ${row.drop}`}
          style={{ left: `${row.from_percent}%`, width: `${row.long_percent}%` }}
        />
      ))}
      <span className="budget-limit" style={{ left: `${view.limit_percent}%` }} />
    </div>
  );
}
