import type { Readings } from "../../../electrical/operate/readings.ts";
import type { Part } from "../../../graph/harness.ts";
import { sayAmps, sayVolts } from "./figure-line.ts";
import { ShowLink } from "./figure-rows.tsx";
import { contactRows } from "./part-figures-model.ts";

/** Volts and amperes at each contact of a part. */
export function ContactTable(props: { readonly readings: Readings; readonly part: Part }) {
  const rows = contactRows(props.readings, props.part);
  return (
    <div className="figures-table-place" tabIndex={-1}>
      <table className="figures-table">
        <caption>Its contacts</caption>
        <thead>
          <tr>
            <th scope="col">Contact</th>
            <th scope="col" className="figures-number">
              Volts
            </th>
            <th scope="col" className="figures-number">
              Carries
            </th>
            <th scope="col">Wires</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.contact}>
              <th scope="row">
                <ShowLink about={[{ part: row.part, contact: row.contact }]}>{row.name}</ShowLink>
              </th>
              <td className="figures-number">{sayVolts(row.volts)}</td>
              <td className="figures-number">{row.wires.length === 0 ? "" : sayAmps(row.carries_A)}</td>
              <td>{row.wires.join(", ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
