import { type FormEvent, useId, useState } from "react";
import { findContact } from "../../../catalogue/describe.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { shortAt } from "../../../electrical/operate/short.ts";
import { type ContactKey, contactKey } from "../../../graph/contacts.ts";
import { FigureRows, ShowLink } from "./figure-rows.tsx";
import { shortView } from "./short-model.ts";

/** What would flow if a contact touched the frame, and whether the fuse opens in time. */
export function ShortAt(props: { readonly readings: Readings; readonly contact: ContactKey }) {
  const short = shortAt(props.readings, props.contact);
  if (!short) return null;
  const view = shortView(props.readings, short);
  return (
    <>
      <p>
        <strong>{view.verdict}</strong> {short.words}
      </p>
      <FigureRows lines={view.lines} />
      {view.wires.length > 0 && (
        <div className="figures-table-place">
          <table className="figures-table">
            <caption>The wires on the way</caption>
            <thead>
              <tr>
                <th scope="col">Wire</th>
                <th scope="col">Verdict</th>
                <th scope="col">Why</th>
              </tr>
            </thead>
            <tbody>
              {view.wires.map((row) => (
                <tr key={row.wire}>
                  <th scope="row">
                    <ShowLink about={[{ wire: row.wire }]}>{row.name}</ShowLink>
                  </th>
                  <td>{row.verdict}</td>
                  <td>{row.why}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
}

/** Asks at which contact. */
export function ShortAsk({ readings }: { readonly readings: Readings }) {
  const [typed, setTyped] = useState("");
  const [at, setAt] = useState<ContactKey | null>(null);
  const [why, setWhy] = useState("");
  const id = useId();
  const ask = (event: FormEvent) => {
    event.preventDefault();
    const { harness } = readings.solved;
    const name = typed.trim();
    const found = findContact(harness, name) ?? findContact(harness, name.toUpperCase());
    setAt(found ? contactKey(found.part, found.contact) : null);
    setWhy(found ? "" : `There is no contact ${name || "without a name"}. Write one like X1.4.`);
  };
  return (
    <>
      <form className="short-ask" onSubmit={ask}>
        <label htmlFor={id}>Contact</label>
        <input
          id={id}
          autoComplete="off"
          placeholder="X1.4"
          value={typed}
          aria-invalid={why !== ""}
          aria-describedby={why ? `${id}-why` : undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
        <button type="submit" className="button">
          Short it
        </button>
        <p id={`${id}-why`} className="field-why" role="alert">
          {why}
        </p>
      </form>
      {at && <ShortAt readings={readings} contact={at} />}
    </>
  );
}
