import { type Field, tickedWords } from "./fields.ts";

/** Some of a list. Closed it says what is ticked; open it shows the whole list and its sentence of help. */
export function Ticks(props: { readonly field: Field; readonly commit: (text: string) => void }) {
  const { field, commit } = props;
  const ticked = field.text.split(" ").filter(Boolean);
  return (
    <details className="ticks">
      <summary>
        <span className="ticks-name">{field.name}</span> {tickedWords(field)}
      </summary>
      {field.help && <p className="field-help">{field.help}</p>}
      <fieldset className="view">
        <legend className="ticks-legend">{field.name}</legend>
        {field.choices?.map(([value, name]) => (
          <label key={value} className="flag-row">
            <input
              type="checkbox"
              checked={ticked.includes(value)}
              onChange={(event) =>
                commit(
                  (event.target.checked ? [...ticked, value] : ticked.filter((one) => one !== value)).join(
                    " ",
                  ),
                )
              }
            />
            {name}
          </label>
        ))}
      </fieldset>
    </details>
  );
}
