import type { Readings } from "../../../electrical/operate/readings.ts";
import { useEditorStore } from "../../state/use-editor.ts";
import { assumptionRows } from "./assumption-model.ts";
import { goToField } from "./basis.tsx";
import { Disclosure } from "./disclosure.tsx";

/** What was taken for granted, and where it could be stated instead. */
export function Assumptions(props: { readonly readings: Readings; readonly about: ReadonlySet<string> }) {
  const editor = useEditorStore();
  const rows = assumptionRows(props.readings, props.about);
  if (rows.length === 0) return <p className="figures-quiet">Nothing was taken for granted.</p>;
  return (
    <Disclosure name={`Taken for granted (${rows.length})`}>
      <ul className="assumptions">
        {rows.map((row) => (
          <li key={row.id}>
            <p>{row.words}.</p>
            <p className="figures-quiet">Source: {row.source}.</p>
            {row.state.length > 0 && (
              <p className="assumption-links">
                {row.state.map(({ of, field, label }) => (
                  <button
                    key={label}
                    type="button"
                    className="figures-link"
                    onClick={() => goToField(editor, of, field)}
                  >
                    {label}
                  </button>
                ))}
                {row.more > 0 && <span className="figures-quiet">and {row.more} more</span>}
              </p>
            )}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
