import { useMemo } from "react";
import { functionOf } from "../../catalogue/functions.ts";
import { COLUMN_ROLES, type ColumnRole } from "../../match/read-columns.ts";
import { type ReadRows, readRows } from "../../match/read-rows.ts";
import { Swatch } from "../shell/swatch.tsx";
import { sizeFigure } from "../table/table-model.ts";

const ROLE_NAMES: Readonly<Record<ColumnRole, string>> = {
  label: "cavity",
  function: "function",
  colour: "colour",
  tracer: "tracer",
  size: "size",
  text: "chart text",
};

/** Enough to judge by; the rest is read the same way. */
const SHOWN = 200;

export function useRows(
  text: string,
  sizes: "metric" | "awg",
  chosen: readonly ColumnRole[] | null,
): ReadRows {
  return useMemo(() => readRows(text, sizes, chosen), [text, sizes, chosen]);
}

/** A field for the rows, and under it how each one was understood. */
export function RowsField(props: {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly read: ReadRows;
  readonly sizes: "metric" | "awg";
  readonly onColumns: (columns: readonly ColumnRole[]) => void;
  readonly first?: boolean;
}) {
  const { read } = props;
  return (
    <div className="rows">
      <label htmlFor="rows-text">
        Rows from a spreadsheet or a chart: cavity, function or the chart's words, colour, size
      </label>
      <textarea
        id="rows-text"
        data-first={props.first ? "" : undefined}
        rows={6}
        spellCheck={false}
        placeholder={"A4\tConstant 12 V\tRD\t1.5\nA7\tAccessory\tYE/RD\t0.75"}
        value={props.text}
        onChange={(event) => props.onText(event.target.value)}
        onKeyDown={(event) => {
          // A tab belongs to the rows, as in a spreadsheet; with Shift it leaves the field as ever.
          if (event.key !== "Tab" || event.shiftKey || event.ctrlKey || event.altKey) return;
          if (props.text === "") return;
          event.preventDefault();
          const field = event.currentTarget;
          field.setRangeText("\t", field.selectionStart, field.selectionEnd, "end");
          props.onText(field.value);
        }}
      />
      <p className="rows-said" role="status">
        {sayRead(read)}
      </p>
      {read.rows.length > 0 && <Preview {...props} />}
    </div>
  );
}

function sayRead(read: ReadRows): string {
  const { length } = read.rows;
  if (length === 0) return "";
  const known = read.rows.filter((row) => row.function).length;
  const kept = read.rows.filter((row) => row.kept.length > 0).length;
  const words = [
    `${length} ${length === 1 ? "row" : "rows"}${read.hasHeads ? " under a row of heads" : ""}, ${known} with a known function.`,
  ];
  if (kept) words.push(`In ${kept} something was not understood; it is kept as chart text.`);
  return [...words, ...read.notes].join(" ");
}

function Preview(props: {
  readonly read: ReadRows;
  readonly sizes: "metric" | "awg";
  readonly onColumns: (columns: readonly ColumnRole[]) => void;
}) {
  const { read } = props;
  const change = (index: number, role: ColumnRole) =>
    props.onColumns(
      read.columns.map((old, at) => (at === index ? role : old === role && role !== "text" ? "text" : old)),
    );
  return (
    <>
      <div className="rows-columns">
        {read.columns.map((role, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
          <label key={index}>
            Column {index + 1}
            <select value={role} onChange={(event) => change(index, event.target.value as ColumnRole)}>
              {COLUMN_ROLES.map((one) => (
                <option key={one} value={one}>
                  {ROLE_NAMES[one]}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys */}
      <section className="rows-table" tabIndex={0} aria-label="How the rows were read">
        <table>
          <thead>
            <tr>
              <th scope="col">Cavity</th>
              <th scope="col">Function</th>
              <th scope="col">Lead</th>
              <th scope="col">Size</th>
              <th scope="col">Chart text</th>
              <th scope="col">Not understood</th>
            </tr>
          </thead>
          <tbody>
            {read.rows.slice(0, SHOWN).map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
              <tr key={index}>
                <th scope="row">{row.cavity.label ?? "next"}</th>
                <td>{row.function ? functionOf(row.function).name : <em>not known</em>}</td>
                <td>{row.colour && <Swatch colour={row.colour} />}</td>
                <td>{row.area_mm2 === null ? "" : sizeFigure(row.area_mm2, props.sizes)}</td>
                <td>{row.cavity.text ?? ""}</td>
                <td>{row.kept.join("; ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {read.rows.length > SHOWN && <p>and {read.rows.length - SHOWN} more</p>}
      </section>
    </>
  );
}
