import { useId } from "react";
import { functionOf } from "../../catalogue/functions.ts";
import { cavitiesOf, PINOUTS, type Pinout } from "../../catalogue/pinouts.ts";
import type { JobSide } from "../../graph/harness.ts";
import { Swatch } from "../shell/swatch.tsx";

/** Picks a usual pinout and shows what it says, how sure each row is, and what it must not be trusted for. */
export function PinoutField(props: {
  readonly pinout: Pinout;
  readonly side: JobSide | null;
  readonly onPinout: (pinout: Pinout) => void;
}) {
  const id = useId();
  const { pinout } = props;
  const cavities = cavitiesOf(pinout, props.side ?? pinout.side);
  return (
    <div className="rows">
      <label htmlFor={id}>Which</label>
      <select
        id={id}
        value={pinout.id}
        onChange={(event) => {
          const next = PINOUTS.find((one) => one.id === event.target.value);
          if (next) props.onPinout(next);
        }}
      >
        {PINOUTS.map(({ id: value, title }) => (
          <option key={value} value={value}>
            {title}
          </option>
        ))}
      </select>
      <p className="housing-caution">{pinout.caution}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys */}
      <section className="rows-table" tabIndex={0} aria-label="The pinout">
        <table>
          <thead>
            <tr>
              <th scope="col">Cavity</th>
              <th scope="col">Function</th>
              <th scope="col">Lead</th>
              <th scope="col">Note</th>
              <th scope="col">Sources</th>
            </tr>
          </thead>
          <tbody>
            {cavities.map((cavity, index) => (
              <tr key={cavity.label}>
                <th scope="row">{cavity.label}</th>
                <td>{functionOf(cavity.function).name}</td>
                <td>{cavity.lead?.colour && <Swatch colour={cavity.lead.colour} />}</td>
                <td>{cavity.text}</td>
                <td>{SURE[pinout.rows[index]!.confidence]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className="rows-said">Source: {pinout.source}</p>
    </div>
  );
}

const SURE: Readonly<Record<Pinout["rows"][number]["confidence"], string>> = {
  several: "several agree",
  one: "only one",
  disputed: "they differ",
  memory: "from memory",
};
