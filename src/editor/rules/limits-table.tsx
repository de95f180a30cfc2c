import { useState } from "react";
import { type LimitRow, limitRows, type Rules, withLimit } from "./profile-model.ts";

/** Every limit: the book's figure, and the shop's own where it has one. */
export function Limits(props: {
  readonly rules: Rules;
  readonly onChange: (changes: Partial<Rules>) => void;
}) {
  const { rules } = props;
  return (
    <section aria-labelledby="limits">
      <h3 id="limits">Limits</h3>
      <table className="limits">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">The book says</th>
            <th scope="col">The shop’s own</th>
          </tr>
        </thead>
        <tbody>
          {limitRows(rules).map((row) => (
            <tr key={row.name}>
              <th scope="row">{row.words}</th>
              <td>
                {row.value} {row.unit}
                <small>{row.book}</small>
              </td>
              <td>
                <OwnLimit
                  row={row}
                  onTyped={(typed) => {
                    const limits = withLimit(rules, row.name, typed);
                    if (limits) props.onChange({ limits: [...limits] });
                    return limits !== null;
                  }}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function OwnLimit(props: { readonly row: LimitRow; readonly onTyped: (typed: string) => boolean }) {
  const { row } = props;
  const kept = row.own === null ? "" : String(row.own);
  const [typed, setTyped] = useState<string | null>(null);
  const [isWrong, setWrong] = useState(false);
  const take = () => {
    if (typed === null || typed === kept) return setTyped(null);
    const taken = props.onTyped(typed);
    setWrong(!taken);
    if (taken) setTyped(null);
  };
  return (
    <span className="own-limit">
      <input
        type="text"
        inputMode="decimal"
        aria-label={`The shop’s own: ${row.words}${row.unit && `, in ${row.unit}`}`}
        aria-invalid={isWrong}
        placeholder="as the book"
        value={typed ?? kept}
        onChange={(event) => {
          setTyped(event.target.value);
          setWrong(false);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
        }}
      />
      {row.unit}
      {isWrong && <small className="field-why">This is not a number from 0 to 100 000.</small>}
    </span>
  );
}
