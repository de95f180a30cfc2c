import { useId } from "react";
import { functionOf } from "../../catalogue/functions.ts";
import { type Confidence, PINOUT_GROUPS, PINOUTS, type PinoutGroup } from "../../catalogue/pinouts.ts";
import { type Ready, readyCavities, readyOfPinout } from "../../catalogue/ready.ts";
import type { JobSide } from "../../graph/harness.ts";
import { Swatch } from "../shell/swatch.tsx";

/** The ready connectors of the catalogue. */
export const CATALOGUE: readonly Ready[] = PINOUTS.map(readyOfPinout);

/** Picks a ready connector and shows what it says, how sure each row is, and what it must not be trusted for. */
export function ReadyField(props: {
  readonly ready: Ready;
  readonly own: readonly Ready[];
  readonly side: JobSide | null;
  readonly system_V: number;
  readonly onReady: (ready: Ready) => void;
}) {
  const id = useId();
  const { ready, own, system_V } = props;
  const all = [...CATALOGUE, ...own];
  return (
    <div className="rows">
      <label htmlFor={id}>Which</label>
      <select
        id={id}
        className="ready-which"
        value={ready.id}
        onChange={(event) => {
          const next = all.find((one) => one.id === event.target.value);
          if (next) props.onReady(next);
        }}
      >
        {(Object.entries(PINOUT_GROUPS) as [PinoutGroup, string][]).map(([group, name]) => (
          <optgroup key={group} label={name}>
            {CATALOGUE.filter((one) => one.group === group).map(asOption)}
          </optgroup>
        ))}
        {own.length > 0 && <optgroup label="Your own">{own.map(asOption)}</optgroup>}
      </select>
      <p className="housing-caution">{ready.caution}</p>
      {ready.voltage_V !== null && ready.voltage_V !== system_V && (
        <p className="housing-caution">
          It is made for {ready.voltage_V} V; this harness is a {system_V} V system.
        </p>
      )}
      <Rows ready={ready} side={props.side} />
      <p className="rows-said">{ready.group === "own" ? ready.source : `Source: ${ready.source}`}</p>
    </div>
  );
}

function asOption({ id, title }: Ready) {
  return (
    <option key={id} value={id}>
      {title}
    </option>
  );
}

function Rows({ ready, side }: { readonly ready: Ready; readonly side: JobSide | null }) {
  const { confidence } = ready;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
    <section className="rows-table" tabIndex={0} aria-label="What stands in its cavities">
      <table>
        <thead>
          <tr>
            <th scope="col">Cavity</th>
            <th scope="col">Function</th>
            <th scope="col">Lead</th>
            <th scope="col">{confidence ? "Note" : "Chart text"}</th>
            {confidence && <th scope="col">Sources</th>}
          </tr>
        </thead>
        <tbody>
          {readyCavities(ready, side ?? ready.side).map((cavity, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a cavity is its place
            <tr key={index}>
              <th scope="row">{cavity.label}</th>
              <td>{functionOf(cavity.function).name}</td>
              <td>{cavity.lead?.colour && <Swatch colour={cavity.lead.colour} />}</td>
              <td>{cavity.text}</td>
              {confidence && <td>{SURE[confidence[index]!]}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const SURE: Readonly<Record<Confidence, string>> = {
  several: "several agree",
  one: "only one",
  disputed: "they differ",
  memory: "from memory",
};
