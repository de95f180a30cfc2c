import { dropsOf, nameLoad } from "../../../electrical/operate/drop.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { refOfKey } from "../../../graph/contacts.ts";
import { usedPercent } from "./budget-model.ts";
import { ShowLink } from "./figure-rows.tsx";

/** Every load that draws in this state, the one that uses most of its budget first. */
export function BudgetTable({ readings }: { readonly readings: Readings }) {
  const drops = dropsOf(readings);
  if (drops.length === 0) return <p className="figures-quiet">Nothing draws in this state.</p>;
  return (
    <div className="figures-table-place">
      <table className="figures-table">
        <caption className="said-only">Drop of every load</caption>
        <thead>
          <tr>
            <th scope="col">Load</th>
            <th scope="col" className="figures-number">
              Used
            </th>
            <th scope="col">Drop</th>
          </tr>
        </thead>
        <tbody>
          {drops.map((drop) => (
            <tr key={drop.path.load}>
              <th scope="row">
                <ShowLink about={[refOfKey(drop.path.load)]}>
                  {nameLoad(readings.solved.harness, drop.path.load)}
                </ShowLink>
              </th>
              <td className="figures-number">
                {drop.budget.within ? usedPercent(drop) : <strong>{usedPercent(drop)}, over</strong>}
              </td>
              <td>{drop.budget.words}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
